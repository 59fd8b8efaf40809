package umbercard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import umbercard.model.ColorNote;
import umbercard.model.Study;
import umbercard.store.Samples;
import umbercard.store.StudyFile;

class ArrangeCommandTest {
    @TempDir
    private Path folder;

    private Path file;
    private Path written;

    @BeforeEach
    void write() throws IOException {
        file = folder.resolve("hill.json");
        written = folder.resolve("arranged.json");
        List<ColorNote> turned = new ArrayList<>(Samples.kilnHill().study().notes());
        Collections.reverse(turned);
        StudyFile.write(Samples.kilnHill().study().withNotes(turned), file);
    }

    private static List<String> ids(Study study) {
        return study.notes().stream().map(ColorNote::id).toList();
    }

    @Test
    void putsTheNotesInOrderAndSaysWhy() throws IOException {
        Calls.Result result = Calls.run("arrange", file, "-o", written);
        assertThat(result.err()).isEmpty();
        assertThat(result.code()).isZero();
        assertThat(result.outLines().get(0)).matches("Kiln Hill, first snow: \\d+ notes move\\.");
        assertThat(result.outLines())
                .anyMatch(line ->
                        line.matches("10 +was 1 +Chalk white +snow slope, accents +After Deep pond: accents last\\."))
                .anyMatch(line -> line.contains("After Far slate: the land edge before the sky."))
                .endsWith(written + " holds the notes in this order.");
        Study arranged = StudyFile.read(written);
        assertThat(arranged.notes()).hasSameElementsAs(StudyFile.read(file).notes());
        assertThat(ids(arranged).indexOf("n3")).isLessThan(ids(arranged).indexOf("n4"));
        assertThat(Calls.run("arrange", written).outLines().get(0))
                .isEqualTo("Kiln Hill, first snow: the notes stand in this order already.");
    }

    @Test
    void withoutAFileToWriteNothingIsWritten() throws IOException {
        byte[] before = Files.readAllBytes(file);
        assertThat(Calls.run("arrange", file).outLines()).noneMatch(line -> line.contains("holds the notes"));
        assertThat(Files.readAllBytes(file)).isEqualTo(before);
        try (var files = Files.list(folder)) {
            assertThat(files).containsExactly(file);
        }
    }

    @Test
    void aRulePassedOverIsKeptInTheStudy() throws IOException {
        JsonNode json = Calls.run(
                        "arrange",
                        file,
                        "--without",
                        "darks-early",
                        "--without",
                        "upper-before-lower",
                        "--json",
                        "-o",
                        written)
                .json();
        assertThat(json.path("without"))
                .extracting(JsonNode::asText)
                .containsExactly("darks-early", "upper-before-lower");
        assertThat(StudyFile.read(written).rulesOff()).containsExactly("darks-early", "upper-before-lower");
        assertThat(Calls.keys(json)).containsExactly("study", "without", "notes", "broken", "kept", "remarks");
        assertThat(Calls.keys(json.path("notes").path(0)))
                .containsExactly("id", "place", "was", "stick", "zone", "purpose", "pinned", "reasons");
        assertThat(json.path("notes"))
                .extracting(note -> note.path("id").asText())
                .isEqualTo(ids(StudyFile.read(written)));
        assertThat(json.path("broken")).isNotEmpty();
        assertThat(Calls.keys(json.path("broken").path(0))).containsExactly("early", "late", "rule");
    }

    @Test
    void anUnknownRuleIsAWrongCallThatNamesTheRules() {
        Calls.Result result = Calls.run("arrange", file, "--without", "luck");
        assertThat(result.code()).isEqualTo(2);
        assertThat(result.err())
                .contains("\"luck\" is no rule of order")
                .contains("darks-early")
                .contains("upper-before-lower");
    }

    @Test
    void aStudyWithoutNotesIsRefusedAndOneThatExistsIsLeftAlone() throws IOException {
        StudyFile.write(Samples.kilnHill().study(), written);
        Calls.Result there = Calls.run("arrange", file, "-o", written);
        assertThat(there.code()).isEqualTo(1);
        assertThat(there.err()).contains(written.toString()).contains("exists already");
        StudyFile.write(Samples.kilnHill().study().withNotes(List.of()), file);
        Calls.Result none = Calls.run("arrange", file);
        assertThat(none.code()).isEqualTo(1);
        assertThat(none.errLines()).hasSize(1).allMatch(line -> line.startsWith(file + " has no color notes"));
    }

    @Test
    void aStudyWithoutThumbnailsIsArrangedToo() throws IOException {
        StudyFile.write(StudyFile.read(file).withThumbnails(List.of()).withChosen(java.util.Optional.empty()), written);
        Calls.Result result = Calls.run("arrange", written);
        assertThat(result.code()).isZero();
        assertThat(result.outLines()).anyMatch(line -> line.contains("the land edge before the sky"));
    }
}
