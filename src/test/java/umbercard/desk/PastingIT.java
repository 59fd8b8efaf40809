package umbercard.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.swing.TransferHandler;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.DialogFixture;
import org.assertj.swing.fixture.JOptionPaneFixture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import umbercard.model.Frame;
import umbercard.model.Study;
import umbercard.photo.PhotoReader;
import umbercard.photo.Progress;
import umbercard.picture.Picture;
import umbercard.store.References;
import umbercard.store.StudyFile;

/** Photographs come from the clipboard and by dropping them, told at the handler: the screen in memory drags nothing. */
@SuppressWarnings("deprecation") // the robot knows only the old masks of InputEvent
class PastingIT extends AtDesk {
    @TempDir
    private Path folder;

    private volatile Optional<Transferable> clipboard = Optional.empty();

    /** Something handed over in the flavors that it has. */
    private record Handing(Map<DataFlavor, Object> held) implements Transferable {
        @Override
        public DataFlavor[] getTransferDataFlavors() {
            return held.keySet().toArray(DataFlavor[]::new);
        }

        @Override
        public boolean isDataFlavorSupported(DataFlavor flavor) {
            return held.containsKey(flavor);
        }

        @Override
        public Object getTransferData(DataFlavor flavor) throws UnsupportedFlavorException {
            return Optional.ofNullable(held.get(flavor)).orElseThrow(() -> new UnsupportedFlavorException(flavor));
        }
    }

    /** A light sky over a dark bank, of an own size, with one red pixel. */
    private static BufferedImage image() {
        BufferedImage image = new BufferedImage(320, 200, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < 200; y++) {
            for (int x = 0; x < 320; x++) {
                image.setRGB(x, y, y < 120 ? 0xd8dde0 : 0x30343a);
            }
        }
        image.setRGB(7, 9, 0xff0000);
        return image;
    }

    private static Transferable picture() {
        return new Handing(Map.of(DataFlavor.imageFlavor, image()));
    }

    private Path file(String name) throws IOException {
        Path file = folder.resolve(name);
        ImageIO.write(image(), "png", file.toFile());
        return file;
    }

    private static Transferable files(Path... files) {
        return new Handing(Map.of(
                DataFlavor.javaFileListFlavor,
                List.of(files).stream().map(Path::toFile).toList()));
    }

    private void openKilnHill() {
        act(desk().files()::showKilnHill);
        until("its photograph is there", () -> desk().session().photograph().isPresent());
        settled();
    }

    private void paste(Transferable held) {
        clipboard = Optional.of(held);
        act(() -> desk().pasting(() -> clipboard).paste());
    }

    private int width() {
        return ask(() -> desk().session().photograph().map(Picture::width).orElse(0));
    }

    @Test
    void aPastedPictureTakesThePhotographsPlaceAndUndoBringsTheOldOneBack() {
        openKilnHill();
        Study before = study();
        int wide = width();
        paste(picture());
        told().buttonWithText("Not now").click();
        settled();
        assertThat(study()).isEqualTo(before);
        paste(picture());
        told().buttonWithText("Put it in this study").click();
        until("it is there", () -> width() == 320);
        settled();
        assertThat(study().reference().orElseThrow().frame()).isEqualTo(Frame.largest(1.6, study().ratio()));
        assertThat(study().thumbnails().get(0).marks())
                .isEqualTo(before.thumbnails().get(0).marks());
        shot("pasted");
        strike(KeyEvent.VK_Z, InputEvent.CTRL_MASK);
        until("the old one is back", () -> width() == wide);
        assertThat(study()).isEqualTo(before);
        strike(KeyEvent.VK_Z, InputEvent.CTRL_MASK | InputEvent.SHIFT_MASK);
        until("the new one is back", () -> width() == 320);
    }

    @Test
    void aPastedPictureIsKeptBesideTheStudyThatIsSaved() throws IOException {
        openKilnHill();
        paste(picture());
        told().buttonWithText("Put it in this study").click();
        until("it is there", () -> width() == 320);
        Path file = folder.resolve("hill.json");
        choose("Study", "Save as…");
        give(file);
        until("the study is written", () -> !desk().session().isChanged());
        settled();
        Study saved = StudyFile.read(file);
        assertThat(saved.reference().orElseThrow().file()).isEqualTo("Pasted photograph.png");
        byte[] bytes = References.bytes(saved, Optional.of(file));
        assertThat(References.matches(saved, bytes)).isTrue();
        Picture kept = PhotoReader.read("kept", bytes, Progress.NONE);
        assertThat(kept.width()).isEqualTo(320);
        assertThat(kept.rgb(7, 9)).isEqualTo(0xff0000);
        assertThat(width()).isEqualTo(320);
        act(() -> desk().files().open(file));
        settled();
        until("it is found again", () -> width() == 320);
    }

    @Test
    void aPastedFileBeginsAStudy() throws IOException {
        openKilnHill();
        paste(files(file("pond edge.png")));
        told().buttonWithText("Begin a study").click();
        DialogFixture asked = WindowFinder.findDialog("new").using(robot());
        asked.textBox("title").requireText("pond edge");
        asked.button("yes").click();
        until("it is there", () -> width() == 320);
        assertThat(study().title()).isEqualTo("pond edge");
        Path file = folder.resolve("pond.json");
        choose("Study", "Save as…");
        give(file);
        until(
                "the study is written",
                () -> Files.exists(file) && !desk().session().isChanged());
        assertThat(StudyFile.read(file).reference().orElseThrow().file()).isEqualTo("pond edge.png");
        try (var found = Files.list(folder)) {
            assertThat(found).hasSize(2);
        }
    }

    @Test
    void whatCannotBePastedIsToldInOneSentence() throws IOException {
        paste(new Handing(Map.of(DataFlavor.stringFlavor, "words")));
        JOptionPaneFixture told = told();
        assertThat(sentence(told)).startsWith("There is no photograph on the clipboard");
        told.okButton().click();
        paste(files(Files.writeString(folder.resolve("words.txt"), "no picture")));
        JOptionPaneFixture second = told();
        assertThat(sentence(second)).contains("words.txt").endsWith(".");
        second.okButton().click();
        act(() -> desk().pasting(() -> {
                    throw new IllegalStateException("cannot open system clipboard");
                })
                .paste());
        JOptionPaneFixture third = told();
        assertThat(sentence(third)).startsWith("The clipboard is in use");
        third.okButton().click();
    }

    @Test
    void photographsAndStudiesCanBeDropped() throws IOException {
        openKilnHill();
        TransferHandler drops = ask(() -> desk().getRootPane().getTransferHandler());
        var words = support(new Handing(Map.of(DataFlavor.stringFlavor, "words")));
        assertThat(ask(() -> drops.canImport(words))).isFalse();
        var photograph = support(files(file("pond.png")));
        assertThat(ask(() -> drops.canImport(photograph))).isTrue();
        assertThat(ask(() -> drops.importData(photograph))).isTrue();
        told().buttonWithText("Not now").click();
        var study = support(files(Path.of("samples", "kiln-hill.json").toAbsolutePath()));
        assertThat(ask(() -> drops.importData(study))).isTrue();
        until("the study is open", () -> desk().session().file().isPresent());
        settled();
    }

    private TransferHandler.TransferSupport support(Transferable held) {
        return new TransferHandler.TransferSupport(desk().getRootPane(), held);
    }
}
