package umbercard.samples;

import static umbercard.samples.Noise.mix;
import static umbercard.samples.Noise.step;

/** The old lime kiln: a tapering tower of rough stone with its draw arch, a broken wall beside it, snow on every ledge. */
final class Kiln {
    static final double MIDDLE = 1.0;
    static final double TOP = 0.356;
    static final double FOOT = 0.640;

    private static final double ARCH_FOOT = 0.632;
    private static final double ARCH_SPRING = 0.568;
    private static final double ARCH_HALF = 0.044;

    private final Noise rough = new Noise(31);
    private final Noise stones = new Noise(32);
    private final Noise stains = new Noise(33);
    private final Noise drift = new Noise(34);

    void paint(Light light) {
        shadow(light);
        wall(light, 0.730, 0.925, 0.585, 0.648);
        wall(light, 1.085, 1.290, 0.535, 0.640);
        tower(light);
        drifts(light);
    }

    private double half(double v) {
        return mix(0.084, 0.122, (v - TOP) / (FOOT - TOP)) + 0.0022 * rough.at(v * 60, 3, 3);
    }

    private double rim(double u, double side) {
        double broken = 0.016 * step(0.30, 0.95, side) + 0.008 * step(-0.6, -0.95, side);
        return TOP + 0.004 * rough.at(u * 26, 9, 3) + broken;
    }

    private void tower(Light light) {
        light.between(TOP - 0.04, FOOT + 0.03, (u, v, pixel) -> {
            double side = (u - MIDDLE) / half(v);
            double rim = TOP
                    + 0.004 * rough.at(u * 26, 9, 3)
                    + 0.016 * step(0.30, 0.95, side)
                    + 0.008 * step(-0.6, -0.95, side);
            double edge = 1.3 * light.pixel();
            double cover = step(rim - edge, rim + edge, v) * step(1 + edge / 0.1, 1 - edge / 0.1, Math.abs(side));
            if (cover <= 0) {
                return;
            }
            light.lay(pixel, arch(u, v, stone(u, v, side)), cover);
        });
        light.between(TOP - 0.04, TOP + 0.06, (u, v, pixel) -> {
            double side = (u - MIDDLE) / half(v);
            double cap = 0.0115 + 0.0045 * rough.at(u * 34, 13, 3);
            double above = v - rim(u, side);
            double ends = step(1.02, 0.99, Math.abs(side));
            double cover = step(-0.0022, -0.0012, above) * step(cap, 0.6 * cap, above) * ends;
            light.lay(
                    pixel,
                    Light.color(84 + 3 * rough.at(u * 60, v * 90, 3) - 5 * step(0.4, 1, above / cap), -0.6, -4.5),
                    cover);
        });
    }

    private double[] stone(double u, double v, double side) {
        double course = 0.0125;
        double bend = 0.004 * side * side + 0.003 * rough.at(u * 9, v * 9, 2);
        double row = (v - bend) / course + 0.55 * rough.at(u * 21, v * 34, 2);
        int j = (int) Math.floor(row);
        double length = 0.013 + 0.017 * stones.cell(j, 77);
        double column = Math.asin(Math.max(-0.99, Math.min(0.99, side * 0.93))) * 0.1 / length
                + stones.cell(j, 5) * 9
                + 0.45 * rough.at(u * 40 + 9, v * 60, 2);
        int i = (int) Math.floor(column);
        double joint = Math.min(Math.min(row - j, j + 1 - row) * course, Math.min(column - i, i + 1 - column) * length);
        double own = stones.cell(i, j);
        double surface = rough.at(u * 190, v * 190, 4);
        double stain = stains.at(u * 11, v * 5, 4);
        double round = 9.5 * step(0.1, -0.95, side) + 2 - 7 * step(0.05, 1, side);
        double lightness = 20 + 9 * (own - 0.5) + 3.2 * surface - 4 * stain + round;
        lightness -= 6 * step(0.0020, 0.0003, joint + 0.0006 * surface);
        double dust = step(0.45, 1.0, own + 0.3 * surface)
                * step(0.40, 0.10, row - j + 0.15 * surface)
                * step(-0.5, 0.9, stain);
        double[] color = Light.color(Math.max(4, lightness), 1.2, 4.5 + 2 * stain);
        return Light.mix(color, Light.color(72, -0.5, -4), 0.55 * dust);
    }

    /** The draw arch: a ring of long stones round a hole that gives back next to no light. */
    private double[] arch(double u, double v, double[] stone) {
        double x = (u - MIDDLE + 0.012) / ARCH_HALF;
        double out = v > ARCH_SPRING ? Math.abs(x) : Math.hypot(x, (v - ARCH_SPRING) / (ARCH_HALF * 1.12));
        if (v > ARCH_FOOT + 0.02) {
            return stone;
        }
        double ring = step(1.32, 1.26, out);
        double turn = Math.atan2(v - ARCH_SPRING, x * ARCH_HALF) * 5.2;
        double block = stones.cell((int) Math.floor(turn), v > ARCH_SPRING ? (int) (v * 70) : 0);
        double gap = step(0.06, 0.16, Math.abs(turn - Math.rint(turn)));
        double[] voussoir = Light.color(17 + 10 * block + 3 * rough.at(u * 190, v * 190, 3) - 7 * (1 - gap), 1, 4);
        double[] hole = Light.color(mix(3, 9, step(ARCH_SPRING, ARCH_FOOT, v)), 0.5, 1);
        return Light.mix(Light.mix(stone, voussoir, 0.8 * ring), hole, step(1.04, 0.97, out));
    }

    /** The shadow that the tower throws on the snow beside it, soft under a veiled sun. */
    private void shadow(Light light) {
        light.between(0.40, 0.66, (u, v, pixel) -> {
            double along = (u - MIDDLE) - 0.55 * (0.635 - v);
            double deep = step(0.42, 0.62, v) * step(-0.12, 0.02, along) * step(0.40, 0.16, along);
            double soft = deep * (0.85 + 0.15 * drift.at(u * 8, v * 20, 2));
            light.lay(pixel, Light.color(62, -0.8, -9.5), 0.85 * soft);
        });
    }

    /** What is left of the ramp and the yard's wall: its broken top steps down away from the tower. */
    private void wall(Light light, double left, double right, double top, double foot) {
        light.between(top - 0.05, foot + 0.02, (u, v, pixel) -> {
            double away = u < MIDDLE ? (right - u) / (right - left) : (u - left) / (right - left);
            double broken = mix(away, Math.floor(away * 5 + 0.9 * rough.at(u * 12, 21)) / 5, 0.55);
            double crest = mix(top, foot + 0.016, Math.max(0, broken)) + 0.006 * rough.at(u * 30, 23, 4);
            double cover = step(-1.2 * light.pixel(), 1.2 * light.pixel(), v - crest)
                    * step(right + 0.002, right - 0.002, u)
                    * step(left - 0.002, left + 0.002, u)
                    * step(foot + 0.004, foot - 0.006, v)
                    * step(0.97, 0.93, away);
            if (cover <= 0 || v > foot + 0.01) {
                return;
            }
            light.lay(pixel, Light.times(stone(u, v, 0.2 + 0.3 * rough.at(u * 5, 2)), 1.05), cover);
            double cap = 0.0085 + 0.004 * rough.at(u * 50, 27, 2);
            double snow = cover * step(crest + cap, crest + 0.5 * cap, v);
            light.lay(pixel, Light.color(86, -0.5, -3.5), snow);
        });
    }

    /** Snow blown against the foot of everything. */
    private void drifts(Light light) {
        light.between(0.58, 0.72, (u, v, pixel) -> {
            double inArch = step(0.055, 0.03, Math.abs(u - MIDDLE + 0.012));
            double line = 0.633
                    + 0.007 * drift.at(u * 7, 5, 4)
                    + 0.006 * inArch
                    - 0.012 * step(0.06, 0.2, Math.abs(u - MIDDLE));
            double cover = step(-0.003, 0.004, v - line) * step(0.62, 0.72, u) * step(1.34, 1.24, u);
            double form = drift.at(u * 9, v * 30, 4);
            double lightness =
                    88 + 3 * form - 7 * step(0.02, 0, v - line) - 5 * step(0.0, 0.9, drift.at(u * 4, v * 16, 2));
            light.lay(pixel, Light.color(lightness, -0.4, -3.5), cover);
        });
    }
}
