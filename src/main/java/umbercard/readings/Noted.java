package umbercard.readings;

import java.util.List;
import java.util.stream.Stream;
import umbercard.color.MunsellValue;
import umbercard.door.Place;
import umbercard.door.Plan;
import umbercard.model.ColorNote;
import umbercard.notes.ZoneNotes;
import umbercard.zones.ZonePlace;

/**
 * A zone that lies on the thumbnail and has notes that count.
 *
 * @param mean of those notes, as a Munsell value
 */
public record Noted(ZonePlace place, ZoneNotes notes, double mean) {
    /** How far a difference of values may miss a limit and still be on it: values come of colors with rounding. */
    public static final double HAIR = 1e-6;

    /** All such zones of a plan, in the order of the study. */
    public static List<Noted> of(Plan plan) {
        return ZoneNotes.of(plan.study()).stream()
                .flatMap(notes -> plan.zones().of(notes.zone().id()).stream()
                        .flatMap(place -> notes.mean().stream().mapToObj(mean -> new Noted(place, notes, mean))))
                .toList();
    }

    /** What the painter calls it. */
    public String name() {
        return place.zone().name();
    }

    /** A mean of values as it is said. */
    public static MunsellValue said(double value) {
        return new MunsellValue(Math.max(0, Math.min(10, value)));
    }

    /** These zones and their notes, for the desk to show. */
    public static Place place(Noted... zones) {
        return new Place.Of(
                Stream.of(zones).map(zone -> zone.place.zone().id()).toList(),
                Stream.of(zones)
                        .flatMap(zone -> zone.notes.counting().stream())
                        .map(ColorNote::id)
                        .toList());
    }
}
