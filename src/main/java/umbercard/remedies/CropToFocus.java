package umbercard.remedies;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import umbercard.door.Remedied;
import umbercard.door.Remedy;
import umbercard.door.Trial;
import umbercard.geometry.Line;
import umbercard.geometry.Point;
import umbercard.model.Frame;
import umbercard.model.Framing;
import umbercard.model.Level;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.model.edit.Frames;
import umbercard.readings.Fraction;
import umbercard.words.Message;

/** Takes a tighter frame, on the card and on the photograph, in which the focus lies on a crossing of thirds. */
public final class CropToFocus implements Remedy {
    /** A frame that keeps less of the height than this shows another picture; common practice, no source. */
    private static final double LEAST = 0.6;

    /** The part of the old frame that the new one keeps, of the same proportions: its upper left corner and its height. */
    private record Crop(Point corner, double height) {
        Point mapped(Point p) {
            return new Point((p.x() - corner.x()) / height, (p.y() - corner.y()) / height);
        }

        Carrying carrying(double ratio) {
            return new Carrying(
                    outline -> outline.mapped(this::mapped),
                    level -> mapped(level, ratio),
                    this::mapped,
                    path -> path.mapped(this::mapped));
        }

        Level mapped(Level level, double ratio) {
            Line across = level.across(ratio);
            Line moved = new Line(mapped(across.from()), mapped(across.to()));
            return new Level(Level.along(moved, ratio).y(), level.tilt());
        }
    }

    @Override
    public String id() {
        return "crop";
    }

    @Override
    public int rank() {
        return 500;
    }

    @Override
    public Set<String> mends() {
        return Set.of("focus-place");
    }

    @Override
    public Optional<Remedied> tried(Trial trial) {
        Study study = trial.plan().study();
        Thumbnail thumbnail = trial.plan().thumbnail();
        return thumbnail
                .focus()
                .flatMap(focus -> widest(focus, study.ratio()))
                .map(crop -> cropped(crop, study, thumbnail, trial.photographRatio()));
    }

    /** The largest crop that puts the focus on one of the four crossings. */
    private static Optional<Crop> widest(Point focus, double ratio) {
        List<Double> shares = List.of(Fraction.THIRD.share(), Fraction.TWO_THIRDS.share());
        return shares.stream()
                .flatMap(across -> shares.stream().map(down -> new Point(across * ratio, down)))
                .flatMap(crossing -> crop(focus, crossing, ratio))
                .max((one, other) -> Double.compare(one.height(), other.height()));
    }

    private static Stream<Crop> crop(Point focus, Point crossing, double ratio) {
        double height = DoubleStream.of(
                        1,
                        focus.x() / crossing.x(),
                        (ratio - focus.x()) / (ratio - crossing.x()),
                        focus.y() / crossing.y(),
                        (1 - focus.y()) / (1 - crossing.y()))
                .min()
                .orElseThrow();
        return height < LEAST
                ? Stream.empty()
                : Stream.of(new Crop(
                        new Point(focus.x() - height * crossing.x(), focus.y() - height * crossing.y()), height));
    }

    private static Remedied cropped(Crop crop, Study study, Thumbnail thumbnail, OptionalDouble photographRatio) {
        double ratio = study.ratio();
        Optional<Frame> seen = Frames.of(study, thumbnail.id());
        boolean atHand = photographRatio.isPresent();
        Optional<Frame> tighter = seen.filter(frame -> atHand)
                .map(frame -> tighter(crop, frame, new Framing(photographRatio.getAsDouble(), ratio)));
        Thumbnail cropped = crop.carrying(ratio).of(thumbnail).withFrame(tighter.or(thumbnail::frame));
        boolean stays = seen.isPresent() && !atHand;
        return new Remedied(
                Message.of("remedies.crop", 100 * crop.height()),
                Message.of("remedies.crop.called"),
                cropped,
                stays ? List.of(Message.of("remedies.frame-stays.not-at-hand")) : List.of());
    }

    private static Frame tighter(Crop crop, Frame frame, Framing framing) {
        Point middle = crop.corner().plus(crop.height() * framing.frameRatio() / 2, crop.height() / 2);
        return frame.withCenter(framing.onPhotograph(frame, middle)).withHeight(crop.height() * frame.height());
    }
}
