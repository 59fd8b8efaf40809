package umbercard.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import umbercard.picture.Picture;
import umbercard.words.Message;
import umbercard.words.Trouble;
import umbercard.words.Words;

/** Files that break off or are damaged: what is there is shown to whoever can say so. */
class PartOfAPhotographTest {
    private static final Picture SCENE = Photographs.picture(
            200, 160, (x, y) -> 0x010101 * (20 + (x * 7 + y * 13) % 40) + (x > 100 ? 0x600000 : 0x000060));

    /** Takes a part, and keeps what was said of it. */
    private static final class Taking implements Progress {
        private final List<String> said = new ArrayList<>();

        @Override
        public void at(double share) {
            // How far it is does not matter here.
        }

        @Override
        public boolean takesPart(Message why) {
            said.add(Words.say(why));
            return true;
        }
    }

    static Stream<byte[]> files() throws IOException {
        BufferedImage image = Photographs.image(SCENE, BufferedImage.TYPE_INT_RGB);
        return Stream.of(
                Photographs.bytes(image, "jpeg", 0.95f, false),
                Photographs.bytes(image, "png", 1, false),
                Formats.tiff(SCENE));
    }

    @ParameterizedTest
    @MethodSource("files")
    void showsWhatIsThereAndTheRestInMiddleGray(byte[] whole) throws IOException {
        Picture all = PhotoReader.read("whole", whole, Progress.NONE);
        Taking taking = new Taking();
        Picture part = PhotoReader.read("half.jpg", Arrays.copyOf(whole, whole.length / 2), taking);

        assertThat(taking.said)
                .singleElement()
                .asString()
                .startsWith("half.jpg breaks off before its end; what is there");
        assertThat(part.width()).isEqualTo(200);
        assertThat(part.height()).isEqualTo(160);
        assertThat(Arrays.copyOf(part.pixels(), 200 * 40)).isEqualTo(Arrays.copyOf(all.pixels(), 200 * 40));
        assertThat(Arrays.stream(part.pixels(), 200 * 140, 200 * 160).distinct())
                .containsExactly(0x808080);
    }

    @Test
    void showsAProgressivePhotographCoarsely() throws IOException {
        BufferedImage image = Photographs.image(SCENE, BufferedImage.TYPE_INT_RGB);
        byte[] whole = Photographs.bytes(image, "jpeg", 0.95f, true);
        Taking taking = new Taking();
        Picture part = PhotoReader.read("half.jpg", Arrays.copyOf(whole, whole.length * 2 / 3), taking);
        assertThat(taking.said).hasSize(1);
        assertThat(part.rgb(180, 150) >> 16).isGreaterThan(part.rgb(180, 150) & 0xff);
    }

    @Test
    void saysThatAPhotographIsDamaged() throws IOException {
        byte[] file = Photographs.png(Photographs.noise(200, 160, 3));
        Arrays.fill(file, file.length / 2, file.length / 2 + 40, (byte) 0x55);
        Taking taking = new Taking();
        PhotoReader.read("damaged.png", file, taking);
        assertThat(taking.said).singleElement().asString().startsWith("damaged.png is damaged; what could be read");
    }

    @ParameterizedTest
    @MethodSource("files")
    void refusesWhatHoldsNothingToShow(byte[] whole) {
        assertThatThrownBy(() -> PhotoReader.read("head.jpg", Arrays.copyOf(whole, 60), new Taking()))
                .isInstanceOf(Trouble.class)
                .hasMessageContaining("copy the photograph again");
    }

    static Stream<byte[]> ofEveryKind() throws IOException {
        BufferedImage image = Photographs.image(SCENE, BufferedImage.TYPE_INT_RGB);
        BufferedImage few = Photographs.image(SCENE, BufferedImage.TYPE_BYTE_INDEXED);
        return Stream.concat(
                files(),
                Stream.of(
                        Photographs.bytes(image, "jpeg", 0.95f, true),
                        Photographs.bytes(image, "bmp", 1, false),
                        Photographs.bytes(few, "gif", 1, false),
                        Photographs.bytes(image, "tiff", 1, false),
                        Photographs.resource("soft.webp"),
                        Photographs.resource("cmyk.jpg")));
    }

    /** Whatever is wrong with a file: a picture, or one sentence. */
    @ParameterizedTest
    @MethodSource("ofEveryKind")
    void noDamageDoesMoreThanThat(byte[] whole) {
        Random random = new Random(7);
        for (int i = 0; i < 25; i++) {
            byte[] file = Arrays.copyOf(whole, 30 + random.nextInt(whole.length - 30));
            for (int k = random.nextInt(4); k > 0; k--) {
                file[random.nextInt(file.length)] = (byte) random.nextInt();
            }
            try {
                assertThat(PhotoReader.read("file", file, new Taking()).width()).isPositive();
            } catch (Trouble said) {
                assertThat(said).hasMessageContaining("file ");
            }
        }
    }

    @ParameterizedTest
    @MethodSource("ofEveryKind")
    void everyKindCanBeStopped(byte[] whole) {
        assertThatThrownBy(() -> PhotoReader.read("file", whole, PhotoReaderTest.stopping(0.5)))
                .isInstanceOf(CancellationException.class);
    }
}
