package umbercard.color;

/**
 * Munsell value, 0 black to 10 white, and the luminance factor that belongs to it: the quintic of ASTM D1535, in the
 * absolute convention (Y = 100 % at V = 10), inverted by Newton's method. Lightness outside 0..10 does not occur on paper:
 * arguments are clipped.
 *
 * <p>As a record it is a value that is to be said: a message takes it as an argument, and is told in the numbering that the
 * painter was taught ({@link ValueScale}).
 *
 * @param number 0..10
 */
public record MunsellValue(double number) {
    private static final double[] QUINTIC = {0, 1.1914, -0.22533, 0.23352, -0.020484, 0.00081939};

    public MunsellValue {
        if (!(number >= 0 && number <= 10)) {
            throw new IllegalArgumentException("a value is from 0 to 10: " + number);
        }
    }

    /** The value of a color. */
    public static MunsellValue of(Lab color) {
        return new MunsellValue(color.value());
    }

    /** Relative luminance 0..1 of a value 0..10. */
    public static double luminance(double value) {
        double v = Math.min(10, Math.max(0, value));
        double y = 0;
        for (int i = QUINTIC.length - 1; i >= 0; i--) {
            y = y * v + QUINTIC[i];
        }
        return y / 100;
    }

    /** The value 0..10 of a relative luminance 0..1, to 1e-9. */
    public static double ofLuminance(double luminance) {
        double y = Math.min(1, Math.max(0, luminance));
        double v = 10 * Math.sqrt(y);
        for (int i = 0; i < 30; i++) {
            double step = (luminance(v) - y) / slope(v);
            v = Math.min(10, Math.max(0, v - step));
            if (Math.abs(step) < 1e-12) {
                break;
            }
        }
        return v;
    }

    private static double slope(double v) {
        double slope = 0;
        for (int i = QUINTIC.length - 1; i >= 1; i--) {
            slope = slope * v + i * QUINTIC[i];
        }
        return slope / 100;
    }
}
