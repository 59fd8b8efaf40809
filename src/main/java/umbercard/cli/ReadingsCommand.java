package umbercard.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import umbercard.door.Finding;
import umbercard.door.Reading;
import umbercard.kernel.Plugins;
import umbercard.model.Thumbnail;
import umbercard.picture.Picture;
import umbercard.readings.Evaluation;
import umbercard.words.Trouble;

/** Prints all readings of a thumbnail, or of all thumbnails. */
@Command(name = "readings")
final class ReadingsCommand implements Callable<Integer> {
    @Parameters(paramLabel = "STUDY", descriptionKey = "cli.help.study")
    private Path study = Path.of("");

    @Option(names = "--thumbnail", paramLabel = "N", descriptionKey = "cli.help.readings.thumbnail")
    private Optional<String> thumbnail = Optional.empty();

    @Option(names = "--all", descriptionKey = "cli.help.readings.all")
    private boolean all;

    @Option(names = "--json", descriptionKey = "cli.help.readings.json")
    private boolean json;

    @Mixin
    private Numbering numbering = new Numbering();

    private final PrintWriter out;
    private final PrintWriter err;

    ReadingsCommand(PrintWriter out, PrintWriter err) {
        this.out = out;
        this.err = err;
    }

    @Override
    public Integer call() throws Trouble {
        numbering.use();
        Opened opened = Opened.read(study);
        Thumbnail wanted = opened.thumbnail(thumbnail);
        Plugins<Reading> readings = Evaluation.find();
        Optional<Picture> photograph = ReferencePhotograph.atHand(opened.study(), study);
        if (all) {
            List<ReadingsReport> reports = opened.study().thumbnails().stream()
                    .map(each -> report(opened, readings, each, photograph))
                    .toList();
            out.println(json ? ReadingsJson.of(reports) : AllReadings.table(opened.study(), reports));
        } else {
            ReadingsReport report = report(opened, readings, wanted, photograph);
            out.println(json ? ReadingsJson.of(report) : report.table());
        }
        SwitchedOffWords.tell(readings.switchedOff(), err);
        return 0;
    }

    private static ReadingsReport report(
            Opened opened, Plugins<Reading> readings, Thumbnail thumbnail, Optional<Picture> photograph) {
        Map<String, Finding> findings = opened.findings(readings, thumbnail, photograph);
        return new ReadingsReport(opened.study(), Opened.wishes(), thumbnail, readings.on(), findings);
    }
}
