package umbercard.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import umbercard.door.Reads;
import umbercard.model.Box;
import umbercard.store.Boxes;
import umbercard.words.Message;
import umbercard.words.Trouble;
import umbercard.words.Words;

/** Checks a box or takes one from a photograph, tells what is in it, and writes it as another kind of file. */
@Command(name = "box")
final class BoxCommand implements Callable<Integer> {
    @ArgGroup(multiplicity = "1")
    private Source source = new Source();

    @ArgGroup(exclusive = false)
    private RubbedSticks rubbed = new RubbedSticks();

    @Option(names = "-o", paramLabel = "BOX", descriptionKey = "cli.help.box.written")
    private Optional<Path> written = Optional.empty();

    @Option(names = "--json", descriptionKey = "cli.help.box.json")
    private boolean json;

    @Mixin
    private Numbering numbering = new Numbering();

    private final PrintWriter out;
    private final PrintWriter err;

    BoxCommand(PrintWriter out, PrintWriter err) {
        this.out = out;
        this.err = err;
    }

    /** Where the box comes from: one of these. */
    static final class Source {
        @Parameters(paramLabel = "FILE", descriptionKey = "cli.help.box.file")
        private Path file = Path.of("");

        @ArgGroup(exclusive = false)
        private PhotographedTray tray = new PhotographedTray();

        String name() {
            return tray.isAsked() ? tray.file() : file.toString();
        }

        Reads read(PrintWriter err) throws IOException {
            return tray.isAsked() ? tray.read() : BoxOpening.read(file, err);
        }
    }

    @Override
    public Integer call() throws IOException {
        numbering.use();
        if (written.isPresent() && Files.exists(written.get(), LinkOption.NOFOLLOW_LINKS)) {
            throw new Trouble(Message.of("cli.trouble.exists", written.get().toString()));
        }
        Reads reads = source.read(err);
        BoxOpening.tellFaults(reads, source.name(), err);
        if (reads.box().sticks().isEmpty()) {
            throw new Trouble(Message.of("cli.trouble.no-sticks", source.name()));
        }
        Optional<RubbedSticks.Righted> righted =
                rubbed.isAsked() ? Optional.of(rubbed.right(reads.box())) : Optional.empty();
        Box box = righted.map(RubbedSticks.Righted::box).orElse(reads.box());
        List<Message> left = written.isPresent() ? Boxes.write(box, written.get()) : List.of();
        BoxReport report = new BoxReport(source.name(), new Reads(box, reads.faults(), reads.remarks()).with(left));
        out.println(json ? JsonText.of(json(report, righted)) : text(report, righted));
        if (!json) {
            written.ifPresent(file -> out.println(Words.say("cli.box.written", file.toString())));
        }
        return 0;
    }

    private static Map<String, Object> json(BoxReport report, Optional<RubbedSticks.Righted> righted) {
        Map<String, Object> json = report.json();
        righted.ifPresent(right -> json.put("rubbed", right.json()));
        return json;
    }

    private static String text(BoxReport report, Optional<RubbedSticks.Righted> righted) {
        return Stream.concat(Stream.of(report.text()), righted.stream().flatMap(right -> right.lines().stream()))
                .collect(Collectors.joining(System.lineSeparator()));
    }
}
