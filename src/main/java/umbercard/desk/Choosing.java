package umbercard.desk;

import java.io.File;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.JFileChooser;
import javax.swing.JFrame;
import javax.swing.filechooser.FileNameExtensionFilter;
import umbercard.words.Words;

/** Asks for files and folders. Remembers where the painter was last. */
final class Choosing {
    private final JFrame window;
    private Optional<File> folder = Optional.empty();

    Choosing(JFrame window) {
        this.window = window;
    }

    JFrame window() {
        return window;
    }

    Optional<Path> photograph() {
        return open("desk.choose.photograph", "jpg", "jpeg", "png", "tif", "tiff", "webp", "bmp", "gif");
    }

    /** A file to read; the endings are shown first, any other can be chosen too. */
    Optional<Path> open(String title, String... endings) {
        JFileChooser chooser = chooser(title);
        chooser.setFileFilter(new FileNameExtensionFilter(Words.say(title + ".files", patterns(endings)), endings));
        return chosen(chooser, chooser.showOpenDialog(window));
    }

    /** The endings as they are usually shown: {@code *.jpg, *.png}. */
    private static String patterns(String... endings) {
        return Stream.of(endings).map(ending -> "*." + ending).collect(Collectors.joining(", "));
    }

    /** A file to write; one with none of the endings gets the first. */
    Optional<Path> save(String title, String suggested, String... endings) {
        JFileChooser chooser = chooser(title);
        chooser.setSelectedFile(new File(chooser.getCurrentDirectory(), suggested));
        return chosen(chooser, chooser.showSaveDialog(window))
                .map(path -> Stream.of(endings).anyMatch(path.toString().toLowerCase(Locale.ROOT)::endsWith)
                        ? path
                        : path.resolveSibling(path.getFileName() + endings[0]));
    }

    /** A folder to write into. */
    Optional<Path> folder(String title) {
        JFileChooser chooser = chooser(title);
        chooser.setFileSelectionMode(JFileChooser.DIRECTORIES_ONLY);
        return chosen(chooser, chooser.showDialog(window, Words.say(title + ".here")));
    }

    private JFileChooser chooser(String title) {
        JFileChooser chooser = new JFileChooser();
        folder.ifPresent(chooser::setCurrentDirectory);
        chooser.setName("chooser");
        chooser.setDialogTitle(Words.say(title));
        return chooser;
    }

    private Optional<Path> chosen(JFileChooser chooser, int answer) {
        if (answer != JFileChooser.APPROVE_OPTION) {
            return Optional.empty();
        }
        folder = Optional.of(chooser.getCurrentDirectory());
        return Optional.of(chooser.getSelectedFile().toPath());
    }
}
