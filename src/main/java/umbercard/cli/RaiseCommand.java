package umbercard.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import umbercard.door.Reading;
import umbercard.door.Remedied;
import umbercard.kernel.Plugins;
import umbercard.model.Level;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.model.edit.Edits;
import umbercard.photo.PhotoReader;
import umbercard.readings.Evaluation;
import umbercard.readings.Fraction;
import umbercard.remedies.CardLine;
import umbercard.remedies.LineMove;
import umbercard.remedies.WhatIf;
import umbercard.store.References;
import umbercard.store.StudyFolder;
import umbercard.words.Message;
import umbercard.words.Trouble;
import umbercard.words.Words;

/** Adds a copy of a thumbnail with its land edge or horizon raised or lowered, and all else moved with it. */
@Command(name = "raise")
final class RaiseCommand implements Callable<Integer> {
    @Parameters(paramLabel = "STUDY", descriptionKey = "cli.help.study")
    private Path file = Path.of("");

    @Option(names = "--thumbnail", paramLabel = "N", descriptionKey = "cli.help.readings.thumbnail")
    private Optional<String> wanted = Optional.empty();

    @Option(names = "--line", paramLabel = "LINE", descriptionKey = "cli.help.raise.line")
    private Optional<CardLine> line = Optional.empty();

    @Option(names = "--to", paramLabel = "HEIGHT", descriptionKey = "cli.help.raise.to")
    private LineHeight height = LineHeight.NEAREST;

    @Option(names = "-o", required = true, paramLabel = "OUT", descriptionKey = "cli.help.raise.out")
    private Path written = Path.of("");

    private final PrintWriter out;
    private final PrintWriter err;

    RaiseCommand(PrintWriter out, PrintWriter err) {
        this.out = out;
        this.err = err;
    }

    @Override
    public Integer call() throws IOException {
        if (Files.exists(written, LinkOption.NOFOLLOW_LINKS)) {
            throw new Trouble(Message.of("cli.trouble.exists", written.toString()));
        }
        Opened opened = Opened.read(file);
        Study study = opened.study();
        Thumbnail thumbnail = opened.thumbnail(wanted);
        CardLine moved = line(opened, thumbnail);
        Level from = moved.on(thumbnail).orElseThrow();
        double to = height.share()
                .orElseGet(() -> Fraction.nearest(LineMove.height(from), LineMove.FRACTIONS)
                        .share());
        WhatIf whatIf = new WhatIf(study, thumbnail, Optional.empty(), photographRatio(study), Opened.wishes());
        Remedied remedied = LineMove.to(to, moved, study, thumbnail, whatIf.photographRatio())
                .orElseThrow(() -> immovable(opened, thumbnail, moved, from));
        Thumbnail copy = whatIf.copy(remedied);
        StudyFolder.saveAs(Edits.addThumbnail(copy).apply(study), file, written);
        tell(whatIf, remedied, copy);
        return 0;
    }

    /** The line asked for; without a wish the one whose height is read. */
    private CardLine line(Opened opened, Thumbnail thumbnail) throws Trouble {
        Optional<CardLine> found =
                line.isPresent() ? line.filter(asked -> asked.on(thumbnail).isPresent()) : CardLine.leading(thumbnail);
        return found.orElseThrow(() -> new Trouble(Message.of(
                "cli.trouble.no-line",
                opened.name(),
                thumbnail.name(),
                line.map(CardLine::words).orElse(Message.of("cli.raise.either-line")))));
    }

    private static Trouble immovable(Opened opened, Thumbnail thumbnail, CardLine moved, Level from) {
        double lies = LineMove.height(from);
        String key = lies > 0 && lies < 1 ? "cli.trouble.line-is-there" : "cli.trouble.line-outside";
        return new Trouble(Message.of(key, opened.name(), thumbnail.name(), moved.words(), 100 * lies));
    }

    /** Its proportions are all that is wanted of the photograph; where it cannot be read, that is told and it stays. */
    private OptionalDouble photographRatio(Study study) {
        if (study.reference().isEmpty()) {
            return OptionalDouble.empty();
        }
        try {
            byte[] bytes = References.bytes(study, Optional.of(file));
            return OptionalDouble.of(
                    PhotoReader.size(study.reference().get().file(), bytes).ratio());
        } catch (Trouble unreadable) {
            err.println(Words.say(unreadable.said()));
            return OptionalDouble.empty();
        }
    }

    private void tell(WhatIf whatIf, Remedied remedied, Thumbnail copy) {
        Plugins<Reading> readings = Evaluation.find();
        out.println(Words.say("cli.raise.done", written.toString(), copy.name(), remedied.name()));
        remedied.remarks().forEach(remark -> out.println(Words.say(remark)));
        whatIf.outcome("raise", remedied, readings)
                .becomes()
                .forEach(becomes -> out.println(Words.say(becomes.words())));
        SwitchedOffWords.tell(readings.switchedOff(), err);
    }
}
