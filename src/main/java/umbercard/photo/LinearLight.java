package umbercard.photo;

import umbercard.color.Srgb;

/** Tables between encoded sRGB components and linear light, so that no pixel costs a power. */
final class LinearLight {
    /** Linear light 0..1 of an 8-bit component. */
    static final float[] OF_BYTE = table(256);

    /** Luminance 0..1 that an 8-bit red, green or blue adds. */
    static final float[] RED = luminance(16);

    static final float[] GREEN = luminance(8);
    static final float[] BLUE = luminance(0);

    private static final float ALL_RED = RED[255];
    private static final float ALL_GREEN = GREEN[255];
    private static final float ALL_BLUE = BLUE[255];

    private static final int STEPS = 1 << 16;
    private static final byte[] TO_BYTE = encoded();

    private LinearLight() {}

    /** Linear light 0..1 of a 16-bit component; made when the first deep picture is read. */
    static float[] ofShort() {
        return Deep.TABLE;
    }

    /** The 8-bit component nearest to linear light, clipped to 0..1; a hair beside an exact half it may be the next one. */
    static int byteOf(float linear) {
        int at = (int) (linear * (STEPS - 1) + 0.5f);
        return TO_BYTE[Math.min(STEPS - 1, Math.max(0, at))] & 0xff;
    }

    /** The nearest sRGB triple, packed as {@code 0xRRGGBB}. */
    static int rgbOf(float red, float green, float blue) {
        return byteOf(red) << 16 | byteOf(green) << 8 | byteOf(blue);
    }

    /** Luminance 0..1 of linear light. */
    static float luminance(float red, float green, float blue) {
        return ALL_RED * red + ALL_GREEN * green + ALL_BLUE * blue;
    }

    /** The gray of linear light, packed as {@code 0xRRGGBB}. */
    static int grayOf(float linear) {
        return byteOf(linear) * 0x010101;
    }

    private static float[] table(int levels) {
        float[] table = new float[levels];
        for (int i = 0; i < levels; i++) {
            table[i] = (float) Srgb.decode(i / (levels - 1.0));
        }
        return table;
    }

    private static float[] luminance(int shift) {
        float[] table = new float[256];
        for (int i = 0; i < 256; i++) {
            table[i] = (float) Srgb.luminance(i << shift);
        }
        return table;
    }

    private static byte[] encoded() {
        byte[] table = new byte[STEPS];
        for (int i = 0; i < STEPS; i++) {
            table[i] = (byte) Srgb.byteOf(i / (STEPS - 1.0));
        }
        return table;
    }

    private static final class Deep {
        static final float[] TABLE = table(1 << 16);
    }
}
