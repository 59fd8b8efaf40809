package umbercard.samples;

import static umbercard.samples.Noise.mix;
import static umbercard.samples.Noise.step;

/** The mill pond: what stands above it turned over, darker and smeared, a skin of thin ice, and the dark bank round it. */
final class Pond {
    /** How much of what is above a height of water shows: more than as much, since the water is seen from above. */
    private static final double SHORTENED = 1.28;

    private final Noise shore = new Noise(51);
    private final Noise ripple = new Noise(52);
    private final Noise ice = new Noise(53);
    private final Noise earth = new Noise(54);

    /** The waterline, by u. */
    double line(double u) {
        return 0.694 + 0.007 * shore.at(u * 1.9, 1, 4) - 0.010 * step(0.5, 1.1, u) + 0.016 * step(0.25, 0, u);
    }

    void bank(Light light) {
        light.between(0.64, 0.74, (u, v, pixel) -> {
            double water = line(u);
            double height = 0.020 + 0.010 * earth.at(u * 5, 3, 4) + 0.004 * earth.at(u * 48, 5, 3);
            double above = v - (water - height);
            double cover = step(-0.0012, 0.0022, above);
            double clod = earth.at(u * 90, v * 150, 4);
            double lightness = 19 + 6 * clod - 7 * step(0.2, 1, above / height);
            light.lay(pixel, Light.color(Math.max(5, lightness), 2.5, 6), cover);
            double hung = step(0.35, 0.9, earth.at(u * 26, v * 40, 3)) * step(0.6, 0.0, above / height);
            light.lay(pixel, Light.color(78, -0.5, -5), 0.75 * hung * cover);
        });
    }

    void water(Light light) {
        Light above = new Light(light.width, light.height);
        System.arraycopy(light.red, 0, above.red, 0, light.red.length);
        System.arraycopy(light.green, 0, above.green, 0, light.green.length);
        System.arraycopy(light.blue, 0, above.blue, 0, light.blue.length);
        double edge = 0.9 * light.pixel();
        light.between(0.66, 1, (u, v, pixel) -> {
            double water = line(u);
            double cover = step(water - edge, water + edge, v);
            if (cover > 0) {
                light.lay(pixel, surface(above, u, v, v - water), cover);
            }
        });
    }

    private double[] surface(Light above, double u, double v, double below) {
        double near = step(0.0, 0.31, below);
        double skin = skin(u, v, below);
        double[] seen = mirrored(above, u, v, below, skin);
        // The steeper one looks down, the less the water gives back (Fresnel, n = 1.333).
        double share = mix(0.55, 0.20, near);
        double[] deep = Light.color(13, -1.5, 1);
        double[] color = Light.mix(deep, seen, share);
        double frost = ice.at(u * 40, v * 120, 3);
        double[] film = Light.color(mix(76, 60, near) + 4 * frost, -1, -4.5);
        return Light.mix(color, film, skin * (0.46 + 0.08 * frost));
    }

    private double[] mirrored(Light above, double u, double v, double below, double skin) {
        double[] sum = new double[3];
        double open = 1 - 0.7 * skin;
        double wave = ripple.at(u * 7, v * 85, 3) + 0.6 * ripple.at(u * 22, v * 210, 2);
        double sway = 0.0016 * (0.2 + 5 * below) * ripple.at(u * 4 + 7, v * 120, 3) * open;
        int samples = 9;
        double smear = 0.004 + 0.050 * below;
        for (int i = 0; i < samples; i++) {
            double spread = (i - (samples - 1) / 2.0) / samples;
            double height = below * SHORTENED + smear * spread + 0.0045 * (0.3 + 4 * below) * wave * open;
            above.sample(u + sway + 0.0012 * spread, line(u) - Math.max(0.001, height), 1.0 / samples, sum);
        }
        return sum;
    }

    /** How much of the water is skinned over, 0..1: out from the shores, thinning toward the open middle. */
    private double skin(double u, double v, double below) {
        double depth = 1 / (0.12 + below);
        double open = step(0.24, 0.06, Math.abs(u - Kiln.MIDDLE));
        double sheets = ice.at(u * 2.1 + 3, depth * 1.1, 5)
                + 0.75 * step(0.06, 0.0, below)
                + 0.45 * step(0.55, 0.15, u)
                - 1.5 * open * step(0.0, 0.03, below)
                - 0.9 * step(0.10, 0.24, below);
        double sheet = step(0.15, 0.30, sheets);
        double streaks = step(0.2, 1.0, ice.at(u * 3, v * 60, 4)) * step(0.02, 0.08, below) * (1 - 0.7 * open);
        double crack = step(0.025, 0.0, Math.abs(ice.at(u * 5 + 20, depth * 2, 3)));
        return Math.min(1, sheet * (0.72 + 0.28 * crack) + 0.12 * streaks);
    }
}
