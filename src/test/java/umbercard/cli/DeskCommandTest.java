package umbercard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import umbercard.Studies;
import umbercard.store.StudyFile;

class DeskCommandTest {
    @TempDir
    private Path folder;

    @Test
    void opensTheDeskOnKilnHillWithoutAStudy() {
        for (Calls.Result result : List.of(Calls.runWithScreen(), Calls.runWithScreen("desk"))) {
            assertThat(result.code()).isZero();
            assertThat(result.opened()).containsExactly(Optional.empty());
            assertThat(result.out() + result.err()).isEmpty();
        }
    }

    @Test
    void opensTheDeskOnAStudy() throws IOException {
        Path file = folder.resolve("hill.json");
        StudyFile.write(Studies.kilnHill(), file);
        Calls.Result result = Calls.runWithScreen("desk", file);
        assertThat(result.code()).isZero();
        assertThat(result.opened()).containsExactly(Optional.of(file));
    }

    @Test
    void doesNotOpenTheDeskOnAStudyThatCannotBeRead() {
        Calls.Result result = Calls.runWithScreen("desk", folder.resolve("missing.json"));
        assertThat(result.code()).isEqualTo(1);
        assertThat(result.opened()).isEmpty();
    }

    @Test
    void withoutADisplayWritesKilnHillsCards() {
        Calls.Result result = Calls.run();
        assertThat(result.err()).isEmpty();
        assertThat(result.code()).isZero();
        assertThat(result.outLines().get(0))
                .isEqualTo("There is no display to open the desk on, so the cards of Kiln Hill are written to "
                        + Path.of("target/cards") + ".");
        assertThat(result.outLines().subList(1, result.outLines().size()))
                .hasSizeGreaterThanOrEqualTo(2)
                .allSatisfy(file -> assertThat(Path.of(file)).isNotEmptyFile())
                .anyMatch(file -> file.contains("notan"))
                .anyMatch(file -> file.contains("color-notes"));
    }

    @Test
    void cardsGoBelowTargetOnlyWhereTheSourcesAre() throws IOException {
        assertThat(DeskCommand.cardFolder(folder)).isEqualTo(Path.of("cards"));
        Files.createDirectory(folder.resolve("target"));
        assertThat(DeskCommand.cardFolder(folder)).isEqualTo(Path.of("target/cards"));
        Files.delete(folder.resolve("target"));
        Files.createFile(folder.resolve("pom.xml"));
        assertThat(DeskCommand.cardFolder(folder)).isEqualTo(Path.of("target/cards"));
    }
}
