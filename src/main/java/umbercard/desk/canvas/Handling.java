package umbercard.desk.canvas;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import umbercard.desk.session.Session;
import umbercard.door.Bench;
import umbercard.door.Gesture;
import umbercard.door.Hand;
import umbercard.door.Instrument;
import umbercard.door.Preview;
import umbercard.door.Step;
import umbercard.geometry.Point;

/** The instrument in the painter's hand: passes gestures on and carries out what they lead to. */
final class Handling {
    private final Session session;
    private Optional<Hand> hand = Optional.empty();
    private Optional<Instrument> instrument = Optional.empty();
    private Step step = Step.idle();

    Handling(Session session) {
        this.session = session;
    }

    /** Takes up another instrument; what was half made is dropped. */
    void take(Instrument taken) {
        drop();
        instrument = Optional.of(taken);
        hand = Optional.of(taken.pick(new Bench(session::study, session::shown, Map.of())));
    }

    Optional<Instrument> instrument() {
        return instrument;
    }

    /** Drops what is half made, as Escape does. */
    void drop() {
        if (step.held() || step.preview().asIf().isPresent()) {
            feel(new Gesture(Gesture.Act.ESCAPE, new Point(0, 0), 1e-3, "", Set.of(), 0, 0));
        }
    }

    void feel(Gesture gesture) {
        if (hand.isEmpty() || session.thumbnail().isEmpty()) {
            return;
        }
        step = hand.get().feel(gesture);
        step.edit().ifPresent(session::edit);
        session.preview(step.preview().asIf());
    }

    Preview preview() {
        return step.preview();
    }

    /** Whether something is half made. */
    boolean isHolding() {
        return step.held();
    }
}
