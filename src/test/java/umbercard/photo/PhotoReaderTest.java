package umbercard.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowable;
import static org.assertj.core.api.Assertions.within;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import umbercard.color.Srgb;
import umbercard.geometry.Size;
import umbercard.picture.Picture;
import umbercard.words.Trouble;

class PhotoReaderTest {
    private static final Picture SOFT = Photographs.picture(
            96, 64, (x, y) -> (40 + x) << 16 | (60 + y) << 8 | (int) (128 + 60 * Math.sin(x * 0.2 + y * 0.1)));

    @TempDir
    Path folder;

    static Stream<String[]> orientations() throws IOException {
        return new String(Photographs.resource("exif_orientation.csv"), StandardCharsets.UTF_8)
                .lines()
                .filter(line -> !line.startsWith("#"))
                .skip(1)
                .map(line -> line.split(",", -1))
                .map(cells -> new String[] {cells[0], cells[cells.length - 1]});
    }

    /** Source: TIFF 6.0 and CIPA DC-008 by way of exif_orientation.csv; a cell of its example is a block of 16 pixels here. */
    @ParameterizedTest
    @MethodSource("orientations")
    void turnsThePhotographUpright(String tag, String shown) throws IOException {
        Picture stored = Photographs.picture(48, 32, (x, y) -> 0x010101 * (10 + 10 * (x / 16) + 30 * (y / 16)));
        byte[] file = Photographs.oriented(Photographs.jpeg(stored), Integer.parseInt(tag));

        Picture upright = PhotoReader.read("turned.jpg", file, Progress.NONE);

        List<String> rows = new ArrayList<>();
        for (int y = 8; y < upright.height(); y += 16) {
            List<String> row = new ArrayList<>();
            for (int x = 8; x < upright.width(); x += 16) {
                row.add(String.valueOf(10 * Math.round((upright.rgb(x, y) & 0xff) / 10.0)));
            }
            rows.add(String.join(" ", row));
        }
        assertThat(String.join(" / ", rows)).isEqualTo(shown);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 9, 4000})
    void takesAnUnknownOrientationForUpright(int tag) throws IOException {
        byte[] file = Photographs.oriented(Photographs.jpeg(SOFT), tag);
        assertThat(PhotoReader.read("odd.jpg", file, Progress.NONE).pixels())
                .isEqualTo(PhotoReader.read("even.jpg", Photographs.jpeg(SOFT), Progress.NONE)
                        .pixels());
    }

    @Test
    void givesASmallPngBackPixelForPixel() throws IOException {
        Picture noise = Photographs.noise(57, 31, 5);
        Path file = Files.write(folder.resolve("noise.png"), Photographs.png(noise));
        assertThat(PhotoReader.read(file, Progress.NONE).pixels()).isEqualTo(noise.pixels());
    }

    @ParameterizedTest
    @CsvSource({"2600, 1300, 2000, 1000", "1000, 4000, 500, 2000", "2000, 3, 2000, 3", "6000, 1, 2000, 1"})
    void reducesToTwoThousandPixelsOnTheLongSide(int width, int height, int toWidth, int toHeight) throws IOException {
        byte[] file = Photographs.png(Photographs.picture(width, height, (x, y) -> 0x808080));
        Picture read = PhotoReader.read("wide.png", file, Progress.NONE);
        assertThat(read.width()).isEqualTo(toWidth);
        assertThat(read.height()).isEqualTo(toHeight);
        assertThat(Arrays.stream(read.pixels()).allMatch(rgb -> rgb == 0x808080))
                .isTrue();
    }

    @Test
    void reducesInLinearLight() throws IOException {
        byte[] file = Photographs.png(Photographs.picture(4000, 10, (x, y) -> x % 2 == 0 ? 0 : 0xffffff));
        assertThat(PhotoReader.read("lines.png", file, Progress.NONE).rgb(1000, 2))
                .isEqualTo(0xbcbcbc);
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void readsJpegInOnePassAndInSeveral(boolean progressive) throws IOException {
        BufferedImage image = Photographs.image(SOFT, BufferedImage.TYPE_INT_RGB);
        Picture read =
                PhotoReader.read("soft.jpg", Photographs.bytes(image, "jpeg", 0.98f, progressive), Progress.NONE);
        assertThat(meanDifference(read, SOFT)).isLessThan(3);
    }

    @Test
    void laysTransparencyOnWhite() throws IOException {
        BufferedImage image = new BufferedImage(2, 1, BufferedImage.TYPE_INT_ARGB);
        image.setRGB(0, 0, 0x00123456);
        image.setRGB(1, 0, 0x80000000);
        Picture read = PhotoReader.read("clear.png", Photographs.bytes(image, "png", 1, false), Progress.NONE);
        assertThat(read.rgb(0, 0)).isEqualTo(0xffffff);
        assertThat(Srgb.linear(read.rgb(1, 0) & 0xff)).isCloseTo(1 - 128 / 255.0, within(0.01));
    }

    @Test
    void readsGrayAsTheSameGray() throws IOException {
        byte[] gray = Photographs.grayPng(3, 1, BufferedImage.TYPE_BYTE_GRAY, 0, 128, 255);
        byte[] deep = Photographs.grayPng(3, 1, BufferedImage.TYPE_USHORT_GRAY, 0, 128 * 257, 65535);
        for (byte[] file : List.of(gray, deep)) {
            assertThat(PhotoReader.read("gray.png", file, Progress.NONE).pixels())
                    .containsExactly(0, 0x808080, 0xffffff);
        }
        BufferedImage flat = new BufferedImage(16, 16, BufferedImage.TYPE_BYTE_GRAY);
        flat.getRaster().setSamples(0, 0, 16, 16, 0, constant(256, 100));
        assertThat(PhotoReader.read("gray.jpg", Photographs.bytes(flat, "jpeg", 1, false), Progress.NONE)
                        .rgb(8, 8))
                .isEqualTo(0x646464);
    }

    @Test
    void readsAPalette() throws IOException {
        BufferedImage image = new BufferedImage(16, 16, BufferedImage.TYPE_BYTE_INDEXED);
        image.setRGB(3, 4, 0xffff0000);
        Picture read = PhotoReader.read("palette.png", Photographs.bytes(image, "png", 1, false), Progress.NONE);
        assertThat(read.rgb(3, 4)).isEqualTo(0xff0000);
        assertThat(read.rgb(0, 0)).isEqualTo(0);
    }

    @Test
    void readsSixteenBits() throws IOException {
        byte[] plain = Photographs.deepPng(1, 1, false, 0x1234, 0x8080, 0xffff);
        assertThat(PhotoReader.read("deep.png", plain, Progress.NONE).rgb(0, 0)).isEqualTo(0x1280ff);
        byte[] half = Photographs.deepPng(1, 1, true, 0, 0, 0, 0x8000);
        assertThat(PhotoReader.read("deep.png", half, Progress.NONE).rgb(0, 0)).isEqualTo(0xbcbcbc);
    }

    @Test
    void readsInkColors() throws IOException {
        Picture read = PhotoReader.read("cmyk.jpg", Photographs.resource("cmyk.jpg"), Progress.NONE);
        assertThat(read.rgb(8, 24) & 0xff).isLessThan(16);
        assertThat(read.rgb(56, 24) & 0xff).isGreaterThan(247);
    }

    @Test
    void followsAnEmbeddedColorProfile() throws IOException {
        byte[] flat = Photographs.jpeg(Photographs.picture(160, 160, (x, y) -> 0x808080));
        byte[] profile = ICC_Profile.getInstance(ColorSpace.CS_LINEAR_RGB).getData();
        Picture read = PhotoReader.read("linear.jpg", Photographs.profiled(flat, profile), Progress.NONE);
        // 128 of 255 in linear light is encoded as 188 (IEC 61966-2-1).
        assertThat(read.rgb(80, 130) & 0xff).isCloseTo(188, within(2));
    }

    static Stream<byte[]> whole() throws IOException {
        BufferedImage image = Photographs.image(Photographs.noise(200, 160, 3), BufferedImage.TYPE_INT_RGB);
        return Stream.of(
                Photographs.bytes(image, "jpeg", 0.9f, false),
                Photographs.bytes(image, "jpeg", 0.9f, true),
                Photographs.bytes(image, "png", 1, false));
    }

    @ParameterizedTest
    @MethodSource("whole")
    void refusesAPhotographThatIsCutShort(byte[] whole) throws IOException {
        PhotoReader.read("whole", whole, Progress.NONE);
        for (double share : new double[] {0.001, 0.02, 0.3, 0.6, 0.9, 0.999}) {
            byte[] cut = Arrays.copyOf(whole, Math.max(9, (int) (share * whole.length)));
            assertRefused("cut short.jpg", cut, "copy the photograph again");
        }
    }

    @Test
    void refusesADamagedPng() throws IOException {
        byte[] file = Photographs.png(Photographs.noise(200, 160, 3));
        Arrays.fill(file, file.length / 2, file.length / 2 + 40, (byte) 0x55);
        assertRefused("damaged.png", file, "damaged");
    }

    @Test
    void refusesAMissingFile() {
        assertThatThrownBy(() -> PhotoReader.read(folder.resolve("gone.jpg"), Progress.NONE))
                .isInstanceOf(Trouble.class)
                .hasMessageContaining("gone.jpg")
                .hasMessageContaining("no photograph");
    }

    @Test
    void refusesAFolder() {
        assertThatThrownBy(() -> PhotoReader.read(folder, Progress.NONE))
                .isInstanceOf(Trouble.class)
                .hasMessageContaining("is a folder");
    }

    @Test
    void refusesAnEmptyFile() throws IOException {
        Path file = Files.createFile(folder.resolve("nothing.jpg"));
        assertThatThrownBy(() -> PhotoReader.read(file, Progress.NONE))
                .isInstanceOf(Trouble.class)
                .hasMessageContaining("nothing.jpg")
                .hasMessageContaining("empty");
    }

    @ParameterizedTest
    @CsvSource({
        "heic, HEIC",
        "heix, HEIC",
        "hevc, HEIC",
        "heim, HEIC",
        "mif1, HEIC",
        "msf1, HEIC",
        "avif, not read here",
        "isom, not a photograph",
        "crx , camera raw"
    })
    void tellsPhonePhotographsByTheirBrand(String brand, String said) {
        byte[] head = new byte[200];
        head[3] = 24;
        System.arraycopy(("ftyp" + (brand + " ").substring(0, 4)).getBytes(StandardCharsets.ISO_8859_1), 0, head, 4, 8);
        assertRefused("phone.jpg", head, said);
    }

    @Test
    void tellsCameraRawByItsHeadOrItsName() {
        byte[] tiff = new byte[64];
        System.arraycopy(new byte[] {'I', 'I', 42, 0, 8}, 0, tiff, 0, 5);
        assertRefused("negative.dng", tiff, "camera raw");
        assertRefused("NEGATIVE.DNG", tiff, "camera raw");
        assertRefused("scan.tif", tiff, "damaged");
    }

    @Test
    void refusesWhatIsNoImage() {
        assertRefused(
                "letter.jpg", "Dear painter, here is no picture.".getBytes(StandardCharsets.UTF_8), "not a photograph");
        assertRefused("short.jpg", new byte[] {1}, "not a photograph");
    }

    @Test
    void refusesMorePixelsThanItReadsBeforeDecoding() throws IOException {
        byte[] file = Photographs.png(Photographs.picture(8, 8, (x, y) -> 0));
        // The header's width and height (W3C PNG, 11.2.2), with the check sum that belongs to them.
        ByteBuffer.wrap(file).putInt(16, 60000).putInt(20, 60000);
        CRC32 sum = new CRC32();
        sum.update(file, 12, 17);
        ByteBuffer.wrap(file).putInt(29, (int) sum.getValue());
        assertRefused("huge.png", file, "3,600 million pixels");
    }

    @Test
    void tellsHowFarItIsAndStopsWhenAsked() throws IOException {
        byte[] file = Photographs.jpeg(Photographs.noise(600, 900, 8));
        List<Double> shares = new ArrayList<>();
        PhotoReader.read("slow.jpg", file, shares::add);
        assertThat(shares).isSorted().hasSizeGreaterThan(8).first().isEqualTo(0.0);
        assertThat(shares.get(shares.size() - 1)).isEqualTo(1.0);

        assertThatThrownBy(() -> PhotoReader.read("slow.jpg", file, stopping(0.3)))
                .isInstanceOf(CancellationException.class);
        assertThatThrownBy(() -> PhotoReader.read("slow.jpg", file, stopping(0.85)))
                .isInstanceOf(CancellationException.class);
    }

    @Test
    void refusesTheEventThread() throws InterruptedException {
        List<Throwable> thrown = new ArrayList<>();
        Thread thread = new Thread(
                () -> thrown.add(catchThrowable(() -> PhotoReader.read("a.jpg", new byte[] {1}, Progress.NONE))),
                "AWT-EventQueue-0");
        thread.start();
        thread.join();
        assertThat(thrown).singleElement().isInstanceOf(IllegalStateException.class);
    }

    /** Stops reading once that share of it is done. */
    static Progress stopping(double after) {
        return new Progress() {
            private double last;

            @Override
            public void at(double share) {
                last = share;
            }

            @Override
            public boolean stopped() {
                return last >= after;
            }
        };
    }

    private static void assertRefused(String name, byte[] file, String said) {
        assertThatThrownBy(() -> PhotoReader.read(name, file, Progress.NONE))
                .isInstanceOf(Trouble.class)
                .hasMessageStartingWith(name + " ")
                .hasMessageContaining(said);
    }

    private static int[] constant(int length, int value) {
        int[] all = new int[length];
        Arrays.fill(all, value);
        return all;
    }

    private static double meanDifference(Picture a, Picture b) {
        double sum = 0;
        for (int i = 0; i < a.pixels().length; i++) {
            for (int shift = 0; shift < 24; shift += 8) {
                sum += Math.abs((a.pixels()[i] >> shift & 0xff) - (b.pixels()[i] >> shift & 0xff));
            }
        }
        return sum / 3 / a.pixels().length;
    }

    @ParameterizedTest
    @CsvSource({"1, 2600, 300", "3, 2600, 300", "6, 300, 2600", "8, 300, 2600"})
    void tellsTheSizeInTheFileUpright(int tag, int width, int height) throws IOException {
        byte[] file = Photographs.oriented(Photographs.jpeg(Photographs.picture(2600, 300, (x, y) -> 0x808080)), tag);
        assertThat(PhotoReader.size("wide.jpg", file)).isEqualTo(new Size(width, height));
    }
}
