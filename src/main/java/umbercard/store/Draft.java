package umbercard.store;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.Locale;
import java.util.concurrent.ThreadLocalRandom;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * A file under way: what is written goes to a hidden neighbor of the file, which takes the file's place when the draft is
 * kept, in one step and after its bytes have reached the disk. Until then, and whenever something fails, the file stays as
 * it was.
 */
final class Draft {
    private static final Logger LOG = Logger.getLogger(Draft.class.getName());

    private final Path file;
    private final Path neighbor;
    private final FileChannel channel;
    private final OutputStream out;
    private final AtomicFile.Move move;

    private Draft(Path file, Path neighbor, FileChannel channel, AtomicFile.Move move) {
        this.file = file;
        this.neighbor = neighbor;
        this.channel = channel;
        this.move = move;
        this.out = Channels.newOutputStream(channel);
    }

    /** Begins a draft of {@code file}, whose folder must exist; a symbolic link has been followed already. */
    static Draft begin(Path file, AtomicFile.Move move) throws IOException {
        String mark = Long.toString(ThreadLocalRandom.current().nextLong() & Long.MAX_VALUE, Character.MAX_RADIX);
        Path neighbor = file.resolveSibling(String.format(Locale.ROOT, ".%s.%s.part", file.getFileName(), mark));
        FileChannel channel = FileChannel.open(neighbor, StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW);
        return new Draft(file, neighbor, channel, move);
    }

    OutputStream out() {
        return out;
    }

    /** Puts the draft in the file's place. If that fails the draft is gone and the file as it was. */
    void keep() throws IOException {
        try {
            channel.force(true);
            channel.close();
            takeOverPermissions();
            move.move(neighbor, file);
        } catch (IOException | RuntimeException failure) {
            discard();
            throw failure;
        }
        settleFolder();
    }

    /** Throws the draft away; the file stays as it was. */
    void discard() {
        try {
            channel.close();
            Files.deleteIfExists(neighbor);
        } catch (IOException left) {
            LOG.log(Level.WARNING, "could not remove " + neighbor, left);
        }
    }

    private void takeOverPermissions() throws IOException {
        PosixFileAttributeView old = Files.getFileAttributeView(file, PosixFileAttributeView.class);
        PosixFileAttributeView ours = Files.getFileAttributeView(neighbor, PosixFileAttributeView.class);
        if (old != null && ours != null && Files.exists(file)) {
            ours.setPermissions(old.readAttributes().permissions());
        }
    }

    /** Asks that the new name itself reaches the disk. Not every system can open a folder for that: it is a wish. */
    private void settleFolder() {
        Path folder = file.toAbsolutePath().getParent();
        try (FileChannel names = FileChannel.open(folder, StandardOpenOption.READ)) {
            names.force(true);
        } catch (IOException wish) {
            LOG.log(Level.FINE, "the folder's names were not forced to the disk", wish);
        }
    }
}
