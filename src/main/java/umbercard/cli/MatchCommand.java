package umbercard.cli;

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
import umbercard.model.Reference;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.notes.AtHand;
import umbercard.notes.ColoredZone;
import umbercard.notes.Gaps;
import umbercard.notes.Matching;
import umbercard.notes.SettingOut;
import umbercard.notes.Suggestion;
import umbercard.notes.Trust;
import umbercard.notes.turned.FromMatches;
import umbercard.notes.turned.Offers;
import umbercard.photo.FramedZones;
import umbercard.picture.Picture;
import umbercard.words.Message;
import umbercard.words.Trouble;
import umbercard.zones.ZoneMap;

/** Prints the sticks that come nearest to the reference's colors in each zone, and what to set out; or puts them on the card. */
@Command(name = "match")
final class MatchCommand implements Callable<Integer> {
    private static final int CANDIDATES = 3;

    @Parameters(paramLabel = "STUDY", descriptionKey = "cli.help.study")
    private Path file = Path.of("");

    @Mixin
    private StickSource source = new StickSource();

    @Option(names = "--thumbnail", paramLabel = "N", descriptionKey = "cli.help.match.thumbnail")
    private Optional<String> thumbnail = Optional.empty();

    @Option(names = "--trust", paramLabel = "SHARE", descriptionKey = "cli.help.match.trust")
    private Optional<Share> trust = Optional.empty();

    @Option(names = "--suggest", paramLabel = "N", descriptionKey = "cli.help.match.suggest")
    private Optional<StickCount> suggest = Optional.empty();

    @ArgGroup(exclusive = false)
    private OntoCard ontoCard = new OntoCard();

    @Option(names = "--json", descriptionKey = "cli.help.match.json")
    private boolean json;

    @Mixin
    private Numbering numbering = new Numbering();

    private final PrintWriter out;
    private final PrintWriter err;

    MatchCommand(PrintWriter out, PrintWriter err) {
        this.out = out;
        this.err = err;
    }

    @Override
    public Integer call() throws Trouble {
        numbering.use();
        if (ontoCard.written().isPresent()) {
            OffersReport.refuseExisting(ontoCard.written().get());
        }
        Opened opened = Opened.read(file);
        Thumbnail wanted = opened.thumbnail(thumbnail);
        List<ColoredZone> zones = zones(opened, wanted);
        AtHand atHand = source.of(opened, err);
        Trust trusted = trust.map(share -> new Trust(share.of())).orElse(Trust.VALUE_FIRST);
        Optional<Suggestion> suggestion = suggest.map(most -> SettingOut.of(
                zones, atHand, SettingOut.Wish.USUAL.withTrust(trusted).withMost(most.of())));
        if (ontoCard.written().isPresent()) {
            AtHand from = suggestion.map(MatchCommand::picked).orElse(atHand);
            onto(opened, wanted, zones, from, trusted);
            return 0;
        }
        MatchReport report = new MatchReport(
                opened.study(),
                wanted,
                trusted,
                zones,
                new Matching(atHand, trusted).of(zones, CANDIDATES),
                suggestion,
                source.isSetOut()
                        ? Gaps.of(
                                opened.study().setOut(),
                                Gaps.needed(opened.study().zones(), zones))
                        : List.of());
        out.println(json ? MatchJson.of(report) : report.inWords());
        return 0;
    }

    private static AtHand picked(Suggestion suggestion) {
        return AtHand.all(
                suggestion.picks().stream().map(Suggestion.Pick::stick).toList());
    }

    private void onto(Opened opened, Thumbnail wanted, List<ColoredZone> zones, AtHand from, Trust trusted)
            throws Trouble {
        Offers offers = FromMatches.of(
                opened.study(),
                wanted,
                ZoneMap.of(opened.study(), wanted),
                opened.design(wanted),
                zones,
                from,
                trusted,
                ontoCard.most());
        OffersReport report = new OffersReport(opened, wanted, offers, ontoCard.written());
        report.write(file);
        out.println(json ? report.json() : report.inWords());
    }

    private List<ColoredZone> zones(Opened opened, Thumbnail wanted) throws Trouble {
        Study study = opened.study();
        Reference reference =
                study.reference().orElseThrow(() -> new Trouble(Message.of("cli.trouble.no-colors", opened.name())));
        if (study.zones().stream().noneMatch(zone -> wanted.zoneAreas().containsKey(zone.id()))) {
            throw new Trouble(Message.of("cli.trouble.no-zones", opened.name(), wanted.name()));
        }
        Picture photograph = ReferencePhotograph.read(study, file, reference, err);
        return new FramedZones()
                .of(FramedZones.in(wanted, study, photograph)).entrySet().stream()
                        .map(zone -> new ColoredZone(
                                zone.getKey(),
                                zone.getValue().share(),
                                zone.getValue().main()))
                        .toList();
    }
}
