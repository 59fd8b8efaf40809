package umbercard.remedies;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import umbercard.door.Figure;
import umbercard.door.Finding;
import umbercard.door.Finding.Verdict;
import umbercard.door.Remedied;
import umbercard.words.Message;

/**
 * What comes of a remedy.
 *
 * @param remedy its id
 * @param before what the readings found without it, by their ids, in their order
 * @param after what they find with it
 */
public record Outcome(String remedy, Remedied remedied, Map<String, Finding> before, Map<String, Finding> after) {
    /** A figure that changes by less is not worth telling: a point of a share, far less than one of a count. */
    private static final double TELLING = 0.01;

    /** What a reading becomes. */
    public record Becomes(String reading, Finding before, Finding after) {
        /** From verdict to verdict where that changes, and what the reading then says. */
        public Message words() {
            Message name = Message.of("readings." + reading + ".name");
            return before.verdict() == after.verdict()
                    ? Message.of("remedies.still", name, after.sentence())
                    : Message.of("remedies.becomes", name, verdict(before), verdict(after), after.sentence());
        }

        private static Message verdict(Finding finding) {
            return Message.of("trade.verdict." + finding.verdict().key());
        }

        boolean isNewDoubt() {
            return before.verdict() != Verdict.LOOK_AGAIN && after.verdict() == Verdict.LOOK_AGAIN;
        }

        boolean isMended() {
            return before.verdict() == Verdict.LOOK_AGAIN && after.verdict() != Verdict.LOOK_AGAIN;
        }

        private boolean isTold() {
            return before.verdict() != after.verdict() || isMoved();
        }

        private boolean isMoved() {
            if (before.figures().isEmpty() || after.figures().isEmpty()) {
                return false;
            }
            Figure was = before.figures().get(0);
            Figure is = after.figures().get(0);
            return Math.abs(is.value() - was.value()) >= TELLING;
        }
    }

    /** The readings whose verdict or telling figure changes: mended ones first, then new doubts, then the others. */
    public List<Becomes> becomes() {
        List<Becomes> told = new ArrayList<>();
        before.forEach((reading, found) -> {
            Finding then = after.get(reading);
            if (then != null) {
                told.add(new Becomes(reading, found, then));
            }
        });
        return told.stream()
                .filter(Becomes::isTold)
                .sorted((one, other) -> Integer.compare(rank(one), rank(other)))
                .toList();
    }

    private static int rank(Becomes becomes) {
        return becomes.isMended() ? 0 : becomes.isNewDoubt() ? 1 : 2;
    }
}
