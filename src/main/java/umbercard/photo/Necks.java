package umbercard.photo;

/**
 * Takes necks and hairs out of a split field: dark, then light, that is thinner than a stroke goes to the other side (closing,
 * then opening, of Serra 1982, "Image analysis and mathematical morphology", with squares). A sample that changes sides is
 * mirrored about the split, so that the border still runs between the samples as the field has it.
 */
final class Necks {
    /** The least width of a stroke, in frame units: a millimeter or so on an index card; common practice, no source. */
    static final double LEAST = 0.0125;

    /** The least that a mirrored sample differs from the split. */
    private static final double CLEAR = 1e-6;

    private final int columns;
    private final int rows;
    private final int reach;

    private Necks(Lattice lattice) {
        columns = lattice.columns();
        rows = lattice.rows();
        reach = (int) ((LEAST * (rows - 2) - 1) / 2 + 0.5);
    }

    /**
     * The field without them.
     *
     * @param split a luminance: what lies below it is dark
     */
    static Lattice without(Lattice lattice, double split) {
        Necks necks = new Necks(lattice);
        if (necks.reach < 1) {
            return lattice;
        }
        boolean[] dark = new boolean[lattice.size()];
        for (int node = 0; node < dark.length; node++) {
            dark[node] = lattice.sample(node) < split;
        }
        boolean[] closed = necks.grown(necks.grown(dark, true), false);
        boolean[] opened = necks.grown(necks.grown(closed, false), true);
        return lattice.with(node -> {
            float sample = lattice.sample(node);
            if (dark[node] == opened[node]) {
                return sample;
            }
            double mirrored = 2 * split - sample;
            return (float) (dark[node] ? Math.max(split + CLEAR, mirrored) : Math.min(split - CLEAR, mirrored));
        });
    }

    /** The side that is {@code value}, grown by the reach; what lies outside the frame has no say. */
    private boolean[] grown(boolean[] mask, boolean value) {
        boolean[] across = new boolean[mask.length];
        for (int r = 0; r < rows; r++) {
            grow(mask, across, r * columns, 1, columns, value);
        }
        boolean[] both = new boolean[mask.length];
        for (int c = 0; c < columns; c++) {
            grow(across, both, c, columns, rows, value);
        }
        return both;
    }

    private void grow(boolean[] from, boolean[] to, int start, int step, int count, boolean value) {
        int last = -reach - 1;
        for (int i = 0; i < Math.min(reach, count); i++) {
            last = from[start + i * step] == value ? i : last;
        }
        for (int i = 0; i < count; i++) {
            int ahead = i + reach;
            if (ahead < count && from[start + ahead * step] == value) {
                last = ahead;
            }
            to[start + i * step] = last >= i - reach == value;
        }
    }
}
