package umbercard.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.model.edit.Zones;
import umbercard.notan.Design;
import umbercard.photo.FramedZones;
import umbercard.picture.MainColor;
import umbercard.store.StudyFolder;
import umbercard.words.Message;
import umbercard.words.Trouble;
import umbercard.words.Words;
import umbercard.zones.Proposal;
import umbercard.zones.ZoneProposals;

/** Tells where the zones lie on a thumbnail and what they are like; proposes zones for what none covers. */
@Command(name = "zones")
final class ZonesCommand implements Callable<Integer> {
    @Parameters(paramLabel = "STUDY", descriptionKey = "cli.help.study")
    private Path file = Path.of("");

    @Option(names = "--thumbnail", paramLabel = "N", descriptionKey = "cli.help.readings.thumbnail")
    private Optional<String> wanted = Optional.empty();

    @Option(names = "--propose", descriptionKey = "cli.help.zones.propose")
    private boolean propose;

    @Option(names = "--json", descriptionKey = "cli.help.readings.json")
    private boolean json;

    @Option(names = "-o", paramLabel = "OUT", descriptionKey = "cli.help.zones.out")
    private Optional<Path> written = Optional.empty();

    private final PrintWriter out;

    ZonesCommand(PrintWriter out) {
        this.out = out;
    }

    @Override
    public Integer call() throws IOException {
        if (written.isPresent()) {
            OffersReport.refuseExisting(written.get());
        }
        if (written.isPresent() != propose) {
            throw new WrongCall(Message.of("cli.wrong.zones"));
        }
        Opened opened = Opened.read(file);
        Thumbnail thumbnail = opened.thumbnail(wanted);
        Design design = opened.design(thumbnail);
        List<Proposal> proposals = propose ? ZoneProposals.of(opened.study(), thumbnail, design) : List.of();
        if (propose && proposals.isEmpty()) {
            throw new Trouble(Message.of("cli.trouble.no-proposals", opened.name(), thumbnail.name()));
        }
        Study study = opened.study();
        for (Proposal proposal : proposals) {
            study = Zones.add(proposal.zone())
                    .andThen(Zones.area(
                            thumbnail.id(),
                            proposal.zone().id(),
                            proposal.area().outlines()))
                    .apply(study);
        }
        if (written.isPresent()) {
            StudyFolder.saveAs(study, file, written.get());
        }
        Thumbnail now = study.thumbnail(thumbnail.id()).orElseThrow();
        Map<String, List<MainColor>> colors =
                new FramedZones().colors(now, study, ReferencePhotograph.atHand(study, file));
        ZonesReport report = new ZonesReport(study, now, design, colors, proposals);
        out.println(json ? report.json() : report.inWords());
        if (!json && written.isPresent()) {
            out.println(
                    Words.say("cli.zones.done", proposals.size(), written.get().toString()));
        }
        return 0;
    }
}
