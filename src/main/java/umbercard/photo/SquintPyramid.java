package umbercard.photo;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import umbercard.kernel.EventThread;
import umbercard.picture.Picture;
import umbercard.picture.ValueField;

/**
 * One picture, squinted at again and again. Its light is kept at full size and at halves of it, made once; each blur is done
 * on the smallest of them at which it still has {@value #LEAST} samples of sigma or more, and enlarged. Halving and enlarging
 * blur by themselves, and what they add to the variance is left out of the blur between, so the mean error against a true
 * Gaussian stays under 1 L* from a radius of 4 pixels on; a smaller one is done at full size, where only the cut at four sigma
 * is left out. Not to be used by two threads at once.
 *
 * <p>Idea: P. J. Burt, "Fast Filter Transforms for Image Processing", Computer Graphics and Image Processing 16, 1981.
 */
public final class SquintPyramid {
    private static final double LEAST = 1.5;

    /** No plane gets smaller than this. */
    private static final int SMALLEST = 16;

    private final Picture picture;
    private final ValueField values;
    private final List<Plane> luminance = new ArrayList<>();
    private final List<List<Plane>> colors = new ArrayList<>();

    /** The pyramid of a picture; the halves are made when they are first wanted. */
    public SquintPyramid(Picture picture) {
        this.picture = picture;
        this.values = Values.of(picture);
        luminance.add(new Plane(picture.width(), picture.height(), values.luminance()));
    }

    /**
     * The light and dark, squinted at.
     *
     * @param sigma the blur's standard deviation in pixels, 0 or more; 0 leaves all as it is
     * @throws IllegalStateException on the event thread
     */
    public ValueField values(SquintWay way, double sigma) {
        check(sigma);
        if (sigma == 0) {
            return values;
        }
        Plane plane = squint(way, sigma, level -> List.of(luminance(level))).get(0);
        return new ValueField(plane.width(), plane.height(), plane.samples());
    }

    /**
     * The colors, squinted at.
     *
     * @param sigma the blur's standard deviation in pixels, 0 or more; 0 gives the same picture
     * @throws IllegalStateException on the event thread
     */
    public Picture colors(SquintWay way, double sigma) {
        check(sigma);
        if (sigma == 0) {
            return picture;
        }
        List<Plane> planes = squint(way, sigma, this::colors);
        float[] red = planes.get(0).samples();
        float[] green = planes.get(1).samples();
        float[] blue = planes.get(2).samples();
        int[] pixels = new int[red.length];
        for (int i = 0; i < pixels.length; i++) {
            pixels[i] = LinearLight.rgbOf(red[i], green[i], blue[i]);
        }
        return new Picture(picture.width(), picture.height(), pixels);
    }

    private static void check(double sigma) {
        EventThread.refuse("squinting");
        if (!(sigma >= 0) || !Double.isFinite(sigma)) {
            throw new IllegalArgumentException("a blur's sigma is 0 or more: " + sigma);
        }
    }

    private List<Plane> squint(SquintWay way, double sigma, IntFunction<List<Plane>> planes) {
        int level = level(way, sigma);
        double rest = rest(sigma, level);
        List<Plane> small = planes.apply(level);
        List<Plane> squinted = switch (way) {
            case GAUSSIAN -> small.stream().map(plane -> plane.blurred(rest)).toList();
            case KEEPING_EDGES -> EdgeKeeping.squint(small, luminance(level), rest);
        };
        return squinted.stream()
                .map(plane -> plane.enlarged(picture.width(), picture.height(), 1 << level))
                .toList();
    }

    private int level(SquintWay way, double sigma) {
        int level = 0;
        while (rest(sigma, level + 1) >= LEAST
                && Math.min(picture.width(), picture.height()) >> (level + 1) >= SMALLEST) {
            level++;
        }
        // A kept edge shows the pixels of its level: finer ones, where that does not cost too much.
        return way == SquintWay.KEEPING_EDGES && level > 1 ? level - 1 : level;
    }

    /**
     * The sigma left for a level, in its own pixels; not a number where none is left. A mean of n × n pixels has the
     * variance (n² - 1) / 12 each way, going straight between samples n pixels apart (n² - 1) / 6.
     */
    private static double rest(double sigma, int level) {
        double square = Math.scalb(1.0, 2 * level);
        return Math.sqrt((sigma * sigma - (square - 1) / 4) / square);
    }

    private Plane luminance(int level) {
        while (luminance.size() <= level) {
            luminance.add(luminance.get(luminance.size() - 1).half());
        }
        return luminance.get(level);
    }

    private List<Plane> colors(int level) {
        if (colors.isEmpty()) {
            colors.add(List.of(plane(16), plane(8), plane(0)));
        }
        while (colors.size() <= level) {
            colors.add(colors.get(colors.size() - 1).stream().map(Plane::half).toList());
        }
        return colors.get(level);
    }

    private Plane plane(int shift) {
        int[] pixels = picture.pixels();
        float[] light = new float[pixels.length];
        for (int i = 0; i < light.length; i++) {
            light[i] = LinearLight.OF_BYTE[pixels[i] >> shift & 0xff];
        }
        return new Plane(picture.width(), picture.height(), light);
    }
}
