package umbercard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import umbercard.color.Lab;
import umbercard.model.Box;
import umbercard.model.Frame;
import umbercard.model.Light;
import umbercard.model.Reference;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.model.Surface;
import umbercard.model.Surface.Unit;
import umbercard.model.Thumbnail;
import umbercard.store.BoxFile;
import umbercard.store.Boxes;
import umbercard.store.References;
import umbercard.store.StudyFile;

class StartCommandTest {
    @TempDir
    private Path folder;

    private Path photo;
    private Path file;

    @BeforeEach
    void takePhotograph() throws IOException {
        photo = Scenes.jpeg(folder.resolve("alder bank.jpg"));
        file = folder.resolve("hill.json");
    }

    @Test
    void beginsAStudyWithAllThatIsSaid() throws IOException {
        Calls.Result result = Calls.run(
                "start",
                photo,
                "-o",
                file,
                "--surface",
                "12x9in",
                "--tape",
                "0.25in",
                "--light",
                "low-sun",
                "--title",
                "Alders",
                "--concept",
                "The last light lies on the bank.");

        assertThat(result.err()).isEmpty();
        assertThat(result.code()).isZero();
        assertThat(result.outLines())
                .containsExactly("Began \"Alders\" in " + file + ": 12 x 9 in, tape 0.25 in, light low sun.");
        Study study = StudyFile.read(file);
        assertThat(study.title()).isEqualTo("Alders");
        assertThat(study.concept()).isEqualTo("The last light lies on the bank.");
        assertThat(study.light()).isEqualTo(Light.LOW_SUN);
        assertThat(study.surface()).isEqualTo(new Surface(12, 9, Unit.IN, 0.25, Optional.empty(), false));
        assertThat(study.thumbnails()).containsExactly(Thumbnail.empty("t1", "first"));
        assertThat(study.chosen()).contains("t1");
    }

    @Test
    void framesAsMuchOfThePhotographAsFitsTheOpening() throws IOException {
        Calls.run("start", photo, "-o", file, "--surface", "9x12in", "--tape", "0.25in");

        Study study = StudyFile.read(file);
        assertThat(study.ratio()).isEqualTo(8.5 / 11.5);
        Reference reference = study.reference().orElseThrow();
        assertThat(reference.frame()).isEqualTo(Frame.largest(900.0 / 600, 8.5 / 11.5));
        assertThat(reference.sha256()).isEqualTo(References.sha256(Files.readAllBytes(photo)));
    }

    @Test
    void findsThePhotographFromTheStudysFolder() throws IOException {
        Path elsewhere =
                Files.createDirectories(folder.resolve("studies/winter")).resolve("hill.json");
        Calls.run("start", photo, "-o", elsewhere, "--surface", "30x20cm");

        Study study = StudyFile.read(elsewhere);
        assertThat(study.reference().orElseThrow().file()).isEqualTo("../../alder bank.jpg");
        assertThat(References.bytes(study, Optional.of(elsewhere))).isEqualTo(Files.readAllBytes(photo));
    }

    @Test
    void callsTheStudyAfterThePhotographWhereNoTitleIsGiven() throws IOException {
        Calls.run("start", photo, "-o", file, "--surface", "12x9in");
        assertThat(StudyFile.read(file).title()).isEqualTo("alder bank");
        assertThat(StudyFile.read(file).light()).isEqualTo(Light.CLEAR);
    }

    @Test
    void copiesTheBoxIntoTheStudy() throws IOException {
        Stick stick = new Stick(
                "s1",
                Optional.of("Wet slate"),
                Optional.empty(),
                new Lab(40, 0, -6),
                Optional.empty(),
                Stick.State.OWNED,
                "",
                Map.of());
        Path box = folder.resolve("box.json");
        BoxFile.write(new Box("b1", "Kiln Yard 36", List.of(stick), Map.of()), box);

        Calls.Result result = Calls.run("start", photo, "-o", file, "--surface", "12x9in", "--box", box);

        assertThat(result.out()).contains(", box Kiln Yard 36.");
        assertThat(StudyFile.read(file).box()).contains(new Boxes().read(box).box());
    }

    @Test
    void saysWhichSticksOfTheBoxWereLeftOut() throws IOException {
        Path box = folder.resolve("box.json");
        Files.writeString(box, """
                {"format": "umbercard-box", "version": "1.0", "name": "Mixed",
                 "sticks": [{"id": "s1", "lab": [40, 0, 0]}, {"id": "s2", "lab": "gray"}]}
                """);

        Calls.Result result = Calls.run("start", photo, "-o", file, "--surface", "12x9in", "--box", box);

        assertThat(result.code()).isZero();
        assertThat(result.errLines()).singleElement().asString().contains(box.toString(), "sticks 2");
        assertThat(StudyFile.read(file).box().orElseThrow().sticks()).hasSize(1);
    }
}
