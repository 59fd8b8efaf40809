package umbercard.cli;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;
import umbercard.color.ValueScale;
import umbercard.words.Message;
import umbercard.words.Words;

/** How values are numbered in what a command prints or draws: as the call says, else as the painter chose on the desk. */
final class Numbering {
    /** A scale as it is written in a call, dark first. */
    record Scale(ValueScale scale) {
        private static final Map<String, ValueScale> WRITTEN = Map.of(
                "0-10", ValueScale.ZERO_TO_TEN,
                "1-10", ValueScale.ONE_TO_TEN,
                "1-9", ValueScale.ONE_TO_NINE,
                "names", ValueScale.NAMES);

        private static final Map<ValueScale, ValueScale> LIGHT_FIRST = Map.of(
                ValueScale.ZERO_TO_TEN, ValueScale.TEN_TO_ZERO,
                ValueScale.ONE_TO_TEN, ValueScale.TEN_TO_ONE,
                ValueScale.ONE_TO_NINE, ValueScale.NINE_TO_ONE);

        static Scale parse(String written) {
            return Optional.ofNullable(WRITTEN.get(written.toLowerCase(Locale.ROOT)))
                    .map(Scale::new)
                    .orElseThrow(() -> new TypeConversionException(Words.say("cli.wrong.values", written)));
        }

        private Optional<ValueScale> lightFirst() {
            return Optional.ofNullable(LIGHT_FIRST.get(scale));
        }
    }

    @Option(names = "--values", paramLabel = "SCALE", descriptionKey = "cli.help.values")
    private Optional<Scale> values = Optional.empty();

    @Option(names = "--light-first", descriptionKey = "cli.help.light-first")
    private boolean lightFirst;

    /** Has all values said as the call says, if it does, from now on. */
    void use() {
        if (lightFirst) {
            Words.useValues(values.flatMap(Scale::lightFirst)
                    .orElseThrow(() -> new WrongCall(Message.of("cli.wrong.light-first"))));
        } else {
            values.map(Scale::scale).ifPresent(Words::useValues);
        }
    }
}
