package umbercard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import umbercard.geometry.Outline;
import umbercard.model.Frame;
import umbercard.model.Mark;
import umbercard.model.Reference;
import umbercard.model.Study;
import umbercard.model.Surface;
import umbercard.model.Surface.Unit;
import umbercard.model.Thumbnail;
import umbercard.model.edit.Edits;
import umbercard.store.StudyFile;

/** Every bad file ends a call with 1 and one sentence that names the file, and nothing on the disk has changed. */
class BadInputTest {
    @TempDir
    private static Path folder;

    @BeforeAll
    static void makeFiles() throws IOException {
        Files.createDirectory(folder.resolve("folder"));
        makePhotographs();
        Study bare = Study.begin("Alder bank", new Surface(12, 9, Unit.IN, 0, Optional.empty(), false));
        Study good = Edits.addThumbnail(Thumbnail.empty("t2", "second"))
                .compose(Edits.addThumbnail(Thumbnail.empty("t1", "first")))
                .andThen(Edits.addMark("t1", new Mark("m1", Mark.Kind.LAY, Outline.rectangle(0, 0.6, 2, 1))))
                .apply(referring(bare, "good.jpg"));
        StudyFile.write(bare, folder.resolve("bare.json"));
        StudyFile.write(bare, folder.resolve("without-photo.json"));
        StudyFile.write(good, folder.resolve("good.json"));
        StudyFile.write(referring(bare, "missing.jpg"), folder.resolve("lost.json"));
        StudyFile.write(referring(bare, "empty.jpg"), folder.resolve("empty-photo.json"));
        String text = StudyFile.text(good);
        write("empty.json", "");
        write("malformed.json", text.substring(0, text.length() / 2));
        write("deep.json", "[".repeat(100_000));
        write("newer.json", text.replace("\"1.0\"", "\"2.0\""));
        write("wrong.json", text.replace("\"light\": \"clear\"", "\"light\": 7"));
    }

    private static void makePhotographs() throws IOException {
        byte[] jpeg = Files.readAllBytes(Scenes.jpeg(folder.resolve("good.jpg")));
        Files.write(folder.resolve("truncated.jpg"), Arrays.copyOf(jpeg, jpeg.length / 2));
        Path png = folder.resolve("truncated.png");
        ImageIO.write(ImageIO.read(folder.resolve("good.jpg").toFile()), "png", png.toFile());
        byte[] whole = Files.readAllBytes(png);
        Files.write(png, Arrays.copyOf(whole, whole.length / 2));
        write("empty.jpg", "");
        write("letter.jpg", "Dear painter, this is a letter.");
        // The head of an image file by ISO/IEC 23008-12: a box of type ftyp with the brand heic.
        write("phone.heic", "\0\0\0\u0018ftypheic\0\0\0\0mif1heic" + "\0".repeat(64));
        write("phone.jpg", "\0\0\0\u0018ftypheic\0\0\0\0mif1heic" + "\0".repeat(64));
    }

    private static Study referring(Study study, String photograph) {
        return study.withReference(Optional.of(Reference.to(photograph, "", Frame.largest(1.5, study.ratio()))));
    }

    private static void write(String name, String text) throws IOException {
        Files.write(folder.resolve(name), text.getBytes(StandardCharsets.ISO_8859_1));
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "bad_input.csv", numLinesToSkip = 1)
    void isSaidInOneSentenceAndChangesNothing(String call, String file, String said) throws IOException {
        Map<String, String> before = everything();
        Calls.Result result =
                Calls.run(Stream.of(call.split(" ")).map(this::filled).toArray());

        assertThat(result.errLines())
                .singleElement()
                .asString()
                .contains(said)
                .containsPattern("\\b" + file.replace(".", "\\.") + "\\b")
                .endsWith(".")
                .doesNotContain("Exception", "null");
        assertThat(result.err()).as("one sentence").doesNotContainPattern("[.!?] +[A-Z]");
        assertThat(result.code()).isEqualTo(1);
        assertThat(result.out()).isEmpty();
        assertThat(result.opened()).isEmpty();
        assertThat(everything()).isEqualTo(before);
    }

    private String filled(String word) {
        return word.startsWith("{")
                ? folder.resolve(word.substring(1, word.length() - 1)).toString()
                : word;
    }

    /** All that lies in the folder: paths, and what the files hold. */
    private Map<String, String> everything() throws IOException {
        Map<String, String> found = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.toList()) {
                found.put(
                        path.toString(),
                        Files.isDirectory(path)
                                ? "a folder"
                                : new String(Files.readAllBytes(path), StandardCharsets.ISO_8859_1));
            }
        }
        return found;
    }
}
