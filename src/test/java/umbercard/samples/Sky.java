package umbercard.samples;

import static umbercard.samples.Noise.mix;
import static umbercard.samples.Noise.step;

/** A low winter sky: a deck of soft cloud that grows flatter toward the ridge, and a brighter, warmer band above it. */
final class Sky {
    /** Where the deck of cloud would meet the land. */
    private static final double EYE_LEVEL = 0.40;

    private final Noise large = new Noise(11);
    private final Noise fine = new Noise(12);
    private final Noise drift = new Noise(13);

    void paint(Light light) {
        light.between(0, 0.5, (u, v, pixel) -> light.lay(pixel, color(u, v), 1));
    }

    private double[] color(double u, double v) {
        double depth = 1 / (EYE_LEVEL - Math.min(v, EYE_LEVEL - 0.02) + 0.09);
        double across = (u - 0.62) * depth;
        double warpX = 0.24 * drift.at(across * 0.5, depth * 0.8, 3);
        double warpY = 0.22 * drift.at(across * 0.5 + 40, depth * 0.8, 3);
        double body = large.at(across * 0.55 + warpX, depth * 0.85 + warpY, 5);
        double wisps = fine.at(across * 2.3 + 1.5 * warpX, depth * 3.1 + warpY, 6);
        double cloud = step(-0.55, 0.65, body + 0.46 * wisps);
        double low = step(0.10, 0.375, v);
        double glow = step(0.20, 0.36, v) * (0.72 + 0.28 * step(0.2, 0.9, u));
        double clear = mix(76, 84, low);
        double heavy = mix(62, 73, low) + 5 * wisps + 5 * step(1.0, 1.45, u);
        double lightness = mix(clear, heavy, cloud * (1 - 0.55 * glow)) + 6.5 * glow;
        double a = mix(-1.5, 2.4, glow) + 0.5 * cloud;
        double b = mix(mix(-9, -4.5, cloud), 11, glow);
        return Light.color(Math.min(95, lightness), a, b);
    }
}
