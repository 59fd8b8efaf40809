package umbercard.readings;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import umbercard.door.Finding;
import umbercard.door.Limits;
import umbercard.door.Plan;
import umbercard.door.Reading;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.model.Level;
import umbercard.model.Light;
import umbercard.model.Mark;
import umbercard.model.Study;
import umbercard.model.Surface;
import umbercard.model.Surface.Unit;
import umbercard.model.Thumbnail;
import umbercard.model.Thumbnail.Ground;
import umbercard.notan.Fold;

/** Small studies to read, on a 12 × 9 in sheet without tape: frames are 4/3 wide. */
public final class Plans {
    public static final double RATIO = 4.0 / 3;

    private Plans() {}

    public static Study study() {
        return Study.begin("Alder bank", new Surface(12, 9, Unit.IN, 0, Optional.empty(), false));
    }

    public static Study study(Light light) {
        return study().withLight(light);
    }

    public static Thumbnail blank() {
        return Thumbnail.empty("t1", "first");
    }

    /** One band along the bottom edge, that share of the frame high. */
    public static Thumbnail dark(double share) {
        return blank().withMarks(List.of(band("m1", Mark.Kind.LAY, 1 - share, 1)));
    }

    public static Mark band(String id, Mark.Kind kind, double top, double foot) {
        return new Mark(id, kind, Outline.rectangle(0, top, RATIO, foot));
    }

    public static Plan plan(Study study, Thumbnail thumbnail) {
        return new Plan(study, thumbnail, Fold.of(thumbnail, study.ratio()), Optional.empty(), () -> false);
    }

    public static Finding read(Reading reading, Study study, Thumbnail thumbnail) {
        return reading.read(plan(study, thumbnail), Evaluation.limits(reading.rule(), study, Wishes.NONE));
    }

    public static Finding read(Reading reading, Thumbnail thumbnail) {
        return reading.read(plan(study(), thumbnail), Limits.of(reading.rule(), Map.of()));
    }

    public static double figure(Finding finding, String name) {
        return finding.figures().stream()
                .filter(figure -> figure.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no figure " + name + " in " + finding.figures()))
                .value();
    }

    /** Left and right changed over. */
    public static Thumbnail mirrored(Thumbnail thumbnail) {
        return thumbnail
                .withMarks(thumbnail.marks().stream()
                        .map(m -> m.withOutline(m.outline().mapped(Plans::mirrored)))
                        .toList())
                .withHorizon(thumbnail.horizon().map(Plans::mirrored))
                .withFocus(thumbnail.focus().map(Plans::mirrored))
                .withEyePath(thumbnail.eyePath().map(path -> path.mapped(Plans::mirrored)))
                .withLandEdge(thumbnail.landEdge().map(Plans::mirrored));
    }

    private static Point mirrored(Point point) {
        return new Point(RATIO - point.x(), point.y());
    }

    private static Level mirrored(Level level) {
        return new Level(level.y(), -level.tilt());
    }

    /** Dark and light changed over. */
    public static Thumbnail inverted(Thumbnail thumbnail) {
        return thumbnail
                .withGround(thumbnail.ground() == Ground.DARK ? Ground.LIGHT : Ground.DARK)
                .withMarks(thumbnail.marks().stream()
                        .map(m -> m.withKind(m.kind() == Mark.Kind.LAY ? Mark.Kind.LIFT : Mark.Kind.LAY))
                        .toList());
    }
}
