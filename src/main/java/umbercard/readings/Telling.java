package umbercard.readings;

import java.util.Arrays;
import java.util.Optional;
import umbercard.door.Figure;
import umbercard.door.Finding;
import umbercard.words.Message;

/** The telling figure of a finding, its first, as it is said. */
public final class Telling {
    /**
     * How figures of one unit are said.
     *
     * @param name of the unit, as {@link Figure#unit()} has it
     * @param key that its words bear
     * @param factor from the figure to what is said
     * @param hair the least difference that counts: half of the last digit that is said
     */
    record Unit(String name, String key, double factor, double hair) {}

    private static final Unit[] UNITS = {
        new Unit("share", "share", 100, 0.005),
        new Unit("of the diagonal", "of-the-diagonal", 100, 0.005),
        new Unit("half widths", "half-widths", 100, 0.005),
        new Unit("half heights", "half-heights", 100, 0.005),
        new Unit("times", "times", 1, 0.05),
        new Unit("degrees", "degrees", 1, 0.05),
        new Unit("count", "count", 1, 0.5),
        new Unit("tau", "tau", 1, 0.005),
        new Unit("steps", "steps", 1, 0.05),
        new Unit("chroma", "chroma", 1, 0.5),
        new Unit("CIEDE2000", "ciede2000", 1, 0.05)
    };

    private static final Unit OTHER = new Unit("other", "other", 1, 0.005);

    private Telling() {}

    /** The telling figure; empty for a finding without figures. */
    public static Optional<Figure> of(Finding finding) {
        return finding.figures().stream().findFirst();
    }

    /** A figure with its unit; the unit of one that is not known here stands as it is. */
    public static Message said(Figure figure) {
        Unit unit = unit(figure);
        return Message.of("compare.figure." + unit.key(), unit.factor() * figure.value(), figure.unit());
    }

    /** A difference between figures like this one, without its sign. */
    static Message amount(Figure figure, double difference) {
        Unit unit = unit(figure);
        return Message.of("compare.amount." + unit.key(), unit.factor() * Math.abs(difference), figure.unit());
    }

    static Unit unit(Figure figure) {
        return Arrays.stream(UNITS)
                .filter(unit -> unit.name().equals(figure.unit()))
                .findFirst()
                .orElse(OTHER);
    }
}
