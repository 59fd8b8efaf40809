package umbercard.samples;

import static umbercard.samples.Noise.mix;
import static umbercard.samples.Noise.step;

/** Far ridges in cool grays, dark woods along their foot, and the snow slope that the kiln stands against. */
final class Hills {
    private final Noise form = new Noise(21);
    private final Noise grain = new Noise(22);
    private final Noise woods = new Noise(23);
    private final Noise snow = new Noise(24);

    void paint(Light light) {
        ridge(light, 0, 0.318, 0.030, 1.3, 74, -5);
        ridge(light, 7, 0.345, 0.026, 2.1, 65, -6.5);
        ridge(light, 19, 0.372, 0.018, 2.9, 55, -6);
        woods(light);
        slope(light);
        hedge(light);
    }

    private void ridge(Light light, int which, double base, double rise, double fine, double lightness, double b) {
        light.between(0.2, 0.6, (u, v, pixel) -> {
            double crest =
                    base - rise * form.at(u * fine + which, which, 5) - 0.02 * step(0.9, 0.1, u) * (which == 0 ? 1 : 0);
            double edge = 1.4 * light.pixel();
            double cover = step(crest - edge, crest + edge, v);
            if (cover <= 0) {
                return;
            }
            double below = v - crest;
            double trees = grain.at(u * 55 + which, v * 120, 4) * step(0, 0.012, below);
            double fields = step(0.15, 0.6, form.at(u * 5 + 3 * which, v * 26, 3)) * step(0.004, 0.02, below);
            double mist = 9 * step(0, 0.07, below);
            light.lay(pixel, Light.color(lightness + 3 * trees + 9 * fields + mist, -1, b), cover);
        });
    }

    /** Woods at the foot of the ridges: bare crowns above, a solid dark below. */
    private void woods(Light light) {
        light.between(0.3, 0.6, (u, v, pixel) -> {
            double hill = hill(u);
            double base = 0.425 + 0.012 * form.at(u * 1.7, 31, 2);
            double height = 0.044 + 0.026 * form.at(u * 2.3, 33, 3) + 0.026 * step(0.75, 0.1, u);
            double crowns = 0.013 * woods.at(u * 30, 5, 3) + 0.006 * Math.abs(woods.at(u * 110, 7, 2));
            double crest = base - height - crowns;
            double fuzz = 0.5 * woods.at(u * 240, v * 150, 3);
            double cover = step(-0.004, 0.012, v - crest + 0.006 * fuzz);
            if (cover <= 0 || v > hill + 0.02) {
                return;
            }
            double trunks = woods.at(u * 170, v * 24, 3);
            double lightness = 25 + 6 * trunks + 8 * step(0.02, 0.0, v - crest) + 5 * form.at(u * 12, v * 30 + 60, 3);
            light.lay(pixel, Light.color(lightness, 0.5, -2.5), cover * (0.93 - 0.07 * fuzz));
        });
    }

    /** Where the snow slope begins, by u: low on the left, the hill itself on the right. */
    static double hillLine(double u) {
        return mix(0.437, 0.285, step(0.22, 1.32, u)) - 0.012 * step(1.0, 1.5, u);
    }

    private double hill(double u) {
        return hillLine(u) + 0.007 * form.at(u * 3.1, 41, 4);
    }

    private void slope(Light light) {
        light.between(0.25, 1, (u, v, pixel) -> {
            double crest = hill(u);
            double edge = 1.2 * light.pixel();
            double cover = step(crest - edge, crest + edge, v);
            if (cover <= 0) {
                return;
            }
            light.lay(pixel, snowColor(u, v, v - crest), cover);
        });
    }

    private double[] snowColor(double u, double v, double below) {
        double near = step(0.28, 0.72, v);
        double across = u * mix(5.2, 2.6, near);
        double down = v * mix(22, 11, near) - 2.2 * u;
        double wind = snow.at(across, down, 4);
        double windRight = snow.at(across + 0.10, down - 0.16, 4);
        double turned = (wind - windRight) * 2.6;
        double hollow = step(0.1, 1.1, snow.at(u * 1.5 + 9, v * 4.5 - 1.4 * u, 3));
        double crust = snow.at(u * 70, v * 160, 3);
        double lightness =
                92.5 - 9.5 * step(-0.05, 0.9, turned) + 2.2 * step(0.0, -0.8, turned) - 10 * hollow + 0.9 * crust;
        lightness -= 5 * step(0.06, 0, below) * step(0.5, 1.2, u);
        double shade = step(94, 76, lightness);
        return Light.color(lightness, mix(0.4, -0.6, shade), mix(2.2, -7.5, shade));
    }

    /** An old hedge and wall that climb the hill: broken, half under snow. */
    private void hedge(Light light) {
        light.between(0.28, 0.6, (u, v, pixel) -> {
            double line = 0.475 - 0.21 * (u - 0.62) + 0.010 * form.at(u * 6, 51, 3);
            double gaps = step(-0.35, 0.25, form.at(u * 9, 53, 3));
            double height = (0.009 + 0.006 * woods.at(u * 60, 55, 3)) * gaps;
            double cover = step(-0.0015, 0.0015, v - line + height) * step(0.002, -0.001, v - line);
            double ragged = step(-0.4, 0.5, woods.at(u * 300, v * 260, 2) + 0.5);
            if (u > 0.35 && u < 1.5) {
                light.lay(pixel, Light.color(33, 2, 2), 0.85 * cover * ragged * step(0.35, 0.5, u));
            }
        });
    }
}
