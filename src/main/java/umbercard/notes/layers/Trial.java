package umbercard.notes.layers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import umbercard.color.Lab;
import umbercard.geometry.Region;
import umbercard.model.ColorNote;
import umbercard.model.Study;
import umbercard.model.Zone;
import umbercard.notan.Design;
import umbercard.notes.Purposes;
import umbercard.zones.ZoneMap;
import umbercard.zones.ZonePlace;

/**
 * A thumbnail's zones painted with the colors that the notes are expected to come to, to see whether these sticks can paint
 * this picture. A rough guide, as {@link Layers} is.
 *
 * @param areas to be painted one over the other, the farthest first: the underpainting of the whole frame, then each zone
 */
public record Trial(List<Area> areas) {
    public Trial {
        areas = List.copyOf(areas);
    }

    /**
     * A flat patch of the trial.
     *
     * @param zone the zone that it belongs to; none for the underpainting of the whole frame
     * @param region within the frame, never empty
     * @param value Munsell's, for the same patch in gray
     * @param isPainted whether a note is laid in it; otherwise the underpainting shows
     */
    public record Area(Optional<Zone> zone, Region region, Lab color, double value, boolean isPainted) {
        static Area of(Optional<Zone> zone, Region region, Lab color, boolean isPainted) {
            return new Area(zone, region, color, color.value(), isPainted);
        }

        /** The same patch in gray. */
        public Lab gray() {
            return Lab.gray(color.l());
        }
    }

    /**
     * The trial after the first sittings.
     *
     * @param zones the map of a thumbnail
     * @param design what that thumbnail comes to
     * @param sittings how many of them are painted, 0 for the underpainting alone; more than there are mean all
     */
    public static Trial of(Study study, ZoneMap zones, Design design, int sittings) {
        Underpainting ground = Underpainting.of(study);
        List<ColorNote> laid = laid(study, sittings);
        List<Area> areas = new ArrayList<>();
        bare(Optional.empty(), design.frame(), design, ground).forEach(areas::add);
        for (ZonePlace place : zones.farthestFirst()) {
            Optional<Zone> zone = Optional.of(place.zone());
            List<ColorNote> notes = laid.stream()
                    .filter(note -> note.zone().equals(zone.map(Zone::id)) && Purposes.counts(note.purpose()))
                    .toList();
            if (place.seen().isEmpty()) {
                continue;
            }
            if (notes.isEmpty()) {
                bare(zone, place.seen(), design, ground).forEach(areas::add);
            } else {
                Lab below = ground.mean(place.darkShare(design));
                areas.add(Area.of(zone, place.seen(), Layers.color(notes, below), true));
            }
        }
        return new Trial(areas);
    }

    private static Stream<Area> bare(Optional<Zone> zone, Region region, Design design, Underpainting ground) {
        return Stream.of(
                        Area.of(zone, region.minus(design.dark()), ground.light(), false),
                        Area.of(zone, region.intersect(design.dark()), ground.dark(), false))
                .filter(area -> !area.region().isEmpty());
    }

    /** How many sittings the breaks part the card into; 0 for a card without notes. A break before the first note parts nothing. */
    public static int sittings(Study study) {
        return study.notes().isEmpty()
                ? 0
                : 1
                        + (int) study.notes().stream()
                                .skip(1)
                                .filter(ColorNote::breakBefore)
                                .count();
    }

    private static List<ColorNote> laid(Study study, int sittings) {
        List<ColorNote> laid = new ArrayList<>();
        int sitting = 1;
        for (ColorNote note : study.notes()) {
            if (note.breakBefore() && !laid.isEmpty()) {
                sitting++;
            }
            if (sitting > sittings) {
                break;
            }
            laid.add(note);
        }
        return laid;
    }
}
