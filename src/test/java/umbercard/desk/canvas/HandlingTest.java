package umbercard.desk.canvas;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import umbercard.desk.session.Session;
import umbercard.door.Edit;
import umbercard.door.Gesture;
import umbercard.door.Hand;
import umbercard.door.Instrument;
import umbercard.door.Preview;
import umbercard.door.Step;
import umbercard.geometry.Point;
import umbercard.kernel.Plugins;
import umbercard.model.Study;
import umbercard.words.Message;

class HandlingTest {
    private static final Gesture PRESS = new Gesture(Gesture.Act.PRESS, new Point(.5, .5), 1e-3, "", Set.of(), 1, 0);

    private final Session session = Fakes.session();
    private final Study before = session.study();
    private final List<String> taken = new ArrayList<>();
    private final Instrument good = Fakes.with("land-edge", "e", gesture -> Step.holding(Fakes.asIfDark(before)));

    private Handling handling(Instrument... instruments) {
        Handling[] made = new Handling[1];
        made[0] = new Handling(
                session,
                Plugins.of(List.of(instruments)),
                () -> taken.add(made[0].instrument().map(Instrument::id).orElse("none")));
        return made[0];
    }

    private static Instrument giving(Step step) {
        return Fakes.with("lay-dark", "d", gesture -> step);
    }

    @Test
    void oneThatCannotBeTakenUpGivesWayToTheFirstThatCan() {
        Instrument broken = Fakes.failingToPick("lay-dark", "d");
        Handling handling = handling(broken, good);
        handling.take(broken);
        assertThat(handling.instrument()).contains(good);
        assertThat(taken).containsExactly("land-edge");
        handling.feel(PRESS);
        assertThat(session.seen()).isNotEqualTo(before);
    }

    @Test
    void oneThatFailsWithinAGestureTakesWhatItHadHalfMadeWithIt() {
        Instrument broken = Fakes.failingAtTheSecondGesture("lay-dark", "d");
        Handling handling = handling(broken, good);
        handling.take(broken);
        handling.feel(PRESS);
        assertThat(session.seen()).isNotEqualTo(before);
        handling.feel(PRESS);
        assertThat(session.seen()).isEqualTo(before);
        assertThat(handling.preview()).isEqualTo(Preview.NOTHING);
        assertThat(handling.hint()).isEmpty();
        assertThat(handling.isHolding()).isFalse();
        assertThat(handling.instrument()).contains(good);
        assertThat(taken).containsExactly("lay-dark", "land-edge");
    }

    @Test
    void withNoneLeftGesturesMeanNothing() {
        Instrument broken = Fakes.failingToPick("lay-dark", "d");
        Handling handling = handling(broken);
        handling.take(broken);
        assertThat(handling.instrument()).isEmpty();
        handling.feel(PRESS);
        assertThat(session.seen()).isEqualTo(before);
        assertThat(taken).containsExactly("none");
    }

    @Test
    void anEditThatFailsOrHasNoNameIsTheInstrumentsFailure() {
        Instrument failing = giving(Step.done(new Edit(Message.of("instrument.lay-dark.done"), study -> {
            throw new IllegalStateException("no edit, on purpose");
        })));
        Instrument nameless = giving(Step.done(new Edit(Message.of("instrument.nobody.done"), study -> study)));
        Instrument mumbling = giving(Step.holding(
                new Preview(List.of(), Optional.empty(), Optional.of(Message.of("instrument.nobody.hint")))));
        for (Instrument broken : List.of(failing, nameless, mumbling)) {
            Handling handling = handling(broken, good);
            handling.take(broken);
            handling.feel(PRESS);
            assertThat(handling.instrument()).contains(good);
            assertThat(session.study()).isEqualTo(before);
            assertThat(session.undoable()).isEmpty();
        }
    }

    @Test
    void anEditIsMadeOnceAndCanBeUndone() {
        Hand hand = gesture -> Step.done(
                new Edit(Message.of("instrument.lay-dark.done"), study -> study.withConcept(study.concept() + "!")));
        Instrument laying = Fakes.with("lay-dark", "d", hand);
        Handling handling = handling(laying);
        handling.take(laying);
        handling.feel(PRESS);
        assertThat(session.study().concept()).isEqualTo(before.concept() + "!");
        session.undo();
        assertThat(session.study()).isEqualTo(before);
        session.redo();
        assertThat(session.study().concept()).isEqualTo(before.concept() + "!");
    }

    @Test
    void anotherTakenUpLeavesNothingOfTheOneBefore() {
        Instrument other = giving(Step.idle());
        Handling handling = handling(good, other);
        handling.take(good);
        handling.feel(PRESS);
        handling.take(other);
        assertThat(session.seen()).isEqualTo(before);
        assertThat(handling.preview()).isEqualTo(Preview.NOTHING);
    }
}
