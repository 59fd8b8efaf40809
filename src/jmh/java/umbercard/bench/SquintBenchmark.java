package umbercard.bench;

import ij.plugin.filter.GaussianBlur;
import ij.process.AutoThresholder;
import ij.process.ByteProcessor;
import ij.process.ColorProcessor;
import ij.process.FloatProcessor;
import java.io.IOException;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import umbercard.geometry.Point;
import umbercard.model.Frame;
import umbercard.photo.FramedView;
import umbercard.photo.MainColors;
import umbercard.photo.SquintPyramid;
import umbercard.photo.SquintWay;
import umbercard.photo.ValueCurve;
import umbercard.photo.Values;
import umbercard.picture.MainColor;
import umbercard.picture.Picture;
import umbercard.picture.ValueField;

/** What one move of the squint and of the split costs on Kiln Hill, and its main colors, beside ImageJ and OpenCV. */
@State(Scope.Thread)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@BenchmarkMode(Mode.SampleTime)
public class SquintBenchmark {
    private static final int COLORS = 12;
    private static final double DARK_SHARE = 0.45;

    /** Rows of the picture: a move that keeps edges, as the desk shows it, as a large window does, and at full working size. */
    @Param({"320", "440", "600", "800", "1333"})
    public int height;

    private Picture picture = new Picture(1, 1, new int[1]);
    private ValueField values = Values.of(picture);
    private SquintPyramid pyramid = new SquintPyramid(picture);
    private ValueField squinted = values;
    private ValueCurve curve = ValueCurve.of(values);
    private FloatProcessor light = new FloatProcessor(1, 1);
    private FloatProcessor squintedLight = light;
    private OpenCv openCv = new OpenCv(picture, values, squinted);
    private double sigma;
    private double split;
    private int step;

    /** The photograph at its size. */
    @Setup(Level.Trial)
    public void photograph() throws IOException {
        Picture whole = KilnHillPhotograph.read();
        picture = FramedView.of(whole, new Frame(new Point(.5, .5), 1, 0, false), whole.ratio(), height);
        values = Values.of(picture);
        pyramid = new SquintPyramid(picture);
        squinted = pyramid.values(SquintWay.GAUSSIAN, 0.015 * diagonal());
        curve = ValueCurve.of(squinted);
        light = new FloatProcessor(picture.width(), picture.height(), values.luminance());
        squintedLight = new FloatProcessor(picture.width(), picture.height(), squinted.luminance());
        openCv = new OpenCv(picture, values, squinted);
    }

    private double diagonal() {
        return Math.hypot(picture.width(), picture.height());
    }

    /** The hand moves on over the whole rule. */
    @Setup(Level.Invocation)
    public void move() {
        step = (step + 7) % 100;
        sigma = (1 + step) * 0.0004 * diagonal();
        split = 2 + step * 0.06;
    }

    /** A move of the squint, seen in gray, with the curve of its values. */
    @Benchmark
    public List<Object> squintValues() {
        return gray(SquintWay.GAUSSIAN);
    }

    /** The same, keeping edges. */
    @Benchmark
    public List<Object> squintKeepingEdges() {
        return gray(SquintWay.KEEPING_EDGES);
    }

    private List<Object> gray(SquintWay way) {
        ValueField field = pyramid.values(way, sigma);
        return List.of(ValueCurve.of(field), Values.gray(field));
    }

    /** A move of the squint, seen in color, with the curve of its values. */
    @Benchmark
    public SquintPyramid.Colors squintColors() {
        return colors(SquintWay.GAUSSIAN);
    }

    /** The same, keeping edges. */
    @Benchmark
    public SquintPyramid.Colors squintColorsKeepingEdges() {
        return colors(SquintWay.KEEPING_EDGES);
    }

    private SquintPyramid.Colors colors(SquintWay way) {
        return pyramid.colors(way, sigma);
    }

    /** A move of the squint, seen in two values that follow a thumbnail's share of dark. */
    @Benchmark
    public List<Object> squintTwoValues() {
        return twoValues(SquintWay.GAUSSIAN);
    }

    /** The same, keeping edges. */
    @Benchmark
    public List<Object> squintTwoValuesKeepingEdges() {
        return twoValues(SquintWay.KEEPING_EDGES);
    }

    private List<Object> twoValues(SquintWay way) {
        ValueField field = pyramid.values(way, sigma);
        return List.of(ValueCurve.of(field), Values.twoValues(field, Values.splitForShare(field, DARK_SHARE)));
    }

    /** ImageJ's Gaussian of the same field, to eight bits, with its histogram. */
    @Benchmark
    public List<Object> squintValuesByImageJ() {
        FloatProcessor field = (FloatProcessor) light.duplicate();
        new GaussianBlur().blurGaussian(field, sigma, sigma, 0.01);
        ByteProcessor gray = field.convertToByteProcessor(false);
        return List.of(gray, gray.getHistogram());
    }

    /** OpenCV's Gaussian of the same field, to eight bits, with its histogram. */
    @Benchmark
    public Object squintValuesByOpenCv() {
        return openCv.squint(sigma);
    }

    /** A move of the split: its share, and the picture in two values. */
    @Benchmark
    public List<Object> split() {
        return List.of(curve.shareBelow(split), Values.twoValues(squinted, split));
    }

    /** The same in five values. */
    @Benchmark
    public Picture splitInFive() {
        return Values.inSteps(squinted, curve.steps(5, split));
    }

    /** ImageJ's threshold of the same field, and the share below it. */
    @Benchmark
    public List<Object> splitByImageJ() {
        ByteProcessor two = squintedLight.convertToByteProcessor(false);
        int[] histogram = two.getHistogram();
        int best = new AutoThresholder().getThreshold(AutoThresholder.Method.Otsu, histogram);
        two.threshold((int) (255 * split / 10));
        return List.of(two, best, two.getHistogram()[0]);
    }

    /** OpenCV's threshold of the same field, and the share below it. */
    @Benchmark
    public double splitByOpenCv() {
        return openCv.split(split);
    }

    /** The main colors of the picture. */
    @Benchmark
    public List<MainColor> clusters() {
        return MainColors.of(picture, COLORS);
    }

    /** ImageJ's median cut to as many colors, in sRGB. */
    @Benchmark
    public Object clustersByImageJ() {
        ColorProcessor colors = new ColorProcessor(picture.width(), picture.height(), picture.pixels());
        return new ij.process.MedianCut(colors).convertToByte(COLORS);
    }

    /** OpenCV's k-means of all pixels to as many colors, in L*a*b*. */
    @Benchmark
    public Object clustersByOpenCv() {
        return openCv.clusters(COLORS);
    }
}
