package umbercard.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Option;
import umbercard.door.Reads;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.notes.AtHand;
import umbercard.words.Message;
import umbercard.words.Trouble;

/** Where a call takes its sticks from: a box file, those set out, or else the study's own box. */
final class StickSource {
    @ArgGroup
    private Place place = new Place();

    @Option(names = "--any-state", descriptionKey = "cli.help.match.any-state")
    private boolean anyState;

    /** One place or another. */
    static final class Place {
        @Option(names = "--box", paramLabel = "BOX", descriptionKey = "cli.help.match.box")
        private Optional<Path> box = Optional.empty();

        @Option(names = "--set-out", descriptionKey = "cli.help.match.set-out")
        private boolean setOut;
    }

    boolean isSetOut() {
        return place.setOut;
    }

    /**
     * The sticks.
     *
     * @throws Trouble if there are none
     */
    AtHand of(Opened opened, PrintWriter err) throws Trouble {
        List<Stick> all = sticks(opened, err);
        AtHand atHand = anyState ? AtHand.all(all) : AtHand.of(all);
        if (atHand.isEmpty()) {
            throw new Trouble(Message.of(
                    "cli.trouble.no-stick-at-hand",
                    place.box.map(Path::toString).orElse(opened.name())));
        }
        return atHand;
    }

    private List<Stick> sticks(Opened opened, PrintWriter err) throws Trouble {
        if (place.box.isPresent()) {
            return read(place.box.get(), err);
        }
        Study study = opened.study();
        if (place.setOut) {
            if (study.setOut().isEmpty()) {
                throw new Trouble(Message.of("cli.trouble.nothing-set-out", opened.name()));
            }
            return study.setOut();
        }
        return study.box()
                .orElseThrow(() -> new Trouble(Message.of("cli.trouble.no-box", opened.name())))
                .sticks();
    }

    private static List<Stick> read(Path file, PrintWriter err) throws Trouble {
        Reads reads = BoxOpening.read(file, err);
        BoxOpening.tell(reads, file.toString(), err);
        return reads.box().sticks();
    }
}
