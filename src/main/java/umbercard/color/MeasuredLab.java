package umbercard.color;

/**
 * CIE 1976 L*a*b* under a white that it names, as instruments and tables give it (usually D50): a type of its own, so that it
 * is never taken for the program's {@link Lab}, which is under D65. Finite, otherwise unbounded.
 *
 * <p>Source: CIE 15 for L*a*b*; {@link WhitePoint#adapt} for the change of white.
 */
public record MeasuredLab(double l, double a, double b, WhitePoint white) {
    public MeasuredLab {
        Cielab.check(l, a, b);
    }

    /** A color as it would be measured under the white after adaptation from D65. */
    public static MeasuredLab of(Lab color, WhitePoint white) {
        return of(WhitePoint.D65.adapt(color.xyz(), white), white);
    }

    /** From tristimulus values under the white. */
    public static MeasuredLab of(Xyz color, WhitePoint white) {
        Xyz lab = Cielab.of(color, white);
        return new MeasuredLab(lab.x(), lab.y(), lab.z(), white);
    }

    /** The tristimulus values under its own white. */
    public Xyz xyz() {
        return Cielab.xyz(l, a, b, white);
    }

    /** The color under D65 after adaptation. */
    public Lab lab() {
        return Lab.ofXyz(white.adapt(xyz(), WhitePoint.D65));
    }
}
