package umbercard.color;

/**
 * Which colors sRGB can show, and what stands in for the others: the color of the same lightness L* and hue h*ab with as
 * much chroma as the gamut takes. Clipping each channel by itself would be nearer to hand, but it changes value and hue, which
 * a painter reads off the picture; giving up chroma alone is the textbook way to keep both (J. Morovič, Color Gamut Mapping,
 * 2008: chroma reduction at constant lightness and hue). Lines of equal h*ab are not quite lines of equal hue among deep
 * blues, so that these come out a little toward violet.
 */
public final class Gamut {
    /** How far beyond 0..1 linear light may lie and still count as inside: what arithmetic may leave. */
    private static final double SLACK = 1e-9;

    private static final int HALVINGS = 50;

    private Gamut() {}

    /** Whether sRGB can show the color. */
    public static boolean holds(Lab color) {
        Xyz linear = Srgb.toLinear(color.xyz());
        return holds(linear.x()) && holds(linear.y()) && holds(linear.z());
    }

    private static boolean holds(double light) {
        return light >= -SLACK && light <= 1 + SLACK;
    }

    /** The color itself if sRGB can show it, else one of less chroma; lighter than white is white, darker than black black. */
    public static Lab nearest(Lab color) {
        if (holds(color)) {
            return color;
        }
        if (color.l() <= 0 || color.l() >= 100) {
            return Lab.gray(color.l() <= 0 ? 0 : 100);
        }
        double in = 0;
        double out = 1;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (in + out) / 2;
            if (holds(faded(color, middle))) {
                in = middle;
            } else {
                out = middle;
            }
        }
        return faded(color, in);
    }

    private static Lab faded(Lab color, double part) {
        return new Lab(color.l(), part * color.a(), part * color.b());
    }
}
