package umbercard.desk;

import java.awt.EventQueue;
import java.awt.Image;
import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.TransferHandler;
import umbercard.desk.PhotographSource.Carried;
import umbercard.desk.PhotographSource.InFile;
import umbercard.desk.work.Background;
import umbercard.desk.work.Task;
import umbercard.photo.PhotoReader;
import umbercard.photo.PhotoWriter;
import umbercard.picture.Picture;
import umbercard.store.References;
import umbercard.words.Message;
import umbercard.words.Trouble;
import umbercard.words.Words;

/**
 * Takes photographs that are pasted or dropped on the desk, as files or as images. They are read in the background; then the
 * painter says whether to begin a study from one or to put it in the place of the study's photograph.
 */
final class Pasting {
    /** A photograph that has come, and where from. */
    record Arrived(PhotographSource source, Path name, String sha256, Picture picture) {}

    /** What was handed over: a file or an image. */
    private record Handed(Optional<Path> file, Optional<Image> image) {}

    private final Background background;
    private final Telling telling;
    private final StudyFiles files;
    private final Supplier<Optional<Transferable>> clipboard;

    /** Pastes what {@code clipboard} gives, which is asked off the event thread. */
    Pasting(Background background, Telling telling, StudyFiles files, Supplier<Optional<Transferable>> clipboard) {
        this.background = background;
        this.telling = telling;
        this.files = files;
        this.clipboard = clipboard;
    }

    /** What the system's clipboard holds. */
    static Optional<Transferable> systemClipboard() {
        return Optional.ofNullable(
                Toolkit.getDefaultToolkit().getSystemClipboard().getContents(null));
    }

    /** Takes what is on the clipboard. */
    void paste() {
        background.run(
                Message.of("desk.work.paste"),
                task -> {
                    Optional<Transferable> held = clipboard.get();
                    return handed(held.orElseThrow(() -> new Trouble(Message.of("desk.paste.nothing"))));
                },
                this::take,
                failure -> telling.failed(
                        failure instanceof IllegalStateException
                                ? new Trouble(Message.of("desk.paste.busy"), failure)
                                : failure));
    }

    /** Takes photographs and studies that are dropped on a component. */
    TransferHandler drops() {
        return new Drops();
    }

    private static boolean isTaken(DataFlavor... flavors) {
        for (DataFlavor flavor : flavors) {
            if (flavor.equals(DataFlavor.javaFileListFlavor) || flavor.equals(DataFlavor.imageFlavor)) {
                return true;
            }
        }
        return false;
    }

    /** A file before an image: it has the photograph's own bytes. */
    private static Handed handed(Transferable held) throws Trouble {
        try {
            if (held.isDataFlavorSupported(DataFlavor.javaFileListFlavor)
                    && held.getTransferData(DataFlavor.javaFileListFlavor) instanceof Collection<?> list) {
                Optional<Path> first = list.stream()
                        .filter(File.class::isInstance)
                        .map(file -> ((File) file).toPath())
                        .findFirst();
                if (first.isPresent()) {
                    return new Handed(first, Optional.empty());
                }
            }
            if (held.isDataFlavorSupported(DataFlavor.imageFlavor)
                    && held.getTransferData(DataFlavor.imageFlavor) instanceof Image image) {
                return new Handed(Optional.empty(), Optional.of(image));
            }
        } catch (UnsupportedFlavorException | IOException gone) {
            throw new Trouble(Message.of("desk.paste.broken"), gone);
        }
        throw new Trouble(Message.of("desk.paste.nothing"));
    }

    private void take(Handed handed) {
        Optional<Path> study = handed.file()
                .filter(file -> file.toString().toLowerCase(Locale.ROOT).endsWith(StudyFiles.ENDING));
        study.ifPresentOrElse(
                files::openInstead,
                () -> background.run(
                        Message.of("desk.work.photograph", name(handed)),
                        task -> read(handed, task),
                        files::arrived,
                        telling::failed));
    }

    private static String name(Handed handed) {
        return handed.file()
                .map(file -> String.valueOf(file.getFileName()))
                .orElseGet(() -> Words.say("desk.paste.file"));
    }

    private static Arrived read(Handed handed, Task task) throws Trouble {
        Path name = Path.of(name(handed));
        if (handed.file().isPresent()) {
            Path file = handed.file().get();
            byte[] bytes = PhotoReader.bytes(file);
            Picture picture = PhotoReader.read(file.toString(), bytes, Photographs.progress(task));
            return new Arrived(new InFile(file), name, References.sha256(bytes), picture);
        }
        byte[] bytes = png(handed.image().orElseThrow());
        Picture picture = PhotoReader.read(name.toString(), bytes, Photographs.progress(task));
        return new Arrived(
                new Carried(name.toString(), new PhotographSource.Bytes(bytes)),
                name,
                References.sha256(bytes),
                picture);
    }

    private static byte[] png(Image image) throws Trouble {
        try {
            return PhotoWriter.png(image);
        } catch (IOException broken) {
            throw new Trouble(Message.of("desk.paste.broken"), broken);
        }
    }

    /** What was dropped has to be fetched before the drop is over; reading it can wait. */
    private final class Drops extends TransferHandler {
        @Override
        public boolean canImport(TransferSupport support) {
            boolean can = isTaken(support.getDataFlavors());
            if (can && support.isDrop()) {
                support.setDropAction(COPY);
            }
            return can;
        }

        @Override
        public boolean importData(TransferSupport support) {
            try {
                take(handed(support.getTransferable()));
                return true;
            } catch (Trouble trouble) {
                EventQueue.invokeLater(() -> telling.failed(trouble));
                return false;
            }
        }
    }
}
