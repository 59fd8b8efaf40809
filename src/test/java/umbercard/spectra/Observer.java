package umbercard.spectra;

import umbercard.color.Lab;

/**
 * The CIE 1931 standard observer (2°), tabulated in CIE 15 every 10 nm (typed from memory, then compared with several
 * printed copies), and CIE 1976 L*a*b* by its formula, so that nothing of the program's own arithmetic is used.
 */
public final class Observer {
    private static final double[][] MATCHING = {
        {
            0.0014, 0.0042, 0.0143, 0.0435, 0.1344, 0.2839, 0.3483, 0.3362, 0.2908, 0.1954, 0.0956, 0.0320, 0.0049,
            0.0093, 0.0633, 0.1655, 0.2904, 0.4334, 0.5945, 0.7621, 0.9163, 1.0263, 1.0622, 1.0026, 0.8544, 0.6424,
            0.4479, 0.2835, 0.1649, 0.0874, 0.0468, 0.0227, 0.0114, 0.0058, 0.0029, 0.0014
        },
        {
            0.0000, 0.0001, 0.0004, 0.0012, 0.0040, 0.0116, 0.0230, 0.0380, 0.0600, 0.0910, 0.1390, 0.2080, 0.3230,
            0.5030, 0.7100, 0.8620, 0.9540, 0.9950, 0.9950, 0.9520, 0.8700, 0.7570, 0.6310, 0.5030, 0.3810, 0.2650,
            0.1750, 0.1070, 0.0610, 0.0320, 0.0170, 0.0082, 0.0041, 0.0021, 0.0010, 0.0005
        },
        {
            0.0065, 0.0201, 0.0679, 0.2074, 0.6456, 1.3856, 1.7471, 1.7721, 1.6692, 1.2876, 0.8130, 0.4652, 0.2720,
            0.1582, 0.0782, 0.0422, 0.0203, 0.0087, 0.0039, 0.0021, 0.0017, 0.0011, 0.0008, 0.0003, 0.0002, 0, 0, 0, 0,
            0, 0, 0, 0, 0, 0, 0
        }
    };

    private Observer() {}

    /** X, Y, Z of a surface under a light, where a surface that throws all light back has Y = 1. */
    public static double[] xyz(Spectrum surface, Spectrum light) {
        double[] xyz = new double[3];
        double whole = 0;
        for (int i = 0; i < Spectrum.COUNT; i++) {
            whole += MATCHING[1][i] * light.at()[i];
            for (int k = 0; k < 3; k++) {
                xyz[k] += MATCHING[k][i] * light.at()[i] * surface.at()[i];
            }
        }
        for (int k = 0; k < 3; k++) {
            xyz[k] /= whole;
        }
        return xyz;
    }

    public static double[] white(Spectrum light) {
        return xyz(Spectrum.neutral(1), light);
    }

    /** What the surface looks like under D65: what a photograph under any light should tell. */
    public static Lab trueColor(Spectrum surface) {
        double[] xyz = xyz(surface, Lights.D65);
        double[] white = white(Lights.D65);
        double fx = root(xyz[0] / white[0]);
        double fy = root(xyz[1] / white[1]);
        double fz = root(xyz[2] / white[2]);
        return new Lab(116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz));
    }

    private static double root(double t) {
        double least = 6.0 / 29;
        return t > least * least * least ? Math.cbrt(t) : t / (3 * least * least) + 4.0 / 29;
    }
}
