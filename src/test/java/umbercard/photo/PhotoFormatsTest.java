package umbercard.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.DataBuffer;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadataNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import umbercard.picture.Picture;
import umbercard.words.Trouble;

/** The formats beside plain JPEG and PNG, and which of them a file is. */
class PhotoFormatsTest {
    private static final Picture NOISE = Photographs.noise(57, 31, 5);
    /** As in exif_orientation.csv, a cell a block of 16 pixels; cells.webp is the same, written losslessly by libwebp 1.2.4. */
    private static final Picture CELLS =
            Photographs.picture(48, 32, (x, y) -> 0x010101 * (10 + 10 * (x / 16) + 30 * (y / 16)));

    @TempDir
    Path folder;

    static Stream<String[]> orientations() throws IOException {
        return PhotoReaderTest.orientations();
    }

    /** Source: TIFF 6.0 and CIPA DC-008 by way of exif_orientation.csv. */
    @ParameterizedTest
    @MethodSource("orientations")
    void turnsEveryFormatThatSaysHow(String tag, String shown) throws IOException {
        int orientation = Integer.parseInt(tag);
        byte[] exif = Formats.exif(orientation);
        assertThat(cells(Formats.tiff(CELLS, new int[] {274, 3, 1, orientation})))
                .isEqualTo(shown);
        assertThat(cells(Formats.withChunk(Photographs.png(CELLS), "eXIf", exif)))
                .isEqualTo(shown);
        assertThat(cells(Formats.exifWebp(Photographs.resource("cells.webp"), 48, 32, exif)))
                .isEqualTo(shown);
    }

    private static String cells(byte[] file) throws IOException {
        Picture upright = PhotoReader.read("turned", file, Progress.NONE);
        List<String> rows = new ArrayList<>();
        for (int y = 8; y < upright.height(); y += 16) {
            List<String> row = new ArrayList<>();
            for (int x = 8; x < upright.width(); x += 16) {
                row.add(String.valueOf(upright.rgb(x, y) & 0xff));
            }
            rows.add(String.join(" ", row));
        }
        return String.join(" / ", rows);
    }

    @ParameterizedTest
    @ValueSource(strings = {"bmp", "tiff"})
    void givesLosslessFormatsBackPixelForPixel(String format) throws IOException {
        assertThat(PhotoReader.read("noise", Formats.written(NOISE, format), Progress.NONE)
                        .pixels())
                .isEqualTo(NOISE.pixels());
    }

    @Test
    void readsTiffMadeByHand() throws IOException {
        assertThat(PhotoReader.read("noise.tif", Formats.tiff(NOISE), Progress.NONE)
                        .pixels())
                .isEqualTo(NOISE.pixels());
    }

    @Test
    void readsDeepTiff() throws IOException {
        var form = ImageTypeSpecifier.createInterleaved(
                ColorSpace.getInstance(ColorSpace.CS_sRGB), new int[] {0, 1, 2}, DataBuffer.TYPE_USHORT, false, false);
        BufferedImage image = form.createBufferedImage(1, 1);
        image.getRaster().setPixel(0, 0, new int[] {0x1234, 0x8080, 0xffff});
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Iterator<ImageWriter> writers = ImageIO.getImageWritersByFormatName("tiff");
        ImageWriter writer = writers.next();
        while (!writer.getClass().getName().startsWith("com.sun.imageio.")) {
            // The library's writer has no deep samples.
            writer = writers.next();
        }
        try (var stream = ImageIO.createImageOutputStream(out)) {
            writer.setOutput(stream);
            writer.write(image);
        } finally {
            writer.dispose();
        }
        Picture read = PhotoReader.read("deep.tif", out.toByteArray(), Progress.NONE);
        assertThat(read.rgb(0, 0)).isEqualTo(0x1280ff);
    }

    /** soft.webp was written at quality 95 by libwebp 1.2.4 from these pixels. */
    @Test
    void readsLossyWebp() throws IOException {
        Picture read = PhotoReader.read("soft.webp", Photographs.resource("soft.webp"), Progress.NONE);
        double sum = 0;
        for (int y = 0; y < 64; y++) {
            for (int x = 0; x < 96; x++) {
                sum += Math.abs((read.rgb(x, y) >> 16) - (40 + x)) + Math.abs((read.rgb(x, y) >> 8 & 0xff) - (60 + y));
            }
        }
        assertThat(sum / 2 / 96 / 64).isLessThan(3);
    }

    @Test
    void takesTheFirstPictureOfAGif() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageWriter writer = ImageIO.getImageWritersByFormatName("gif").next();
        try (var stream = ImageIO.createImageOutputStream(out)) {
            writer.setOutput(stream);
            writer.prepareWriteSequence(null);
            for (int rgb : new int[] {0x336699, 0xff0000}) {
                BufferedImage image = new BufferedImage(20, 10, BufferedImage.TYPE_BYTE_INDEXED);
                for (int i = 0; i < 200; i++) {
                    image.setRGB(i % 20, i / 20, 0xff000000 | rgb);
                }
                writer.writeToSequence(new IIOImage(image, null, null), null);
            }
            writer.endWriteSequence();
        } finally {
            writer.dispose();
        }
        Picture read = PhotoReader.read("two.gif", out.toByteArray(), Progress.NONE);
        assertThat(Arrays.stream(read.pixels()).distinct()).containsExactly(0x336699);
    }

    @Test
    void readsGrayProgressiveAndInterlaced() throws IOException {
        BufferedImage gray = new BufferedImage(64, 64, BufferedImage.TYPE_BYTE_GRAY);
        gray.getRaster().setPixels(0, 0, 64, 64, filled(64 * 64, 100));
        assertThat(PhotoReader.read("gray.jpg", Photographs.bytes(gray, "jpeg", 1, true), Progress.NONE)
                        .rgb(30, 30))
                .isEqualTo(0x646464);
        Picture large = Photographs.noise(700, 500, 6);
        assertThat(PhotoReader.read("laced.png", interlaced(large), Progress.NONE)
                        .pixels())
                .isEqualTo(large.pixels());
    }

    private static int[] filled(int length, int value) {
        int[] all = new int[length];
        Arrays.fill(all, value);
        return all;
    }

    private static byte[] interlaced(Picture picture) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        var settings = writer.getDefaultWriteParam();
        settings.setProgressiveMode(ImageWriteParam.MODE_DEFAULT);
        try (var stream = ImageIO.createImageOutputStream(out)) {
            writer.setOutput(stream);
            writer.write(
                    null,
                    new IIOImage(Photographs.image(picture, BufferedImage.TYPE_INT_RGB), List.of(), null),
                    settings);
        } finally {
            writer.dispose();
        }
        assertThat(out.toByteArray()[28]).isEqualTo((byte) 1);
        return out.toByteArray();
    }

    /** A decoder gives a progressive photograph in several passes: the last one counts, in every strip. */
    @Test
    void readsALargeProgressivePhotographAsAPlainOne() throws IOException {
        BufferedImage image = Photographs.image(
                Photographs.picture(700, 900, (x, y) -> (x * 255 / 700) << 16 | (y * 255 / 900) << 8 | (x * y & 63)),
                BufferedImage.TYPE_INT_RGB);
        int[] plain = PhotoReader.read("plain.jpg", Photographs.bytes(image, "jpeg", 0.9f, false), Progress.NONE)
                .pixels();
        assertThat(PhotoReader.read("laced.jpg", Photographs.bytes(image, "jpeg", 0.9f, true), Progress.NONE)
                        .pixels())
                .isEqualTo(plain);
    }

    /** With no marker at all, three components of one size are YCbCr to the Independent JPEG Group's decoder; so they are here. */
    @Test
    void readsJpegWithoutAnyMarker() throws IOException {
        byte[] file = ofOneSize(Photographs.picture(32, 32, (x, y) -> 0xc04020));
        byte[] bare = new byte[file.length - 18];
        System.arraycopy(file, 0, bare, 0, 2);
        System.arraycopy(file, 20, bare, 2, bare.length - 2);
        assertThat(file[3]).isEqualTo((byte) 0xe0);
        int rgb = PhotoReader.read("bare.jpg", bare, Progress.NONE).rgb(16, 16);
        assertThat(rgb >> 16).isCloseTo(0xc0, within(4));
        assertThat(rgb & 0xff).isCloseTo(0x20, within(4));
    }

    /**
     * Components named R, G and B, and an Adobe marker of transform 0 (ITU-T T.872, 6.5.3), say that the samples are colors
     * as they are. The samples here are those that ITU-T T.871 makes of the color.
     */
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void readsJpegWhoseSamplesAreColorsThemselves(boolean byMarker) throws IOException {
        byte[] file = ofOneSize(Photographs.picture(32, 32, (x, y) -> 0xc04020));
        byte[] marker = byMarker
                ? new byte[] {(byte) 0xff, (byte) 0xee, 0, 14, 'A', 'd', 'o', 'b', 'e', 0, 100, 0, 0, 0, 0, 0}
                : new byte[0];
        byte[] rgb = ByteBuffer.allocate(file.length - 18 + marker.length)
                .put(file, 0, 2)
                .put(marker)
                .put(file, 20, file.length - 20)
                .array();
        for (int at = 2; !byMarker && at + 1 < rgb.length; at++) {
            boolean frame = rgb[at] == (byte) 0xff && rgb[at + 1] == (byte) 0xc0;
            boolean scan = rgb[at] == (byte) 0xff && rgb[at + 1] == (byte) 0xda;
            for (int i = 0; (frame || scan) && i < 3; i++) {
                rgb[at + (frame ? 10 + 3 * i : 5 + 2 * i)] = (byte) "RGB".charAt(i);
            }
        }
        int read = PhotoReader.read("samples.jpg", rgb, Progress.NONE).rgb(16, 16);
        assertThat((read >> 16) - (0.299 * 0xc0 + 0.587 * 0x40 + 0.114 * 0x20)).isCloseTo(0, within(3.0));
        assertThat((read >> 8 & 0xff) - (128 - 0.1687 * 0xc0 - 0.3313 * 0x40 + 0.5 * 0x20))
                .isCloseTo(0, within(3.0));
        assertThat((read & 0xff) - (128 + 0.5 * 0xc0 - 0.4187 * 0x40 - 0.0813 * 0x20))
                .isCloseTo(0, within(3.0));
    }

    /** A JPEG whose components all have as many samples. */
    private static byte[] ofOneSize(Picture picture) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        BufferedImage image = Photographs.image(picture, BufferedImage.TYPE_INT_RGB);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (var stream = ImageIO.createImageOutputStream(out)) {
            var notes = writer.getDefaultImageMetadata(new ImageTypeSpecifier(image), writer.getDefaultWriteParam());
            var tree = (IIOMetadataNode) notes.getAsTree(notes.getNativeMetadataFormatName());
            var luma =
                    (IIOMetadataNode) tree.getElementsByTagName("componentSpec").item(0);
            luma.setAttribute("HsamplingFactor", "1");
            luma.setAttribute("VsamplingFactor", "1");
            notes.setFromTree(notes.getNativeMetadataFormatName(), tree);
            writer.setOutput(stream);
            writer.write(null, new IIOImage(image, List.of(), notes), null);
        } finally {
            writer.dispose();
        }
        return out.toByteArray();
    }

    @ParameterizedTest
    @CsvSource({"png, photo.jpg", "jpeg, photo.heic", "bmp, photo.cr2", "gif, photo.tif", "tiff, letter.txt"})
    void goesByTheContentNotTheName(String format, String name) throws IOException {
        Path file = Files.write(folder.resolve(name), Formats.written(NOISE, format));
        assertThat(PhotoReader.read(file, Progress.NONE).width()).isEqualTo(57);
    }

    @ParameterizedTest
    @CsvSource({"50706, 0x00000401", "262, 32803", "262, 34892"})
    void tellsCameraRawByItsTags(int tag, String value) {
        byte[] raw = tag == 262
                ? withPhotometric(Integer.decode(value))
                : Formats.tiff(NOISE, new int[] {tag, 1, 4, Integer.decode(value)});
        assertThatThrownBy(() -> PhotoReader.read("scan.tif", raw, Progress.NONE))
                .isInstanceOf(Trouble.class)
                .hasMessageContaining("scan.tif is a camera raw file")
                .hasMessageContaining("export it as JPEG");
    }

    /** The fifth entry of the directory, its value in the entry's last four bytes. */
    private static byte[] withPhotometric(int value) {
        byte[] file = Formats.tiff(NOISE);
        int at = 8 + 2 + 4 * 12 + 8;
        file[at] = (byte) value;
        file[at + 1] = (byte) (value >> 8);
        return file;
    }

    @Test
    void readsAFileThatMayOnlyBeRead() throws IOException {
        Path file = Files.write(folder.resolve("kept.png"), Photographs.png(NOISE));
        assertThat(file.toFile().setReadOnly()).isTrue();
        assertThat(PhotoReader.read(file, Progress.NONE).pixels()).isEqualTo(NOISE.pixels());
    }
}
