package umbercard.desk.canvas;

import java.util.Optional;
import java.util.Set;
import umbercard.desk.session.Session;
import umbercard.door.Bench;
import umbercard.door.Edit;
import umbercard.door.Gesture;
import umbercard.door.Hand;
import umbercard.door.Instrument;
import umbercard.door.Preview;
import umbercard.door.Step;
import umbercard.geometry.Point;
import umbercard.kernel.Plugins;
import umbercard.model.Study;
import umbercard.words.Words;

/**
 * The instrument in the painter's hand: passes gestures on and carries out what they lead to. An instrument that fails is
 * switched off, what it had half made is dropped, and the first of the others is taken up.
 */
final class Handling {
    private static final Felt NOTHING = new Felt(Step.idle(), Optional.empty());

    /** What came of a gesture, and the hint in words: both from the plug-in, so both made while it is asked. */
    private record Felt(Step step, Optional<String> hint) {}

    private final Session session;
    private final Plugins<Instrument> instruments;
    private final Runnable taken;
    private Optional<Hand> hand = Optional.empty();
    private Optional<Instrument> instrument = Optional.empty();
    private Felt felt = NOTHING;

    /**
     * Nothing in hand yet.
     *
     * @param taken run whenever another instrument is in hand, or none, or one was switched off
     */
    Handling(Session session, Plugins<Instrument> instruments, Runnable taken) {
        this.session = session;
        this.instruments = instruments;
        this.taken = taken;
    }

    /** Takes up another instrument; what was half made is dropped. */
    void take(Instrument wanted) {
        drop();
        if (pick(wanted)) {
            taken.run();
        } else {
            takeFirst();
        }
    }

    private boolean pick(Instrument wanted) {
        felt = NOTHING;
        session.preview(Optional.empty());
        hand = instruments.ask(wanted, i -> i.pick(new Bench(session::study, session::shown, session.settings())));
        instrument = hand.map(picked -> wanted);
        return hand.isPresent();
    }

    /** The first that can be taken up, or none. */
    private void takeFirst() {
        for (Instrument next : instruments.on()) {
            if (pick(next)) {
                break;
            }
        }
        taken.run();
    }

    Optional<Instrument> instrument() {
        return instrument;
    }

    /** Drops what is half made, as Escape does. */
    void drop() {
        if (felt.step().held() || felt.step().preview().asIf().isPresent()) {
            feel(new Gesture(Gesture.Act.ESCAPE, new Point(0, 0), 1e-3, "", Set.of(), 0, 0));
        }
    }

    void feel(Gesture gesture) {
        if (hand.isEmpty() || instrument.isEmpty() || session.thumbnail().isEmpty()) {
            return;
        }
        Hand feeling = hand.get();
        Optional<Felt> answer = instruments.ask(instrument.get(), i -> feel(feeling, gesture));
        felt = answer.orElse(NOTHING);
        felt.step().edit().ifPresent(session::edit);
        session.preview(felt.step().preview().asIf());
        if (answer.isEmpty()) {
            takeFirst();
        }
    }

    /** An edit is tried out here, so that one that fails is the instrument's failure and not the study's. */
    private Felt feel(Hand feeling, Gesture gesture) {
        Step step = feeling.feel(gesture);
        Optional<String> hint = step.preview().pointer().map(Words::say);
        return new Felt(new Step(step.preview(), step.edit().map(this::tried), step.held()), hint);
    }

    private Edit tried(Edit edit) {
        Study before = session.study();
        Study after = edit.change().apply(before);
        Words.say(edit.name());
        return new Edit(
                edit.name(),
                study -> study.equals(before) ? after : edit.change().apply(study),
                edit.joinsWith());
    }

    Preview preview() {
        return felt.step().preview();
    }

    /** What the instrument would tell the painter now. */
    Optional<String> hint() {
        return felt.hint();
    }

    /** Whether something is half made. */
    boolean isHolding() {
        return felt.step().held();
    }
}
