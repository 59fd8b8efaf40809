package umbercard.color;

/**
 * The sRGB transfer function and its primaries (IEC 61966-2-1), with the exact matrix that follows from the primaries and
 * the white point rather than the four-digit one that the standard prints.
 */
public final class Srgb {
    /** D65 as x 0.3127, y 0.3290, white at Y = 1. */
    static final double[] WHITE = {0.3127 / 0.3290, 1, (1 - 0.3127 - 0.3290) / 0.3290};

    private static final double[][] TO_XYZ = {
        {0.412390799265959, 0.357584339383878, 0.180480788401834},
        {0.212639005871510, 0.715168678767756, 0.072192315360734},
        {0.019330818715592, 0.119194779794626, 0.950532152249661}
    };
    private static final double[][] FROM_XYZ = {
        {3.240969941904521, -1.537383177570093, -0.498610760293003},
        {-0.969243636280879, 1.875967501507720, 0.041555057407175},
        {0.055630079696993, -0.203976958888976, 1.056971514242878}
    };
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
        return TO_XYZ[1][0] * LINEAR_OF_BYTE[rgb >> 16 & 0xff]
                + TO_XYZ[1][1] * LINEAR_OF_BYTE[rgb >> 8 & 0xff]
                + TO_XYZ[1][2] * LINEAR_OF_BYTE[rgb & 0xff];
    }

    /** The component 0..255 nearest to linear light, clipped to 0..1. */
    public static int byteOf(double linear) {
        return (int) Math.round(255 * encode(Math.min(1, Math.max(0, linear))));
    }

    static double[] toXyz(double red, double green, double blue) {
        return times(TO_XYZ, red, green, blue);
    }

    static double[] toLinear(double[] xyz) {
        return times(FROM_XYZ, xyz[0], xyz[1], xyz[2]);
    }

    private static double[] times(double[][] m, double x, double y, double z) {
        double[] product = new double[3];
        for (int i = 0; i < 3; i++) {
            product[i] = m[i][0] * x + m[i][1] * y + m[i][2] * z;
        }
        return product;
    }
}
