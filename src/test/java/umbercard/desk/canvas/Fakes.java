package umbercard.desk.canvas;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import umbercard.desk.KilnHill;
import umbercard.desk.session.Session;
import umbercard.door.Bench;
import umbercard.door.Hand;
import umbercard.door.Instrument;
import umbercard.door.Preview;
import umbercard.door.Step;
import umbercard.geometry.Outline;
import umbercard.model.Mark;
import umbercard.model.Study;
import umbercard.model.edit.Edits;
import umbercard.words.Message;

/** Instruments for tests of the card that carries them. They borrow the words of the program's own by their ids. */
public final class Fakes {
    private Fakes() {}

    private record Fake(String id, String key, Function<Bench, Hand> picked) implements Instrument {
        @Override
        public int rank() {
            return 1;
        }

        @Override
        public Hand pick(Bench bench) {
            return picked.apply(bench);
        }
    }

    /** One that feels as {@code hand} does. */
    public static Instrument with(String id, String key, Hand hand) {
        return new Fake(id, key, bench -> hand);
    }

    /** One that cannot be taken up. */
    public static Instrument failingToPick(String id, String key) {
        return new Fake(id, key, bench -> {
            throw new IllegalStateException("not to be taken up, on purpose");
        });
    }

    /** One that half makes a mark at its first gesture and fails at its second. */
    public static Instrument failingAtTheSecondGesture(String id, String key) {
        return new Fake(id, key, bench -> {
            int[] felt = {0};
            return gesture -> {
                if (felt[0]++ > 0) {
                    throw new IllegalStateException("no second gesture, on purpose");
                }
                return Step.holding(asIfDark(bench.study().get()));
            };
        });
    }

    /** All of the first thumbnail as if it were laid dark, with a hint. */
    static Preview asIfDark(Study study) {
        Mark all = new Mark("all", Mark.Kind.LAY, Outline.rectangle(0, 0, study.ratio(), 1));
        return new Preview(
                List.of(),
                Optional.of(Edits.addMark("t1", all).apply(study)),
                Optional.of(Message.of("instrument.outline.stroke")));
    }

    /** Kiln Hill on the desk without a photograph. */
    public static Session session() {
        return new Session(KilnHill.study(), Optional.empty());
    }
}
