package umbercard.photo;

import umbercard.picture.ValueField;

/** A Gaussian blur by its definition, sampled out to six sigma, over a field mirrored at its borders. */
final class Gaussians {
    private Gaussians() {}

    static ValueField exact(ValueField field, double sigma) {
        int width = field.width();
        int height = field.height();
        double[][] across = weights(width, sigma);
        double[][] down = weights(height, sigma);
        double[] rows = new double[width * height];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                for (int i = 0; i < width; i++) {
                    rows[y * width + x] += across[x][i] * field.at(i, y);
                }
            }
        }
        float[] blurred = new float[rows.length];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                double sum = 0;
                for (int j = 0; j < height; j++) {
                    sum += down[y][j] * rows[j * width + x];
                }
                blurred[y * width + x] = (float) sum;
            }
        }
        return new ValueField(width, height, blurred);
    }

    /** For each place of a line, how much each of its samples counts, those beyond its ends mirrored. */
    private static double[][] weights(int length, double sigma) {
        int reach = (int) Math.ceil(6 * sigma);
        double[][] weights = new double[length][length];
        for (int at = 0; at < length; at++) {
            double all = 0;
            for (int i = at - reach; i <= at + reach; i++) {
                double weight = Math.exp(-(i - at) * (double) (i - at) / (2 * sigma * sigma));
                int place = Math.floorMod(i, 2 * length);
                weights[at][place < length ? place : 2 * length - 1 - place] += weight;
                all += weight;
            }
            for (int i = 0; i < length; i++) {
                weights[at][i] /= all;
            }
        }
        return weights;
    }
}
