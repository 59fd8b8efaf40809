package umbercard.zones;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import umbercard.geometry.NearPair;
import umbercard.geometry.Region;
import umbercard.geometry.Swelling;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.model.Zone;

/** Where the zones of a study lie on one of its thumbnails. Immutable; what takes longer to find is found when it is asked for. */
public final class ZoneMap {
    /** How far apart hand-drawn zones may lie and still touch, as a share of the diagonal: common practice, no source. */
    private static final double REACH = 0.008;

    /** How long a common edge must be, as a share of the diagonal: common practice, no source. */
    private static final double LEAST_EDGE = 0.02;

    /** What is under this, as a share of the frame, is a crack between outlines and neither a gap nor an overlap. */
    static final double CRACK = 1e-4;

    private final double ratio;
    private final List<ZonePlace> places;

    private ZoneMap(double ratio, List<ZonePlace> places) {
        this.ratio = ratio;
        this.places = List.copyOf(places);
    }

    /** The map of a thumbnail; zones that have no area within the frame are not on it. */
    public static ZoneMap of(Study study, Thumbnail thumbnail) {
        double ratio = study.ratio();
        List<ZonePlace> places = new ArrayList<>();
        Region covered = Region.empty();
        for (Zone zone : nearestFirst(study.zones())) {
            Region drawn = Region.of(thumbnail.zoneAreas().getOrDefault(zone.id(), List.of()))
                    .intersect(Region.rectangle(0, 0, ratio, 1));
            if (!drawn.isEmpty()) {
                places.add(new ZonePlace(zone, drawn, drawn.minus(covered), Math.min(1, drawn.area() / ratio)));
                covered = covered.union(drawn);
            }
        }
        places.sort(Comparator.comparingInt(place -> study.zones().indexOf(place.zone())));
        return new ZoneMap(ratio, places);
    }

    private static List<Zone> nearestFirst(List<Zone> zones) {
        List<Zone> sorted = new ArrayList<>(zones);
        sorted.sort(Nearer.LAST);
        Collections.reverse(sorted);
        return sorted;
    }

    /** The frame's width; its height is 1. */
    public double ratio() {
        return ratio;
    }

    /** The zones that lie within the frame, in the order of the study. */
    public List<ZonePlace> places() {
        return places;
    }

    /** The same, the farthest first: painted one over the other, each shows what is seen of it. */
    public List<ZonePlace> farthestFirst() {
        return places.stream()
                .sorted(Comparator.comparing(ZonePlace::zone, Nearer.LAST))
                .toList();
    }

    /** Where the zone of that id lies; empty where it has no area within the frame. */
    public Optional<ZonePlace> of(String zone) {
        return places.stream().filter(place -> place.zone().id().equals(zone)).findFirst();
    }

    /**
     * The pairs of zones that touch: as seen, they come within 0.8 % of the diagonal along an edge of 2 % of it or more. In
     * the order of the study.
     */
    public List<ZonePair> touching() {
        List<ZonePlace> shown =
                places.stream().filter(place -> !place.seen().isEmpty()).toList();
        double diagonal = Math.hypot(ratio, 1);
        return NearPair.within(shown.stream().map(ZonePlace::seen).toList(), REACH * diagonal).stream()
                .filter(near -> isEdge(
                        shown.get(near.one()).seen(), shown.get(near.other()).seen(), diagonal))
                .sorted(Comparator.comparingInt(NearPair::one).thenComparingInt(NearPair::other))
                .map(near -> pair(shown.get(near.one()), shown.get(near.other())))
                .toList();
    }

    /** Where the library that swells fails, which is very rare, zones that come near are taken to touch. */
    private static boolean isEdge(Region one, Region other, double diagonal) {
        double reach = REACH * diagonal;
        return Swelling.of(one, reach)
                .map(swelled -> swelled.intersect(other).area() >= LEAST_EDGE * diagonal * reach)
                .orElse(true);
    }

    /** The pairs of zones of one plane and distance that overlap, as no two should; in the order of the study. */
    public List<ZonePair> overlapping() {
        List<ZonePair> pairs = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            for (int k = i + 1; k < places.size(); k++) {
                ZonePlace one = places.get(i);
                ZonePlace other = places.get(k);
                if (Nearer.LAST.compare(one.zone(), other.zone()) == 0
                        && one.drawn().intersect(other.drawn()).area() > CRACK * ratio) {
                    pairs.add(pair(one, other));
                }
            }
        }
        return List.copyOf(pairs);
    }

    private static ZonePair pair(ZonePlace one, ZonePlace other) {
        return Nearer.LAST.compare(one.zone(), other.zone()) <= 0 ? new ZonePair(one, other) : new ZonePair(other, one);
    }

    /** The parts of the frame that no zone covers; cracks between outlines, narrower than zones that touch lie apart, are none. */
    public Region gaps() {
        Region covered = places.stream().map(ZonePlace::drawn).reduce(Region.empty(), Region::union);
        double crack = REACH * Math.hypot(ratio, 1);
        Region rest = Region.rectangle(0, 0, ratio, 1)
                .minus(Swelling.closed(covered, crack).orElse(covered));
        return rest.pieces().stream()
                .filter(piece -> piece.area() > CRACK * ratio)
                .reduce(Region.empty(), Region::union);
    }
}
