package umbercard.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.notes.order.Arranged;
import umbercard.notes.order.Arranging;
import umbercard.notes.order.OrderRule;
import umbercard.store.StudyFolder;
import umbercard.words.Message;
import umbercard.words.Trouble;
import umbercard.words.Words;
import umbercard.zones.ZoneMap;

/** Puts a study's color notes in an order of application and says why each stands where it stands. */
@Command(name = "arrange")
final class ArrangeCommand implements Callable<Integer> {
    @Parameters(paramLabel = "STUDY", descriptionKey = "cli.help.study")
    private Path file = Path.of("");

    @Option(names = "--thumbnail", paramLabel = "N", descriptionKey = "cli.help.readings.thumbnail")
    private Optional<String> wanted = Optional.empty();

    @Option(names = "--without", paramLabel = "RULE", descriptionKey = "cli.help.arrange.without")
    private List<OrderRule> without = List.of();

    @Option(names = "--json", descriptionKey = "cli.help.readings.json")
    private boolean json;

    @Option(names = "-o", paramLabel = "OUT", descriptionKey = "cli.help.arrange.out")
    private Optional<Path> written = Optional.empty();

    private final PrintWriter out;

    ArrangeCommand(PrintWriter out) {
        this.out = out;
    }

    @Override
    public Integer call() throws IOException {
        if (written.filter(path -> Files.exists(path, LinkOption.NOFOLLOW_LINKS))
                .isPresent()) {
            throw new Trouble(Message.of("cli.trouble.exists", written.get().toString()));
        }
        Opened opened = Opened.read(file);
        Study study = opened.study();
        if (study.notes().isEmpty()) {
            throw new Trouble(Message.of("cli.trouble.no-notes", opened.name()));
        }
        Set<String> off = new TreeSet<>(study.rulesOff());
        without.forEach(rule -> off.add(rule.id()));
        boolean nowhere = study.thumbnails().isEmpty() && wanted.isEmpty();
        Thumbnail thumbnail = nowhere ? Thumbnail.empty("", "") : opened.thumbnail(wanted);
        Arranged arranged = Arranging.of(study, ZoneMap.of(study, thumbnail), off);
        if (written.isPresent()) {
            Study after = study.withNotes(arranged.notes()).withRulesOff(off);
            StudyFolder.saveAs(after, file, written.get());
        }
        ArrangeReport report = new ArrangeReport(study, arranged, off);
        out.println(json ? report.json() : report.table());
        if (!json && written.isPresent()) {
            out.println(Words.say("cli.arrange.done", written.get().toString()));
        }
        return 0;
    }
}
