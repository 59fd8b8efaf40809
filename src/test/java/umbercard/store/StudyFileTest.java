package umbercard.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import umbercard.color.Lab;
import umbercard.geometry.Outline;
import umbercard.model.ColorNote;
import umbercard.model.Frame;
import umbercard.model.LostEdge;
import umbercard.model.Mark;
import umbercard.model.Reference;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.model.Surface;
import umbercard.model.Thumbnail;
import umbercard.model.Zone;
import umbercard.words.Trouble;

class StudyFileTest {
    private static final Path CASES = Path.of("src/test/resources/umbercard/store/studies");

    @TempDir
    private Path folder;

    @Property(tries = 60, seed = "20261124", edgeCases = EdgeCasesMode.NONE)
    void whatIsWrittenIsReadBackEqual(@ForAll("studies") Study study) throws Trouble {
        assertThat(StudyFile.parse(StudyFile.text(study), "study.json")).isEqualTo(study);
    }

    @Property(tries = 20, seed = "20261124", edgeCases = EdgeCasesMode.NONE)
    void theSameStudyIsWrittenTheSame(@ForAll("studies") Study study) throws Trouble {
        String text = StudyFile.text(study);
        assertThat(StudyFile.text(StudyFile.parse(text, "study.json"))).isEqualTo(text);
    }

    @Provide
    static Arbitrary<Study> studies() {
        return Studies.all();
    }

    @Test
    void aFileGoesOutAndComesBack() throws Exception {
        Path file = folder.resolve("kiln.json");
        StudyFile.write(whole(), file);
        assertThat(StudyFile.read(file)).isEqualTo(whole());
    }

    @Test
    void aPersonCanReadIt() throws Exception {
        Path expected = CASES.resolve("good/whole.json");
        assertThat(StudyFile.text(whole())).isEqualTo(Files.readString(expected));
    }

    @Test
    void theFormOfTheDesignIsRead() throws Exception {
        Study study = StudyFile.read(CASES.resolve("good/hand-written.json"));
        assertThat(study.title()).isEqualTo("Kiln Hill, first snow");
        assertThat(study.surface()).isEqualTo(new Surface(12, 9, Surface.Unit.IN, 0.25, Optional.empty(), true));
        assertThat(study.reference().orElseThrow().frame().tilt()).isEqualTo(-0.4);
        assertThat(study.thumbnails().get(0).marks().get(0).outline().nodes()).hasSize(3);
        assertThat(study.notes().get(0).stick().slot()).contains(new Stick.Slot(3, 2));
        assertThat(study.zones().get(0).targetValue()).hasValue(6);
        assertThat(study.reference().orElseThrow().copy()).contains(new Reference.Copy("image/jpeg", "AAECAw=="));
    }

    @Test
    void whatIsLeftOutIsUsual() throws Exception {
        String least = "{\"format\": \"umbercard-study\", \"version\": \"1.0\", \"title\": \"Least\","
                + " \"surface\": {\"width\": 12, \"height\": 9, \"unit\": \"in\"}}";
        Surface surface = new Surface(12, 9, Surface.Unit.IN, 0, Optional.empty(), false);
        assertThat(StudyFile.parse(least, "least.json")).isEqualTo(Study.begin("Least", surface));
        assertThat(StudyFile.parse("\uFEFF" + least, "marked.json")).isEqualTo(Study.begin("Least", surface));
    }

    @Test
    void fieldsOfALaterMinorVersionSurviveASave() throws Exception {
        Path later = CASES.resolve("good/later-minor.json");
        Study study = StudyFile.read(later);
        assertThat(study.more()).containsOnlyKeys("weather");
        assertThat(StudyFile.text(study))
                .isEqualTo(Files.readString(later).replace("\"version\": \"1.7\"", "\"version\": \"1.0\""));
    }

    /** Each folder entry {@code x.json} is a study that is refused with the sentence in {@code x.txt}. */
    @ParameterizedTest
    @MethodSource("badStudies")
    void aBadStudyIsRefusedInOneSentenceAndLeftAlone(Path bad) throws Exception {
        byte[] before = Files.readAllBytes(bad);
        String sentence = Files.readString(Path.of(bad.toString().replaceAll("json$", "txt")))
                .strip();
        assertThatThrownBy(() -> StudyFile.read(bad))
                .isInstanceOf(Trouble.class)
                .hasMessage(sentence.replace("FILE", bad.toString()));
        assertThat(bad).hasBinaryContent(before);
    }

    static List<Path> badStudies() throws IOException {
        try (Stream<Path> files = Files.list(CASES.resolve("bad"))) {
            List<Path> bad = files.filter(file -> file.toString().endsWith(".json"))
                    .sorted()
                    .toList();
            assertThat(bad).hasSizeGreaterThan(30);
            return bad;
        }
    }

    @Test
    void aMissingFileIsSaid() {
        Path missing = folder.resolve("gone.json");
        assertThatThrownBy(() -> StudyFile.read(missing))
                .isInstanceOf(Trouble.class)
                .hasMessage(missing + " is not there; look for it in another folder.");
    }

    @Test
    void aFolderIsSaid() {
        assertThatThrownBy(() -> StudyFile.read(folder))
                .isInstanceOf(Trouble.class)
                .hasMessage(folder + " is a folder; choose a file inside it.");
    }

    @Test
    void aStudyCutOffAnywhereIsRefused() {
        String text = StudyFile.text(whole()).strip();
        for (int length = 0; length < text.length(); length += 7) {
            String cut = text.substring(0, length);
            assertThatThrownBy(() -> StudyFile.parse(cut, "cut.json"))
                    .as("cut after %d characters", length)
                    .isInstanceOf(Trouble.class)
                    .hasMessageStartingWith("cut.json is ");
        }
    }

    @Test
    void aSecondSaveThatFailsLeavesTheFirst() throws Exception {
        Path file = folder.resolve("kiln.json");
        StudyFile.write(whole(), file);
        byte[] before = Files.readAllBytes(file);
        byte[] next = StudyFile.text(whole().withTitle("Another")).getBytes(StandardCharsets.UTF_8);
        assertThatThrownBy(() -> AtomicFile.write(file, out -> out.write(next), (from, to) -> {
                    throw new IOException("the disk went away");
                }))
                .isInstanceOf(Trouble.class);
        assertThat(file).hasBinaryContent(before);
    }

    /** A study with something in every corner. */
    private static Study whole() {
        Stick slate = new Stick("s9", "Far slate", new Stick.Slot(3, 2), new Lab(61.2, -0.8, -10.4));
        Mark mark = new Mark("m1", Mark.Kind.LAY, Outline.rectangle(0, 0.62, 1.35, 1));
        Thumbnail first = Thumbnail.empty("t1", "first")
                .withMarks(
                        List.of(mark, mark.withId("m2").withKind(Mark.Kind.LIFT).withHidden(true)))
                .withLandEdge(Optional.of(umbercard.model.Level.at(0.38)))
                .withZoneAreas(Map.of("z1", List.of(Outline.rectangle(0, 0.5, 1, 0.7))));
        Zone ridge = new Zone("z1", "ridge", Zone.Plane.SLOPE, Zone.Distance.FAR);
        return Study.begin("Kiln Hill", new Surface(12, 9, Surface.Unit.IN, 0.25, Optional.empty(), true))
                .withConcept("The kiln\u2019s \"dark\" shoulder.")
                .withReference(Optional.of(Reference.to("kiln-hill.jpg", "ab12", Frame.largest(1.5, 1.352941))
                        .withCopy(Optional.of(new Reference.Copy("image/jpeg", "AAECAw==")))))
                .withThumbnails(List.of(first))
                .withChosen(Optional.of("t1"))
                .withZones(List.of(ridge))
                .withLostEdges(Set.of(new LostEdge("z1", "z2"), new LostEdge("z3", "z1")))
                .withNotes(List.of(
                        ColorNote.of("n1", slate).withZone(Optional.of("z1")).withPurpose("land-edge")))
                .withLimits(Map.of("dark-share", Map.of("least", 0.05, "near-half", 1e-7)))
                .withSilenced(Set.of("mirror", "corners"))
                .withMore(Map.of("zebra", 1, "apple", List.of(1, 2)));
    }
}
