package umbercard.photo;

import umbercard.model.Squint;
import umbercard.picture.Picture;
import umbercard.picture.ValueField;

/**
 * A squinted field on as few samples as it can stand on. A blur leaves nothing finer than itself, so samples a sixth of its
 * sigma apart still say where the field crosses a value, to a hundredth of that distance or so, and all that follows is
 * quicker by the square of it. The samples are means over what they cover; the variance of that box (Gwosdek et al. 2011,
 * {@code (s² − 1) / 12} for one of {@code s} pixels) is taken off the blur's.
 */
final class CoarseSquint {
    /** Samples in a sigma. */
    private static final double IN_SIGMA = 6;

    /** More rows than these show nothing that {@link Necks} would leave: they put five samples in the thinnest stroke. */
    private static final int MOST_ROWS = 400;

    /** Less is gained by fewer samples than this many times than they cost. */
    private static final double WORTH_IT = 1.3;

    private CoarseSquint() {}

    /**
     * A framed picture's light and dark as it is squinted at; it spans the same frame. Kept edges are finer than their blur:
     * they are taken as {@link SquintPyramid} has them, on as many samples as there may be.
     *
     * @param ratio the frame's exact width divided by its height
     */
    static ValueField of(Picture framed, double ratio, Squint squint) {
        double sigma = squint.sigma() * Math.hypot(ratio, 1) * framed.height();
        return switch (SquintWay.of(squint)) {
            case GAUSSIAN -> of(Values.of(framed), sigma);
            case KEEPING_EDGES -> of(new SquintPyramid(framed).values(SquintWay.KEEPING_EDGES, sigma), 0);
        };
    }

    /**
     * The blurred field; it spans the same frame.
     *
     * @param sigma the Gaussian's standard deviation in the field's pixels, 0 or more
     */
    static ValueField of(ValueField field, double sigma) {
        double finest = Math.max((double) field.height() / MOST_ROWS, sigma / IN_SIGMA);
        if (finest < WORTH_IT) {
            return Squinter.squint(field, sigma);
        }
        int rows = Math.max(1, (int) Math.ceil(field.height() / finest));
        int columns = Math.max(1, (int) Math.ceil(field.width() / finest));
        double step = (double) field.height() / rows;
        double rest = sigma * sigma - (step * step - 1) / 12;
        ValueField small = averaged(field, columns, rows);
        return rest > 0 ? Squinter.squint(small, Math.sqrt(rest) / step) : small;
    }

    /** Means over the parts of a grid of equal cells, each pixel taking part as far as it lies in a cell. */
    static ValueField averaged(ValueField field, int columns, int rows) {
        double[] across = new double[columns];
        double[] sums = new double[columns];
        float[] means = new float[columns * rows];
        double step = (double) field.height() / rows;
        double area = step * field.width() / columns;
        int row = 0;
        for (int y = 0; y < field.height(); y++) {
            acrossRow(field, y, across);
            double end = Math.min((row + 1) * step, y + 1.0);
            add(across, end - y, sums);
            while (row < rows && (row + 1) * step <= y + 1.0 + 1e-9) {
                put(sums, area, means, row * columns);
                row++;
                double more = Math.min((row + 1) * step, y + 1.0) - Math.max(y, row * step);
                if (row < rows && more > 0) {
                    add(across, more, sums);
                }
            }
        }
        return new ValueField(columns, rows, means);
    }

    private static void add(double[] values, double part, double[] sums) {
        for (int i = 0; i < values.length; i++) {
            sums[i] += part * values[i];
        }
    }

    private static void put(double[] sums, double area, float[] means, int at) {
        for (int i = 0; i < sums.length; i++) {
            means[at + i] = (float) (sums[i] / area);
            sums[i] = 0;
        }
    }

    /** One row's light in each column, in pixels. */
    private static void acrossRow(ValueField field, int y, double[] into) {
        double step = (double) field.width() / into.length;
        float[] luminance = field.luminance();
        int from = y * field.width();
        for (int c = 0; c < into.length; c++) {
            double left = c * step;
            double right = Math.min(field.width(), (c + 1) * step);
            int first = (int) left;
            int last = Math.min(field.width() - 1, (int) right);
            double sum = -(left - first) * luminance[from + first] - (last + 1 - right) * luminance[from + last];
            for (int x = first; x <= last; x++) {
                sum += luminance[from + x];
            }
            into[c] = sum;
        }
    }
}
