package umbercard.desk.instruments;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import umbercard.door.Bench;
import umbercard.door.Edit;
import umbercard.door.Gesture;
import umbercard.door.Hand;
import umbercard.door.Place;
import umbercard.door.Preview;
import umbercard.door.Step;
import umbercard.geometry.Point;
import umbercard.model.Level;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.model.edit.Edits;
import umbercard.words.Message;

/**
 * Draws one of the lines across the frame. A press puts the line under the pointer, or takes hold of the one that is there,
 * a drag moves it, the release makes the edit. With the second button or ALT a drag turns it about the frame's middle. By
 * keyboard: up and down move it by a pixel, left and right turn it by a tenth of a degree, SHIFT makes that ten times as
 * much, Enter draws it where the pointer is, Delete and Backspace take it away.
 */
final class LevelHand implements Hand {
    private static final double DEGREES_A_KEY = 0.1;
    private static final double SHIFT_FACTOR = 10;

    private final LevelLine line;
    private final Bench bench;
    private Optional<Grip> grip = Optional.empty();

    /**
     * A line in the hand.
     *
     * @param thumbnail the thumbnail it was taken hold of on
     * @param at the line as it lies now
     * @param turning whether the hand turns it rather than moves it
     * @param below how far the line was below the pointer when it was taken hold of
     */
    private record Grip(String thumbnail, Level at, boolean turning, double below) {
        Grip to(Level next) {
            return new Grip(thumbnail, next, turning, below);
        }
    }

    LevelHand(LevelLine line, Bench bench) {
        this.line = line;
        this.bench = bench;
    }

    @Override
    public Step feel(Gesture gesture) {
        if (grip.filter(held -> held.thumbnail().equals(bench.thumbnail().get()))
                .isEmpty()) {
            grip = Optional.empty();
        }
        Optional<Thumbnail> thumbnail =
                bench.study().get().thumbnail(bench.thumbnail().get());
        if (thumbnail.isEmpty()) {
            return Step.idle();
        }
        Optional<Level> drawn = line.of().apply(thumbnail.get());
        return switch (gesture.act()) {
            case HOVER -> grip.isPresent() ? held() : hovered(gesture, drawn);
            case PRESS -> pressed(gesture, thumbnail.get().id(), drawn);
            case DRAG -> dragged(gesture);
            case RELEASE -> released();
            case KEY -> grip.isPresent() ? held() : struck(gesture, drawn);
            case ESCAPE -> dropped();
        };
    }

    private Step hovered(Gesture gesture, Optional<Level> drawn) {
        boolean onLine = drawn.filter(level -> isNear(gesture, level)).isPresent();
        Level shown = onLine ? drawn.get() : moved(gesture, drawn, 0);
        Message hint = Message.of(onLine ? "instrument.level.grip" : "instrument.level.place");
        return new Step(
                new Preview(List.of(across(shown)), Optional.empty(), Optional.of(hint)), Optional.empty(), false);
    }

    private Step pressed(Gesture gesture, String thumbnail, Optional<Level> drawn) {
        boolean turning = gesture.with().contains(Gesture.With.SECOND_BUTTON)
                || gesture.with().contains(Gesture.With.ALT);
        boolean onLine = drawn.filter(level -> isNear(gesture, level)).isPresent();
        boolean keeps = drawn.isPresent() && (onLine || turning);
        Level at = keeps ? drawn.get() : moved(gesture, drawn, 0);
        double below = onLine ? at.yAt(gesture.at().x(), ratio()) - gesture.at().y() : 0;
        grip = Optional.of(new Grip(thumbnail, at, turning, below));
        return held();
    }

    private Step dragged(Gesture gesture) {
        grip = grip.map(held -> held.to(follow(gesture, held)));
        return held();
    }

    private Level follow(Gesture gesture, Grip held) {
        return held.turning()
                ? Levels.turnedTo(gesture.at(), held.at(), ratio(), Reach.of(gesture))
                : moved(gesture, Optional.of(held.at()), held.below());
    }

    private Step released() {
        if (grip.isEmpty()) {
            return Step.idle();
        }
        Level at = grip.get().at();
        grip = Optional.empty();
        return edit("done", Optional.of(at), Optional.empty());
    }

    private Step dropped() {
        grip = Optional.empty();
        return Step.idle();
    }

    private Step struck(Gesture gesture, Optional<Level> drawn) {
        double times = gesture.with().contains(Gesture.With.SHIFT) ? SHIFT_FACTOR : 1;
        return switch (gesture.key()) {
            case "delete", "backspace" -> edit("removed", Optional.empty(), Optional.empty());
            case "enter" ->
                drawn.isPresent() ? Step.idle() : edit("done", Optional.of(moved(gesture, drawn, 0)), Optional.empty());
            case "up" -> nudged(drawn, -times * gesture.pixel(), 0);
            case "down" -> nudged(drawn, times * gesture.pixel(), 0);
            case "left" -> nudged(drawn, 0, times * DEGREES_A_KEY);
            case "right" -> nudged(drawn, 0, -times * DEGREES_A_KEY);
            default -> Step.idle();
        };
    }

    private Step nudged(Optional<Level> drawn, double down, double turn) {
        return drawn.map(level -> Levels.at(level.y() + down, level.tilt() + turn))
                .map(next -> edit(
                        "done",
                        Optional.of(next),
                        Optional.of(line.id() + " " + bench.thumbnail().get())))
                .orElseGet(Step::idle);
    }

    /** The line of the drawn one's tilt that lies {@code below} the pointer. */
    private Level moved(Gesture gesture, Optional<Level> drawn, double below) {
        Point under = gesture.at().plus(0, below);
        return Levels.through(under, drawn.map(Level::tilt).orElse(0.0), ratio());
    }

    private boolean isNear(Gesture gesture, Level level) {
        return Math.abs(level.yAt(gesture.at().x(), ratio()) - gesture.at().y()) < Reach.of(gesture);
    }

    private double ratio() {
        return bench.study().get().ratio();
    }

    private Place across(Level level) {
        double right = ratio();
        return new Place.Between(new Point(0, level.yAt(0, right)), new Point(right, level.yAt(right, right)));
    }

    private Step held() {
        return grip.map(held -> Step.holding(new Preview(
                        List.of(across(held.at())),
                        Optional.of(change(Optional.of(held.at()))
                                .apply(bench.study().get())),
                        Optional.of(Message.of(held.turning() ? "instrument.level.turn" : "instrument.level.move")))))
                .orElseGet(Step::idle);
    }

    /** The edit that gives the thumbnail this line; none where it has it already. */
    private Step edit(String name, Optional<Level> level, Optional<String> joinsWith) {
        Study study = bench.study().get();
        UnaryOperator<Study> change = change(level);
        return change.apply(study).equals(study)
                ? Step.idle()
                : Step.done(new Edit(Message.of("instrument." + line.id() + "." + name), change, joinsWith));
    }

    private UnaryOperator<Study> change(Optional<Level> level) {
        return Edits.thumbnail(bench.thumbnail().get(), thumbnail -> line.put().apply(thumbnail, level));
    }
}
