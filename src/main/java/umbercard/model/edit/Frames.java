package umbercard.model.edit;

import java.util.Optional;
import java.util.function.UnaryOperator;
import umbercard.geometry.Line;
import umbercard.geometry.Point;
import umbercard.model.Frame;
import umbercard.model.Reference;
import umbercard.model.Study;
import umbercard.model.Thumbnail;

/**
 * Changes of the frame that a thumbnail is seen through, each a pure function. Marks, lines and zones belong to the card:
 * they stay where they are while the photograph moves under them. A study without a reference is left as it is.
 */
public final class Frames {
    /** The grid that shares of the photograph and degrees snap to when an edit is made. */
    private static final double GRID = 1e9;

    private Frames() {}

    /** The frame that a thumbnail is seen through: its own, or the reference's; empty without a reference. */
    public static Optional<Frame> of(Study study, String thumbnail) {
        return study.reference()
                .map(Reference::frame)
                .map(shared ->
                        study.thumbnail(thumbnail).flatMap(Thumbnail::frame).orElse(shared));
    }

    /** Whether a thumbnail has a frame of its own. */
    public static boolean isOwn(Study study, String thumbnail) {
        return study.thumbnail(thumbnail).flatMap(Thumbnail::frame).isPresent();
    }

    /** Lets a thumbnail be seen through that frame; others that share the reference's are seen through it too. */
    public static UnaryOperator<Study> put(String thumbnail, Frame frame) {
        Frame snapped = snapped(frame);
        return study -> isOwn(study, thumbnail)
                ? Edits.thumbnail(thumbnail, t -> t.withFrame(Optional.of(snapped)))
                        .apply(study)
                : study.withReference(study.reference().map(reference -> reference.withFrame(snapped)));
    }

    /** Gives a thumbnail a frame of its own, which begins where the reference's is, or takes it away again. */
    public static UnaryOperator<Study> own(String thumbnail, boolean own) {
        return study -> study.reference()
                .map(reference -> Edits.thumbnail(
                                thumbnail,
                                t -> t.withFrame(
                                        own ? t.frame().or(() -> Optional.of(reference.frame())) : Optional.empty()))
                        .apply(study))
                .orElse(study);
    }

    /** Marks the photograph's own horizon, in shares of the upright photograph. */
    public static UnaryOperator<Study> ownHorizon(Line horizon) {
        Line snapped = new Line(snapped(horizon.from()), snapped(horizon.to()));
        return study ->
                study.withReference(study.reference().map(reference -> reference.withOwnHorizon(Optional.of(snapped))));
    }

    /**
     * Puts another photograph in the place of the reference's, or gives the study one. How it is looked at stays; what was
     * placed on the old photograph, which is the frames and the own horizon, does not.
     *
     * @param reference the other photograph, and the frame to begin with
     */
    public static UnaryOperator<Study> anotherPhotograph(Reference reference) {
        return study -> {
            Reference placed = study.reference()
                    .map(old -> reference
                            .withFade(old.fade())
                            .withSquint(old.squint())
                            .withSplit(old.split()))
                    .orElse(reference);
            return study.withReference(Optional.of(placed))
                    .withThumbnails(study.thumbnails().stream()
                            .map(thumbnail -> thumbnail.withFrame(Optional.empty()))
                            .toList());
        };
    }

    private static Frame snapped(Frame frame) {
        return new Frame(
                snapped(frame.center()),
                Math.max(1 / GRID, snapped(frame.height())),
                snapped(frame.tilt()),
                frame.mirrored());
    }

    private static Point snapped(Point place) {
        return new Point(snapped(place.x()), snapped(place.y()));
    }

    /** Adding 0 makes of a negative zero, which a file does not keep, a plain one. */
    private static double snapped(double number) {
        return Math.rint(number * GRID) / GRID + 0.0;
    }
}
