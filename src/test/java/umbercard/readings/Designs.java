package umbercard.readings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import umbercard.geometry.Outline;
import umbercard.geometry.Path;
import umbercard.geometry.Point;
import umbercard.model.Level;
import umbercard.model.Mark;
import umbercard.model.Thumbnail;

/** Thumbnails at random: up to six overlapping triangles to hexagons, laid and lifted, partly outside the frame, and a tilted land edge. */
public final class Designs {
    private Designs() {}

    public static Arbitrary<Thumbnail> any() {
        return Combinators.combine(marks(), level())
                .as((marks, level) -> Plans.blank().withMarks(marks).withLandEdge(level.landEdge()));
    }

    /** The same with a horizon, a focus and a path of the eye besides, of which each may be missing. */
    public static Arbitrary<Thumbnail> withEverything() {
        Arbitrary<Double> x = Arbitraries.doubles().between(0, 1.333).ofScale(3);
        Arbitrary<Double> y = Arbitraries.doubles().between(0, 1).ofScale(3);
        Arbitrary<Point> place = Combinators.combine(x, y).as(Point::new);
        Arbitrary<Path> path = place.list().ofMinSize(2).ofMaxSize(5).map(Path::through);
        return Combinators.combine(any(), level(), place.optional(), path.optional())
                .as((thumbnail, level, focus, eyePath) ->
                        thumbnail.withHorizon(level.landEdge()).withFocus(focus).withEyePath(eyePath));
    }

    private static Arbitrary<Thumbnail> level() {
        Arbitrary<Double> y = Arbitraries.doubles().between(0.1, 0.9).ofScale(3);
        Arbitrary<Double> tilt = Arbitraries.doubles().between(-20, 20).ofScale(1);
        return Combinators.combine(y, tilt)
                .as((at, degrees) -> Plans.blank().withLandEdge(Optional.of(new Level(at, degrees))));
    }

    private static Arbitrary<List<Mark>> marks() {
        Arbitrary<Double> x = Arbitraries.doubles().between(-0.2, 1.5).ofScale(3);
        Arbitrary<Double> y = Arbitraries.doubles().between(-0.2, 1.2).ofScale(3);
        Arbitrary<List<Point>> corners =
                Combinators.combine(x, y).as(Point::new).list().ofMinSize(3).ofMaxSize(6);
        Arbitrary<Mark> mark = Combinators.combine(corners, Arbitraries.of(Mark.Kind.class))
                .as((points, kind) -> new Mark("m", kind, Outline.polygon(points)));
        return mark.list().ofMinSize(1).ofMaxSize(6).map(Designs::numbered);
    }

    private static List<Mark> numbered(List<Mark> marks) {
        List<Mark> numbered = new ArrayList<>();
        for (Mark mark : marks) {
            numbered.add(mark.withId("m" + (numbered.size() + 1)));
        }
        return numbered;
    }
}
