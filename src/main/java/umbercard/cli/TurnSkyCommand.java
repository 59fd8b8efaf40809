package umbercard.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import umbercard.model.Thumbnail;
import umbercard.notes.turned.TurnedSky;
import umbercard.words.Trouble;
import umbercard.zones.ZoneMap;

/** Offers notes for the water, which are those of the sky turned over, and adds them to a copy of the study. */
@Command(name = "turn-sky")
final class TurnSkyCommand implements Callable<Integer> {
    @Parameters(paramLabel = "STUDY", descriptionKey = "cli.help.study")
    private Path file = Path.of("");

    @Option(names = "--thumbnail", paramLabel = "N", descriptionKey = "cli.help.readings.thumbnail")
    private Optional<String> wanted = Optional.empty();

    @Option(names = "-o", paramLabel = "OUT", descriptionKey = "cli.help.turn-sky.out")
    private Optional<Path> written = Optional.empty();

    @Option(names = "--json", descriptionKey = "cli.help.turn-sky.json")
    private boolean json;

    @Mixin
    private Numbering numbering = new Numbering();

    private final PrintWriter out;

    TurnSkyCommand(PrintWriter out) {
        this.out = out;
    }

    @Override
    public Integer call() throws Trouble {
        numbering.use();
        if (written.isPresent()) {
            OffersReport.refuseExisting(written.get());
        }
        Opened opened = Opened.read(file);
        Thumbnail thumbnail = opened.thumbnail(wanted);
        OffersReport report = new OffersReport(
                opened,
                thumbnail,
                TurnedSky.of(opened.study(), thumbnail, ZoneMap.of(opened.study(), thumbnail)),
                written);
        report.write(file);
        out.println(json ? report.json() : report.inWords());
        return 0;
    }
}
