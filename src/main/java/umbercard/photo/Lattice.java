package umbercard.photo;

import umbercard.geometry.Point;
import umbercard.picture.ValueField;

/**
 * A field's samples at their places in the frame: the middles of the pixels, and round them one more row and column on the
 * frame's border, so that what is traced reaches it exactly. The border has the values of the pixels beside it, which is
 * what a field mirrored there comes to.
 */
final class Lattice {
    private final int columns;
    private final int rows;
    private final double ratio;
    private final float[] samples;

    Lattice(ValueField field, double ratio) {
        columns = field.width() + 2;
        rows = field.height() + 2;
        this.ratio = ratio;
        samples = new float[columns * rows];
        for (int r = 0; r < rows; r++) {
            int y = Math.min(field.height() - 1, Math.max(0, r - 1));
            for (int c = 0; c < columns; c++) {
                samples[r * columns + c] = field.at(Math.min(field.width() - 1, Math.max(0, c - 1)), y);
            }
        }
    }

    private Lattice(Lattice other, float[] samples) {
        columns = other.columns;
        rows = other.rows;
        ratio = other.ratio;
        this.samples = samples;
    }

    /** What a node's sample shall be. */
    @FunctionalInterface
    interface Sampling {
        float at(int node);
    }

    /** The same places with other samples. */
    Lattice with(Sampling sampling) {
        float[] others = new float[samples.length];
        for (int node = 0; node < others.length; node++) {
            others[node] = sampling.at(node);
        }
        return new Lattice(this, others);
    }

    int columns() {
        return columns;
    }

    int rows() {
        return rows;
    }

    /** The frame's width; its height is 1. */
    double ratio() {
        return ratio;
    }

    int size() {
        return samples.length;
    }

    float sample(int node) {
        return samples[node];
    }

    /** The area that a sample inside stands for; those on the border stand for none. */
    double cell() {
        return ratio / ((columns - 2) * (double) (rows - 2));
    }

    boolean onBorder(int node) {
        int c = node % columns;
        int r = node / columns;
        return c == 0 || r == 0 || c == columns - 1 || r == rows - 1;
    }

    Point place(int node) {
        return new Point(place(node % columns, columns) * ratio, place(node / columns, rows));
    }

    private static double place(int index, int count) {
        return index == 0 ? 0 : index == count - 1 ? 1 : (index - 0.5) / (count - 2);
    }

    /** Whether the middle of the cell whose upper left node this is lies below a luminance: joins what meets only there. */
    boolean middleBelow(int node, double luminance) {
        double sum = (double) samples[node] + samples[node + 1] + samples[node + columns] + samples[node + columns + 1];
        return sum / 4 < luminance;
    }
}
