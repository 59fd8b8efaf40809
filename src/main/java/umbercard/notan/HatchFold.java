package umbercard.notan;

import java.util.BitSet;
import java.util.List;
import umbercard.geometry.FrameSides;
import umbercard.geometry.Hatch;
import umbercard.geometry.Moments;
import umbercard.model.Mark;
import umbercard.model.Thumbnail;

/**
 * Folds thumbnails one after the other on hatch lines: within 3e-6 of the frame's area, and in well under a frame's time where each
 * differs from the one before in few marks, however many there are. Shares nothing but flattening with {@link Fold}, so either
 * checks the other. Not for several threads at once.
 */
public final class HatchFold {
    /** Hatch lines to the frame's height. */
    private static final int DENSITY = 8000;

    private static final int MOMENTS = 6;

    /** So many lines are summed together, so that few sums change. */
    private static final int BLOCK = 64;

    private double ratio;
    private Thumbnail.Ground ground = Thumbnail.Ground.LIGHT;
    private List<Mark> marks = List.of();
    private Hatch hatch = new Hatch(1, DENSITY);
    private LineFold lines = new LineFold(hatch, ground);
    private LineFold sides = new LineFold(new FrameSides(1), ground);
    private double[] measured = {};
    private double[] blocks = {};
    private MassCount masses = new MassCount(hatch, 1);

    /** The figures of a thumbnail in a frame {@code ratio} wide and 1 high. */
    public Glance of(Thumbnail thumbnail, double newRatio) {
        List<Mark> visible =
                thumbnail.marks().stream().filter(mark -> !mark.hidden()).toList();
        if (newRatio != ratio || thumbnail.ground() != ground) {
            begin(thumbnail.ground(), newRatio);
        }
        Changes changes = Changes.between(marks, visible);
        sides.follow(marks, visible, changes);
        measure(lines.follow(marks, visible, changes));
        marks = visible;
        return new Glance(ratio, sum(), masses.count(0.02 * ratio));
    }

    private void begin(Thumbnail.Ground newGround, double newRatio) {
        ratio = newRatio;
        ground = newGround;
        marks = List.of();
        hatch = new Hatch(ratio, DENSITY);
        lines = new LineFold(hatch, ground);
        sides = new LineFold(new FrameSides(ratio), ground);
        measured = new double[MOMENTS * hatch.size()];
        blocks = new double[MOMENTS * (hatch.size() / BLOCK + 1)];
        masses = new MassCount(hatch, 0.003 * Math.hypot(ratio, 1));
        BitSet all = new BitSet();
        all.set(0, hatch.size());
        measure(all);
    }

    private void measure(BitSet touched) {
        for (int line = touched.nextSetBit(0); line >= 0; line = touched.nextSetBit(line + 1)) {
            hatch.measure(line, lines.dark(line), measured, MOMENTS * line);
            masses.take(line, lines.dark(line));
        }
        for (int block = nextBlock(touched, 0); block >= 0; block = nextBlock(touched, block + 1)) {
            add(measured, block * BLOCK, Math.min(hatch.size(), (block + 1) * BLOCK), blocks, block);
        }
    }

    private static int nextBlock(BitSet touched, int from) {
        int line = touched.nextSetBit(from * BLOCK);
        return line < 0 ? line : line / BLOCK;
    }

    /** Adds up moments from one place to before another, to one place of the sums. */
    private static void add(double[] parts, int from, int to, double[] sums, int at) {
        for (int k = 0; k < MOMENTS; k++) {
            double sum = 0;
            for (int i = from; i < to; i++) {
                sum += parts[MOMENTS * i + k];
            }
            sums[MOMENTS * at + k] = sum;
        }
    }

    private Moments sum() {
        double[] sums = new double[MOMENTS];
        add(blocks, 0, blocks.length / MOMENTS, sums, 0);
        return new Moments(sums[0], sums[1], sums[2], sums[3], sums[4], sums[5]);
    }
}
