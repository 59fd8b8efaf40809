package umbercard.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;
import umbercard.notes.turned.FromMatches;
import umbercard.words.Words;

/** The wish to set out what matches and to put it on the card, and where the study with it goes. */
final class OntoCard {
    private static final String USUAL = "usual";

    @Option(
            names = "--onto-card",
            required = true,
            arity = "0..1",
            fallbackValue = USUAL,
            paramLabel = "K",
            descriptionKey = "cli.help.match.onto-card")
    private ZoneCount most = new ZoneCount(OptionalInt.empty());

    @Option(names = "-o", required = true, paramLabel = "OUT", descriptionKey = "cli.help.match.out")
    private Optional<Path> written = Optional.empty();

    /** How many notes a zone gets at most, as it is written in a call; without a number as many as is usual. */
    record ZoneCount(OptionalInt of) {
        static ZoneCount parse(String written) {
            if (written.equals(USUAL)) {
                return new ZoneCount(OptionalInt.empty());
            }
            if (written.matches("[1-9]") && Integer.parseInt(written) <= FromMatches.MOST) {
                return new ZoneCount(OptionalInt.of(Integer.parseInt(written)));
            }
            throw new TypeConversionException(Words.say("cli.wrong.notes", written, FromMatches.MOST));
        }
    }

    OptionalInt most() {
        return most.of();
    }

    /** Where the study goes; empty where nothing of this is wished. */
    Optional<Path> written() {
        return written;
    }
}
