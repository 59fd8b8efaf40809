package umbercard.color;

import java.util.Optional;

/**
 * CIE 1931 tristimulus values, 2° observer, relative: the white has {@code y} 1, black is 0, 0, 0. Under which white they
 * were measured is told by whoever holds them. Finite, otherwise unbounded.
 */
public record Xyz(double x, double y, double z) {
    public Xyz {
        if (!Double.isFinite(x) || !Double.isFinite(y) || !Double.isFinite(z)) {
            throw new IllegalArgumentException("tristimulus values are finite: " + x + ", " + y + ", " + z);
        }
    }

    /** Of linear light in sRGB's primaries, each 0..1, under D65 (IEC 61966-2-1). */
    public static Xyz ofLinear(double red, double green, double blue) {
        return Srgb.TO_XYZ.times(red, green, blue);
    }

    /** Chromaticity and luminance; empty for black, which has no chromaticity. */
    public Optional<Xyy> xyy() {
        double sum = x + y + z;
        return sum > 0 && y > 0 ? Optional.of(new Xyy(x / sum, y / sum, y)) : Optional.empty();
    }
}
