package umbercard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import umbercard.color.Warmth;
import umbercard.model.ColorNote;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.model.Zone;
import umbercard.notan.Fold;
import umbercard.notes.Purposes;
import umbercard.store.StudyFile;
import umbercard.store.StudyFolder;
import umbercard.zones.ZoneMap;

class TurnSkyCommandTest {
    private static final Path KILN_HILL = Path.of("samples/kiln-hill.json");

    @TempDir
    private Path folder;

    private Path bare;
    private Path matched;
    private Path turned;

    @BeforeEach
    void emptied() throws IOException {
        bare = folder.resolve("bare.json");
        matched = folder.resolve("matched.json");
        turned = folder.resolve("turned.json");
        Study study = StudyFile.read(KILN_HILL).withNotes(List.of()).withSetOut(List.of());
        StudyFolder.saveAs(study, KILN_HILL, bare);
    }

    private static Stream<ColorNote> in(Study study, Zone.Plane plane) {
        return study.notes().stream()
                .filter(note -> note.zone()
                        .flatMap(study::zone)
                        .filter(zone -> zone.plane() == plane)
                        .isPresent());
    }

    /** From no notes: nine to twelve of matched sticks, then the water, twelve to sixteen in all, as many as a card is for. */
    @Test
    void kilnHillGetsItsCardFromNothing() throws IOException {
        Calls.Result match = Calls.run("match", bare, "--onto-card", "-o", matched);
        assertThat(match.err()).isEmpty();
        assertThat(match.code()).isZero();
        Study first = StudyFile.read(matched);
        assertThat(first.notes()).hasSizeBetween(9, 12);
        assertThat(match.outLines())
                .contains("pond is left until the sky is turned over for it.")
                .endsWith("Added " + first.notes().size() + " notes, written to " + matched + ".");
        assertThat(in(first, Zone.Plane.SKY)).hasSizeGreaterThanOrEqualTo(3);
        assertThat(in(first, Zone.Plane.WATER)).isEmpty();
        assertDarks(first);
        assertSetOut(first);

        Calls.Result turn = Calls.run("turn-sky", matched, "-o", turned);
        assertThat(turn.err()).isEmpty();
        assertThat(turn.code()).isZero();
        Study both = StudyFile.read(turned);
        assertThat(both.notes()).hasSizeBetween(12, 16);
        assertThat(both.notes().subList(0, first.notes().size())).isEqualTo(first.notes());
        assertThat(in(both, Zone.Plane.WATER).map(ColorNote::purpose))
                .hasSizeGreaterThanOrEqualTo(2)
                .containsOnly(Purposes.WATER);
        assertThat(both.notes()).extracting(ColorNote::id).doesNotHaveDuplicates();
        assertSetOut(both);
        assertThat(turn.out()).contains("at the far bank, laid first");

        Path arranged = folder.resolve("arranged.json");
        Calls.Result arrange = Calls.run("arrange", turned, "-o", arranged);
        assertThat(arrange.err()).isEmpty();
        assertThat(arrange.code()).isZero();
        Study card = StudyFile.read(arranged);
        assertThat(card.notes()).hasSameElementsAs(both.notes()).isNotEqualTo(both.notes());
        assertThat(in(card, Zone.Plane.WATER))
                .containsExactlyElementsOf(in(both, Zone.Plane.WATER).toList());
        assertThat(Calls.run("readings", arranged).outLines())
                .anyMatch(line -> line.matches("Order of application +holds .*"))
                .anyMatch(line -> line.matches("Water turned over +holds .*"));
        assertThat(StudyFile.read(bare).notes()).isEmpty();
        assertThat(Calls.run("readings", turned).code()).isZero();
    }

    private static void assertDarks(Study study) {
        Thumbnail thumbnail = study.chosenThumbnail().orElseThrow();
        ZoneMap zones = ZoneMap.of(study, thumbnail);
        List<Stick> darks = study.notes().stream()
                .filter(note -> note.zone()
                        .flatMap(zones::of)
                        .filter(place -> place.isDark(Fold.of(thumbnail, study.ratio())))
                        .isPresent())
                .map(ColorNote::stick)
                .toList();
        assertThat(darks).anyMatch(stick -> Warmth.isWarm(stick.color()));
        assertThat(darks).anyMatch(stick -> Warmth.isCool(stick.color()));
    }

    private static void assertSetOut(Study study) {
        assertThat(study.setOut())
                .extracting(Stick::id)
                .containsAll(
                        study.notes().stream().map(note -> note.stick().id()).toList())
                .doesNotHaveDuplicates();
    }

    @Test
    void withoutAFileToWriteItOnlyTells() throws IOException {
        Calls.run("match", bare, "--onto-card", "-o", matched);
        byte[] before = Files.readAllBytes(matched);
        JsonNode json = Calls.run("turn-sky", matched, "--json").json();
        assertThat(Calls.keys(json)).containsExactly("study", "thumbnail", "offers", "remarks");
        assertThat(json.get("offers")).hasSizeGreaterThanOrEqualTo(2);
        assertThat(Calls.keys(json.at("/offers/0")))
                .containsExactly("id", "stick", "zone", "purpose", "direction", "touch", "reason");
        assertThat(json.at("/offers/0/purpose").asText()).isEqualTo("water");
        assertThat(json.at("/offers/0/zone").asText()).isEqualTo("z7");
        assertThat(Files.readAllBytes(matched)).isEqualTo(before);
        assertThat(folder).isDirectoryNotContaining(file -> file.equals(turned));
    }

    @Test
    void aNumberHoldsEveryZoneToIt() throws IOException {
        Calls.Result result = Calls.run("match", bare, "--onto-card", "1", "--suggest", "12", "-o", matched, "--json");
        assertThat(result.json().get("written").asText()).isEqualTo(matched.toString());
        Study study = StudyFile.read(matched);
        assertThat(in(study, Zone.Plane.SKY)).hasSize(1);
        assertThat(study.setOut().size()).isLessThanOrEqualTo(12);
        Calls.Result again = Calls.run("match", matched, "--onto-card", "-o", turned);
        assertTrouble(again, "nothing to add to " + matched, "has notes already");
        assertThat(turned).doesNotExist();
    }

    @Test
    void whatIsMissingIsSaidAndNothingIsWritten() throws IOException {
        assertTrouble(Calls.run("turn-sky", bare, "-o", turned), "nothing to add to " + bare, "no notes");
        Study dry = StudyFile.read(bare);
        StudyFile.write(
                dry.withThumbnails(dry.thumbnails().stream()
                        .map(thumbnail -> thumbnail.withWaterline(Optional.empty()))
                        .toList()),
                bare);
        assertTrouble(Calls.run("turn-sky", bare, "-o", turned), "no waterline");
        assertThat(turned).doesNotExist();
        assertThat(Calls.run("turn-sky", bare).outLines()).anyMatch(line -> line.contains("no waterline"));
        Files.writeString(turned, "mine");
        assertTrouble(Calls.run("turn-sky", bare, "-o", turned), "exists already");
        assertTrouble(Calls.run("match", bare, "--onto-card", "-o", turned), "exists already");
        assertThat(turned).hasContent("mine");
    }

    private static void assertTrouble(Calls.Result result, String... said) {
        assertThat(result.code()).isEqualTo(1);
        assertThat(result.out()).isEmpty();
        assertThat(result.errLines()).singleElement().asString().contains(said).endsWith(".");
    }

    @Test
    void aWrongCallIsSaid() {
        assertWrong(Calls.run("match", bare, "--onto-card"), "-o");
        assertWrong(Calls.run("match", bare, "-o", matched), "--onto-card");
        assertWrong(Calls.run("match", bare, "--onto-card", "9", "-o", matched), "from 1 to 4");
        assertWrong(Calls.run("match", "--onto-card", bare, "-o", matched), "the study before it");
    }

    private static void assertWrong(Calls.Result result, String said) {
        assertThat(result.code()).isEqualTo(2);
        assertThat(result.errLines()).singleElement().asString().contains(said);
    }
}
