package umbercard.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import umbercard.cards.CardSizes;
import umbercard.model.CardSettings;
import umbercard.words.Trouble;
import umbercard.words.Words;

/** Writes the cards of one study or several. */
@Command(name = "cards")
final class CardsCommand implements Callable<Integer> {
    @Parameters(arity = "1..*", paramLabel = "STUDY", descriptionKey = "cli.help.cards.study")
    private List<Path> studies = List.of();

    @Option(names = "-o", required = true, paramLabel = "DIR", descriptionKey = "cli.help.cards.folder")
    private Path folder = Path.of("");

    @Option(names = "--card", paramLabel = "SIZE", descriptionKey = "cli.help.cards.card")
    private Optional<String> card = Optional.empty();

    @ArgGroup
    private Way way = new Way();

    @Option(names = "--faces", split = ",", paramLabel = "FACE", descriptionKey = "cli.help.cards.faces")
    private List<String> faces = List.of();

    @Option(names = "--as", split = ",", paramLabel = "KIND", descriptionKey = "cli.help.cards.as")
    private List<String> kinds = List.of("svg");

    private final PrintWriter out;
    private final PrintWriter err;

    CardsCommand(PrintWriter out, PrintWriter err) {
        this.out = out;
        this.err = err;
    }

    /** How the card lies; as the study says when neither is given. */
    static final class Way {
        @Option(names = "--portrait", descriptionKey = "cli.help.cards.portrait")
        private boolean portrait;

        @Option(names = "--landscape", descriptionKey = "cli.help.cards.landscape")
        private boolean landscape;
    }

    @Override
    public Integer call() throws IOException {
        CardRun run = new CardRun();
        run.know(faces, kinds);
        for (Path file : studies) {
            Opened opened = Opened.read(file);
            run.lay(new Opened(
                    opened.name(),
                    opened.study().withCards(asWished(opened.study().cards()))));
        }
        run.write(kinds, folder, out);
        run.left().forEach(left -> err.println(Words.say(left)));
        SwitchedOffWords.tell(run.switchedOff(), err);
        return 0;
    }

    private CardSettings asWished(CardSettings settings) {
        CardSettings wished = settings;
        if (card.isPresent()) {
            try {
                wished = wished.withCard(CardSizes.parse(card.get()));
            } catch (Trouble noSize) {
                throw new WrongCall(noSize.said());
            }
        }
        if (way.portrait || way.landscape) {
            wished = wished.withLandscape(way.landscape);
        }
        return faces.isEmpty() ? wished : wished.withFaces(faces);
    }
}
