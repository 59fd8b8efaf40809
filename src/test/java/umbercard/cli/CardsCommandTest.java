package umbercard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import umbercard.Studies;
import umbercard.store.StudyFile;

class CardsCommandTest {
    @TempDir
    private Path folder;

    private Path file;
    private Path out;

    @BeforeEach
    void write() throws IOException {
        file = folder.resolve("hill.json");
        out = folder.resolve("out/cards");
        StudyFile.write(Studies.kilnHill(), file);
    }

    private List<String> written() throws IOException {
        try (Stream<Path> files = Files.list(out)) {
            return files.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }

    private Calls.Result cards(Object... arguments) {
        Calls.Result result = Calls.run(
                Stream.concat(Stream.of("cards"), Stream.of(arguments)).toArray());
        assertThat(result.err()).isEmpty();
        assertThat(result.code()).isZero();
        return result;
    }

    private String notan() throws IOException {
        String name = written().stream()
                .filter(file -> file.contains("notan"))
                .findFirst()
                .orElseThrow();
        return Files.readString(out.resolve(name));
    }

    @Test
    void writesEachFaceAndPrintsEachFile() throws IOException {
        Calls.Result result = cards(file, "-o", out);
        assertThat(written()).anyMatch(name -> name.contains("notan")).anyMatch(name -> name.contains("color-notes"));
        assertThat(result.outLines())
                .containsExactlyInAnyOrderElementsOf(written().stream()
                        .map(name -> out.resolve(name).toString())
                        .toList());
    }

    @Test
    void onlyTheFacesAskedForAreWritten() throws IOException {
        cards(file, "-o", out, "--faces", "notan", "--as", "svg");
        assertThat(written()).singleElement().asString().contains("notan").endsWith(".svg");
    }

    @Test
    void facesMayHaveSpacesAfterTheirCommas() throws IOException {
        cards(file, "-o", out, "--faces", "notan, color-notes");
        assertThat(written()).hasSizeGreaterThan(1);
    }

    @Test
    void anEmptyFaceIsAWrongCallAndNothingIsWritten() {
        Calls.Result result = Calls.run("cards", file, "-o", out, "--faces", "");
        assertThat(result.errLines()).singleElement().asString().startsWith("--faces has an empty name;");
        assertThat(result.code()).isEqualTo(2);
        assertThat(out).doesNotExist();
    }

    /** An inch is exactly 25.4 mm. */
    @Test
    void theCardHasTheSizeAndLiesAsAskedFor() throws IOException {
        cards(file, "-o", out, "--card", "3x5in", "--portrait");
        assertThat(notan()).contains("width=\"76.2mm\"", "height=\"127mm\"");
        cards(file, "-o", out, "--card", "3x5in", "--landscape");
        assertThat(notan()).contains("width=\"127mm\"", "height=\"76.2mm\"");
    }

    @Test
    void withoutAWishTheStudysOwnCardIsTaken() throws IOException {
        StudyFile.write(Studies.kilnHill().withCards(Studies.kilnHill().cards().withLandscape(false)), file);
        cards(file, "-o", out);
        assertThat(notan()).contains("width=\"101.6mm\"", "height=\"152.4mm\"");
    }

    @Test
    void studiesOfOneTitleDoNotTakeEachOthersPlace() throws IOException {
        Path other = folder.resolve("other.json");
        StudyFile.write(Studies.kilnHill().withConcept("The same hill, seen again."), other);
        cards(file, "-o", out, "--faces", "notan");
        String name = written().get(0);
        String first = Files.readString(out.resolve(name));

        Calls.Result result = cards(file, other, file, "-o", out, "--faces", "notan");

        assertThat(result.outLines()).hasSize(3).doesNotHaveDuplicates();
        assertThat(written()).containsExactly("2-" + name, "3-" + name, name);
        assertThat(out.resolve(name)).hasContent(first);
        assertThat(out.resolve("3-" + name)).hasContent(first);
        assertThat(out.resolve("2-" + name)).content().contains("The same hill, seen again.");
    }
}
