package umbercard.remedies;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import umbercard.door.Remedied;
import umbercard.geometry.Warp;
import umbercard.model.Frame;
import umbercard.model.Framing;
import umbercard.model.Level;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.model.edit.Frames;
import umbercard.readings.Fraction;
import umbercard.words.Message;

/**
 * Raises or lowers the horizon or the land edge, and the whole picture with it: what lies above it and what lies below are
 * stretched or squeezed each by one factor. The frame goes along on the photograph by as much as the line moves, where the
 * photograph has room.
 */
public final class LineMove {
    /** The named fractions that a line may lie at: all but the half, which divides the picture evenly. */
    public static final List<Fraction> FRACTIONS = Stream.of(Fraction.values())
            .filter(fraction -> fraction != Fraction.HALF)
            .toList();

    /** A line nearer to its goal than this, in shares of the frame's height, is there. */
    private static final double THERE = 0.0005;

    private LineMove() {}

    /** The line's height above the bottom edge at the frame's middle, as a share of the frame's height. */
    public static double height(Level level) {
        return 1 - level.y();
    }

    /**
     * The thumbnail with the line at another height; its tilt stays. Empty if the thumbnail does not have the line, if it lies
     * outside the frame, or if it lies there already.
     *
     * @param to the height above the bottom edge, between 0 and 1 and neither
     */
    public static Optional<Remedied> to(
            double to, CardLine line, Study study, Thumbnail thumbnail, OptionalDouble photographRatio) {
        if (!(to > 0 && to < 1)) {
            throw new IllegalArgumentException("a line is moved to within the frame: " + to);
        }
        return line.on(thumbnail)
                .filter(from -> height(from) > 0 && height(from) < 1)
                .filter(from -> !isThere(from, to))
                .map(from -> moved(from, to, line, study, thumbnail, photographRatio));
    }

    private static Remedied moved(
            Level from, double to, CardLine line, Study study, Thumbnail thumbnail, OptionalDouble photographRatio) {
        Level goal = new Level(1 - to, from.tilt());
        Thumbnail warped = carrying(from, goal, study.ratio()).of(thumbnail);
        String way = to > height(from) ? "raise" : "lower";
        Message name = named(to)
                .map(fraction -> Message.of("remedies." + way + "-to", line.words(), fraction.words()))
                .orElseGet(() -> Message.of("remedies." + way, line.words(), 100 * to));
        Optional<Frame> seen = Frames.of(study, thumbnail.id());
        Optional<Frame> along = seen.flatMap(frame -> along(frame, goal.y() - from.y(), study, photographRatio));
        boolean stays = seen.isPresent() && along.isEmpty();
        return new Remedied(
                name,
                Message.of("remedies." + way + ".called"),
                along.isPresent() ? warped.withFrame(along) : warped,
                stays ? List.of(stays(photographRatio)) : List.of());
    }

    /** Another line that crosses the moved one would break; it keeps its ends. */
    private static Carrying carrying(Level from, Level to, double ratio) {
        Warp warp = Warp.between(from.across(ratio), to.across(ratio), ratio);
        return new Carrying(
                warp::mapped,
                level -> level.equals(from) ? to : Level.along(warp.mapped(level.across(ratio)), ratio),
                warp::mapped,
                warp::mapped);
    }

    /** The frame, so that what the photograph shows moves down in it by so much; empty where it would reach beyond. */
    private static Optional<Frame> along(Frame frame, double down, Study study, OptionalDouble photographRatio) {
        if (photographRatio.isEmpty()) {
            return Optional.empty();
        }
        Framing framing = new Framing(photographRatio.getAsDouble(), study.ratio());
        return Optional.of(framing.moved(frame, 0, -down)).filter(framing::isInside);
    }

    private static Message stays(OptionalDouble photographRatio) {
        return Message.of("remedies.frame-stays." + (photographRatio.isPresent() ? "no-room" : "not-at-hand"));
    }

    private static Optional<Fraction> named(double height) {
        return Stream.of(Fraction.values())
                .filter(fraction -> Math.abs(fraction.share() - height) <= THERE)
                .findFirst();
    }

    /** Whether the line already lies at a height, as far as one can tell. */
    public static boolean isThere(Level level, double height) {
        return Math.abs(height(level) - height) <= THERE;
    }
}
