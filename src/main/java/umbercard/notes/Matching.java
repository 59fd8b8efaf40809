package umbercard.notes;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import umbercard.color.Ciede2000;
import umbercard.color.Lab;
import umbercard.model.Stick;

/**
 * Finds the sticks nearest to the main colors of zones, value first as far as {@link Trust} says. Sticks within value are
 * ranked by hue and chroma; where there is none, those nearest in value come first, by full tenths of a step as values are
 * told, and among these hue and chroma rank. Equally good ones keep the order of the box.
 */
public final class Matching {
    private static final double TOLD = 10;

    private final AtHand atHand;
    private final Trust trust;

    public Matching(AtHand atHand, Trust trust) {
        this.atHand = atHand;
        this.trust = trust;
    }

    /**
     * The sticks for every main color of every zone, in their order.
     *
     * @param most how many sticks to give for a color, 1 or more
     */
    public List<ColorMatches> of(List<ColoredZone> zones, int most) {
        return zones.stream()
                .flatMap(zone -> zone.colors().stream().map(color -> {
                    double value = color.color().value();
                    List<Ranked> within = within(color.color(), value);
                    List<Ranked> ranked = within.isEmpty() ? nearestInValue(color.color(), value) : within;
                    return new ColorMatches(
                            zone.zone().id(), color, !within.isEmpty(), matches(color.color(), value, ranked, most));
                }))
                .toList();
    }

    /** A stick by its place at hand, and what ranks it. */
    record Ranked(int place, double rank) {}

    /** The sticks within value of a color, the best first. */
    List<Ranked> within(Lab color, double value) {
        return atHand.within(value, trust.reach()).stream()
                .map(place -> ranked(color, place))
                .sorted(Comparator.comparingDouble(Ranked::rank).thenComparing(Ranked::place))
                .toList();
    }

    private List<Ranked> nearestInValue(Lab color, double value) {
        return IntStream.range(0, atHand.sticks().size())
                .mapToObj(place -> ranked(color, place))
                .sorted(Comparator.<Ranked>comparingDouble(
                                ranked -> Math.ceil(TOLD * Math.abs(atHand.value(ranked.place()) - value)))
                        .thenComparing(Ranked::rank)
                        .thenComparing(Ranked::place))
                .toList();
    }

    private Ranked ranked(Lab color, int place) {
        Ciede2000.Parts parts =
                Ciede2000.parts(color, atHand.sticks().get(place).color());
        double lightness = trust.ofLightness() * parts.lightness();
        return new Ranked(place, new Ciede2000.Parts(lightness, parts.chroma(), parts.hue(), parts.turning()).total());
    }

    private List<StickMatch> matches(Lab color, double value, List<Ranked> ranked, int most) {
        return ranked.stream()
                .limit(most)
                .map(one -> {
                    Stick stick = atHand.sticks().get(one.place());
                    Likeness likeness = Likeness.of(color, value, stick.color(), atHand.value(one.place()));
                    return new StickMatch(stick, likeness, one.rank());
                })
                .toList();
    }
}
