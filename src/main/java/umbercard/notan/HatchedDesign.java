package umbercard.notan;

import java.util.BitSet;
import java.util.List;
import umbercard.geometry.Eye;
import umbercard.geometry.FrameContact;
import umbercard.geometry.FrameSides;
import umbercard.geometry.Hatch;
import umbercard.geometry.Moments;
import umbercard.model.Mark;
import umbercard.model.Thumbnail.Ground;

/** A card on hatch lines, and its figures as marks come and go. */
final class HatchedDesign {
    /** Hatch lines to the frame's height: enough for 3e-6 of it, whichever way borders run. */
    private static final int DENSITY = 8000;

    private static final int MOMENTS = 6;

    /** So many lines are summed together, so that few sums change. */
    private static final int BLOCK = 64;

    private final Ground ground;
    private final double ratio;
    private final Eye eye;
    private final Hatch hatch;
    private final LineFold lines;
    private final LineFold sides;
    private final MassCount masses;
    private final double[] ofLines;
    private final double[] ofBlocks;
    private List<Mark> marks = List.of();

    HatchedDesign(Ground ground, double ratio, Eye eye) {
        this.ground = ground;
        this.ratio = ratio;
        this.eye = eye;
        hatch = new Hatch(ratio, DENSITY);
        lines = new LineFold(hatch, ground);
        sides = new LineFold(new FrameSides(ratio), ground);
        masses = new MassCount(hatch, eye.widthIn(ratio));
        ofLines = new double[MOMENTS * hatch.size()];
        ofBlocks = new double[MOMENTS * (hatch.size() / BLOCK + 1)];
        BitSet all = new BitSet();
        all.set(0, hatch.size());
        measure(all);
    }

    boolean isOn(Ground otherGround, double otherRatio) {
        return otherGround == ground && otherRatio == ratio;
    }

    /** The figures after the marks, none of them hidden. */
    Glance follow(List<Mark> now) {
        Changes changes = Changes.between(marks, now);
        sides.follow(marks, now, changes);
        measure(lines.follow(marks, now, changes));
        marks = now;
        FrameContact contact = FrameContact.of(sides::dark, ratio);
        return new Glance(ratio, moments(), contact, masses.count(eye.leastShare() * ratio));
    }

    private void measure(BitSet touched) {
        for (int line = touched.nextSetBit(0); line >= 0; line = touched.nextSetBit(line + 1)) {
            hatch.measure(line, lines.dark(line), ofLines, MOMENTS * line);
            masses.take(line, lines.dark(line));
        }
        for (int block = nextBlock(touched, 0); block >= 0; block = nextBlock(touched, block + 1)) {
            add(ofLines, block * BLOCK, Math.min(hatch.size(), (block + 1) * BLOCK), ofBlocks, block);
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

    private Moments moments() {
        double[] sums = new double[MOMENTS];
        add(ofBlocks, 0, ofBlocks.length / MOMENTS, sums, 0);
        return new Moments(sums[0], sums[1], sums[2], sums[3], sums[4], sums[5]);
    }
}
