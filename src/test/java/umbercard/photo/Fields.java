package umbercard.photo;

import java.util.Random;
import java.util.function.DoubleBinaryOperator;
import umbercard.picture.ValueField;

/** Fields of light and dark made for the tests. */
final class Fields {
    private Fields() {}

    /** Samples at the middles of the pixels, in frame units: x 0..width/height, y 0..1. */
    static ValueField of(int width, int height, DoubleBinaryOperator luminance) {
        float[] samples = new float[width * height];
        for (int i = 0; i < samples.length; i++) {
            samples[i] =
                    (float) luminance.applyAsDouble((i % width + 0.5) / height, ((double) (i / width) + 0.5) / height);
        }
        return new ValueField(width, height, samples);
    }

    static ValueField noise(int width, int height, long seed) {
        Random random = new Random(seed);
        return of(width, height, (x, y) -> random.nextFloat());
    }

    /** Soft hills of light: a few waves in seeded directions, 0..1. */
    static ValueField smooth(int width, int height, long seed) {
        Random random = new Random(seed);
        double[][] waves = new double[6][];
        for (int i = 0; i < waves.length; i++) {
            waves[i] = new double[] {
                9 * (random.nextDouble() - 0.5), 9 * (random.nextDouble() - 0.5), 7 * random.nextDouble()
            };
        }
        return of(width, height, (x, y) -> {
            double sum = 0;
            for (double[] wave : waves) {
                sum += Math.sin(wave[0] * x + wave[1] * y + wave[2]);
            }
            return 0.5 + sum / 2 / waves.length;
        });
    }
}
