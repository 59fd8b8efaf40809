package umbercard.store;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import umbercard.door.Shelf;
import umbercard.kernel.EventThread;
import umbercard.words.Message;
import umbercard.words.Trouble;

/**
 * A folder to put files in. It is made when the first file is opened. A file appears when its stream is closed, unless
 * writing to it failed; names that would lie outside the folder, or that some system cannot hold, are refused.
 */
public final class FolderShelf implements Shelf {
    /** Separators and the signs that a file system somewhere forbids, and control characters. */
    private static final Pattern FORBIDDEN = Pattern.compile("[/\\\\:*?\"<>|\\p{Cntrl}]");

    private final Path folder;

    public FolderShelf(Path folder) {
        this.folder = folder;
    }

    /**
     * A stream for the file of that name.
     *
     * @throws Trouble if the folder cannot be made or written to, or the name is not a plain file name
     */
    @Override
    public OutputStream open(String name) throws Trouble {
        EventThread.refuse("writing a file");
        if (FORBIDDEN.matcher(name).find() || name.isBlank() || name.equals(".") || name.equals("..")) {
            throw new Trouble(Message.of("store.bad-name", name, folder.toString()));
        }
        makeFolder();
        Path file = folder.resolve(name);
        try {
            return new Stream(file, Draft.begin(AtomicFile.target(file), AtomicFile.MOVE));
        } catch (IOException failure) {
            throw AtomicFile.trouble(file, failure);
        }
    }

    private void makeFolder() throws Trouble {
        try {
            Files.createDirectories(folder);
        } catch (FileAlreadyExistsException file) {
            throw new Trouble(Message.of("store.file-in-place", folder.toString()), file);
        } catch (IOException failure) {
            throw new Trouble(Message.of("store.folder-not-made", folder.toString()), failure);
        }
    }

    /** Keeps the draft when closed, unless a write failed before. */
    private static final class Stream extends OutputStream {
        private final Path file;
        private final Draft draft;
        private boolean failed;
        private boolean closed;

        Stream(Path file, Draft draft) {
            this.file = file;
            this.draft = draft;
        }

        @Override
        public void write(int b) throws IOException {
            write(new byte[] {(byte) b}, 0, 1);
        }

        @Override
        public void write(byte[] bytes, int offset, int length) throws IOException {
            try {
                draft.out().write(bytes, offset, length);
            } catch (IOException failure) {
                failed = true;
                throw AtomicFile.trouble(file, failure);
            }
        }

        @Override
        public void close() throws IOException {
            if (closed) {
                return;
            }
            closed = true;
            if (failed) {
                draft.discard();
                return;
            }
            try {
                draft.keep();
            } catch (IOException failure) {
                throw AtomicFile.trouble(file, failure);
            }
        }
    }
}
