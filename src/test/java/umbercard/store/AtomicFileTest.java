package umbercard.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import umbercard.words.Trouble;

class AtomicFileTest {
    @TempDir
    private Path folder;

    @Test
    void writesANewFile() throws Exception {
        Path file = folder.resolve("new.txt");
        AtomicFile.write(file, new byte[] {1, 2, 3});
        assertThat(file).hasBinaryContent(new byte[] {1, 2, 3});
        assertOnly("new.txt");
    }

    @Test
    void replacesAnOldFile() throws Exception {
        Path file = Files.writeString(folder.resolve("old.txt"), "a much longer old text");
        AtomicFile.write(file, "new".getBytes());
        assertThat(file).hasContent("new");
        assertOnly("old.txt");
    }

    @Test
    void theOldFileIsWholeUntilTheMove() throws Exception {
        Path file = Files.writeString(folder.resolve("study.json"), "old");
        AtomicReference<String> atTheMove = new AtomicReference<>("");
        AtomicFile.write(file, out -> out.write("new".getBytes()), (from, to) -> {
            atTheMove.set(Files.readString(to) + ", " + Files.readString(from));
            assertThat(from.getParent()).isEqualTo(to.getParent());
            AtomicFile.MOVE.move(from, to);
        });
        assertThat(atTheMove.get()).isEqualTo("old, new");
        assertThat(file).hasContent("new");
    }

    @Test
    void aBrokenMoveLeavesTheOldFileAndNothingElse() throws Exception {
        Path file = Files.writeString(folder.resolve("study.json"), "old");
        assertThatThrownBy(() -> AtomicFile.write(file, out -> out.write(1), (from, to) -> {
                    throw new IOException("the cable was pulled");
                }))
                .isInstanceOf(Trouble.class)
                .hasMessageStartingWith(file + " could not be written and stays as it was;");
        assertThat(file).hasContent("old");
        assertOnly("study.json");
    }

    @Test
    void contentThatFailsHalfWayLeavesTheOldFileAndNothingElse() throws Exception {
        Path file = Files.writeString(folder.resolve("study.json"), "old");
        assertThatThrownBy(() -> AtomicFile.write(file, out -> {
                    out.write("half of the new".getBytes());
                    throw new IOException("No space left on device");
                }))
                .isInstanceOf(Trouble.class)
                .hasMessageContaining("look whether the disk is full");
        assertThatThrownBy(() -> AtomicFile.write(file, out -> {
                    out.write(1);
                    throw new IllegalStateException("a defect");
                }))
                .isInstanceOf(IllegalStateException.class);
        assertThat(file).hasContent("old");
        assertOnly("study.json");
    }

    @Test
    void aFolderThatMayNotBeWrittenIsSaid() {
        Path file = folder.resolve("study.json");
        assertThatThrownBy(() -> AtomicFile.write(file, out -> out.write(1), (from, to) -> {
                    throw new AccessDeniedException(to.toString());
                }))
                .isInstanceOf(Trouble.class)
                .hasMessage(file + " may not be written: you have no permission; save in another folder.");
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void aMissingFolderIsSaid() {
        Path file = folder.resolve("nowhere").resolve("study.json");
        assertThatThrownBy(() -> AtomicFile.write(file, new byte[0]))
                .isInstanceOf(Trouble.class)
                .hasMessageStartingWith(file + " cannot be written, because its folder is not there;");
    }

    @Test
    void aFileWhereTheFolderShouldBeIsSaid() throws Exception {
        Path file = Files.writeString(folder.resolve("plain"), "a file").resolve("study.json");
        assertThatThrownBy(() -> AtomicFile.write(file, new byte[0]))
                .isInstanceOf(Trouble.class)
                .hasMessageStartingWith(file + " cannot be written, because its folder is not there;");
        assertThat(folder.resolve("plain")).hasContent("a file");
    }

    @Test
    void aFolderInTheFilesPlaceIsSaid() throws Exception {
        Path taken = Files.createDirectory(folder.resolve("study.json"));
        assertThatThrownBy(() -> AtomicFile.write(taken, new byte[0]))
                .isInstanceOf(Trouble.class)
                .hasMessage(taken + " is a folder; choose a file name inside it.");
        assertThat(taken).isEmptyDirectory();
    }

    @Test
    @DisabledOnOs(value = OS.WINDOWS, disabledReason = "symbolic links need a privilege there")
    void aSymbolicLinkGoesOnPointing() throws Exception {
        Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
        Path real = Files.writeString(elsewhere.resolve("real.json"), "old");
        Path near = Files.createSymbolicLink(folder.resolve("near.json"), Path.of("elsewhere", "real.json"));
        Path far = Files.createSymbolicLink(folder.resolve("far.json"), Path.of("near.json"));
        AtomicFile.write(far, "new".getBytes());
        assertThat(far).isSymbolicLink().hasContent("new");
        assertThat(near).isSymbolicLink();
        assertThat(real).hasContent("new").matches(file -> !Files.isSymbolicLink(file));
    }

    @Test
    @DisabledOnOs(value = OS.WINDOWS, disabledReason = "symbolic links need a privilege there")
    void linksInACircleAreSaid() throws Exception {
        Path one = Files.createSymbolicLink(folder.resolve("one"), Path.of("two"));
        Files.createSymbolicLink(folder.resolve("two"), Path.of("one"));
        assertThatThrownBy(() -> AtomicFile.write(one, new byte[0]))
                .isInstanceOf(Trouble.class)
                .hasMessageContaining("leads back to itself");
    }

    @Test
    @DisabledOnOs(value = OS.WINDOWS, disabledReason = "it has other permissions")
    void permissionsOfTheOldFileStay() throws Exception {
        Path file = Files.writeString(folder.resolve("shared.json"), "old");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw-r--"));
        AtomicFile.write(file, "new".getBytes());
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-rw-r--");
    }

    @Test
    void theEventThreadIsRefused() throws Exception {
        AtomicReference<Throwable> thrown = new AtomicReference<>();
        Thread thread = new Thread(() -> write(thrown), "AWT-EventQueue-0");
        thread.start();
        thread.join();
        assertThat(thrown.get()).isInstanceOf(IllegalStateException.class);
        assertThat(folder).isEmptyDirectory();
    }

    private void write(AtomicReference<Throwable> thrown) {
        try {
            AtomicFile.write(folder.resolve("study.json"), new byte[0]);
        } catch (Trouble | IllegalStateException refused) {
            thrown.set(refused);
        }
    }

    private void assertOnly(String name) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).containsExactly(folder.resolve(name));
        }
    }
}
