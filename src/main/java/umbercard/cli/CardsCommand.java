package umbercard.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import umbercard.cards.CardSizes;
import umbercard.geometry.Size;
import umbercard.model.CardSettings;
import umbercard.words.Message;
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

    @Mixin
    private Numbering numbering = new Numbering();

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
        numbering.use();
        List<String> writers = named("--as", kinds, "svg");
        List<String> wanted = named("--faces", faces, "notan,color-notes");
        CardRun run = new CardRun();
        run.know(wanted, writers);
        Optional<Size> size = size();
        for (Path file : studies) {
            Opened opened = Opened.read(file);
            CardSettings settings = asWished(opened.study().cards(), size, wanted);
            run.lay(new Opened(opened.name(), opened.study().withCards(settings)));
        }
        run.write(writers, folder, out);
        run.left().forEach(left -> err.println(Words.say(left)));
        SwitchedOffWords.tell(run.switchedOff(), err);
        return 0;
    }

    /** The names of a list with commas, without the spaces round them. */
    private static List<String> named(String option, List<String> given, String example) {
        List<String> names = given.stream().map(String::strip).toList();
        if (names.contains("")) {
            throw new WrongCall(Message.of("cli.wrong.no-name", option, example));
        }
        return names;
    }

    /** The size wished for, looked at before any study is. */
    private Optional<Size> size() {
        try {
            return card.isPresent() ? Optional.of(CardSizes.parse(card.get())) : Optional.empty();
        } catch (Trouble noSize) {
            throw new WrongCall(noSize.said());
        }
    }

    private CardSettings asWished(CardSettings settings, Optional<Size> size, List<String> wanted) {
        CardSettings wished = size.map(settings::withCard).orElse(settings);
        if (way.portrait || way.landscape) {
            wished = wished.withLandscape(way.landscape);
        }
        return wanted.isEmpty() ? wished : wished.withFaces(wanted);
    }
}
