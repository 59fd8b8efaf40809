package umbercard.notan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import umbercard.geometry.Region;
import umbercard.geometry.Warp;
import umbercard.model.Level;
import umbercard.model.Mark;
import umbercard.model.Thumbnail;

class WarpedFoldTest {
    private static final double RATIO = 1.25;

    /** Borders of curves are off by up to twice the tolerance of flattening on either way, 2e-5 of a unit. */
    private static final double FLATTENING = 4 * 2e-5;

    @Property(seed = "1", tries = 20)
    void foldingWarpedMarksIsWarpingTheFold(@ForAll long seed) {
        Random random = new Random(seed);
        Level from = new Level(.25 + .5 * random.nextDouble(), random.nextInt(3) * 3.0);
        Level to = new Level(.25 + .5 * random.nextDouble(), from.tilt());
        Warp warp = Warp.between(from.across(RATIO), to.across(RATIO), RATIO);
        List<Mark> marks = Drawings.marks(random, 6);
        Thumbnail.Ground ground = random.nextBoolean() ? Thumbnail.Ground.DARK : Thumbnail.Ground.LIGHT;

        Region foldOfWarped =
                Fold.of(Drawings.thumbnail(ground, warped(marks, warp)), RATIO).dark();
        Design fold = Fold.of(Drawings.thumbnail(ground, marks), RATIO);
        Region warpOfFold = Region.of(
                        fold.dark().outlines().stream().map(warp::mapped).toList())
                .intersect(fold.frame());

        double length = 5 + foldOfWarped.perimeter() + warpOfFold.perimeter();
        assertThat(foldOfWarped.minus(warpOfFold).area()
                        + warpOfFold.minus(foldOfWarped).area())
                .isLessThan(FLATTENING * length);
        assertThat(Math.abs(foldOfWarped.area() - warpOfFold.area())).isLessThan(2e-6 * length);
    }

    private static List<Mark> warped(List<Mark> marks, Warp warp) {
        return marks.stream()
                .map(mark -> mark.withOutline(warp.mapped(mark.outline())))
                .toList();
    }
}
