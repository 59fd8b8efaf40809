package umbercard.notes.order;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import umbercard.model.ColorNote;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.model.Zone;
import umbercard.notes.Purposes;
import umbercard.zones.ZoneMap;
import umbercard.zones.ZonePlace;

/**
 * A note with what the rules ask of it.
 *
 * @param index its present place, counted from 0
 * @param zone where it goes, if that is a zone of the study
 * @param twentieth how far down the frame its zone lies, in twentieths of the frame's height; empty where it has no area
 * @param touching the ids of the zones that touch or overlap its own
 */
record Laid(ColorNote note, int index, Optional<Zone> zone, OptionalInt twentieth, List<String> touching) {
    private static final int TWENTIETHS = 20;

    /** @param meeting for a zone's id the ids of the zones that touch or overlap it */
    static Laid of(Study study, ZoneMap map, int index, Map<String, List<String>> meeting) {
        ColorNote note = study.notes().get(index);
        Optional<Zone> zone = note.zone().flatMap(study::zone);
        Optional<ZonePlace> place = zone.flatMap(known -> map.of(known.id()));
        return new Laid(
                note,
                index,
                zone,
                place.map(p -> OptionalInt.of((int) Math.round(TWENTIETHS * p.height())))
                        .orElse(OptionalInt.empty()),
                zone.map(known -> meeting.getOrDefault(known.id(), List.of())).orElse(List.of()));
    }

    boolean is(String purpose) {
        return note.purpose().equals(purpose);
    }

    boolean isOf(List<String> purposes) {
        return purposes.contains(note.purpose());
    }

    /** Whether its purpose is one of the trade's: of the painter's own words the rules of purposes know nothing. */
    boolean isOfTrade() {
        return isOf(Purposes.KEYS);
    }

    boolean isInZoneOf(Laid other) {
        return zone.isPresent() && zone.equals(other.zone);
    }

    /** Whether it lies higher in the frame, by a twentieth or more. */
    boolean isOver(Laid other) {
        return twentieth.isPresent()
                && other.twentieth.isPresent()
                && twentieth.getAsInt() < other.twentieth.getAsInt();
    }

    /** Whether its zone lies farther off. */
    boolean isBeyond(Laid other) {
        return zone.isPresent()
                && other.zone.isPresent()
                && zone.get().distance().compareTo(other.zone.get().distance()) < 0;
    }

    /** Whether a hole for the sky in this may pierce it: it lies in the same zone, in one beside it, or nobody knows where. */
    boolean isPiercedBy(Laid hole) {
        return zone.isEmpty()
                || hole.zone.isEmpty()
                || isInZoneOf(hole)
                || touching.contains(hole.zone.get().id());
    }

    /** A stick whose hardness nobody gave counts as medium. */
    Stick.Hardness hardness() {
        return note.stick().hardness().orElse(Stick.Hardness.MEDIUM);
    }

    /** In half steps of Munsell value. */
    long halfSteps() {
        return Math.round(2 * note.stick().color().value());
    }

    /** In fives of CIE chroma. */
    long fives() {
        return Math.round(note.stick().color().chroma() / 5);
    }
}
