package umbercard.desk.instruments;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import umbercard.door.Bench;
import umbercard.door.Edit;
import umbercard.door.Gesture;
import umbercard.door.Gesture.Act;
import umbercard.door.Gesture.With;
import umbercard.door.Hand;
import umbercard.door.Instrument;
import umbercard.door.Step;
import umbercard.geometry.Point;
import umbercard.model.Study;
import umbercard.model.Surface;
import umbercard.model.Thumbnail;
import umbercard.model.edit.Edits;
import umbercard.model.edit.History;
import umbercard.words.Message;

/**
 * What a painter does with one instrument, told in short sentences; edits go into a history at once, as on the desk. The
 * card is {@value #RATIO} wide and 1 high, a screen pixel is {@value #PIXEL} of it.
 */
final class Script {
    static final double RATIO = 1.5;
    static final double PIXEL = 0.001;
    static final String THUMBNAIL = "t1";

    private static final Surface SURFACE = new Surface(15, 10, Surface.Unit.CM, 0, Optional.empty(), false);

    private final History<Message> history;
    private final Hand hand;
    private final List<Edit> edits = new ArrayList<>();
    private String shown = THUMBNAIL;
    private Set<With> with = Set.of();
    private double pixel = PIXEL;
    private Point pointer = new Point(0, 0);
    private long millis;
    private Step last = Step.idle();

    private Script(Instrument instrument, Study study) {
        history = new History<>(study);
        hand = instrument.pick(new Bench(history::study, () -> shown, Map.of()));
    }

    static Script with(Instrument instrument) {
        return with(instrument, card());
    }

    static Script with(Instrument instrument, Study study) {
        return new Script(instrument, study);
    }

    /** A study with two empty thumbnails. */
    static Study card() {
        Study study = Study.begin("Kiln Hill, first snow", SURFACE);
        study = Edits.addThumbnail(Thumbnail.empty(THUMBNAIL, "first")).apply(study);
        return Edits.addThumbnail(Thumbnail.empty("t2", "second")).apply(study);
    }

    /** What is held down from here on. */
    Script holding(With... held) {
        with = Set.of(held);
        return this;
    }

    /** How large a screen pixel is from here on, in frame units. */
    Script pixel(double size) {
        pixel = size;
        return this;
    }

    Script hover(double x, double y) {
        return feel(Act.HOVER, x, y, "", 0);
    }

    Script press(double x, double y) {
        return feel(Act.PRESS, x, y, "", 1);
    }

    Script drag(double x, double y) {
        return feel(Act.DRAG, x, y, "", 0);
    }

    Script release() {
        return feel(Act.RELEASE, pointer.x(), pointer.y(), "", 1);
    }

    Script click(double x, double y) {
        return press(x, y).release();
    }

    /** Two clicks in quick succession. */
    Script doubleClick(double x, double y) {
        click(x, y);
        feel(Act.PRESS, x, y, "", 2);
        return feel(Act.RELEASE, x, y, "", 2);
    }

    /** One stroke through the places, pairs of x and y, without a stop; the hand moves by about three pixels at a time. */
    Script stroke(double... places) {
        press(places[0], places[1]);
        for (int i = 2; i < places.length; i += 2) {
            Point from = pointer;
            Point to = new Point(places[i], places[i + 1]);
            int steps = Math.max(1, (int) Math.ceil(from.distance(to) / (3 * pixel)));
            for (int step = 1; step <= steps; step++) {
                Point at = from.toward(to, (double) step / steps);
                drag(at.x(), at.y());
            }
        }
        return this;
    }

    /** A whole circle in one stroke, begun at its right. */
    Script circle(double x, double y, double radius) {
        press(x + radius, y);
        for (int degrees = 1; degrees <= 360; degrees++) {
            double angle = Math.toRadians(degrees);
            drag(x + radius * Math.cos(angle), y + radius * Math.sin(angle));
        }
        return this;
    }

    Script key(String name) {
        return feel(Act.KEY, pointer.x(), pointer.y(), name, 0);
    }

    Script escape() {
        return feel(Act.ESCAPE, pointer.x(), pointer.y(), "", 0);
    }

    /** Another thumbnail is laid on the card. */
    Script show(String thumbnail) {
        shown = thumbnail;
        return this;
    }

    Script undo() {
        history.undo();
        return this;
    }

    Script feel(Act act, double x, double y, String key, int clicks) {
        pointer = new Point(x, y);
        millis += 10;
        last = hand.feel(new Gesture(act, pointer, pixel, key, with, clicks, millis));
        last.edit().ifPresent(edit -> {
            edits.add(edit);
            history.edit(edit.name(), edit.change(), edit.joinsWith());
        });
        return this;
    }

    /** What the last gesture led to. */
    Step last() {
        return last;
    }

    /** The edits made so far. */
    List<Edit> edits() {
        return List.copyOf(edits);
    }

    /** What the menu would call undo. */
    Optional<Message> undoable() {
        return history.undoable();
    }

    Study study() {
        return history.study();
    }

    Thumbnail thumbnail() {
        return study().thumbnail(THUMBNAIL).orElseThrow();
    }

    /** The thumbnail as it would be if the gesture under way were finished. */
    Thumbnail asIf() {
        return last.preview().asIf().orElseThrow().thumbnail(THUMBNAIL).orElseThrow();
    }
}
