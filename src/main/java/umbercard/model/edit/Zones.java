package umbercard.model.edit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import umbercard.geometry.Outline;
import umbercard.geometry.Region;
import umbercard.model.LostEdge;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.model.Zone;

/**
 * Changes of zones, each a pure function. A zone belongs to the study, its area to a thumbnail. One that names a zone or a
 * thumbnail the study does not have changes nothing.
 */
public final class Zones {
    private Zones() {}

    /** Adds a zone after the others, without an area. */
    public static UnaryOperator<Study> add(Zone zone) {
        return study -> {
            List<Zone> zones = new ArrayList<>(study.zones());
            zones.add(zone);
            return study.withZones(zones);
        };
    }

    /** Changes a zone; its id stays. */
    public static UnaryOperator<Study> change(String id, UnaryOperator<Zone> change) {
        return study -> study.withZones(study.zones().stream()
                .map(zone -> zone.id().equals(id) ? change.apply(zone).withId(id) : zone)
                .toList());
    }

    /** Takes a zone away, with its areas and lost edges; color notes that were in it stay on the card, in no zone. */
    public static UnaryOperator<Study> remove(String id) {
        return study -> study.withZones(study.zones().stream()
                        .filter(zone -> !zone.id().equals(id))
                        .toList())
                .withThumbnails(study.thumbnails().stream()
                        .map(thumbnail -> withArea(thumbnail, id, List.of()))
                        .toList())
                .withLostEdges(without(study.lostEdges(), id))
                .withNotes(study.notes().stream()
                        .map(note -> note.zone().equals(Optional.of(id)) ? note.withZone(Optional.empty()) : note)
                        .toList());
    }

    private static Set<LostEdge> without(Set<LostEdge> edges, String zone) {
        Set<LostEdge> kept = new HashSet<>(edges);
        kept.removeIf(edge -> edge.zone().equals(zone) || edge.otherZone().equals(zone));
        return kept;
    }

    /**
     * Adds an outline to a zone's area on a thumbnail. No two zones of one plane and distance overlap: of the outline only
     * that is taken which no other such zone has there.
     */
    public static UnaryOperator<Study> draw(String thumbnail, String zone, Outline outline) {
        return study -> study.zone(zone)
                .map(known -> Edits.thumbnail(thumbnail, shown -> drawn(study, shown, known, Edits.snapped(outline)))
                        .apply(study))
                .orElse(study);
    }

    private static Thumbnail drawn(Study study, Thumbnail shown, Zone zone, Outline outline) {
        Region taken = study.zones().stream()
                .filter(other -> !other.id().equals(zone.id())
                        && other.plane() == zone.plane()
                        && other.distance() == zone.distance())
                .map(other -> Region.of(area(shown, other.id())))
                .reduce(Region.empty(), Region::union);
        Region whole = Region.of(outline);
        Region own = whole.minus(taken);
        Region before = Region.of(area(shown, zone.id()));
        boolean apart = before.intersect(whole).isEmpty() && own.area() >= whole.area() - CRACK;
        List<Outline> after = new ArrayList<>(apart ? area(shown, zone.id()) : List.of());
        after.addAll(apart ? List.of(outline) : before.union(own).outlines());
        return withArea(shown, zone.id(), after);
    }

    /** Less than this, as a share of the frame, is no overlap. */
    private static final double CRACK = 1e-5;

    private static List<Outline> area(Thumbnail thumbnail, String zone) {
        return thumbnail.zoneAreas().getOrDefault(zone, List.of());
    }

    /** Puts an area in place of the one a zone has on a thumbnail; none takes it away. */
    public static UnaryOperator<Study> area(String thumbnail, String zone, List<Outline> outlines) {
        return study -> study.zone(zone).isEmpty()
                ? study
                : Edits.thumbnail(thumbnail, shown -> withArea(shown, zone, outlines))
                        .apply(study);
    }

    private static Thumbnail withArea(Thumbnail thumbnail, String zone, List<Outline> outlines) {
        Map<String, List<Outline>> areas = new TreeMap<>(thumbnail.zoneAreas());
        if (outlines.isEmpty()) {
            areas.remove(zone);
        } else {
            areas.put(zone, outlines);
        }
        return thumbnail.withZoneAreas(areas);
    }

    /** Marks the edge between two zones as lost, or no longer. */
    public static UnaryOperator<Study> lose(LostEdge edge, boolean lost) {
        return study -> {
            Set<LostEdge> edges = new HashSet<>(study.lostEdges());
            boolean known = study.zone(edge.zone()).isPresent()
                    && study.zone(edge.otherZone()).isPresent();
            if (known && lost) {
                edges.add(edge);
            } else {
                edges.remove(edge);
            }
            return study.withLostEdges(edges);
        };
    }
}
