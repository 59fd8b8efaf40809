package umbercard.samples;

import static umbercard.samples.Noise.step;

import java.util.Random;

/** Bare alders: a few stems from one stool, limbs that rise, and fine twigs with last year's cones. */
final class Alders {
    private final Random random;
    private final Mask wood;
    private final Mask ledges;
    private final double thinnest;
    private final Noise bark = new Noise(41);

    private Alders(Light light, long seed) {
        random = new Random(seed);
        wood = new Mask(light);
        ledges = new Mask(light);
        thinnest = Math.max(0.00034, 0.30 * light.pixel());
    }

    /** Paints both groups, the farther one first. */
    static void paint(Light light) {
        Alders far = new Alders(light, 401);
        far.stem(0.505, 0.612, 0.02, 0.250, 0.0050);
        far.stem(0.520, 0.614, 0.10, 0.215, 0.0042);
        far.lay(light, 30, 0.92);
        Alders left = new Alders(light, 402);
        left.stem(0.225, 0.682, -0.13, 0.52, 0.0118);
        left.stem(0.243, 0.684, 0.03, 0.62, 0.0135);
        left.stem(0.262, 0.683, 0.17, 0.49, 0.0098);
        left.stem(0.098, 0.684, -0.07, 0.56, 0.0110);
        left.lay(light, 17, 1);
        Alders right = new Alders(light, 403);
        right.stem(1.352, 0.680, -0.10, 0.50, 0.0105);
        right.stem(1.370, 0.682, 0.06, 0.58, 0.0125);
        right.stem(1.462, 0.682, 0.02, 0.54, 0.0110);
        right.lay(light, 18, 1);
    }

    private void lay(Light light, double lightness, double strength) {
        byte[] cover = wood.cover();
        byte[] snow = ledges.cover();
        light.everywhere((u, v, pixel) -> {
            double part = strength * (cover[pixel] & 0xff) / 255.0;
            if (part > 0) {
                double grain = bark.at(u * 300, v * 130, 3);
                double high = 9 * step(0.45, 0.05, v);
                light.lay(pixel, Light.color(lightness + 4 * grain + high, 1.5, 3.5), part);
                light.lay(pixel, Light.color(82, -0.5, -4), 0.55 * part * (snow[pixel] & 0xff) / 255.0);
            }
        });
    }

    /** A stem: leans by {@code lean} radians, sways, tapers, and bears limbs in its upper two thirds. */
    private void stem(double u, double v, double lean, double height, double width) {
        int steps = 44;
        double x = u;
        double y = v;
        double angle = lean;
        int side = random.nextBoolean() ? 1 : -1;
        for (int i = 0; i < steps; i++) {
            double done = (double) i / steps;
            double thick = width * (1 - 0.93 * done) * (1 + 0.45 * Math.exp(-22 * done)) + thinnest;
            angle += 0.055 * random.nextGaussian() - 0.05 * angle;
            double toX = x + height / steps * Math.sin(angle);
            double toY = y - height / steps * Math.cos(angle);
            wood.stroke(x, y, toX, toY, thick);
            x = toX;
            y = toY;
            if (done > 0.18 && random.nextDouble() < 0.62) {
                side = -side;
                double reach = height
                        * 0.34
                        * Math.pow(Math.sin(Math.PI * (0.22 + 0.74 * done)), 0.9)
                        * (0.5 + 0.7 * random.nextDouble());
                double spread = side * (0.55 + 0.50 * random.nextDouble()) * (1 - 0.30 * done);
                limb(x, y, angle + spread, reach, thick * (0.30 + 0.22 * random.nextDouble()), 1);
            }
        }
        limb(x, y, angle, height * 0.05, width * 0.08, 3);
    }

    private void limb(double u, double v, double start, double length, double width, int depth) {
        int steps = depth == 1 ? 14 : depth == 2 ? 9 : 5;
        double x = u;
        double y = v;
        double angle = start;
        int side = random.nextBoolean() ? 1 : -1;
        for (int i = 0; i < steps; i++) {
            double done = (double) i / steps;
            double thick = Math.max(thinnest, width * (1 - 0.75 * done));
            // Limbs turn up to the light, the finest twigs hang a little.
            angle += (0.13 + 0.03 * depth) * random.nextGaussian() - (depth < 3 ? 0.06 : -0.02) * Math.sin(angle);
            double toX = x + length / steps * Math.sin(angle);
            double toY = y - length / steps * Math.cos(angle);
            wood.stroke(x, y, toX, toY, thick);
            if (thick > 0.0014 && Math.abs(Math.sin(angle)) > 0.4) {
                ledges.stroke(x, y - thick * 0.42, toX, toY - thick * 0.42, thick * 0.4);
            }
            x = toX;
            y = toY;
            if (depth < 4 && done > 0.12 && random.nextDouble() < (depth == 3 ? 0.5 : 0.72)) {
                side = -side;
                double spread = side * (0.45 + 0.5 * random.nextDouble());
                double reach = length * (0.26 + 0.34 * random.nextDouble()) * (1.15 - 0.6 * done);
                limb(x, y, angle + spread, reach, thick * (0.45 + 0.2 * random.nextDouble()), depth + 1);
            }
        }
        if (depth >= 3 && random.nextDouble() < 0.07) {
            wood.stroke(x, y, x + 0.0004, y + 0.0014, 0.0016);
        }
    }
}
