package umbercard.bench;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.opencv.core.Core;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.MatOfFloat;
import org.opencv.core.MatOfInt;
import org.opencv.core.MatOfPoint;
import org.opencv.core.MatOfPoint2f;
import org.opencv.core.Size;
import org.opencv.core.TermCriteria;
import org.opencv.imgcodecs.Imgcodecs;
import org.opencv.imgproc.Imgproc;
import umbercard.color.MunsellValue;
import umbercard.color.Srgb;
import umbercard.picture.Picture;
import umbercard.picture.ValueField;

/**
 * The photograph's work by OpenCV, on as many processors as it takes by itself. Its results end in the arrays of Java, where
 * ours are; room for them is made once, so that no move of the hand pays for it.
 */
final class OpenCv {
    private static final int LIGHT_LEVELS = 1 << 16;
    private static final Size OF_SIGMA = new Size(0, 0);

    static {
        nu.pattern.OpenCV.loadLocally();
    }

    private final Mat light;
    private final Mat squintedLight;
    private final Mat colors;
    private final Mat blurred = new Mat();
    private final Mat gray = new Mat();
    private final Mat histogram = new Mat();
    private final byte[] bytes;

    /** For moves on one picture. */
    OpenCv(Picture picture, ValueField values, ValueField squinted) {
        light = mat(values);
        squintedLight = mat(squinted);
        bytes = new byte[values.luminance().length];
        byte[] bgr = new byte[3 * bytes.length];
        for (int i = 0; i < bgr.length; i++) {
            bgr[i] = (byte) (picture.pixels()[i / 3] >> (8 * (i % 3)));
        }
        colors = new Mat(picture.height(), picture.width(), CvType.CV_8UC3);
        colors.put(0, 0, bgr);
    }

    private static Mat mat(ValueField field) {
        Mat mat = new Mat(field.height(), field.width(), CvType.CV_32F);
        mat.put(0, 0, field.luminance());
        return mat;
    }

    /** The field blurred, in eight bits, and its histogram. */
    Object squint(double sigma) {
        Imgproc.GaussianBlur(light, blurred, OF_SIGMA, sigma, sigma, Core.BORDER_REFLECT);
        blurred.convertTo(gray, CvType.CV_8U, 255);
        Imgproc.calcHist(
                List.of(gray), new MatOfInt(0), new Mat(), histogram, new MatOfInt(256), new MatOfFloat(0, 256));
        gray.get(0, 0, bytes);
        return bytes;
    }

    /** The squinted field in two values; the share that is dark. */
    double split(double split) {
        Imgproc.threshold(squintedLight, blurred, MunsellValue.luminance(split), 255, Imgproc.THRESH_BINARY);
        blurred.convertTo(gray, CvType.CV_8U);
        gray.get(0, 0, bytes);
        return 1 - (double) Core.countNonZero(gray) / bytes.length;
    }

    /** So many clusters of all pixels in L*a*b*, by k-means from seeds that lie apart. */
    float[] clusters(int count) {
        Mat lab = new Mat();
        colors.convertTo(lab, CvType.CV_32FC3, 1 / 255.0);
        Imgproc.cvtColor(lab, lab, Imgproc.COLOR_BGR2Lab);
        Mat rows = lab.reshape(1, bytes.length);
        Mat labels = new Mat();
        Mat centers = new Mat();
        TermCriteria end = new TermCriteria(TermCriteria.COUNT + TermCriteria.EPS, 30, 0.5);
        Core.kmeans(rows, count, labels, end, 1, Core.KMEANS_PP_CENTERS, centers);
        float[] found = new float[3 * count];
        centers.get(0, 0, found);
        List.of(lab, rows, labels, centers).forEach(Mat::release);
        return found;
    }

    /** Blur, threshold, the outlines of all pieces, and polygons within a pixel of them; how many there are. */
    static int firstPass(ValueField field, double sigma, double split) {
        Mat work = mat(field);
        Imgproc.GaussianBlur(work, work, OF_SIGMA, sigma, sigma, Core.BORDER_REFLECT);
        Imgproc.threshold(work, work, MunsellValue.luminance(split), 255, Imgproc.THRESH_BINARY_INV);
        work.convertTo(work, CvType.CV_8U);
        List<MatOfPoint> outlines = new ArrayList<>();
        Mat nesting = new Mat();
        Imgproc.findContours(work, outlines, nesting, Imgproc.RETR_CCOMP, Imgproc.CHAIN_APPROX_NONE);
        int points = 0;
        for (MatOfPoint outline : outlines) {
            MatOfPoint2f polygon = new MatOfPoint2f();
            MatOfPoint2f whole = new MatOfPoint2f(outline.toArray());
            Imgproc.approxPolyDP(whole, polygon, 1, true);
            points += polygon.rows();
            List.of(outline, whole, polygon).forEach(Mat::release);
        }
        List.of(work, nesting).forEach(Mat::release);
        return points;
    }

    /** A file reduced by area averaging of the encoded samples, which is quick and too dark where detail is fine. */
    static byte[] reduced(Path file, int width, int height) {
        Mat whole = Imgcodecs.imread(file.toString());
        Mat small = new Mat();
        Imgproc.resize(whole, small, new Size(width, height), 0, 0, Imgproc.INTER_AREA);
        byte[] bgr = new byte[3 * width * height];
        small.get(0, 0, bgr);
        List.of(whole, small).forEach(Mat::release);
        return bgr;
    }

    /** The same in linear light of 16 bits. */
    static byte[] reducedInLight(Path file, int width, int height) {
        Mat whole = Imgcodecs.imread(file.toString());
        Mat linear = new Mat();
        Core.LUT(whole, Tables.TO_LIGHT, linear);
        whole.release();
        Mat small = new Mat();
        Imgproc.resize(linear, small, new Size(width, height), 0, 0, Imgproc.INTER_AREA);
        short[] levels = new short[3 * width * height];
        small.get(0, 0, levels);
        List.of(linear, small).forEach(Mat::release);
        byte[] bgr = new byte[levels.length];
        for (int i = 0; i < bgr.length; i++) {
            bgr[i] = Tables.OF_LIGHT[levels[i] & 0xffff];
        }
        return bgr;
    }

    private static final class Tables {
        static final Mat TO_LIGHT = new Mat(1, 256, CvType.CV_16U);
        static final byte[] OF_LIGHT = new byte[LIGHT_LEVELS];

        static {
            short[] light = new short[256];
            for (int i = 0; i < light.length; i++) {
                light[i] = (short) Math.round((LIGHT_LEVELS - 1) * Srgb.decode(i / 255.0));
            }
            TO_LIGHT.put(0, 0, light);
            for (int i = 0; i < LIGHT_LEVELS; i++) {
                OF_LIGHT[i] = (byte) Srgb.byteOf(i / (LIGHT_LEVELS - 1.0));
            }
        }
    }
}
