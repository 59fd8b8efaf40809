package umbercard.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import umbercard.words.Trouble;

class FolderShelfTest {
    @TempDir
    private Path home;

    @Test
    void makesTheFolderAndPutsTheFileInIt() throws Exception {
        Path folder = home.resolve("cards").resolve("kiln");
        try (OutputStream out = new FolderShelf(folder).open("notan.svg")) {
            out.write("<svg/>".getBytes());
            out.write('\n');
        }
        assertThat(folder.resolve("notan.svg")).hasContent("<svg/>\n");
        assertThat(folder).isDirectoryNotContaining("glob:**.part");
    }

    @Test
    void theFileAppearsOnlyWhenTheStreamIsClosed() throws Exception {
        Path old = Files.writeString(home.resolve("notan.svg"), "old");
        OutputStream out = new FolderShelf(home).open("notan.svg");
        out.write("new".getBytes());
        out.flush();
        assertThat(old).hasContent("old");
        out.close();
        out.close();
        assertThat(old).hasContent("new");
    }

    @Test
    void theFolderIsNotMadeBeforeItIsNeeded() {
        Path folder = home.resolve("cards");
        new FolderShelf(folder);
        assertThat(folder).doesNotExist();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                ".",
                "..",
                "../out.svg",
                "a/b.svg",
                "a\\b.svg",
                "C:out.svg",
                "/out.svg",
                "a\u0000b",
                "a\nb"
            })
    void aNameThatIsNotAPlainOneIsRefused(String name) {
        Path folder = home.resolve("cards");
        assertThatThrownBy(() -> new FolderShelf(folder).open(name))
                .isInstanceOf(Trouble.class)
                .hasMessageContaining("cannot be the name of a file in " + folder);
        assertThat(home).isEmptyDirectory();
    }

    @Test
    void aFileInTheFoldersPlaceIsSaidAndKept() throws Exception {
        Path file = Files.writeString(home.resolve("cards"), "a file");
        assertThatThrownBy(() -> new FolderShelf(file).open("notan.svg"))
                .isInstanceOf(Trouble.class)
                .hasMessage(file + " is a file, and a folder is needed there; choose another folder.");
        assertThat(file).hasContent("a file");
    }

    @Test
    void aFolderInTheFilesPlaceIsSaid() throws Exception {
        Path taken = Files.createDirectory(home.resolve("notan.svg"));
        assertThatThrownBy(() -> new FolderShelf(home).open("notan.svg"))
                .isInstanceOf(Trouble.class)
                .hasMessage(taken + " is a folder; choose a file name inside it.");
    }
}
