package umbercard.notes.turned;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import umbercard.color.Lab;
import umbercard.color.MunsellValue;
import umbercard.model.ColorNote;
import umbercard.model.ColorNote.Direction;
import umbercard.model.ColorNote.Touch;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.model.Zone;
import umbercard.notes.ByHue;
import umbercard.notes.Purposes;
import umbercard.words.Message;
import umbercard.zones.ZoneMap;
import umbercard.zones.ZonePlace;

/**
 * The water's notes made of the sky's. Still water shows the sky upside down: what is at the horizon lies farthest back and is
 * laid first, what is overhead lies nearest. What the water adds of its own narrows the range: light things come back a touch
 * darker and dark ones a touch lighter (a convex mix of what is mirrored and of the water, by Fresnel's reflectance). By how much
 * depends on the water and the angle; that it is wanted half a step at most and never over one off is common practice, no source.
 */
public final class TurnedSky {
    /** How far a value is wanted to move toward the middle, in steps: common practice, no source. */
    private static final double TOUCH = 0.5;

    /** How far it may be off the sky's: common practice, no source. */
    private static final double MOST = 1;

    /** How far off the value wanted a stick still has it: half of the touch, so that the sky's own is not taken for another. */
    private static final double HAS_IT = TOUCH / 2;

    private static final double MIDDLE = 5;
    private static final double HAIR = 1e-9;

    private final Study study;
    private final Zone water;
    /** The sticks that stand for a band of the sky already: its own, and those offered. */
    private final Set<String> taken = new HashSet<>();

    private final List<Offer> offers = new ArrayList<>();
    private final List<Message> remarks = new ArrayList<>();

    private TurnedSky(Study study, Zone water) {
        this.study = study;
        this.water = water;
    }

    /**
     * Offers water notes, the farthest first. Without a waterline, a water zone or notes in the sky there are none, and a remark
     * says what is missing; other remarks name the sky that is hidden and what hides it, and notes that the water has already.
     */
    public static Offers of(Study study, Thumbnail thumbnail, ZoneMap zones) {
        Optional<Zone> water = water(study, zones);
        if (thumbnail.waterline().isEmpty()) {
            return Offers.none(Message.of("turned.water.no-waterline", thumbnail.name()));
        }
        if (water.isEmpty()) {
            return Offers.none(Message.of("turned.water.no-water"));
        }
        List<SkyBand> bands = VisibleSky.of(study, thumbnail, zones).bands();
        if (bands.isEmpty()) {
            return Offers.none(Message.of("turned.water.no-sky"));
        }
        return new TurnedSky(study, water.get()).of(bands);
    }

    /** The water zone of which most is seen; the study's first where none is on the thumbnail. */
    private static Optional<Zone> water(Study study, ZoneMap zones) {
        List<Zone> waters = study.zones().stream()
                .filter(zone -> zone.plane() == Zone.Plane.WATER)
                .toList();
        Comparator<Zone> seen = Comparator.comparingDouble(zone -> zones.of(zone.id())
                .map(ZonePlace::seen)
                .map(region -> -region.area())
                .orElse(0.0));
        return waters.stream().min(seen);
    }

    private Offers of(List<SkyBand> bands) {
        bands.forEach(band -> taken.add(band.note().stick().id()));
        List<String> ids = study.newIds("n", bands.size());
        for (int i = 0; i < bands.size(); i++) {
            SkyBand band = bands.get(i);
            if (band.isSeen()) {
                offer(ids.get(i), band.note().stick());
            } else {
                remarks.add(hidden(band));
            }
        }
        return new Offers(offers, remarks);
    }

    private static Message hidden(SkyBand band) {
        String sky = band.note().stick().title();
        return band.hiddenBy()
                .map(zone -> Message.of("turned.water.hidden", sky, zone.name()))
                .orElse(Message.of("turned.water.outside", sky));
    }

    private void offer(String id, Stick sky) {
        Stick stick = stick(sky);
        taken.add(stick.id());
        if (isNoted(stick)) {
            remarks.add(Message.of("turned.water.noted", sky.title(), stick.title(), water.name()));
            return;
        }
        ColorNote note = ColorNote.of(id, stick)
                .withZone(Optional.of(water.id()))
                .withPurpose(Purposes.WATER)
                .withTouch(Touch.LIGHT)
                .withDirection(Direction.FLAT);
        offers.add(new Offer(note, reason(sky, stick)));
    }

    private boolean isNoted(Stick stick) {
        return study.notes().stream()
                .anyMatch(note -> note.zone().equals(Optional.of(water.id()))
                        && note.purpose().equals(Purposes.WATER)
                        && note.stick().id().equals(stick.id()));
    }

    private Message reason(Stick sky, Stick stick) {
        MunsellValue from = MunsellValue.of(sky.color());
        MunsellValue to = MunsellValue.of(stick.color());
        String place = offers.isEmpty() ? "turned.water.farthest" : "turned.water.next";
        if (stick.id().equals(sky.id())) {
            return Message.of("turned.water.same", sky.title(), from, Message.of(place));
        }
        String way = to.number() < from.number() ? "turned.water.darker" : "turned.water.lighter";
        return Message.of(way, sky.title(), from, stick.title(), to, Message.of(place));
    }

    /**
     * The stick for a sky stick: of those that have the value wanted the nearest in hue and chroma; where none has it, or only
     * in another color, of those a smaller or larger move toward the middle away; where there is none, the sky's own.
     */
    private Stick stick(Stick sky) {
        double value = sky.color().value();
        double wanted = value < MIDDLE ? Math.min(MIDDLE, value + TOUCH) : Math.max(MIDDLE, value - TOUCH);
        Predicate<Stick> may = stick -> mayStand(sky.color(), stick);
        return ByHue.nearest(
                        study,
                        sky.color(),
                        may.and(stick -> Math.abs(stick.color().value() - wanted) <= HAS_IT))
                .or(() -> ByHue.nearest(study, sky.color(), may))
                .orElse(sky);
    }

    private boolean mayStand(Lab sky, Stick stick) {
        double from = sky.value();
        double to = stick.color().value();
        return !taken.contains(stick.id())
                && Math.abs(to - from) > HAIR
                && Math.abs(to - from) <= MOST
                && Math.abs(to - MIDDLE) <= Math.abs(from - MIDDLE)
                && ByHue.difference(sky, stick.color()) <= ByHue.NEAR;
    }
}
