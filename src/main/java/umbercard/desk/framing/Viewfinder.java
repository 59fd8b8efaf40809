package umbercard.desk.framing;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import umbercard.desk.session.Session;
import umbercard.door.Edit;
import umbercard.geometry.Line;
import umbercard.geometry.Point;
import umbercard.model.Frame;
import umbercard.model.Framing;
import umbercard.model.Reference;
import umbercard.model.Study;
import umbercard.model.edit.Frames;
import umbercard.words.Message;

/**
 * The frame of the thumbnail on the card, and what the painter does with it. While a hand holds the frame nothing is
 * changed; letting go makes one edit. Frames are kept inside the photograph unless the painter lets them reach out: then
 * what lies beyond is bare card, to be drawn on. Marks stay where they are on the card. Event thread only.
 */
final class Viewfinder {
    private final Session session;
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private boolean inside = true;
    private Optional<Frame> held = Optional.empty();

    Viewfinder(Session session) {
        this.session = session;
        session.listen(change -> {
            switch (change) {
                case STUDY -> begin(inside);
                case SHOWN, PHOTOGRAPH -> begin(true);
                case PREVIEW, FILE, WORDS -> {}
            }
        });
    }

    /** Runs {@code listener} after each change of what is to be shown. */
    void listen(Runnable listener) {
        listeners.add(listener);
    }

    /** Tells the listeners that something is to be shown anew. */
    void tell() {
        listeners.forEach(Runnable::run);
    }

    /** Lets go of what is held; a frame that reaches out already may go on doing so. */
    private void begin(boolean keep) {
        held = Optional.empty();
        inside =
                keep && framing().flatMap(plane -> frame().map(plane::isInside)).orElse(true);
        tell();
    }

    /** The plane of the photograph; empty while there is none. */
    Optional<Framing> framing() {
        return session.photograph()
                .map(photograph ->
                        new Framing(photograph.ratio(), session.study().ratio()));
    }

    /** The frame as the study has it; empty without a reference. */
    Optional<Frame> frame() {
        return Frames.of(session.study(), session.shown());
    }

    /** The frame as it would be if the hand let go. */
    Optional<Frame> seen() {
        return held.or(this::frame);
    }

    /** Whether there is a frame on a photograph. */
    boolean isPossible() {
        return framing().isPresent() && frame().isPresent();
    }

    /** Whether the frame is kept inside the photograph. */
    boolean keepsInside() {
        return inside;
    }

    /** Keeps the frame inside the photograph from now on, which may move it, or lets it reach out. */
    void keepInside(boolean wanted) {
        inside = wanted;
        if (wanted) {
            change("inside", false, plane -> frame -> frame);
        }
        tell();
    }

    /** Shows a frame without changing the study; ended by {@link #letGo} or {@link #drop}. */
    void hold(Frame frame) {
        held = Optional.of(frame);
        tell();
    }

    /** Leaves the frame where it is held. */
    void letGo(String name) {
        Optional<Frame> last = held;
        held = Optional.empty();
        last.ifPresent(frame -> put(name, false, frame));
        tell();
    }

    /** Drops what is held. */
    void drop() {
        if (held.isPresent()) {
            held = Optional.empty();
            tell();
        }
    }

    /** Moves the frame as it is seen, in frame units; strokes in a row are one step of undo. */
    void move(double right, double down) {
        change("move", true, plane -> frame -> plane.moved(frame, right, down));
    }

    /** Scales the frame about a place of the photograph; strokes in a row are one step of undo. */
    void scale(Point about, double factor) {
        change("scale", true, plane -> frame -> plane.scaled(frame, about, factor));
    }

    /** Scales the frame about its middle; strokes in a row are one step of undo. */
    void scaleAboutMiddle(double factor) {
        change("scale", true, plane -> frame -> plane.scaled(frame, frame.center(), factor));
    }

    /**
     * Turns the photograph counter-clockwise under the frame, as it is seen; strokes in a row are one step of undo. The frame
     * goes the other way on the photograph, and in a mirror it is seen to do the opposite.
     */
    void turnSeen(double degrees) {
        change(
                "tilt",
                true,
                plane -> frame -> plane.turnedTo(frame, frame.tilt() + (frame.mirrored() ? degrees : -degrees)));
    }

    /** Turns the frame upright on the photograph. */
    void upright() {
        change("upright", false, plane -> frame -> plane.turnedTo(frame, 0));
    }

    /** Changes left and right. */
    void mirror() {
        change("mirror", false, plane -> plane::mirrored);
    }

    /** The largest frame in the middle, neither turned nor mirrored. */
    void largest() {
        change("largest", false, plane -> frame -> plane.largest());
    }

    /** Levels the frame by the horizon marked before, if there is one. */
    void level() {
        ownHorizon().ifPresent(line -> change("level", false, plane -> frame -> plane.leveled(frame, line)));
    }

    /** The photograph's own horizon, in shares of it. */
    Optional<Line> ownHorizon() {
        return session.study().reference().flatMap(Reference::ownHorizon);
    }

    /** Marks the photograph's own horizon and levels the frame by it, in one edit. */
    void level(Line horizon) {
        framing()
                .ifPresent(plane -> frame().ifPresent(frame -> {
                    Frame level = kept(plane, plane.leveled(frame, horizon));
                    UnaryOperator<Study> put = Frames.put(session.shown(), level);
                    UnaryOperator<Study> mark = Frames.ownHorizon(horizon);
                    edit("horizon", Optional.empty(), study -> put.apply(mark.apply(study)));
                }));
    }

    /** Whether the thumbnail has a frame of its own. */
    boolean isOwn() {
        return Frames.isOwn(session.study(), session.shown());
    }

    /** Gives the thumbnail a frame of its own, or lets it share the reference's again. */
    void own(boolean own) {
        edit(own ? "own" : "shared", Optional.empty(), Frames.own(session.shown(), own));
    }

    private void change(String name, boolean joins, Function<Framing, UnaryOperator<Frame>> change) {
        held = Optional.empty();
        framing()
                .ifPresent(plane -> frame().ifPresent(frame -> {
                    Frame next = kept(plane, change.apply(plane).apply(frame));
                    if (!next.equals(frame)) {
                        put(name, joins, next);
                    }
                }));
    }

    private Frame kept(Framing plane, Frame frame) {
        return inside ? plane.heldInside(frame) : frame;
    }

    private void put(String name, boolean joins, Frame frame) {
        edit(name, joins ? Optional.of("frame " + name) : Optional.empty(), Frames.put(session.shown(), frame));
    }

    private void edit(String name, Optional<String> joinsWith, UnaryOperator<Study> change) {
        if (!change.apply(session.study()).equals(session.study())) {
            session.edit(new Edit(Message.of("framing.edit." + name), change, joinsWith));
        }
    }
}
