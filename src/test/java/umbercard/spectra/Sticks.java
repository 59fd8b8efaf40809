package umbercard.spectra;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Made-up sticks as smooth spectra: a pigment's band, or what is left beside one, thinned with white or darkened, each from
 * its place in a round of hues. Shares stay between 0.02 and 0.93, edges are 20 nm wide or wider, as those of pigments are.
 */
public final class Sticks {
    private static final double LEAST = 0.02;
    private static final double MOST = 0.93;
    private static final int FAMILIES = 7;

    private Sticks() {}

    /** So many sticks, the same for the same seed; every seventh is nearly neutral. */
    public static List<Spectrum> of(long seed, int count) {
        Random random = new Random(seed);
        List<Spectrum> sticks = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double depth = i % FAMILIES == FAMILIES - 1 ? 0.1 * random.nextDouble() : 0.25 + 0.75 * random.nextDouble();
            sticks.add(stick(i % FAMILIES, random, depth));
        }
        return sticks;
    }

    private static Spectrum stick(int family, Random random, double depth) {
        double shift = 60 * random.nextDouble() - 30;
        double edge = 10 + 18 * random.nextDouble();
        double level = 0.05 + 0.85 * random.nextDouble();
        double low = Math.max(LEAST, level * (1 - depth));
        double high = Math.min(MOST, level * (1 + 0.6 * depth));
        return Spectrum.of(nm -> {
            double shape = switch (family) {
                case 0 -> rise(nm, 605 + shift, edge);
                case 1 -> rise(nm, 530 + shift, edge);
                case 2 -> rise(nm, 485 + shift, edge) * (1 - rise(nm, 575 + shift, 1.5 * edge));
                case 3 -> 1 - rise(nm, 560 + shift / 2, edge);
                case 4 -> 1 - rise(nm, 490 + shift / 2, 1.3 * edge);
                case 5 -> 1 - rise(nm, 470 + shift, edge) * (1 - rise(nm, 620 + shift, edge));
                default -> rise(nm, 560, 60);
            };
            return low + (high - low) * shape;
        });
    }

    private static double rise(double nm, double middle, double width) {
        return 1 / (1 + Math.exp((middle - nm) / width));
    }
}
