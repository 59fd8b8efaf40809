package umbercard.photo;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.opencv.core.Core;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Size;
import org.opencv.imgcodecs.Imgcodecs;
import org.opencv.imgproc.Imgproc;
import umbercard.picture.Picture;
import umbercard.picture.ValueField;

/** The photograph's work against OpenCV; run by the profile opencv. */
class PhotoAgainstOpenCv {
    @TempDir
    Path folder;

    @BeforeAll
    static void load() {
        nu.pattern.OpenCV.loadLocally();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void turnsPhotographsAsImreadDoes(int tag) throws IOException {
        Path file = Files.write(folder.resolve("turned.jpg"), Oriented.jpeg(tag));
        Mat mat = Imgcodecs.imread(file.toString());
        byte[] bgr = new byte[3 * mat.rows() * mat.cols()];
        mat.get(0, 0, bgr);
        int width = mat.cols();
        Oriented.assertAgrees(tag, Photographs.picture(width, mat.rows(), (x, y) -> {
            int at = 3 * (y * width + x);
            return (bgr[at + 2] & 0xff) << 16 | (bgr[at + 1] & 0xff) << 8 | (bgr[at] & 0xff);
        }));
    }

    @ParameterizedTest(name = "{0}, split at {2}")
    @MethodSource("umbercard.photo.Pieces#fields")
    void countsAsManyPieces(String name, ValueField field, double split) {
        Pieces.assertAgree(field, split, PhotoAgainstOpenCv::components);
    }

    private static int components(boolean[] set, int width, boolean overCorners) {
        byte[] bytes = new byte[set.length];
        for (int i = 0; i < set.length; i++) {
            bytes[i] = (byte) (set[i] ? 255 : 0);
        }
        Mat mat = new Mat(set.length / width, width, CvType.CV_8U);
        mat.put(0, 0, bytes);
        // The first one is the ground, whether it has pixels or not.
        return Imgproc.connectedComponents(mat, new Mat(), overCorners ? 8 : 4) - 1;
    }

    /** Both are mirrored at the borders, so all of the picture counts. Within 0.02 L* of each other in the mean where ours is
     * done at full size, within 0.25 where it is done on halves. */
    @ParameterizedTest
    @ValueSource(doubles = {1, 2.5, 3, 4, 6, 12, 25})
    void blursAsGaussianBlurDoes(double sigma) throws IOException {
        Picture picture = PhotoReader.read(Path.of("samples", "kiln-hill.jpg"), Progress.NONE);
        ValueField field = Values.of(picture);
        Mat mat = new Mat(field.height(), field.width(), CvType.CV_32F);
        mat.put(0, 0, field.luminance());
        Imgproc.GaussianBlur(mat, mat, new Size(0, 0), sigma, sigma, Core.BORDER_REFLECT);
        float[] samples = new float[field.luminance().length];
        mat.get(0, 0, samples);
        ValueField theirs = new ValueField(field.width(), field.height(), samples);
        double most = sigma < 3 ? 0.02 : 0.25;
        assertThat(SquintPyramidTest.difference(Squinter.squint(field, sigma), theirs))
                .isLessThan(most);
        assertThat(SquintPyramidTest.difference(new SquintPyramid(picture).values(SquintWay.GAUSSIAN, sigma), theirs))
                .isLessThan(most);
    }

    /** Source: Otsu 1979, with the histograms named in threshold_checks.json, which says where the best levels begin and end. */
    @ParameterizedTest
    @MethodSource("umbercard.photo.OtsuTest#thresholds")
    void partsHistogramsAsOtsusThresholdDoes(JsonNode check) {
        JsonNode histogram = check.get("histogram");
        Mat mat = new Mat(1, check.get("pixels").asInt(), CvType.CV_8U);
        int from = 0;
        for (int level = 0; level < histogram.size(); level++) {
            int to = from + histogram.get(level).asInt();
            mat.colRange(from, to).setTo(org.opencv.core.Scalar.all(level));
            from = to;
        }
        double theirs = Imgproc.threshold(mat, new Mat(), 0, 255, Imgproc.THRESH_BINARY + Imgproc.THRESH_OTSU);
        int first = check.get("threshold_first").asInt();
        int last = check.get("threshold_last").asInt();
        assertThat(theirs).isBetween((double) first, (double) last);
        long[] counts = OtsuTest.histogram(check);
        assertThat(Otsu.of(counts).level()).isBetween(first, last);
    }

    /** A pixel goes dark here where it stays black there. */
    @ParameterizedTest
    @ValueSource(doubles = {2, 4.5, 5.7, 8})
    void splitsAsThresholdDoes(double split) {
        ValueField field = Fields.noise(80, 60, 8);
        Mat mat = new Mat(60, 80, CvType.CV_32F);
        mat.put(0, 0, field.luminance());
        Imgproc.threshold(mat, mat, umbercard.color.MunsellValue.luminance(split), 1, Imgproc.THRESH_BINARY);
        Picture ours = Values.twoValues(field, split);
        float[] theirs = new float[80 * 60];
        mat.get(0, 0, theirs);
        for (int i = 0; i < theirs.length; i++) {
            assertThat(ours.pixels()[i] == Values.DARK).isEqualTo(theirs[i] == 0);
        }
    }
}
