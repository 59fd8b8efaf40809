package umbercard.spectra;

/**
 * Lights to photograph under. Sources: CIE 15, for standard illuminant A by its formula and for daylight of a correlated
 * color temperature by its three components (tabulated below every 10 nm; typed from memory, then compared with several
 * printed copies); {@link ObserverTest} holds them to the published chromaticities. The LED is our own: a narrow blue
 * peak and a broad yellow hump, as white LEDs have; no standard.
 */
public final class Lights {
    private static final double[] S0 = {
        63.4, 65.8, 94.8, 104.8, 105.9, 96.8, 113.9, 125.6, 125.5, 121.3, 121.3, 113.5, 113.1, 110.8, 106.5, 108.8,
        105.3, 104.4, 100, 96, 95.1, 89.1, 90.5, 90.3, 88.4, 84, 85.1, 81.9, 82.6, 84.9, 81.3, 71.9, 74.3, 76.4, 63.3,
        71.7
    };
    private static final double[] S1 = {
        38.5, 35, 43.4, 46.3, 43.9, 37.1, 36.7, 35.9, 32.6, 27.9, 24.3, 20.1, 16.2, 13.2, 8.6, 6.1, 4.2, 1.9, 0, -1.6,
        -3.5, -3.5, -5.8, -7.2, -8.6, -9.5, -10.9, -10.7, -12, -14, -13.6, -12, -13.3, -12.9, -10.6, -11.6
    };
    private static final double[] S2 = {
        3, 1.2, -1.1, -0.5, -0.7, -1.2, -2.6, -2.9, -2.8, -2.6, -2.6, -1.8, -1.5, -1.3, -1.2, -1, -0.5, -0.3, 0, 0.2,
        0.5, 2.1, 3.2, 4.1, 4.7, 5.1, 6.7, 7.3, 8.6, 9.8, 10.2, 8.3, 9.6, 8.5, 7, 7.6
    };

    /** The factor by which the second radiation constant was revised since D50 and D65 were named. */
    private static final double REVISED = 1.4388 / 1.438;

    public static final Spectrum A = Spectrum.of(
            nm -> 100 * Math.pow(560 / nm, 5) * Math.expm1(1.435e7 / (2848 * 560)) / Math.expm1(1.435e7 / (2848 * nm)));
    public static final Spectrum D50 = daylight(5000 * REVISED);
    public static final Spectrum D55 = daylight(5500 * REVISED);
    public static final Spectrum D65 = daylight(6500 * REVISED);
    public static final Spectrum D75 = daylight(7500 * REVISED);
    public static final Spectrum LED = Spectrum.of(nm -> 100 * hump(nm, 452, 11) + 78 * hump(nm, 575, 62));

    private Lights() {}

    /** Daylight of 4000 to 7000 K or more. */
    public static Spectrum daylight(double kelvin) {
        double k = 1000 / kelvin;
        double x = kelvin <= 7000
                ? ((-4.6070 * k + 2.9678) * k + 0.09911) * k + 0.244063
                : ((-2.0064 * k + 1.9018) * k + 0.24748) * k + 0.237040;
        double y = (-3 * x + 2.870) * x - 0.275;
        double m = 0.0241 + 0.2562 * x - 0.7341 * y;
        double m1 = (-1.3515 - 1.7703 * x + 5.9114 * y) / m;
        double m2 = (0.0300 - 31.4424 * x + 30.0717 * y) / m;
        return Spectrum.of(nm -> {
            int i = (int) (nm - Spectrum.FIRST) / Spectrum.STEP;
            return S0[i] + m1 * S1[i] + m2 * S2[i];
        });
    }

    private static double hump(double nm, double middle, double width) {
        double off = (nm - middle) / width;
        return Math.exp(-off * off / 2);
    }
}
