package umbercard.samples;

import java.util.Random;

/** Dry grass on the banks, and reeds in the shallows near the eye. */
final class Reeds {
    private Reeds() {}

    /** Grass that hangs over the far bank. */
    static void grass(Light light, Pond pond) {
        Random random = new Random(61);
        Mask dark = new Mask(light);
        Mask dry = new Mask(light);
        Noise clumps = new Noise(62);
        for (int i = 0; i < 7000; i++) {
            double u = (double) light.width / light.height * random.nextDouble();
            if (clumps.at(u * 6, 3, 3) + 0.5 * random.nextDouble() < 0.05) {
                continue;
            }
            double v = pond.line(u) - 0.024 * random.nextDouble();
            double length = 0.010 + 0.020 * random.nextDouble() * (1 + clumps.at(u * 4, 8));
            double lean = 0.012 * random.nextGaussian();
            Mask mask = random.nextDouble() < 0.62 ? dark : dry;
            mask.blade(
                    u,
                    v,
                    u + 0.2 * lean,
                    v - 0.7 * length,
                    u + lean,
                    v - length,
                    0.0007 + 0.0005 * random.nextDouble());
        }
        lay(light, dry, Light.color(43, 5, 15));
        lay(light, dark, Light.color(20, 3, 6));
    }

    /** Dead stalks that stand out of the snow in tufts, smaller up the hill, and an old fence that runs toward the kiln. */
    static void slope(Light light) {
        Random random = new Random(64);
        Mask dry = new Mask(light);
        Mask old = new Mask(light);
        for (int tuft = 0; tuft < 190; tuft++) {
            double u = (double) light.width / light.height * random.nextDouble();
            double top = Hills.hillLine(u) + 0.02;
            double v = top + (0.655 - top) * Math.pow(random.nextDouble(), 0.7);
            double size = 0.35 + 1.6 * (v - 0.40);
            int stalks = 3 + random.nextInt(9);
            for (int i = 0; i < stalks; i++) {
                double foot = u + 0.006 * size * random.nextGaussian();
                double length = 0.011 * size * (0.5 + random.nextDouble());
                double lean = 0.5 * length * random.nextGaussian();
                dry.blade(foot, v, foot + 0.2 * lean, v - 0.7 * length, foot + lean, v - length, 0.0009 * size);
            }
        }
        fence(old, random);
        lay(light, dry, Light.color(40, 4, 13));
        lay(light, old, Light.color(24, 1, 2));
    }

    private static void fence(Mask old, Random random) {
        double lastU = 0;
        double lastV = 0;
        for (int i = 0; i < 9; i++) {
            double u = 0.30 + 0.052 * i + 0.004 * random.nextGaussian();
            double v = 0.636 - 0.0045 * i + 0.002 * random.nextGaussian();
            double tall = 0.034 - 0.0012 * i;
            double lean = 0.002 * random.nextGaussian();
            old.stroke(u, v, u + lean, v - tall, 0.0030);
            if (i > 0) {
                for (double height : new double[] {0.35, 0.85}) {
                    double middle = (lastU + u) / 2;
                    double sag = (lastV + v) / 2 - height * tall + 0.0025;
                    old.stroke(lastU, lastV - height * tall, middle, sag, 0.00045);
                    old.stroke(middle, sag, u, v - height * tall, 0.00045);
                }
            }
            lastU = u;
            lastV = v;
        }
    }

    /** Reeds before the water, in two clumps and a few strays. */
    static void near(Light light) {
        Random random = new Random(63);
        Mask dark = new Mask(light);
        Mask dry = new Mask(light);
        double right = (double) light.width / light.height;
        for (int i = 0; i < 620; i++) {
            boolean left = random.nextDouble() < 0.68;
            double spread = Math.abs(random.nextGaussian());
            double u = left ? 0.13 * spread + 0.03 * random.nextGaussian() : right - 0.075 * spread;
            double v = 1.01 - 0.05 * random.nextDouble() + 0.03 * spread;
            double length = (0.10 + 0.15 * random.nextDouble()) * Math.exp(-0.35 * spread);
            double lean = 0.045 * random.nextGaussian() + (left ? 0.015 : -0.015);
            boolean broken = random.nextDouble() < 0.14;
            double tipU = u + (broken ? 2.4 * lean : lean);
            double tipV = broken ? v - 0.55 * length : v - length;
            double width = 0.0014 + 0.0016 * random.nextDouble();
            Mask mask = random.nextDouble() < 0.6 ? dark : dry;
            mask.blade(u, v, u + 0.15 * lean, v - 0.75 * length, tipU, tipV, width);
            if (!broken && random.nextDouble() < 0.16) {
                dark.stroke(tipU - 0.06 * lean, tipV + 0.006, tipU, tipV - 0.010, 0.0030);
            }
        }
        lay(light, dry, Light.color(36, 4, 13));
        lay(light, dark, Light.color(12, 2, 4));
    }

    private static void lay(Light light, Mask mask, double[] color) {
        byte[] cover = mask.cover();
        light.everywhere((u, v, pixel) -> light.lay(pixel, color, (cover[pixel] & 0xff) / 255.0));
    }
}
