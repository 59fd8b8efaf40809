package umbercard.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import umbercard.geometry.Point;
import umbercard.model.Frame;
import umbercard.model.Reference;
import umbercard.model.Study;
import umbercard.model.Surface;
import umbercard.words.Trouble;

class ReferencesTest {
    private static final byte[] PHOTOGRAPH = {1, 2, 3, 4};

    @TempDir
    private Path folder;

    private Path studyFile() {
        return folder.resolve("study.json");
    }

    private static Study study(String file) {
        Surface surface = new Surface(12, 9, Surface.Unit.IN, 0, Optional.empty(), false);
        Frame frame = new Frame(new Point(0.5, 0.5), 1, 0, false);
        return Study.begin("Hill", surface).withReference(Optional.of(Reference.to(file, "", frame)));
    }

    private static Study carrying(Study study, String base64) {
        return study.withReference(
                study.reference().map(r -> r.withCopy(Optional.of(new Reference.Copy("image/jpeg", base64)))));
    }

    @Test
    void thePhotographIsSoughtFromTheStudysFolder() throws Exception {
        Files.createDirectory(folder.resolve("photos"));
        Files.write(folder.resolve("photos").resolve("hill.jpg"), PHOTOGRAPH);
        assertThat(References.bytes(study("photos/hill.jpg"), Optional.of(studyFile())))
                .isEqualTo(PHOTOGRAPH);
        Path deeper = folder.resolve("studies").resolve("study.json");
        assertThat(References.bytes(study("../photos/hill.jpg"), Optional.of(deeper)))
                .isEqualTo(PHOTOGRAPH);
    }

    @Test
    void anUntitledStudyFindsAPhotographByItsFullName() throws Exception {
        Path hill = Files.write(folder.resolve("hill.jpg"), PHOTOGRAPH);
        assertThat(References.bytes(study(hill.toString()), Optional.empty())).isEqualTo(PHOTOGRAPH);
    }

    @Test
    void theCopyServesWhereTheFileIsGone() throws Exception {
        Study study = carrying(study("hill.jpg"), Base64.getEncoder().encodeToString(new byte[] {9, 8}));
        assertThat(References.bytes(study, Optional.of(studyFile()))).isEqualTo(new byte[] {9, 8});
        assertThat(References.bytes(study, Optional.empty())).isEqualTo(new byte[] {9, 8});
        Files.write(folder.resolve("hill.jpg"), PHOTOGRAPH);
        assertThat(References.bytes(study, Optional.of(studyFile()))).isEqualTo(PHOTOGRAPH);
    }

    @Test
    void aMissingPhotographIsNamedWithTheRemedy() {
        assertThatThrownBy(() -> References.bytes(study("hill.jpg"), Optional.of(studyFile())))
                .isInstanceOf(Trouble.class)
                .hasMessage("The photograph " + folder.resolve("hill.jpg")
                        + " is not there; put it back, or begin a study from another one.");
        assertThatThrownBy(() -> References.bytes(study("hill\0.jpg"), Optional.of(studyFile())))
                .isInstanceOf(Trouble.class);
        assertThatThrownBy(() -> References.bytes(carrying(study("hill.jpg"), "%%%"), Optional.of(studyFile())))
                .isInstanceOf(Trouble.class)
                .hasMessageContaining("the copy in the study is damaged");
        assertThatThrownBy(() -> References.bytes(study("x").withReference(Optional.empty()), Optional.of(studyFile())))
                .isInstanceOf(Trouble.class)
                .hasMessage("The study \"Hill\" has no photograph yet; begin a study from one.");
    }

    @Test
    void anotherPhotographIsToldByItsSum() {
        Study any = study("hill.jpg");
        assertThat(References.matches(any, PHOTOGRAPH)).isTrue();
        Study one = any.withReference(any.reference().map(r -> r.withSha256(References.sha256(PHOTOGRAPH))));
        assertThat(References.matches(one, PHOTOGRAPH)).isTrue();
        assertThat(References.matches(one, new byte[] {1, 2, 3})).isFalse();
    }

    /** The one-block example of FIPS 180-4 for "abc", and the empty message. */
    @Test
    void theSumIsSha256() {
        assertThat(References.sha256("abc".getBytes(StandardCharsets.US_ASCII)))
                .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
        assertThat(References.sha256(new byte[0]))
                .isEqualTo("e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
    }

    @Test
    void aNameIsRelativeToTheStudysFolderWithForwardSlashes() {
        assertThat(References.relativeName(studyFile(), folder.resolve("hill.jpg")))
                .isEqualTo("hill.jpg");
        assertThat(References.relativeName(
                        studyFile(), folder.resolve("photos").resolve("a").resolve("hill.jpg")))
                .isEqualTo("photos/a/hill.jpg");
        assertThat(References.relativeName(folder.resolve("studies").resolve("s.json"), folder.resolve("hill.jpg")))
                .isEqualTo("../hill.jpg");
        assertThat(References.relativeName(Path.of("s.json"), Path.of("photos", "hill.jpg")))
                .isEqualTo("photos/hill.jpg");
    }

    @Test
    void aPhotographIsNamedFromTheStudyWithItsSum() throws Exception {
        Path hill = Files.createDirectory(folder.resolve("photos")).resolve("hill.jpg");
        Files.write(hill, PHOTOGRAPH);
        Study named = References.named(study("hill.jpg"), studyFile(), hill);
        assertThat(named.reference().orElseThrow().file()).isEqualTo("photos/hill.jpg");
        assertThat(named.reference().orElseThrow().sha256()).isEqualTo(References.sha256(PHOTOGRAPH));
        assertThat(References.matches(named, PHOTOGRAPH)).isTrue();
        assertThat(References.matches(named, new byte[] {9})).isFalse();
    }

    @Test
    void theSumOfTheBeginningStaysWhenThePhotographChanges() throws Exception {
        Path hill = Files.write(folder.resolve("hill.jpg"), PHOTOGRAPH);
        Study named = References.named(study("hill.jpg"), studyFile(), hill);
        Files.write(hill, new byte[] {9});
        assertThat(References.named(named, studyFile(), hill)).isEqualTo(named);
    }

    @Test
    void aPhotographThatIsGoneIsNamedWithoutASum() {
        Study named = References.named(study("old.jpg"), studyFile(), folder.resolve("hill.jpg"));
        assertThat(named.reference().orElseThrow().file()).isEqualTo("hill.jpg");
        assertThat(named.reference().orElseThrow().sha256()).isEmpty();
    }

    @Test
    void aStudyWithoutAReferenceGetsNone() {
        Study bare = study("hill.jpg").withReference(Optional.empty());
        assertThat(References.named(bare, studyFile(), folder.resolve("hill.jpg")))
                .isEqualTo(bare);
    }
}
