package umbercard.bench;

import ij.plugin.filter.GaussianBlur;
import ij.plugin.filter.ThresholdToSelection;
import ij.process.FloatProcessor;
import ij.process.ImageProcessor;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import umbercard.color.MunsellValue;
import umbercard.model.Squint;
import umbercard.photo.FirstPass;
import umbercard.photo.PhotoReader;
import umbercard.photo.Progress;
import umbercard.photo.SquintWay;
import umbercard.photo.Values;
import umbercard.picture.Picture;
import umbercard.picture.ValueField;

/**
 * What a first pass of Kiln Hill's photograph costs at 2000 pixels, from the framed picture to the marks, beside the blur, threshold
 * and outlines of all pieces by ImageJ and OpenCV, which drop nothing and fit no curves.
 */
final class FirstPasses {
    private static final int WARM = 12;
    private static final int ROUNDS = 40;
    private static final double SPLIT = 5.7;

    /** The others' ways, which drop nothing and fit no curves. */
    static final String IMAGEJ = "ImageJ: blur, threshold, outlines";

    static final String OPENCV = "OpenCV: blur, threshold, outlines, polygons";

    /**
     * Times of one way.
     *
     * @param median in milliseconds, as the others
     */
    record Times(String what, double median, double p99, double least) {}

    private FirstPasses() {}

    private record Way(String what, Runnable work) {}

    /** Measures all ways in turn, so that what slows the machine for a while slows all of them. */
    static List<Times> measure() throws IOException {
        Picture photograph = PhotoReader.read(Path.of("samples", "kiln-hill.jpg"), Progress.NONE);
        ValueField field = Values.of(photograph);
        OptionalDouble none = OptionalDouble.empty();
        double sigma = FirstPass.Wish.SQUINT;
        Squint soft = Squint.gaussian(sigma);
        Squint edges = new Squint(SquintWay.KEEPING_EDGES.key(), sigma);
        List<Way> ways = List.of(
                way(photograph, "split", new FirstPass.Wish(none, OptionalDouble.of(SPLIT), soft, OptionalInt.empty())),
                way(photograph, "best split", FirstPass.Wish.usual()),
                way(photograph, "two thirds dark", FirstPass.Wish.share(2.0 / 3)),
                way(photograph, "five masses", new FirstPass.Wish(none, none, soft, OptionalInt.of(5))),
                way(
                        photograph,
                        "a third dark, three masses",
                        new FirstPass.Wish(OptionalDouble.of(1.0 / 3), none, soft, OptionalInt.of(3))),
                way(
                        photograph,
                        "split, hardly squinted",
                        new FirstPass.Wish(
                                none, OptionalDouble.of(SPLIT), Squint.gaussian(0.002), OptionalInt.empty())),
                way(photograph, "best split, edges kept", new FirstPass.Wish(none, none, edges, OptionalInt.empty())),
                way(
                        photograph,
                        "two thirds dark, edges kept",
                        new FirstPass.Wish(OptionalDouble.of(2.0 / 3), none, edges, OptionalInt.empty())),
                way(
                        photograph,
                        "best split, edges kept, hardly squinted",
                        new FirstPass.Wish(
                                none, none, new Squint(SquintWay.KEEPING_EDGES.key(), 0.002), OptionalInt.empty())),
                new Way(IMAGEJ, () -> imageJ(field, sigma)),
                new Way(OPENCV, () -> openCv(field, sigma)));
        double[][] times = new double[ways.size()][ROUNDS];
        for (int round = -WARM; round < ROUNDS; round++) {
            for (int i = 0; i < ways.size(); i++) {
                long start = System.nanoTime();
                ways.get(i).work().run();
                if (round >= 0) {
                    times[i][round] = (System.nanoTime() - start) / 1e6;
                }
            }
        }
        List<Times> all = new ArrayList<>();
        for (int i = 0; i < times.length; i++) {
            all.add(sorted(ways.get(i).what(), times[i]));
        }
        return Collections.unmodifiableList(all);
    }

    private static Way way(Picture photograph, String what, FirstPass.Wish wish) {
        return new Way(what, () -> FirstPass.trace(photograph, wish, () -> false));
    }

    private static Times sorted(String what, double[] times) {
        List<Double> sorted = new ArrayList<>();
        for (double time : times) {
            sorted.add(time);
        }
        Collections.sort(sorted);
        Times found = new Times(what, Report.at(sorted, .5), Report.at(sorted, .99), sorted.get(0));
        System.out.println(String.format(
                Locale.ROOT,
                "%-44s median %7.1f  p99 %7.1f  least %7.1f ms",
                what,
                found.median,
                found.p99,
                found.least));
        return found;
    }

    private static void openCv(ValueField field, double sigma) {
        if (OpenCv.firstPass(field, sigma * Math.hypot(field.width(), field.height()), SPLIT) == 0) {
            throw new IllegalStateException("nothing is dark");
        }
    }

    private static void imageJ(ValueField field, double sigma) {
        double pixels = sigma * Math.hypot(field.width(), field.height());
        ImageProcessor image = new FloatProcessor(
                field.width(), field.height(), field.luminance().clone());
        new GaussianBlur().blurGaussian(image, pixels, pixels, 0.0002);
        image.setThreshold(0, MunsellValue.luminance(SPLIT), ImageProcessor.NO_LUT_UPDATE);
        if (ThresholdToSelection.run(new ij.ImagePlus("", image)) == null) {
            throw new IllegalStateException("nothing is dark");
        }
    }
}
