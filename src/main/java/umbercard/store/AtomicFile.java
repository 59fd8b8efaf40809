package umbercard.store;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import umbercard.kernel.EventThread;
import umbercard.words.Message;
import umbercard.words.Trouble;

/**
 * Writes a file whole or not at all: through a temporary file in the same folder, forced to the disk, then moved into
 * place in one step. On any failure the old file is untouched and nothing is left behind. Where the name is a symbolic
 * link, the file that it points to is written and the link stays.
 */
public final class AtomicFile {
    /** As many links in a chain as are followed before it is taken for a circle. */
    private static final int LINKS_AT_MOST = 40;

    static final Move MOVE =
            (from, to) -> Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);

    /** What goes into a file. */
    @FunctionalInterface
    public interface Content {
        void writeTo(OutputStream out) throws IOException;
    }

    /** Puts one file in another's place; given from outside so that a test can break it. */
    @FunctionalInterface
    interface Move {
        void move(Path from, Path to) throws IOException;
    }

    private AtomicFile() {}

    /**
     * Writes the bytes.
     *
     * @throws Trouble if the file cannot be written; it is then as it was
     */
    public static void write(Path file, byte[] bytes) throws Trouble {
        write(file, out -> out.write(bytes));
    }

    /**
     * Writes the content, whatever its length.
     *
     * @throws Trouble if the content or the file fails; the file is then as it was
     */
    public static void write(Path file, Content content) throws Trouble {
        write(file, content, MOVE);
    }

    static void write(Path file, Content content, Move move) throws Trouble {
        EventThread.refuse("writing a file");
        try {
            Draft draft = Draft.begin(target(file), move);
            try {
                content.writeTo(draft.out());
            } catch (IOException | RuntimeException failure) {
                draft.discard();
                throw failure;
            }
            draft.keep();
        } catch (IOException failure) {
            throw trouble(file, failure);
        }
    }

    /** The file that is really written: the end of a chain of links; refused where a file cannot stand. */
    static Path target(Path file) throws Trouble {
        Path target = file.toAbsolutePath();
        for (int i = 0; Files.isSymbolicLink(target); i++) {
            try {
                if (i == LINKS_AT_MOST) {
                    throw new Trouble(Message.of("store.links-in-a-circle", file.toString()));
                }
                target = target.resolveSibling(Files.readSymbolicLink(target));
            } catch (IOException unreadable) {
                throw trouble(file, unreadable);
            }
        }
        if (Files.isDirectory(target) || target.getFileName() == null) {
            throw new Trouble(Message.of("store.folder-in-place", file.toString()));
        }
        if (Files.exists(target) && !Files.isWritable(target)) {
            throw new Trouble(Message.of("store.write-protected", file.toString()));
        }
        return target;
    }

    /** What to tell the painter when writing {@code file} fails. */
    static Trouble trouble(Path file, IOException failure) {
        if (failure instanceof Trouble told) {
            return told;
        }
        String name = file.toString();
        if (failure instanceof AccessDeniedException) {
            return new Trouble(Message.of("store.not-allowed", name), failure);
        }
        if (failure instanceof NoSuchFileException || failure instanceof NotDirectoryException) {
            return new Trouble(Message.of("store.no-folder", name), failure);
        }
        Path folder = file.toAbsolutePath().getParent();
        if (failure instanceof FileSystemException && folder != null && !Files.isDirectory(folder)) {
            return new Trouble(Message.of("store.no-folder", name), failure);
        }
        return new Trouble(Message.of("store.not-written", name), failure);
    }
}
