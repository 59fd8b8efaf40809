package umbercard.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import umbercard.geometry.Point;
import umbercard.model.Frame;
import umbercard.model.Reference;
import umbercard.model.Study;
import umbercard.model.Surface;
import umbercard.words.Trouble;

class StudyFolderTest {
    private static final byte[] PHOTOGRAPH = {1, 2, 3, 4};

    @TempDir
    private Path folder;

    private static Study study() {
        Surface surface = new Surface(12, 9, Surface.Unit.IN, 0, Optional.empty(), false);
        Frame frame = new Frame(new Point(0.5, 0.5), 1, 0, false);
        return Study.begin("Hill", surface).withReference(Optional.of(Reference.to("packed.jpg", "", frame)));
    }

    private Study saved() throws Trouble {
        return StudyFolder.save(study(), PHOTOGRAPH, "hill.jpg", folder.resolve("study.json"));
    }

    private static String file(Study study) {
        return study.reference().orElseThrow().file();
    }

    @Test
    void thePhotographGoesBesideTheStudy() throws Exception {
        Study saved = saved();
        assertThat(file(saved)).isEqualTo("hill.jpg");
        assertThat(References.matches(saved, PHOTOGRAPH)).isTrue();
        assertThat(StudyFile.read(folder.resolve("study.json"))).isEqualTo(saved);
        assertThat(References.bytes(saved, Optional.of(folder.resolve("study.json"))))
                .isEqualTo(PHOTOGRAPH);
    }

    @Test
    void theSamePhotographIsNotWrittenTwice() throws Exception {
        Files.write(folder.resolve("hill.jpg"), PHOTOGRAPH);
        assertThat(file(saved())).isEqualTo("hill.jpg");
        assertThat(folder).isDirectoryNotContaining("glob:**-2.jpg");
    }

    @Test
    void anotherPhotographOfThatNameIsNeverOverwritten() throws Exception {
        Files.write(folder.resolve("hill.jpg"), new byte[] {9});
        Files.write(folder.resolve("hill-2.jpg"), new byte[] {4, 3, 2, 1});
        assertThat(file(saved())).isEqualTo("hill-3.jpg");
        assertThat(folder.resolve("hill.jpg")).hasBinaryContent(new byte[] {9});
        assertThat(folder.resolve("hill-2.jpg")).hasBinaryContent(new byte[] {4, 3, 2, 1});
        assertThat(folder.resolve("hill-3.jpg")).hasBinaryContent(PHOTOGRAPH);
    }

    @Test
    void aStudyNamedLikeItsPhotographDoesNotReplaceIt() throws Exception {
        Path file = folder.resolve("hill.jpg");
        Study saved = StudyFolder.save(study(), PHOTOGRAPH, "hill.jpg", file);
        assertThat(file(saved)).isEqualTo("hill-2.jpg");
        assertThat(StudyFile.read(file)).isEqualTo(saved);
    }

    @Test
    void aFolderThatIsNotThereIsSaid() {
        assertThatThrownBy(() -> StudyFolder.save(
                        study(), PHOTOGRAPH, "hill.jpg", folder.resolve("gone").resolve("study.json")))
                .isInstanceOf(Trouble.class)
                .hasMessageContaining("its folder is not there");
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void savedElsewhereItStillFindsItsPhotograph() throws Exception {
        Study saved = saved();
        Path elsewhere = Files.createDirectory(folder.resolve("later")).resolve("copy.json");
        Study moved = StudyFolder.saveAs(saved, folder.resolve("study.json"), elsewhere);
        assertThat(file(moved)).isEqualTo("../hill.jpg");
        assertThat(References.bytes(StudyFile.read(elsewhere), Optional.of(elsewhere)))
                .isEqualTo(PHOTOGRAPH);
    }
}
