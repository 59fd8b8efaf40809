package umbercard.color;

/**
 * The CIEDE2000 color difference, with all three weights 1. About 1 is just seen side by side. Symmetric, 0 for equal
 * colors, but no distance: the triangle rule does not hold.
 *
 * <p>Source: G. Sharma, W. Wu, E. N. Dalal, The CIEDE2000 Color-Difference Formula: Implementation Notes, Supplementary
 * Test Data, and Mathematical Observations, Color Research and Application 30(1), 2005, 21–30; numbers in brackets are its
 * equations.
 */
public final class Ciede2000 {
    private static final double C7 = Math.pow(25, 7);

    private Ciede2000() {}

    /**
     * What a difference is made of, each part in units of the difference and signed: positive where the other color is
     * lighter, has more chroma, or its hue lies at the larger angle the short way round (from red by yellow, green and blue).
     *
     * @param lightness &Delta;L' over its weight, the first term of (22)
     * @param chroma &Delta;C' over its weight
     * @param hue &Delta;H' over its weight; 0 where either color is gray
     * @param turning what chroma and hue together add or take away among the blues, the last term of (22)
     */
    public record Parts(double lightness, double chroma, double hue, double turning) {
        /** The whole difference, 0 or more. */
        public double total() {
            return Math.sqrt(Math.max(0, lightness * lightness + chroma * chroma + hue * hue + turning)); // (22)
        }
    }

    /** The difference of two colors, 0 or more. */
    public static double difference(Lab one, Lab other) {
        return parts(one, other).total();
    }

    /** The parts of the difference, as seen from {@code one}. */
    public static Parts parts(Lab one, Lab other) {
        double stretch = stretch((one.chroma() + other.chroma()) / 2);
        double a1 = stretch * one.a();
        double a2 = stretch * other.a();
        double c1 = Math.hypot(a1, one.b()); // (6)
        double c2 = Math.hypot(a2, other.b());
        double h1 = hue(a1, one.b()); // (7)
        double h2 = hue(a2, other.b());

        double lightness = other.l() - one.l(); // (8)
        double chroma = c2 - c1; // (9)
        double hue = 2 * Math.sqrt(c1 * c2) * sine(turn(c1 * c2, h1, h2) / 2); // (11)

        double meanLightness = (one.l() + other.l()) / 2; // (12)
        double meanChroma = (c1 + c2) / 2; // (13)
        double meanHue = meanHue(c1 * c2, h1, h2);

        double fifty = (meanLightness - 50) * (meanLightness - 50);
        double l = lightness / (1 + 0.015 * fifty / Math.sqrt(20 + fifty)); // (18)
        double c = chroma / (1 + 0.045 * meanChroma); // (19)
        double h = hue / (1 + 0.015 * meanChroma * hueWeight(meanHue)); // (20)
        return new Parts(l, c, h, rotation(meanChroma, meanHue) * c * h);
    }

    /** 1 + G: how far the red-green axis is stretched near gray (4, 5). */
    private static double stretch(double meanChroma) {
        return 1 + 0.5 * (1 - Math.sqrt(seventh(meanChroma)));
    }

    private static double seventh(double chroma) {
        double c7 = chroma * chroma * chroma * chroma * chroma * chroma * chroma;
        return c7 / (c7 + C7);
    }

    private static double hue(double a, double b) {
        double degrees = Math.toDegrees(StrictMath.atan2(b, a));
        return degrees < 0 ? degrees + 360 : degrees;
    }

    /** From the one hue to the other the short way round, 0 where either is gray (10). */
    private static double turn(double chromas, double h1, double h2) {
        if (chromas == 0) {
            return 0;
        }
        double turn = h2 - h1;
        if (turn > 180) {
            return turn - 360;
        }
        return turn < -180 ? turn + 360 : turn;
    }

    /** The hue half way on the short way round; the sum where either is gray (14). */
    private static double meanHue(double chromas, double h1, double h2) {
        if (chromas == 0) {
            return h1 + h2;
        }
        double mean = (h1 + h2) / 2;
        if (Math.abs(h1 - h2) <= 180) {
            return mean;
        }
        return mean < 180 ? mean + 180 : mean - 180;
    }

    /** T (15). */
    private static double hueWeight(double hue) {
        return 1
                - 0.17 * cosine(hue - 30)
                + 0.24 * cosine(2 * hue)
                + 0.32 * cosine(3 * hue + 6)
                - 0.20 * cosine(4 * hue - 63);
    }

    /** R_T, which joins chroma and hue among the blues (16, 17, 21). */
    private static double rotation(double meanChroma, double meanHue) {
        double blue = (meanHue - 275) / 25;
        double angle = 30 * StrictMath.exp(-blue * blue);
        return -sine(2 * angle) * 2 * Math.sqrt(seventh(meanChroma));
    }

    private static double sine(double degrees) {
        return StrictMath.sin(Math.toRadians(degrees));
    }

    private static double cosine(double degrees) {
        return StrictMath.cos(Math.toRadians(degrees));
    }
}
