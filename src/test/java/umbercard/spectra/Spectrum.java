package umbercard.spectra;

import java.util.function.DoubleUnaryOperator;

/** Figures for 380 to 730 nm, every 10 nm: what a light gives, or what share of it a surface throws back. */
public record Spectrum(double[] at) {
    public static final int FIRST = 380;
    public static final int STEP = 10;
    public static final int COUNT = 36;

    public static Spectrum of(DoubleUnaryOperator ofWavelength) {
        double[] at = new double[COUNT];
        for (int i = 0; i < COUNT; i++) {
            at[i] = ofWavelength.applyAsDouble(FIRST + STEP * i);
        }
        return new Spectrum(at);
    }

    /** A surface that throws the same share of all light back. */
    public static Spectrum neutral(double share) {
        return of(wavelength -> share);
    }
}
