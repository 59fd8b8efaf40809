package umbercard.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.model.Frame;
import umbercard.model.Level;
import umbercard.model.Mark;
import umbercard.model.Reference;
import umbercard.model.Study;
import umbercard.model.Surface;
import umbercard.model.Surface.Unit;
import umbercard.model.Thumbnail;
import umbercard.model.edit.Edits;
import umbercard.store.StudyFile;

class RaiseCommandTest {
    @TempDir
    private Path folder;

    private Path file;
    private Path written;

    @BeforeEach
    void write() throws IOException {
        file = folder.resolve("hill.json");
        written = folder.resolve("raised.json");
        write(study());
    }

    private void write(Study study) throws IOException {
        StudyFile.write(study, file);
    }

    /** A dark band under a land edge in the middle, in a frame that takes half of the photograph's height. */
    private static Study study() {
        Mark band = new Mark("m1", Mark.Kind.LAY, Outline.rectangle(0, 0.5, 4.0 / 3, 1));
        Thumbnail first =
                Thumbnail.empty("t1", "first").withMarks(List.of(band)).withLandEdge(Optional.of(Level.at(0.5)));
        return Edits.addThumbnail(first)
                .andThen(Edits.addThumbnail(Thumbnail.empty("t2", "second")))
                .apply(Study.begin("Alder bank", new Surface(12, 9, Unit.IN, 0, Optional.empty(), false)));
    }

    private Thumbnail added() throws IOException {
        List<Thumbnail> thumbnails = StudyFile.read(written).thumbnails();
        assertThat(thumbnails).hasSize(3);
        return thumbnails.get(2);
    }

    @Test
    void addsARaisedCopyAndTellsWhatTheReadingsBecome() throws IOException {
        Calls.Result result = Calls.run("raise", file, "--to", "2/3", "-o", written);
        assertThat(result.err()).isEmpty();
        assertThat(result.code()).isZero();
        assertThat(result.outLines())
                .startsWith("Added \"first, raised\" to " + written + ". Raise the land edge to two thirds.")
                .contains(
                        "Horizon height: look again becomes holds. The land edge runs at 67 % of the height: two thirds.",
                        "Dark share: look again becomes holds. Dark 67 %: two thirds.");
        assertThat(added().landEdge().orElseThrow().y()).isEqualTo(1 / 3.0, within(1e-6));
        assertThat(added().marks()).extracting(Mark::id).doesNotContain("m1");
        assertThat(StudyFile.read(written).thumbnails().subList(0, 2))
                .isEqualTo(StudyFile.read(file).thumbnails());
        assertThat(StudyFile.read(file).thumbnails()).hasSize(2);
    }

    @Test
    void goesToTheNearestNamedFractionByItself() throws IOException {
        assertThat(Calls.run("raise", file, "-o", written).code()).isZero();
        assertThat(added().landEdge().orElseThrow().y()).isEqualTo(0.618, within(0.0005));
    }

    @Test
    void heightsAreWrittenAsFractionsNumbersOrPercent() throws IOException {
        for (String height : List.of("1/4", "0.25", ".25", "25%")) {
            written = folder.resolve(height.replaceAll("\\W", "-") + ".json");
            assertThat(Calls.run("raise", file, "--line", "land-edge", "--to", height, "-o", written)
                            .code())
                    .isZero();
            assertThat(added().landEdge().orElseThrow().y()).isEqualTo(0.75, within(1e-6));
        }
    }

    @Test
    void theFrameGoesAlongWhereThePhotographHasRoom() throws IOException {
        Scenes.jpeg(folder.resolve("hill.jpg"));
        Frame small = new Frame(new Point(0.5, 0.5), 0.5, 0, false);
        write(study().withReference(Optional.of(Reference.to("hill.jpg", "", small))));
        Calls.Result result = Calls.run("raise", file, "--to", "3/4", "-o", written);
        assertThat(result.err()).isEmpty();
        // The line goes up by a quarter of the frame, an eighth of the photograph: so the frame goes down by as much.
        assertThat(added().frame().orElseThrow().center().y()).isEqualTo(0.625, within(1e-9));
    }

    @Test
    void aPhotographThatIsGoneLeavesTheFrameAndIsTold() throws IOException {
        Frame small = new Frame(new Point(0.5, 0.5), 0.5, 0, false);
        write(study().withReference(Optional.of(Reference.to("gone.jpg", "", small))));
        Calls.Result result = Calls.run("raise", file, "--to", "3/4", "-o", written);
        assertThat(result.code()).isZero();
        assertThat(result.errLines()).singleElement().asString().contains("gone.jpg");
        assertThat(result.outLines()).contains("The frame stays where it is on the photograph, which is not at hand.");
        assertThat(added().frame()).isEmpty();
    }

    @Test
    void whatCannotBeMovedIsSaidInOneSentence() throws IOException {
        said(1, "no horizon", "raise", file, "--line", "horizon", "-o", written);
        said(1, "no horizon or land edge", "raise", file, "--thumbnail", "second", "-o", written);
        said(1, "lies at 50 % of the height already", "raise", file, "--to", "1/2", "-o", written);
        said(1, "exists already", "raise", file, "--to", "2/3", "-o", file);
        said(2, "not a line to move", "raise", file, "--line", "skyline", "-o", written);
        said(2, "not a height within the frame", "raise", file, "--to", "4/3", "-o", written);
        said(2, "not a height within the frame", "raise", file, "--to", "1/0", "-o", written);
        said(2, "not a height within the frame", "raise", file, "--to", "high", "-o", written);
        Thumbnail outside = study().thumbnails().get(0).withLandEdge(Optional.of(Level.at(1.2)));
        write(study().withThumbnails(List.of(outside)));
        said(1, "outside the frame", "raise", file, "--to", "2/3", "-o", written);
        assertThat(written).doesNotExist();
    }

    private static void said(int code, String words, Object... call) {
        Calls.Result result = Calls.run(call);
        assertThat(result.code()).as(words).isEqualTo(code);
        assertThat(result.errLines()).singleElement().asString().contains(words);
        assertThat(result.out()).isEmpty();
    }
}
