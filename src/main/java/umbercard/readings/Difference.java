package umbercard.readings;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import umbercard.door.Figure;
import umbercard.door.Finding;
import umbercard.words.Message;
import umbercard.words.Words;

/**
 * How what one reading finds in a thumbnail here differs from what it finds in another there.
 *
 * @param verdicts said, where they are not the same
 * @param figures said, where the telling figure here is more or less by more than a hair than the one there
 */
public record Difference(Optional<Message> verdicts, Optional<Message> figures) {

    /**
     * The difference between two findings of one reading. Figures are compared only where both findings have the same one.
     *
     * @param reading its id
     */
    public static Difference between(String reading, Finding here, Finding there) {
        return new Difference(verdicts(here, there), figures(reading, Telling.of(here), Telling.of(there)));
    }

    /** Whether there is any. */
    public boolean isAny() {
        return verdicts.isPresent() || figures.isPresent();
    }

    /** All of it, for example <i>holds here, look again there; more dark by 12 points</i>. */
    public Message said() {
        List<Message> parts =
                Stream.of(verdicts, figures).flatMap(Optional::stream).toList();
        return switch (parts.size()) {
            case 0 -> Message.of("compare.alike");
            case 1 -> parts.get(0);
            default -> Message.of("compare.both", parts.get(0), parts.get(1));
        };
    }

    private static Optional<Message> verdicts(Finding here, Finding there) {
        return here.verdict() == there.verdict()
                ? Optional.empty()
                : Optional.of(Message.of("compare.verdicts", verdict(here), verdict(there)));
    }

    private static Message verdict(Finding finding) {
        return Message.of("trade.verdict." + finding.verdict().key());
    }

    private static Optional<Message> figures(String reading, Optional<Figure> here, Optional<Figure> there) {
        return here.flatMap(one -> there.filter(other -> isLike(one, other))
                .map(other -> one.value() - other.value())
                .filter(more -> Math.abs(more) >= Telling.unit(one).hair())
                .map(more -> Message.of(key(reading, one, more > 0 ? "more" : "less"), Telling.amount(one, more))));
    }

    private static boolean isLike(Figure one, Figure other) {
        return one.name().equals(other.name()) && one.unit().equals(other.unit());
    }

    /** The words of the reading, else of the unit, else any. */
    private static String key(String reading, Figure figure, String way) {
        return Stream.of(reading, Telling.unit(figure).key())
                .map(own -> "compare." + own + "." + way)
                .filter(Words::has)
                .findFirst()
                .orElse("compare." + way);
    }
}
