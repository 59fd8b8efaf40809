package umbercard.notes.turned;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import umbercard.color.Lab;
import umbercard.color.MunsellValue;
import umbercard.color.Warmth;
import umbercard.model.ColorNote;
import umbercard.model.ColorNote.Direction;
import umbercard.model.ColorNote.Touch;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.model.Zone;
import umbercard.model.Zone.Distance;
import umbercard.model.Zone.Plane;
import umbercard.notan.Design;
import umbercard.notes.AtHand;
import umbercard.notes.ByHue;
import umbercard.notes.ColorMatches;
import umbercard.notes.ColoredZone;
import umbercard.notes.Matching;
import umbercard.notes.Purposes;
import umbercard.notes.StickMatch;
import umbercard.notes.Trust;
import umbercard.picture.MainColor;
import umbercard.words.Message;
import umbercard.zones.Nearer;
import umbercard.zones.ZoneMap;

/**
 * A color card's first notes, made of the sticks that match the reference. A zone gets the best sticks of its largest colors: the
 * sky three, one that takes up much of the frame two, any other one, with the usual purpose of the zone; dark zones together get
 * at least one warm and one cool dark. Water is left to {@link TurnedSky} where the thumbnail has a waterline. Zones that have
 * notes already are left as they are. All counts: common practice, no source.
 */
public final class FromMatches {
    /** How many notes a zone may get at most. */
    public static final int MOST = 4;

    private static final int OF_SKY = 3;
    private static final int OF_LARGE = 2;
    private static final int OF_OTHERS = 1;

    /** From what share of the frame on a zone takes up much of it. */
    private static final double LARGE = 0.15;

    /** How far off in value a dark may lie that is taken for its warmth, in steps. */
    private static final double DARK_REACH = 1;

    private final Study study;
    private final ZoneMap zones;
    private final Design design;
    private final AtHand atHand;
    private final Matching matching;
    private final OptionalInt most;
    private final List<Pick> picks = new ArrayList<>();
    private final List<Message> remarks = new ArrayList<>();

    private FromMatches(Study study, ZoneMap zones, Design design, AtHand atHand, Matching matching, OptionalInt most) {
        this.study = study;
        this.zones = zones;
        this.design = design;
        this.atHand = atHand;
        this.matching = matching;
        this.most = most;
    }

    /** A stick for a zone, and why. */
    private record Pick(Zone zone, Stick stick, boolean dark, Message reason) {
        String purpose() {
            return Purposes.usual(zone, dark);
        }
    }

    /**
     * Offers notes in the order of the trade's purposes, within one the farthest zone first, the sky from dark overhead to light
     * and warm at the horizon.
     *
     * @param colored the zones with the reference's colors
     * @param atHand the sticks to choose from, at least one
     * @param most how many notes any zone may get, 1 to {@value #MOST}; empty for the usual
     */
    public static Offers of(
            Study study,
            Thumbnail thumbnail,
            ZoneMap zones,
            Design design,
            List<ColoredZone> colored,
            AtHand atHand,
            Trust trust,
            OptionalInt most) {
        FromMatches from = new FromMatches(study, zones, design, atHand, new Matching(atHand, trust), most);
        colored.forEach(zone -> from.pick(zone, thumbnail.waterline().isPresent()));
        from.addDark(colored, "warm", stick -> Warmth.isWarm(stick.color()));
        from.addDark(colored, "cool", stick -> Warmth.isCool(stick.color()));
        return from.offers();
    }

    private boolean isDark(Zone zone) {
        return zones.of(zone.id()).filter(place -> place.isDark(design)).isPresent();
    }

    /** Whether darks are laid there: a dark sky or pond is painted with its own colors. */
    private boolean isForDarks(Zone zone) {
        return Purposes.usual(zone, isDark(zone)).equals(Purposes.DARKS);
    }

    private boolean hasNotes(Zone zone) {
        return study.notes().stream().anyMatch(note -> note.zone().equals(Optional.of(zone.id())));
    }

    private void pick(ColoredZone colored, boolean waterline) {
        Zone zone = colored.zone();
        if (hasNotes(zone)) {
            remarks.add(Message.of("turned.matched.has-notes", zone.name()));
        } else if (zone.plane() == Plane.WATER && waterline) {
            remarks.add(Message.of("turned.matched.water-later", zone.name()));
        } else {
            List<Pick> found = sticks(colored, count(colored));
            picks.addAll(zone.plane() == Plane.SKY ? downTheSky(found) : found);
        }
    }

    private int count(ColoredZone colored) {
        return most.orElse(
                colored.zone().plane() == Plane.SKY ? OF_SKY : colored.share() >= LARGE ? OF_LARGE : OF_OTHERS);
    }

    /** The best stick of each color, the largest first, of a dark zone the darkest; then their second best, while they are near enough. */
    private List<Pick> sticks(ColoredZone colored, int count) {
        List<ColorMatches> matches =
                matching.of(List.of(isForDarks(colored.zone()) ? darkened(colored) : colored), count);
        List<Pick> found = new ArrayList<>();
        for (int rank = 0; rank < count; rank++) {
            for (ColorMatches match : matches) {
                int next = rank;
                Optional.of(match.sticks())
                        .filter(sticks -> next < sticks.size())
                        .map(sticks -> sticks.get(next))
                        .filter(stick -> found.size() < count && (next == 0 || isNear(match, stick)))
                        .filter(stick -> found.stream().noneMatch(pick -> isSame(pick.stick(), stick.stick())))
                        .ifPresent(stick -> found.add(pick(colored.zone(), match.color(), stick)));
            }
        }
        return found;
    }

    /**
     * A dark zone's colors with the darkest first, at the zone's target value where that is darker still: light that shines
     * through growth is left to the sky holes.
     */
    private static ColoredZone darkened(ColoredZone colored) {
        double target = colored.zone().targetValue().orElse(Double.MAX_VALUE);
        List<MainColor> colors = colored.colors().stream()
                .sorted(Comparator.comparingDouble(color -> color.color().value()))
                .map(color -> color.color().value() <= target
                        ? color
                        : new MainColor(at(target, color.color()), color.share()))
                .toList();
        return new ColoredZone(colored.zone(), colored.share(), colors);
    }

    private static Lab at(double value, Lab color) {
        return new Lab(Lab.lightness(MunsellValue.luminance(value)), color.a(), color.b());
    }

    private static boolean isNear(ColorMatches match, StickMatch stick) {
        return match.withinValue()
                && ByHue.difference(match.color().color(), stick.stick().color()) <= ByHue.NEAR;
    }

    private static boolean isSame(Stick one, Stick other) {
        return one.id().equals(other.id());
    }

    private Pick pick(Zone zone, MainColor color, StickMatch match) {
        Message reason = Message.of(
                "turned.matched.for",
                match.stick().title(),
                MunsellValue.of(match.stick().color()),
                zone.name(),
                MunsellValue.of(color.color()),
                match.likeness().words());
        return new Pick(zone, match.stick(), isDark(zone), reason);
    }

    /** From overhead to the horizon a sky grows lighter, and warmer just above it: common practice, no source. */
    private static List<Pick> downTheSky(List<Pick> sky) {
        return sky.stream()
                .sorted(Comparator.comparingDouble(
                                (Pick pick) -> pick.stick().color().value())
                        .thenComparingDouble(pick -> Warmth.of(pick.stick().color())))
                .toList();
    }

    /** One more for the dark zone that it suits best, where the dark zones' sticks lack that warmth. */
    private void addDark(List<ColoredZone> colored, String warmth, Predicate<Stick> has) {
        List<ColoredZone> dark = colored.stream()
                .filter(zone -> isForDarks(zone.zone()) && !hasNotes(zone.zone()))
                .toList();
        if (dark.isEmpty() || picks.stream().anyMatch(pick -> isForDarks(pick.zone()) && has.test(pick.stick()))) {
            return;
        }
        best(dark, has)
                .ifPresentOrElse(
                        best -> picks.add(new Pick(
                                best.zone(),
                                best.stick(),
                                true,
                                Message.of(
                                        "turned.matched.dark." + warmth,
                                        best.stick().title(),
                                        MunsellValue.of(best.stick().color()),
                                        best.zone().name()))),
                        () -> remarks.add(Message.of("turned.matched.no-dark." + warmth)));
    }

    private record Suiting(Zone zone, Stick stick, double difference) {}

    private Optional<Suiting> best(List<ColoredZone> dark, Predicate<Stick> has) {
        return dark.stream()
                .map(FromMatches::darkened)
                .flatMap(zone -> zone.colors().stream()
                        .limit(1)
                        .flatMap(color -> atHand.sticks().stream()
                                .filter(has.and(stick -> isWithin(stick, color.color())))
                                .map(stick -> new Suiting(
                                        zone.zone(), stick, ByHue.difference(color.color(), stick.color())))))
                .min(Comparator.comparingDouble(Suiting::difference));
    }

    private static boolean isWithin(Stick stick, Lab color) {
        return Math.abs(stick.color().value() - color.value()) <= DARK_REACH;
    }

    private Offers offers() {
        List<String> ids = study.newIds("n", picks.size());
        List<Pick> ordered = picks.stream()
                .sorted(Comparator.comparingInt((Pick pick) -> Purposes.KEYS.indexOf(pick.purpose()))
                        .thenComparing(Pick::zone, Nearer.LAST))
                .toList();
        List<Offer> offers = new ArrayList<>();
        for (int i = 0; i < ordered.size(); i++) {
            Pick pick = ordered.get(i);
            offers.add(new Offer(note(ids.get(i), pick), pick.reason()));
        }
        return new Offers(offers, remarks);
    }

    /** Far things are laid lightly; growth upright, slopes along the form, the rest flat: common practice, no source. */
    private static ColorNote note(String id, Pick pick) {
        Zone zone = pick.zone();
        return ColorNote.of(id, pick.stick())
                .withZone(Optional.of(zone.id()))
                .withPurpose(pick.purpose())
                .withTouch(zone.distance() == Distance.FAR ? Touch.LIGHT : Touch.FIRM)
                .withDirection(
                        switch (zone.plane()) {
                            case UPRIGHT -> Direction.UPRIGHT;
                            case SLOPE -> Direction.ALONG_FORM;
                            case SKY, FLAT, WATER -> Direction.FLAT;
                        });
    }
}
