package umbercard.notes;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import umbercard.color.MunsellValue;
import umbercard.color.Warmth;
import umbercard.model.Stick;
import umbercard.model.Zone;
import umbercard.words.Message;

/**
 * What the sticks set out lack.
 *
 * <p>A gap of value is a stretch wider than {@value #WIDE} steps of Munsell value without a stick, between two sticks or beyond
 * the darkest or the lightest. Where it is known which values a study needs, only a gap counts that holds one of them farther
 * than half a step from every stick; where it is not, the whole scale is needed from {@value #DARKEST} to {@value #LIGHTEST},
 * about what pastel reaches on paper. A gap of warmth is a {@link Band} that has sticks but no warm one, or no cool one, by
 * {@link Warmth}. The figures are common practice, no source.
 */
public final class Gaps {
    private static final double WIDE = 1.5;
    private static final double NEAR = 0.5;
    private static final double DARKEST = 2;
    private static final double LIGHTEST = 9;
    private static final double WHITE = 10;

    private Gaps() {}

    /**
     * The gaps, of value from dark to light, then of warmth.
     *
     * @param needed the Munsell values that the study needs; empty if that is not known
     */
    public static List<Gap> of(List<Stick> setOut, List<Double> needed) {
        List<Gap> gaps = new ArrayList<>();
        if (setOut.isEmpty()) {
            return gaps;
        }
        double[] values = setOut.stream()
                .mapToDouble(stick -> stick.color().value())
                .sorted()
                .toArray();
        double below = 0;
        for (double value : values) {
            add(below, value, needed, gaps);
            below = value;
        }
        add(below, WHITE, needed, gaps);
        for (Band band : Band.values()) {
            addWarmth(setOut, band, gaps);
        }
        return gaps;
    }

    /** The Munsell values that a study needs: those aimed at in its zones, and those of the reference's colors in them. */
    public static List<Double> needed(List<Zone> zones, List<ColoredZone> colored) {
        Stream<Double> aimedAt =
                zones.stream().flatMap(zone -> zone.targetValue().stream().boxed());
        Stream<Double> seen = colored.stream()
                .flatMap(zone -> zone.colors().stream())
                .map(color -> color.color().value());
        return Stream.concat(aimedAt, seen).toList();
    }

    private static void add(double from, double to, List<Double> needed, List<Gap> gaps) {
        boolean dark = from == 0;
        boolean light = to == WHITE;
        boolean missed = needed.isEmpty()
                ? Math.min(to, LIGHTEST) - Math.max(from, DARKEST) > WIDE
                : to - from > WIDE
                        && needed.stream()
                                .anyMatch(value -> (dark || value > from + NEAR) && (light || value < to - NEAR));
        if (missed) {
            gaps.add(new Gap.OfValue(said(from, to, dark, light), from, to));
        }
    }

    private static Message said(double from, double to, boolean dark, boolean light) {
        if (dark) {
            return Message.of("match.gap.darker", new MunsellValue(to));
        }
        return light
                ? Message.of("match.gap.lighter", new MunsellValue(from))
                : Message.of("match.gap.between", new MunsellValue(from), new MunsellValue(to));
    }

    private static void addWarmth(List<Stick> setOut, Band band, List<Gap> gaps) {
        List<Stick> inside = setOut.stream()
                .filter(stick -> Band.of(stick.color().value()) == band)
                .toList();
        if (inside.isEmpty()) {
            return;
        }
        if (inside.stream().noneMatch(stick -> Warmth.isWarm(stick.color()))) {
            gaps.add(new Gap.OfWarmth(Message.of("match.gap.warm." + band.key()), band, Warmth.WARMEST));
        }
        if (inside.stream().noneMatch(stick -> Warmth.isCool(stick.color()))) {
            gaps.add(new Gap.OfWarmth(Message.of("match.gap.cool." + band.key()), band, Warmth.WARMEST + 180));
        }
    }
}
