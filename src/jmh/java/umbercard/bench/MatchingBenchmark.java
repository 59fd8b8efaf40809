package umbercard.bench;

import java.io.IOException;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import umbercard.color.Ciede2000;
import umbercard.color.Lab;
import umbercard.geometry.Outline;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.notes.AtHand;
import umbercard.notes.ColorMatches;
import umbercard.notes.ColoredZone;
import umbercard.notes.Matching;
import umbercard.notes.SettingOut;
import umbercard.notes.Suggestion;
import umbercard.notes.Trust;
import umbercard.photo.FramedView;
import umbercard.photo.ZoneColors;
import umbercard.picture.MainColor;
import umbercard.picture.Picture;
import umbercard.store.Samples;

/**
 * Matching Kiln Hill's eight zones, four colors each, with a box of many sticks, beside a plain search that knows nothing
 * beforehand; what to set out; and the colors of the zones themselves.
 */
@State(Scope.Thread)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@BenchmarkMode(Mode.SampleTime)
public class MatchingBenchmark {
    private static final int CANDIDATES = 3;
    private static final int COLORS = 4;
    private static final int LONGER_SIDE = 2000;
    private static final double HALF_STEP = 0.5;

    /** How many sticks the box has. */
    @Param("500")
    public int sticks;

    private final Study study = Samples.kilnHill().study();
    private List<Stick> box = List.of();
    private List<ColoredZone> zones = List.of();
    private Picture framed = new Picture(1, 1, new int[1]);

    /** A box anywhere that pastels are, colors of each zone among them, and the photograph in its frame. */
    @Setup(Level.Trial)
    public void study() throws IOException {
        Random random = new Random(500);
        box = IntStream.rangeClosed(1, sticks)
                .mapToObj(place -> new Stick("s" + place, "s" + place, new Stick.Slot(1, place), color(random)))
                .toList();
        zones = study.zones().stream()
                .map(zone -> new ColoredZone(
                        zone,
                        1.0 / study.zones().size(),
                        IntStream.range(0, COLORS)
                                .mapToObj(i -> new MainColor(color(random), 1.0 / COLORS))
                                .toList()))
                .toList();
        framed = FramedView.of(
                KilnHillPhotograph.read(), study.reference().orElseThrow().frame(), study.ratio(), (int)
                        Math.round(LONGER_SIDE / study.ratio()));
    }

    private static Lab color(Random random) {
        return new Lab(12 + 85 * random.nextDouble(), random.nextInt(61) - 30, random.nextInt(81) - 30);
    }

    /** All colors of all zones, value first, the box looked at anew. */
    @Benchmark
    public List<ColorMatches> match() {
        return new Matching(AtHand.of(box), Trust.VALUE_FIRST).of(zones, CANDIDATES);
    }

    /** The same by the plain difference. */
    @Benchmark
    public List<ColorMatches> matchWithoutTrust() {
        return new Matching(AtHand.of(box), Trust.NONE).of(zones, CANDIDATES);
    }

    /** A stick, whether its value is off, and its difference. */
    public record Plain(Stick stick, boolean off, double difference) {}

    /** Every stick's value and difference worked out once for every color, and all of them sorted. */
    @Benchmark
    public List<List<Plain>> matchPlainly() {
        return zones.stream()
                .flatMap(zone -> zone.colors().stream())
                .map(color -> box.stream()
                        .map(stick -> plain(color.color(), stick))
                        .sorted(Comparator.comparing(Plain::off).thenComparing(Plain::difference))
                        .limit(CANDIDATES)
                        .toList())
                .toList();
    }

    private static Plain plain(Lab color, Stick stick) {
        return new Plain(
                stick,
                Math.abs(stick.color().value() - color.value()) > HALF_STEP,
                Ciede2000.difference(color, stick.color()));
    }

    /** What to set out for all of it. */
    @Benchmark
    public Suggestion setOut() {
        return SettingOut.of(zones, AtHand.of(box), SettingOut.Wish.USUAL);
    }

    /** What to set out at most for it. */
    @Benchmark
    public Suggestion setOutSixteen() {
        return SettingOut.of(zones, AtHand.of(box), SettingOut.Wish.USUAL.withMost(SettingOut.Wish.MOST_MOST));
    }

    /** The colors of the zones in a reference of {@value #LONGER_SIDE} pixels. */
    @Benchmark
    public List<ZoneColors> zoneColors() {
        return areas().values().parallelStream()
                .flatMap(area -> ZoneColors.of(framed, area).stream())
                .toList();
    }

    /** The same one after the other. */
    @Benchmark
    public List<ZoneColors> zoneColorsInTurn() {
        return areas().values().stream()
                .flatMap(area -> ZoneColors.of(framed, area).stream())
                .toList();
    }

    private Map<String, List<Outline>> areas() {
        return study.chosenThumbnail().map(Thumbnail::zoneAreas).orElseThrow();
    }
}
