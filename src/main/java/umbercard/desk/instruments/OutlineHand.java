package umbercard.desk.instruments;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import umbercard.door.Bench;
import umbercard.door.Edit;
import umbercard.door.Gesture;
import umbercard.door.Hand;
import umbercard.door.Place;
import umbercard.door.Preview;
import umbercard.door.Step;
import umbercard.geometry.BorderClosing;
import umbercard.geometry.CurveFit;
import umbercard.geometry.Outline;
import umbercard.geometry.Path;
import umbercard.geometry.Point;
import umbercard.geometry.Region;
import umbercard.model.Mark;
import umbercard.model.Study;
import umbercard.words.Message;

/**
 * Draws one outline after another, each to become a mark or what else is made of it. A press that travels draws a line freehand; begun from nothing, it closes by itself when
 * the hand lets go. A click sets a sharp corner, and clicks and lines go on until the outline is closed: by a tap on its
 * start, Enter or a double click. Left open with both ends at the frame's border or beyond, an outline closes along the
 * border, on the lower side unless the key O has chosen the other. Backspace takes the last corner or line back, Escape
 * drops the outline. The second button at its first press swaps lay and lift, or
 * does what is made at once with it. A button that goes down or up while another
 * one draws changes nothing. An outline that encloses nothing of the frame makes nothing.
 */
final class OutlineHand implements Hand {
    /** A freehand line is fitted to within this many screen pixels of those that the pointer reported. */
    private static final double FIT_PIXELS = 0.25;

    /** The pointer reports whole pixels, so the hand was up to this many of them away. */
    private static final double GRAIN_PIXELS = 0.5;

    /** With so many nodes a straight-sided outline can enclose something. */
    private static final int FEWEST_NODES = 3;

    private final Mark.Kind kind;
    private final Making making;
    private final Bench bench;
    private Optional<Draft> draft = Optional.empty();
    private Optional<Stroke> stroke = Optional.empty();

    OutlineHand(Mark.Kind kind, Making making, Bench bench) {
        this.kind = kind;
        this.making = making;
        this.bench = bench;
    }

    @Override
    public Step feel(Gesture gesture) {
        String thumbnail = bench.thumbnail().get();
        boolean gone = bench.study().get().thumbnail(thumbnail).isEmpty();
        if (gone || draft.filter(d -> d.thumbnail().equals(thumbnail)).isEmpty()) {
            drop();
        }
        if (gone) {
            return Step.idle();
        }
        return switch (gesture.act()) {
            case HOVER -> seen(gesture);
            case PRESS -> pressed(gesture);
            case DRAG -> dragged(gesture);
            case RELEASE -> released(gesture);
            case KEY -> struck(gesture);
            case ESCAPE -> drop();
        };
    }

    private Step drop() {
        draft = Optional.empty();
        stroke = Optional.empty();
        return Step.idle();
    }

    /** A pen's barrel button pinched within a stroke is no press of its own. */
    private Step pressed(Gesture gesture) {
        if (stroke.isPresent()) {
            return seen(gesture);
        }
        if (draft.isEmpty()) {
            boolean swaps = gesture.with().contains(Gesture.With.SECOND_BUTTON);
            Optional<Edit> atOnce = swaps ? making.atOnce(bench.thumbnail().get(), gesture.at()) : Optional.empty();
            if (atOnce.isPresent()) {
                return Step.done(atOnce.get());
            }
            draft = Optional.of(Draft.begin(bench.thumbnail().get(), swaps ? other() : kind));
        }
        stroke = Optional.of(new Stroke(gesture));
        return seen(gesture);
    }

    private Mark.Kind other() {
        return kind == Mark.Kind.LAY ? Mark.Kind.LIFT : Mark.Kind.LAY;
    }

    private Step dragged(Gesture gesture) {
        stroke.ifPresent(line -> line.to(gesture));
        return seen(gesture);
    }

    private Step released(Gesture gesture) {
        if (draft.isEmpty() || stroke.filter(line -> line.endsWith(gesture)).isEmpty()) {
            return seen(gesture);
        }
        Draft before = draft.get();
        Stroke made = stroke.get();
        made.to(gesture);
        stroke = Optional.empty();
        if (made.isLine()) {
            return before.isEmpty() ? drawnWhole(before, made, gesture) : drawnOn(before, made, gesture);
        }
        return clicked(before, made, gesture);
    }

    /** A line begun from nothing is the whole outline. */
    private Step drawnWhole(Draft before, Stroke made, Gesture gesture) {
        double tolerance = FIT_PIXELS * gesture.pixel();
        double grain = GRAIN_PIXELS * gesture.pixel();
        Outline outline = Reach.isAt(gesture, made.start())
                ? CurveFit.fitClosed(made.raw(), tolerance, grain)
                : closed(CurveFit.fit(made.raw(), tolerance, grain), before.otherSide(), gesture);
        Optional<Edit> edit = edit(before, outline, gesture);
        drop();
        return edit.map(Step::done).orElseGet(Step::idle);
    }

    /** A line drawn after a corner or another line is one more piece of the outline. */
    private Step drawnOn(Draft before, Stroke made, Gesture gesture) {
        List<Point> raw = new ArrayList<>(made.raw());
        if (raw.get(0).distance(before.end()) < Reach.of(gesture)) {
            raw.set(0, before.end());
        }
        Draft after = before.plus(CurveFit.fit(raw, FIT_PIXELS * gesture.pixel(), GRAIN_PIXELS * gesture.pixel())
                .nodes());
        return Reach.isAt(gesture, after.start())
                ? finished(after, new Outline(after.path().nodes()), gesture)
                : goOn(after, gesture);
    }

    private Step clicked(Draft before, Stroke made, Gesture gesture) {
        if (before.isEmpty()) {
            return made.isRepeated() ? drop() : goOn(before.plus(made.start()), gesture);
        }
        if (made.isRepeated() && made.start().distance(before.end()) < Reach.of(gesture)) {
            return closedOpen(before, gesture);
        }
        if (made.start().distance(before.start()) < Reach.of(gesture)) {
            return finished(before, new Outline(before.path().nodes()), gesture);
        }
        boolean again = made.start().distance(before.end()) < gesture.pixel();
        return goOn(again ? before : before.plus(made.start()), gesture);
    }

    private Step struck(Gesture gesture) {
        if (draft.isEmpty()) {
            return Step.idle();
        }
        Draft before = draft.get();
        boolean free = stroke.isEmpty();
        return switch (gesture.key()) {
            case "o" -> goOn(before.swapped(), gesture);
            case "enter" -> free ? closedOpen(before, gesture) : seen(gesture);
            case "backspace" -> free ? shortened(before, gesture) : seen(gesture);
            default -> seen(gesture);
        };
    }

    private Step shortened(Draft before, Gesture gesture) {
        return before.shorter().map(shorter -> goOn(shorter, gesture)).orElseGet(this::drop);
    }

    private Step goOn(Draft next, Gesture gesture) {
        draft = Optional.of(next);
        return seen(gesture);
    }

    /** Closes an outline that was left open. */
    private Step closedOpen(Draft before, Gesture gesture) {
        return finished(before, closed(before.path(), before.otherSide(), gesture), gesture);
    }

    /** Makes the mark; an outline that encloses nothing stays half made, so that nothing is lost. */
    private Step finished(Draft made, Outline outline, Gesture gesture) {
        Optional<Edit> edit = edit(made, outline, gesture);
        if (edit.isEmpty()) {
            return goOn(made, gesture);
        }
        drop();
        return Step.done(edit.get());
    }

    private Outline closed(Path open, boolean otherSide, Gesture gesture) {
        return BorderClosing.close(open, ratio(), Reach.of(gesture), otherSide);
    }

    private double ratio() {
        return bench.study().get().ratio();
    }

    private Optional<Edit> edit(Draft made, Outline outline, Gesture gesture) {
        double seenOfIt =
                Region.of(outline).intersect(Region.rectangle(0, 0, ratio(), 1)).area();
        if (seenOfIt < gesture.pixel() * gesture.pixel()) {
            return Optional.empty();
        }
        return Optional.of(making.edit(made, outline));
    }

    /** What there is to see of the half-made outline. */
    private Step seen(Gesture gesture) {
        if (draft.isEmpty()) {
            return Step.idle();
        }
        Draft made = draft.get();
        boolean drawing = stroke.filter(Stroke::isLine).isPresent();
        Draft shown = drawing ? made.plus(Path.through(stroke.get().coarse()).nodes()) : made;
        boolean closing = (drawing || canClose(made)) && Reach.isAt(gesture, shown.start());
        if (!drawing && !closing) {
            shown = made.plus(stroke.map(Stroke::start).orElse(gesture.at()));
        }
        Outline outline =
                closing ? new Outline(shown.path().nodes()) : closed(shown.path(), shown.otherSide(), gesture);
        Optional<Study> asIf = outline.nodes().size() < 2
                ? Optional.empty()
                : making.asIf(shown, outline)
                        .map(change -> change.apply(bench.study().get()));
        boolean alongBorder = outline.nodes().size() > shown.path().nodes().size();
        boolean closes = closing || made.isEmpty();
        String hint = alongBorder ? "border" : !closes ? "next" : drawing ? "stroke" : "close";
        return Step.holding(new Preview(
                List.of(new Place.Along(shown.line()), new Place.At(shown.start())),
                asIf,
                Optional.of(Message.of("instrument.outline." + hint))));
    }

    private static boolean canClose(Draft made) {
        return made.path().nodes().size() >= FEWEST_NODES;
    }
}
