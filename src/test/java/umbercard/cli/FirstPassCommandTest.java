package umbercard.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import umbercard.geometry.Eye;
import umbercard.geometry.Masses;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.model.Frame;
import umbercard.model.Level;
import umbercard.model.Mark;
import umbercard.model.Squint;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.model.edit.Edits;
import umbercard.notan.Fold;
import umbercard.store.StudyFile;

class FirstPassCommandTest {
    @TempDir
    private Path folder;

    private Path file;

    @BeforeEach
    void begin() throws IOException {
        file = folder.resolve("hill.json");
        Path photo = Scenes.jpeg(folder.resolve("hill.jpg"));
        assertThat(Calls.run("start", photo, "-o", file, "--surface", "12x9in").code())
                .isZero();
    }

    private Study study() throws IOException {
        return StudyFile.read(file);
    }

    private double dark(Thumbnail thumbnail) throws IOException {
        return Fold.of(thumbnail, study().ratio()).darkShare();
    }

    @Test
    void addsAThumbnailThatCanBeEdited() throws IOException {
        Calls.Result result = Calls.run("first-pass", file);

        assertThat(result.err()).isEmpty();
        assertThat(result.code()).isZero();
        Thumbnail added = study().thumbnails().get(1);
        assertThat(added.name()).isEqualTo("first pass");
        assertThat(added.marks()).isNotEmpty();
        assertThat(result.outLines())
                .containsExactly(String.format(
                        Locale.ROOT,
                        "Added \"first pass\" to %s: dark %.1f %%, %d marks, chosen.",
                        file,
                        100 * dark(added),
                        added.marks().size()));
    }

    @Test
    void leavesTheWishedShareDark() throws IOException {
        for (double share : List.of(0.3, 0.6)) {
            Calls.run("first-pass", file, "--dark-share", share);
            List<Thumbnail> thumbnails = study().thumbnails();
            assertThat(dark(thumbnails.get(thumbnails.size() - 1))).isEqualTo(share, within(0.01));
        }
    }

    @Test
    void aHigherSplitLeavesMoreDark() throws IOException {
        Calls.run("first-pass", file, "--split", "3", "--name", "low");
        Calls.run("first-pass", file, "--split", "6", "--name", "high");
        List<Thumbnail> thumbnails = study().thumbnails();
        assertThat(thumbnails).extracting(Thumbnail::name).containsExactly("first", "low", "high");
        assertThat(dark(thumbnails.get(1))).isLessThan(dark(thumbnails.get(2)) - 0.05);
    }

    @Test
    void aWiderSquintAndFewerMassesLeaveLessToDraw() throws IOException {
        Calls.run("first-pass", file, "--squint", "0.2%", "--masses", "20", "--name", "fine");
        Calls.run("first-pass", file, "--squint", "4%", "--masses", "2", "--name", "coarse");
        List<Thumbnail> thumbnails = study().thumbnails();
        assertThat(thumbnails.get(2).marks().size())
                .isLessThan(thumbnails.get(1).marks().size());
    }

    @Test
    void aWishedShareComesBeforeTheMassesAndTheMassesReachedAreTold() throws IOException {
        Calls.Result result = Calls.run("first-pass", file, "--dark-share", "0.6", "--masses", "2", "--squint", "0.5%");
        List<Thumbnail> thumbnails = study().thumbnails();
        assertThat(dark(thumbnails.get(thumbnails.size() - 1))).isEqualTo(0.6, within(0.003));
        assertThat(result.outLines()).hasSize(2);
        assertThat(result.outLines().get(1))
                .matches("It has \\d+ masses of dark and light, not 2: the dark share comes first\\.")
                .contains(" " + masses(thumbnails.get(thumbnails.size() - 1)) + " masses");
    }

    private int masses(Thumbnail thumbnail) throws IOException {
        Masses masses = Masses.of(Fold.of(thumbnail, study().ratio()).dark(), study().ratio(), new Eye(0, 0.0001));
        return masses.dark().size() + masses.light().size();
    }

    @Test
    void tellsThatASplitHasFewerMassesThanAskedFor() {
        Calls.Result result = Calls.run("first-pass", file, "--split", "4", "--masses", "40");
        assertThat(result.outLines()).hasSize(2);
        assertThat(result.outLines().get(1))
                .endsWith("masses of dark and light, not 40: there are no others at this split.");
    }

    @Test
    void aThirdOfThatNameIsNumbered() throws IOException {
        Calls.run("first-pass", file);
        Calls.run("first-pass", file);
        Calls.run("first-pass", file);
        assertThat(study().thumbnails())
                .extracting(Thumbnail::name)
                .containsExactly("first", "first pass", "first pass 2", "first pass 3");
    }

    @Test
    void aGivenNameThatAnotherHasIsRefused() throws IOException {
        Calls.Result refused = Calls.run("first-pass", file, "--name", " first ");
        assertThat(refused.code()).isEqualTo(1);
        assertThat(refused.err()).contains("has a thumbnail \"first\" already");
        assertThat(study().thumbnails()).hasSize(1);
    }

    @Test
    void marksOfAllThumbnailsHaveIdsOfTheirOwn() throws IOException {
        Calls.run("first-pass", file);
        Calls.run("first-pass", file);
        List<String> ids = study().thumbnails().stream()
                .flatMap(thumbnail -> thumbnail.marks().stream())
                .map(Mark::id)
                .toList();
        assertThat(new HashSet<>(ids)).hasSameSizeAs(ids).hasSizeGreaterThan(1);
    }

    @Test
    void isChosenOnlyInPlaceOfABareCard() throws IOException {
        Calls.run("first-pass", file);
        assertThat(study().chosenThumbnail().orElseThrow().name()).isEqualTo("first pass");
        Calls.Result again = Calls.run("first-pass", file);
        assertThat(again.out()).doesNotContain("chosen");
        assertThat(study().chosenThumbnail().orElseThrow().name()).isEqualTo("first pass");

        Mark hand = new Mark("m90", Mark.Kind.LAY, Outline.rectangle(0, 0.6, 2, 1));
        StudyFile.write(Edits.choose("t1").andThen(Edits.addMark("t1", hand)).apply(study()), file);
        Calls.run("first-pass", file);
        assertThat(study().chosenThumbnail().orElseThrow().name()).isEqualTo("first");
    }

    @Test
    void squintsTheWayTheStudyDoes() throws IOException {
        Calls.run("first-pass", file, "--squint", "3%", "--split", "4", "--name", "soft");
        Study soft = study();
        StudyFile.write(
                soft.withReference(soft.reference().map(r -> r.withSquint(new Squint("keeping-edges", 0)))), file);
        Calls.run("first-pass", file, "--squint", "3%", "--split", "4", "--name", "edges");
        List<Thumbnail> thumbnails = study().thumbnails();
        assertThat(thumbnails.get(2).marks())
                .isNotEmpty()
                .extracting(Mark::outline)
                .isNotEqualTo(
                        thumbnails.get(1).marks().stream().map(Mark::outline).toList());
    }

    @Test
    void takesTheFrameOfTheThumbnailNamed() throws IOException {
        // The sky alone: nothing dark but what lies above the ridge at 260 of 600.
        Frame sky = new Frame(new Point(0.5, 0.2), 0.3, 0, false);
        Thumbnail own =
                Thumbnail.empty("t9", "sky").withFrame(Optional.of(sky)).withHorizon(Optional.of(Level.at(0.9)));
        StudyFile.write(Edits.addThumbnail(own).apply(study()), file);
        Calls.run("first-pass", file, "--split", "6", "--thumbnail", "sky", "--name", "of the sky");
        Calls.run("first-pass", file, "--split", "6", "--name", "of all");
        List<Thumbnail> thumbnails = study().thumbnails();
        assertThat(thumbnails.get(2).frame()).contains(sky);
        assertThat(thumbnails.get(2).horizon()).contains(Level.at(0.9));
        assertThat(dark(thumbnails.get(2))).isZero();
        assertThat(thumbnails.get(3).frame()).isEmpty();
        assertThat(dark(thumbnails.get(3))).isGreaterThan(0.2);
    }

    @Test
    void aThumbnailThatIsNotThereIsRefused() throws IOException {
        Calls.Result refused = Calls.run("first-pass", file, "--thumbnail", "dusk");
        assertThat(refused.code()).isEqualTo(1);
        assertThat(refused.errLines())
                .singleElement()
                .asString()
                .contains("\"dusk\"")
                .contains("first");
        assertThat(study().thumbnails()).hasSize(1);
    }

    @Test
    void notesThatThePhotographIsAnotherThanAtTheBeginning() throws IOException {
        Scenes.jpeg(folder.resolve("hill.jpg")); // grain of its own

        Calls.Result result = Calls.run("first-pass", file);

        assertThat(result.errLines())
                .singleElement()
                .asString()
                .startsWith("Note: hill.jpg is not the photograph that " + file + " was begun with")
                .endsWith(".");
        assertThat(result.code()).isZero();
        assertThat(study().thumbnails()).hasSize(2);
    }
}
