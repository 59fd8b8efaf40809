package umbercard.photo;

import umbercard.color.Lab;
import umbercard.picture.ValueField;

/**
 * CIE 1976 L* (CIE 15) by a table of {@value #STEPS} luminances, the same on every machine and within 0.01 L* of the
 * formula.
 */
public final class Lightness {
    private static final int STEPS = 1 << 16;
    private static final float[] OF = table();

    private Lightness() {}

    private static float[] table() {
        float[] table = new float[STEPS];
        for (int i = 0; i < STEPS; i++) {
            table[i] = (float) Lab.lightness(i / (STEPS - 1.0));
        }
        return table;
    }

    /** L*, 0 black to 100 white, of a relative luminance, clipped to 0..1. */
    public static float of(float luminance) {
        return OF[Math.min(STEPS - 1, Math.max(0, (int) (luminance * (STEPS - 1) + 0.5f)))];
    }

    /** L* of each sample, row after row. */
    public static float[] of(ValueField field) {
        return of(field.luminance());
    }

    static float[] of(float[] luminance) {
        float[] lightness = new float[luminance.length];
        for (int i = 0; i < lightness.length; i++) {
            lightness[i] = of(luminance[i]);
        }
        return lightness;
    }
}
