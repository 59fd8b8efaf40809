package umbercard.photo;

import java.util.Arrays;
import umbercard.color.MunsellValue;
import umbercard.picture.Picture;
import umbercard.picture.ValueField;

/**
 * Light and dark: from colors to luminance, to grays, to two values, and where to split. A <em>split</em> is a Munsell
 * value, 0 black to 10 white (ASTM D1535): what lies below it goes dark. Quick enough for the event thread at a working
 * picture's size.
 */
public final class Values {
    /** The dark of a two-value picture, as {@code 0xRRGGBB}. */
    public static final int DARK = 0x1d1d1d;

    /** The light of a two-value picture, as {@code 0xRRGGBB}: bare card. */
    public static final int LIGHT = FramedView.BARE_CARD;

    private static final int BINS = 1 << 14;

    private Values() {}

    /** The luminance of each pixel. */
    public static ValueField of(Picture picture) {
        int[] pixels = picture.pixels();
        float[] luminance = new float[pixels.length];
        for (int i = 0; i < pixels.length; i++) {
            int rgb = pixels[i];
            luminance[i] = LinearLight.RED[rgb >> 16 & 0xff]
                    + LinearLight.GREEN[rgb >> 8 & 0xff]
                    + LinearLight.BLUE[rgb & 0xff];
        }
        return new ValueField(picture.width(), picture.height(), luminance);
    }

    /** Grays of the same luminance. */
    public static Picture gray(ValueField field) {
        float[] luminance = field.luminance();
        int[] pixels = new int[luminance.length];
        for (int i = 0; i < pixels.length; i++) {
            pixels[i] = LinearLight.grayOf(luminance[i]);
        }
        return new Picture(field.width(), field.height(), pixels);
    }

    /** {@link #twoValues(ValueField, double, int, int)} in {@link #DARK} and {@link #LIGHT}. */
    public static Picture twoValues(ValueField field, double split) {
        return twoValues(field, split, DARK, LIGHT);
    }

    /** What lies below the split in one color, the rest in the other, both as {@code 0xRRGGBB}. */
    public static Picture twoValues(ValueField field, double split, int dark, int light) {
        double border = MunsellValue.luminance(split);
        float[] luminance = field.luminance();
        int[] pixels = new int[luminance.length];
        for (int i = 0; i < pixels.length; i++) {
            pixels[i] = luminance[i] < border ? dark : light;
        }
        return new Picture(field.width(), field.height(), pixels);
    }

    /** The field in a few values, each in the gray of its step. */
    public static Picture inSteps(ValueField field, ValueSteps steps) {
        float[] borders = new float[steps.borders().size()];
        for (int i = 0; i < borders.length; i++) {
            borders[i] = (float) MunsellValue.luminance(steps.borders().get(i));
        }
        int[] grays = new int[steps.values().size()];
        for (int i = 0; i < grays.length; i++) {
            grays[i] = LinearLight.grayOf(
                    (float) MunsellValue.luminance(steps.values().get(i)));
        }
        float[] luminance = field.luminance();
        int[] pixels = new int[luminance.length];
        for (int i = 0; i < pixels.length; i++) {
            int step = 0;
            for (float border : borders) {
                step += luminance[i] < border ? 0 : 1;
            }
            pixels[i] = grays[step];
        }
        return new Picture(field.width(), field.height(), pixels);
    }

    /** The share of the field, 0..1, that lies below a Munsell value. */
    public static double shareBelow(ValueField field, double value) {
        double border = MunsellValue.luminance(value);
        int below = 0;
        for (float sample : field.luminance()) {
            if (sample < border) {
                below++;
            }
        }
        return (double) below / field.luminance().length;
    }

    /**
     * The split that leaves the share of the field nearest to {@code share} below it: midway between the two samples that it
     * parts; 0 or 10 where all or nothing lies above it.
     *
     * @param share 0..1
     */
    public static double splitForShare(ValueField field, double share) {
        float[] luminance = field.luminance();
        long wanted = Math.round(Math.min(1, Math.max(0, share)) * luminance.length);
        int[] histogram = new int[BINS];
        for (float sample : luminance) {
            histogram[bin(sample)]++;
        }
        int bin = 0;
        long below = 0;
        while (bin < BINS - 1 && below + histogram[bin] < wanted) {
            below += histogram[bin++];
        }
        return between(luminance, bin, wanted - below);
    }

    /** The split among the samples of one bin and their neighbors, {@code rank} samples into the bin. */
    private static double between(float[] luminance, int bin, long rank) {
        float[] inside = new float[luminance.length];
        int count = 0;
        float before = Float.NEGATIVE_INFINITY;
        float after = Float.POSITIVE_INFINITY;
        for (float sample : luminance) {
            int its = bin(sample);
            if (its == bin) {
                inside[count++] = sample;
            } else if (its < bin) {
                before = Math.max(before, sample);
            } else {
                after = Math.min(after, sample);
            }
        }
        Arrays.sort(inside, 0, count);
        // A run of equal samples goes all to one side: to the side that leaves the share nearer.
        int from = (int) Math.min(rank, count);
        int down = from;
        while (down > 0 && down < count && inside[down - 1] == inside[down]) {
            down--;
        }
        int up = from;
        while (up > 0 && up < count && inside[up - 1] == inside[up]) {
            up++;
        }
        int cut = from - down <= up - from ? down : up;
        float lower = cut > 0 ? inside[cut - 1] : before;
        float upper = cut < count ? inside[cut] : after;
        if (lower == Float.NEGATIVE_INFINITY) {
            return 0;
        }
        return upper == Float.POSITIVE_INFINITY ? 10 : MunsellValue.ofLuminance(((double) lower + upper) / 2);
    }

    private static int bin(float sample) {
        return Math.min(BINS - 1, Math.max(0, (int) (sample * BINS)));
    }

    /**
     * The split that parts the field's Munsell values best by N. Otsu, "A Threshold Selection Method from Gray-Level
     * Histograms", IEEE Trans. Systems, Man, and Cybernetics 9(1), 1979. A field of a single level splits in the middle,
     * at 5.
     */
    public static double otsu(ValueField field) {
        return ValueCurve.of(field).otsu();
    }
}
