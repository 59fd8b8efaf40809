package umbercard.color;

/**
 * The sRGB transfer function and its primaries (IEC 61966-2-1), with the exact matrix that follows from the primaries and
 * the white point rather than the four-digit one that the standard prints.
 */
public final class Srgb {
    static final Matrix TO_XYZ = new Matrix(
            0.412390799265959,
            0.357584339383878,
            0.180480788401834,
            0.212639005871510,
            0.715168678767756,
            0.072192315360734,
            0.019330818715592,
            0.119194779794626,
            0.950532152249661);
    private static final Matrix FROM_XYZ = TO_XYZ.inverse();
    private static final double[] LINEAR_OF_BYTE = new double[256];

    static {
        for (int i = 0; i < 256; i++) {
            LINEAR_OF_BYTE[i] = decode(i / 255.0);
        }
    }

    private Srgb() {}

    /** Linear light 0..1 of an encoded component 0..1. */
    public static double decode(double encoded) {
        return encoded <= 0.04045 ? encoded / 12.92 : StrictMath.pow((encoded + 0.055) / 1.055, 2.4);
    }

    /** The encoded component 0..1 of linear light 0..1. */
    public static double encode(double linear) {
        return linear <= 0.0031308 ? 12.92 * linear : 1.055 * StrictMath.pow(linear, 1 / 2.4) - 0.055;
    }

    /** Linear light 0..1 of a component 0..255. */
    public static double linear(int component) {
        return LINEAR_OF_BYTE[component];
    }

    /** Relative luminance Y, 0..1, of a triple packed as {@code 0xRRGGBB}. */
    public static double luminance(int rgb) {
        return TO_XYZ.d() * LINEAR_OF_BYTE[rgb >> 16 & 0xff]
                + TO_XYZ.e() * LINEAR_OF_BYTE[rgb >> 8 & 0xff]
                + TO_XYZ.f() * LINEAR_OF_BYTE[rgb & 0xff];
    }

    /** The component 0..255 nearest to linear light, clipped to 0..1. */
    public static int byteOf(double linear) {
        return (int) Math.round(255 * encode(Math.min(1, Math.max(0, linear))));
    }

    /** Linear light of red, green and blue, in this order; beyond 0..1 outside the gamut. */
    static Xyz toLinear(Xyz color) {
        return FROM_XYZ.times(color);
    }
}
