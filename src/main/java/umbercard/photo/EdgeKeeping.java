package umbercard.photo;

import java.util.ArrayList;
import java.util.List;

/**
 * A squint that melts small shapes but keeps the edges of large ones. First a Gaussian takes away what is smaller than its
 * sigma; then the edges that are left are made as sharp as they were, by rolling guidance: Q. Zhang, X. Shen, L. Xu, J. Jia,
 * "Rolling Guidance Filter", ECCV 2014. Each round is a bilateral filter of the picture whose weights come from what the last
 * round left, in L*, since edges are seen by it; what is averaged is linear light.
 *
 * <p>The filters are {@link BilateralGrid}s, filled from the smallest level that still has {@value #IN_CELL} samples to a
 * cell. Where a shape's edge runs is found at half size or finer, and the last round is gathered at full size. No cell is
 * smaller than a {@value #MOST_CELLS}th of the diagonal: many small ones would take long; a squint slighter than that mixes
 * in as much of the picture as it is slighter.
 */
final class EdgeKeeping implements Rows {
    private static final int MOST_CELLS = 240;

    /** No cell is smaller, in pixels. */
    private static final double LEAST_CELL = 3.2;

    private static final double IN_CELL = 2.5;

    /** Rounds after the Gaussian; the edges hardly change after these. */
    private static final int ROUNDS = 3;

    private final Pyramid pyramid;
    private final double cell;
    private final float part;
    private final Plane guide;
    private final int guideLevel;
    private final BilateralGrid last;

    /**
     * @param luminance of the picture: where its edges are
     * @param pyramid what to smooth
     * @param sigma of the Gaussian whose blur small shapes get, in pixels, over 0
     */
    EdgeKeeping(Pyramid luminance, Pyramid pyramid, double sigma) {
        this.pyramid = pyramid;
        double diagonal = Math.hypot(pyramid.width(), pyramid.height());
        double inCell = Math.sqrt(BilateralGrid.VARIANCE);
        cell = Math.max(sigma / inCell, Math.max(LEAST_CELL, diagonal / MOST_CELLS));
        part = (float) Math.min(1, sigma / (cell * inCell));
        int level = 0;
        while (Math.scalb(cell, -level - 1) >= IN_CELL && pyramid.reaches(level + 1)) {
            level++;
        }
        guideLevel = Math.min(1, level);
        List<BilateralGrid> rounds = new ArrayList<>();
        Plane rolled = depths(luminance.blurred(cell * inCell, level));
        for (int i = 1; i < ROUNDS; i++) {
            BilateralGrid round = new BilateralGrid(rolled, luminance.at(level), Math.scalb(cell, -level));
            rounds.add(round);
            rolled = rolled(rolled, List.of(round), level);
        }
        last = new BilateralGrid(rolled, pyramid.at(level), Math.scalb(cell, -level));
        guide = level == guideLevel
                ? rolled
                : rolled(depths(luminance.blurred(cell * inCell, guideLevel)), rounds, guideLevel);
    }

    private static Plane depths(Rows soft) {
        Plane plane = soft.whole().get(0);
        Bands.each(plane.height(), (from, to) -> {
            for (int i = from * plane.width(); i < to * plane.width(); i++) {
                plane.samples()[i] = BilateralGrid.depth(plane.samples()[i]);
            }
        });
        return plane;
    }

    /** The depths that rounds come to, one after the other. */
    private Plane rolled(Plane depths, List<BilateralGrid> rounds, int level) {
        int width = depths.width();
        float[] rolled = new float[width * depths.height()];
        List<BilateralGrid.Gathering> gatherings = rounds.stream()
                .map(round -> round.gathering(width, Math.scalb(cell, -level)))
                .toList();
        Bands.each(depths.height(), (from, to) -> {
            List<BilateralGrid.Gathering> own =
                    gatherings.stream().map(BilateralGrid.Gathering::another).toList();
            float[] row = new float[width];
            float[][] smooth = new float[1][width];
            for (int y = from; y < to; y++) {
                System.arraycopy(depths.samples(), y * width, row, 0, width);
                for (BilateralGrid.Gathering gathering : own) {
                    gathering.gather(y, row, smooth);
                    for (int x = 0; x < width; x++) {
                        row[x] = BilateralGrid.depth(smooth[0][x]);
                    }
                }
                System.arraycopy(row, 0, rolled, y * width, width);
            }
        });
        return new Plane(width, depths.height(), rolled);
    }

    @Override
    public int width() {
        return pyramid.width();
    }

    @Override
    public int height() {
        return pyramid.height();
    }

    @Override
    public int planes() {
        return pyramid.at(0).size();
    }

    @Override
    public Maker maker() {
        Maker depths = new EnlargedRows(List.of(guide), width(), height(), 1 << guideLevel).maker();
        float[][] depth = new float[1][width()];
        BilateralGrid.Gathering gathering = last.gathering(width(), cell);
        return (y, into) -> {
            depths.make(y, depth);
            gathering.gather(y, depth[0], into);
            if (part < 1) {
                for (int c = 0; c < into.length; c++) {
                    mix(pyramid.at(0).get(c).samples(), y * width(), into[c]);
                }
            }
        };
    }

    private void mix(float[] plain, int at, float[] into) {
        for (int x = 0; x < into.length; x++) {
            into[x] = plain[at + x] + part * (into[x] - plain[at + x]);
        }
    }
}
