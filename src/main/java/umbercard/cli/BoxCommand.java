package umbercard.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import umbercard.door.Reads;
import umbercard.store.Boxes;
import umbercard.words.Message;
import umbercard.words.Trouble;
import umbercard.words.Words;

/** Checks a box or takes one from a photograph, tells what is in it, and writes it as another kind of file. */
@Command(name = "box")
final class BoxCommand implements Callable<Integer> {
    @ArgGroup(multiplicity = "1")
    private Source source = new Source();

    @Option(names = "-o", paramLabel = "BOX", descriptionKey = "cli.help.box.written")
    private Optional<Path> written = Optional.empty();

    @Option(names = "--json", descriptionKey = "cli.help.box.json")
    private boolean json;

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
        if (written.isPresent() && Files.exists(written.get(), LinkOption.NOFOLLOW_LINKS)) {
            throw new Trouble(Message.of("cli.trouble.exists", written.get().toString()));
        }
        Reads reads = source.read(err);
        BoxOpening.tellFaults(reads, source.name(), err);
        if (reads.box().sticks().isEmpty()) {
            throw new Trouble(Message.of("cli.trouble.no-sticks", source.name()));
        }
        List<Message> left = written.isPresent() ? Boxes.write(reads.box(), written.get()) : List.of();
        BoxReport report = new BoxReport(source.name(), reads.with(left));
        out.println(json ? JsonText.of(report.json()) : report.text());
        if (!json) {
            written.ifPresent(file -> out.println(Words.say("cli.box.written", file.toString())));
        }
        return 0;
    }
}
