package umbercard.photo;

import java.util.Arrays;

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

    private final Lattice lattice;
    private final double split;
    private final int words;
    private final long tail;

    private Necks(Lattice lattice, double split) {
        this.lattice = lattice;
        this.split = split;
        words = (lattice.columns() + Long.SIZE - 1) / Long.SIZE;
        tail = -1L >>> (words * Long.SIZE - lattice.columns());
    }

    /**
     * The field without them.
     *
     * @param split a luminance: what lies below it is dark
     */
    static Lattice without(Lattice lattice, double split) {
        int reach = (int) ((LEAST * (lattice.rows() - 2) - 1) / 2 + 0.5);
        return reach < 1 ? lattice : new Necks(lattice, split).without(reach);
    }

    private Lattice without(int reach) {
        long[][] dark = dark();
        long[][] closed = dark;
        for (int i = 0; i < reach; i++) {
            closed = grown(closed);
        }
        // Shrunk to where it was, and by as much again.
        long[][] opened = turned(closed);
        for (int i = 0; i < 2 * reach; i++) {
            opened = grown(opened);
        }
        opened = turned(opened);
        for (int i = 0; i < reach; i++) {
            opened = grown(opened);
        }
        long[][] now = opened;
        if (Arrays.deepEquals(dark, now)) {
            return lattice;
        }
        return lattice.with(node -> {
            int r = node / lattice.columns();
            int c = node % lattice.columns();
            boolean changes = ((dark[r][c / Long.SIZE] ^ now[r][c / Long.SIZE]) & (1L << (c % Long.SIZE))) != 0;
            return changes ? mirrored(lattice.sample(node)) : lattice.sample(node);
        });
    }

    private float mirrored(float sample) {
        double mirrored = 2 * split - sample;
        return (float) (sample < split ? Math.max(split + CLEAR, mirrored) : Math.min(split - CLEAR, mirrored));
    }

    /** The dark nodes as rows of bits, the leftmost node the lowest bit. */
    private long[][] dark() {
        long[][] dark = new long[lattice.rows()][words];
        int node = 0;
        for (long[] row : dark) {
            for (int c = 0; c < lattice.columns(); c++) {
                if (lattice.sample(node++) < split) {
                    row[c / Long.SIZE] |= 1L << (c % Long.SIZE);
                }
            }
        }
        return dark;
    }

    /** What is not in it; so that what lies outside the frame has no say when it shrinks. */
    private long[][] turned(long[][] bits) {
        long[][] turned = new long[bits.length][words];
        for (int r = 0; r < bits.length; r++) {
            for (int w = 0; w < words; w++) {
                turned[r][w] = ~bits[r][w];
            }
            turned[r][words - 1] &= tail;
        }
        return turned;
    }

    /** Grown by one node to all sides. */
    private long[][] grown(long[][] bits) {
        long[][] across = new long[bits.length][words];
        for (int r = 0; r < bits.length; r++) {
            for (int w = 0; w < words; w++) {
                long fromLeft = w > 0 ? bits[r][w - 1] >>> (Long.SIZE - 1) : 0;
                long fromRight = w + 1 < words ? bits[r][w + 1] << (Long.SIZE - 1) : 0;
                across[r][w] = bits[r][w] | (bits[r][w] << 1) | (bits[r][w] >>> 1) | fromLeft | fromRight;
            }
            across[r][words - 1] &= tail;
        }
        long[][] grown = new long[bits.length][words];
        for (int r = 0; r < bits.length; r++) {
            for (int w = 0; w < words; w++) {
                long above = r > 0 ? across[r - 1][w] : 0;
                long below = r + 1 < bits.length ? across[r + 1][w] : 0;
                grown[r][w] = above | across[r][w] | below;
            }
        }
        return grown;
    }
}
