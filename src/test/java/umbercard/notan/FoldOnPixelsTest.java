package umbercard.notan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import umbercard.geometry.Cubic;
import umbercard.geometry.Outline;
import umbercard.geometry.Rows;
import umbercard.model.Thumbnail;

/** The fold agrees with a raster of 4096 pixels that an independent library paints, share and pixel by pixel. */
class FoldOnPixelsTest {
    private static final int LONG_SIDE = 4096;

    /**
     * How far from a border a pixel may differ, in pixels. Nearly all of it is the library's own: its rounding of steep and long
     * sides was seen to be off by up to 2.0 pixels where rows of the drawn curves agreed with the fold.
     */
    private static final double NEAR = 4;

    /** They fill a strip along the marks' outlines that is no wider than this, in pixels; up to 0.02 was seen. */
    private static final double STRIP = .05;

    /** Every third row is compared pixel by pixel. */
    private static final int ROW_STEP = 3;

    static Stream<Drawing> drawings() {
        Random random = new Random(5);
        return Stream.of(
                drawing("strokes on light", 1.25, Thumbnail.Ground.LIGHT, random, 8),
                drawing("strokes on dark", .75, Thumbnail.Ground.DARK, random, 14),
                drawing("many strokes", 1.353, Thumbnail.Ground.LIGHT, random, 40));
    }

    private static Drawing drawing(String name, double ratio, Thumbnail.Ground ground, Random random, int marks) {
        return Drawing.of(name, ratio, Drawings.thumbnail(ground, Drawings.marks(random, marks)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("drawings")
    void theSharesAgree(Drawing drawing) {
        check(drawing);
    }

    static void check(Drawing drawing) {
        Raster raster = new Raster(drawing, LONG_SIDE);
        List<Outline> dark = drawing.fold().dark().outlines();
        assertThat(raster.darkShare())
                .as("share of %s", drawing)
                .isCloseTo(drawing.fold().darkShare(), within(bound(dark, raster)));
        checkPixels(drawing, dark, raster);
    }

    /**
     * By how much counting pixel centers may be off. Let f(y) be the dark length of the row at y, in pixels. Taking it at the
     * middles of pixel rows instead of integrating it is off by at most half of its total variation, which is at most the
     * border's extent in x; counting centers instead of measuring f is off by at most half a pixel for each crossing of a middle
     * by the border, which are as many as its extent in y and one more for each side. In all half of the border's extent in both
     * directions, plus one for each side that crosses a middle, over the number of pixels. (Koksma's inequality in one dimension:
     * Kuipers and Niederreiter 1974, theorem 2.5.1.)
     */
    private static double bound(List<Outline> border, Raster raster) {
        double extent = 0;
        for (Outline ring : border) {
            double before = Double.NaN;
            for (Cubic side : ring.segments()) {
                double down = side.end().y() - side.start().y();
                extent += Math.abs(side.end().x() - side.start().x()) * raster.scale + Math.abs(down) * raster.scale;
                // A run of sides that all go up, or all down, crosses at most one middle more than its extent.
                extent += Math.signum(down) == before ? 0 : 1;
                before = Math.signum(down);
            }
        }
        double frame = 2.0 * (raster.width + raster.height);
        return (extent + frame) / 2 / ((double) raster.width * raster.height);
    }

    /** Every pixel that differs has a border near its center; there are few of them. */
    private static void checkPixels(Drawing drawing, List<Outline> dark, Raster raster) {
        Borders borders = new Borders(
                drawing.marks().stream().filter(mark -> !mark.hidden()).toList(), 0);
        int differing = 0;
        for (int row = 0; row < raster.height; row += ROW_STEP) {
            List<Rows.Span> spans = Rows.filled(dark, raster.center(0, row).y());
            boolean[] inside = new boolean[raster.width];
            for (Rows.Span span : spans) {
                int from = (int) Math.max(0, Math.ceil(span.from() * raster.scale - .5));
                for (int column = from; column < raster.width && (column + .5) / raster.scale < span.to(); column++) {
                    inside[column] = true;
                }
            }
            for (int column = 0; column < raster.width; column++) {
                if (inside[column] != raster.isDark(column, row)) {
                    differing++;
                    assertThat(borders.distance(raster.center(column, row)))
                            .as("pixel %s, %s of %s", column, row, drawing)
                            .isLessThan(NEAR / raster.scale);
                }
            }
        }
        double length = borders.length() * raster.scale / ROW_STEP;
        assertThat((double) differing).as("pixels that differ").isLessThan(10 + STRIP * length);
    }
}
