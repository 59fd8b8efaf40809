package umbercard.samples;

import java.util.SplittableRandom;
import umbercard.color.Srgb;
import umbercard.photo.Squinter;
import umbercard.picture.Picture;
import umbercard.picture.ValueField;

/** What a camera adds: glare, a little blur, darker corners, grain. */
final class Lens {
    private Lens() {}

    static Picture expose(Light light) {
        double scale = light.height / 2000.0;
        float[][] planes = {light.red, light.green, light.blue};
        float[] grain = grain(light.width, light.height, scale);
        int[] pixels = new int[light.width * light.height];
        for (int c = 0; c < 3; c++) {
            float[] sharp = blur(light, planes[c], 0.8 * scale);
            float[] glare = blur(light, planes[c], 45 * scale);
            for (int i = 0; i < pixels.length; i++) {
                double lit = (0.955 * sharp[i] + 0.045 * glare[i]) * vignette(light, i);
                double encoded = Srgb.encode(Math.min(1, Math.max(0, lit)));
                double noisy = encoded + grain[i] * (0.011 + 0.010 * (1 - encoded));
                pixels[i] |= (int) Math.round(255 * Math.min(1, Math.max(0, noisy))) << 16 - 8 * c;
            }
        }
        return new Picture(light.width, light.height, pixels);
    }

    private static double vignette(Light light, int pixel) {
        double u = (pixel % light.width - light.width / 2.0) / light.height;
        double v = (pixel / light.width - light.height / 2.0) / light.height;
        double far = (u * u + v * v) / 0.8125;
        return 1 - 0.22 * far * far;
    }

    private static float[] grain(int width, int height, double scale) {
        SplittableRandom random = new SplittableRandom(71);
        float[] grain = new float[width * height];
        for (int i = 0; i < grain.length; i++) {
            // Twelve uniform numbers add up to nearly a normal one; four are near enough for grain.
            double sum = random.nextDouble() + random.nextDouble() + random.nextDouble() + random.nextDouble();
            grain[i] = (float) ((sum - 2) * 1.73 + 100);
        }
        float[] soft = Squinter.squint(new ValueField(width, height, grain), Math.max(0.4, 0.75 * scale))
                .luminance();
        for (int i = 0; i < soft.length; i++) {
            soft[i] = (soft[i] - 100) * 2.2f;
        }
        return soft;
    }

    private static float[] blur(Light light, float[] plane, double sigma) {
        return Squinter.squint(new ValueField(light.width, light.height, plane), Math.max(0.3, sigma))
                .luminance();
    }
}
