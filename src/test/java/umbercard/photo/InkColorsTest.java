package umbercard.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.DataBuffer;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import umbercard.picture.Picture;

/**
 * JPEG in four inks as the Adobe marker says (ITU-T T.872, 6.5.3): CMYK and YCCK, the inks stored upside down (common
 * practice, no source), YCCK after ITU-T T.871 of 255 less what is stored, as the Independent JPEG Group's coder has it.
 */
class InkColorsTest {
    private static final int PATCH = 16;
    private static final int ACROSS = 25;
    private static final int DOWN = 15;

    /** The inks of a patch: every combination of five steps of cyan, magenta and yellow and three of black. */
    private static int[] inks(int column, int row) {
        int step = Profiles.INK_STEP;
        return new int[] {column % 5 * step, column / 5 * step, row % 5 * step, row / 5 * step};
    }

    private static byte[] jpeg(boolean ycck) throws IOException {
        WritableRaster raster =
                Raster.createInterleavedRaster(DataBuffer.TYPE_BYTE, ACROSS * PATCH, DOWN * PATCH, 4, null);
        for (int y = 0; y < raster.getHeight(); y++) {
            for (int x = 0; x < raster.getWidth(); x++) {
                int[] ink = inks(x / PATCH, y / PATCH);
                int[] upsideDown = {255 - ink[0], 255 - ink[1], 255 - ink[2], 255 - ink[3]};
                raster.setPixel(x, y, ycck ? ycck(upsideDown) : upsideDown);
            }
        }
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ImageWriteParam settings = writer.getDefaultWriteParam();
        settings.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        settings.setCompressionQuality(1);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (var stream = ImageIO.createImageOutputStream(out)) {
            writer.setOutput(stream);
            writer.write(null, new IIOImage(raster, List.of(), null), settings);
        } finally {
            writer.dispose();
        }
        byte[] marker = "Adobe\0d\0\0\0\0\0".getBytes(StandardCharsets.ISO_8859_1);
        marker[11] = (byte) (ycck ? 2 : 0);
        return Photographs.withSegment(out.toByteArray(), 0xee, marker);
    }

    private static int[] ycck(int[] stored) {
        double r = 255 - stored[0];
        double g = 255 - stored[1];
        double b = 255 - stored[2];
        return new int[] {
            (int) Math.round(0.299 * r + 0.587 * g + 0.114 * b),
            (int) Math.round(128 - 0.168736 * r - 0.331264 * g + 0.5 * b),
            (int) Math.round(128 + 0.5 * r - 0.418688 * g - 0.081312 * b),
            stored[3]
        };
    }

    /** Tolerance: a step and a half, as for other profiles; two more for the rounding of YCC. */
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void followsTheProfileOfInks(boolean ycck) throws IOException {
        byte[] file = Photographs.profiled(jpeg(ycck), Profiles.inks());
        Picture read = PhotoReader.read("inks.jpg", file, Progress.NONE);
        assertThat(read.width()).isEqualTo(ACROSS * PATCH);
        for (int patch = 0; patch < ACROSS * DOWN; patch++) {
            int[] ink = inks(patch % ACROSS, patch / ACROSS);
            int[] rgb = patch(read, patch % ACROSS, patch / ACROSS);
            double[] wanted = Profiles.inksToSrgb(ink);
            for (int band = 0; band < 3; band++) {
                assertThat((double) rgb[band])
                        .as("inks %d %d %d %d, band %d", ink[0], ink[1], ink[2], ink[3], band)
                        .isCloseTo(wanted[band], within(ycck ? 3.5 : 1.5));
            }
        }
    }

    /** What no profile says nobody knows exactly: each ink takes away its own light most, and paper is white. */
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void givesInksWithoutAProfileTheirColors(boolean ycck) throws IOException {
        Picture read = PhotoReader.read("inks.jpg", jpeg(ycck), Progress.NONE);
        assertThat(patch(read, 0, 0)).containsOnly(255);
        int[][] most = {patch(read, 4, 0), patch(read, 20, 0), patch(read, 0, 4)};
        for (int ink = 0; ink < 3; ink++) {
            for (int band = 0; band < 3; band++) {
                assertThat(most[ink][band] < 128)
                        .as("ink %d, band %d", ink, band)
                        .isEqualTo(ink == band);
            }
        }
        assertThat(Arrays.stream(patch(read, 0, 10)).allMatch(v -> v > 64 && v < 200))
                .as("black")
                .isTrue();
    }

    private static int[] patch(Picture read, int column, int row) {
        int rgb = read.rgb(column * PATCH + PATCH / 2, row * PATCH + PATCH / 2);
        return new int[] {rgb >> 16 & 0xff, rgb >> 8 & 0xff, rgb & 0xff};
    }
}
