package umbercard.photo;

import java.util.List;
import java.util.Optional;
import umbercard.kernel.EventThread;
import umbercard.picture.Picture;
import umbercard.picture.ValueField;

/**
 * One picture, squinted at again and again. Its light is kept at full size and at halves of it, made once; each blur is done
 * on the smallest of them at which it still has 1.5 samples of sigma or more, and enlarged. Halving and enlarging
 * blur by themselves, and what they add to the variance is left out of the blur between, so the mean error against a true
 * Gaussian stays under 1 L* from a radius of 4 pixels on; a smaller one is done at full size, where only the cut at four sigma
 * is left out. Uses all processors, but is not itself to be used by two threads at once.
 *
 * <p>Idea: P. J. Burt, "Fast Filter Transforms for Image Processing", Computer Graphics and Image Processing 16, 1981.
 */
public final class SquintPyramid {
    /**
     * Colors as squinted at.
     *
     * @param curve of their values
     */
    public record Colors(Picture picture, ValueCurve curve) {}

    private final Picture picture;
    private final ValueField values;
    private final Pyramid luminance;
    private Optional<Pyramid> colors = Optional.empty();

    /** The pyramid of a picture; the halves are made when they are first wanted. */
    public SquintPyramid(Picture picture) {
        this.picture = picture;
        this.values = Values.of(picture);
        luminance = new Pyramid(List.of(new Plane(picture.width(), picture.height(), values.luminance())));
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
        Plane plane = squint(way, sigma, luminance).whole().get(0);
        return new ValueField(plane.width(), plane.height(), plane.samples());
    }

    /**
     * The colors, squinted at.
     *
     * @param sigma the blur's standard deviation in pixels, 0 or more; 0 gives the same picture
     * @throws IllegalStateException on the event thread
     */
    public Colors colors(SquintWay way, double sigma) {
        check(sigma);
        if (sigma == 0) {
            return new Colors(picture, ValueCurve.of(values));
        }
        Rows rows = squint(way, sigma, colors());
        int width = picture.width();
        int[] pixels = new int[width * picture.height()];
        ValueCurve.Counts counts = new ValueCurve.Counts();
        Bands.each(picture.height(), (from, to) -> {
            Rows.Maker maker = rows.maker();
            float[][] light = new float[3][width];
            int[] own = counts.ofBand();
            for (int y = from; y < to; y++) {
                maker.make(y, light);
                encode(light, pixels, y * width, own);
            }
            counts.add(own);
        });
        return new Colors(new Picture(width, picture.height(), pixels), counts.curve());
    }

    private static void encode(float[][] light, int[] pixels, int at, int[] counts) {
        float[] red = light[0];
        float[] green = light[1];
        float[] blue = light[2];
        for (int x = 0; x < red.length; x++) {
            pixels[at + x] = LinearLight.rgbOf(red[x], green[x], blue[x]);
            ValueCurve.Counts.count(LinearLight.luminance(red[x], green[x], blue[x]), counts);
        }
    }

    private static void check(double sigma) {
        EventThread.refuse("squinting");
        if (!(sigma >= 0) || !Double.isFinite(sigma)) {
            throw new IllegalArgumentException("a blur's sigma is 0 or more: " + sigma);
        }
    }

    private Rows squint(SquintWay way, double sigma, Pyramid pyramid) {
        return switch (way) {
            case GAUSSIAN -> pyramid.blurred(sigma, 0);
            case KEEPING_EDGES -> new EdgeKeeping(luminance, pyramid, sigma);
        };
    }

    private Pyramid colors() {
        Pyramid made = colors.orElseGet(() -> new Pyramid(List.of(plane(16), plane(8), plane(0))));
        colors = Optional.of(made);
        return made;
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
