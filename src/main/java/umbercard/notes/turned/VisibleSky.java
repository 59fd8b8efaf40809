package umbercard.notes.turned;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import umbercard.geometry.Node;
import umbercard.geometry.Point;
import umbercard.geometry.Region;
import umbercard.model.ColorNote;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.model.Zone;
import umbercard.notes.ZoneNotes;
import umbercard.zones.ZoneMap;
import umbercard.zones.ZonePlace;

/**
 * The sky as still water sees it: a band for each note of the sky, from the horizon up. The notes of a sky zone run from
 * overhead to the horizon, as a sky is laid (common practice, no source), and part its height evenly; of several sky zones the
 * higher one lies farther up. Accents, lights and sky holes are no bands. A sky that has no area on the thumbnail is seen whole.
 *
 * @param bands all of them, from the horizon up
 */
public record VisibleSky(List<SkyBand> bands) {
    public VisibleSky {
        bands = List.copyOf(bands);
    }

    /** The bands of a study's sky on a thumbnail; what the water mirrors needs no waterline where nothing stands in it. */
    public static VisibleSky of(Study study, Thumbnail thumbnail, ZoneMap zones) {
        Mirror mirror = new Mirror(thumbnail, zones);
        List<SkyBand> down = new ArrayList<>();
        study.zones().stream()
                .filter(zone -> zone.plane() == Zone.Plane.SKY)
                .sorted(Comparator.comparingDouble(
                        zone -> zones.of(zone.id()).map(ZonePlace::height).orElse(0.0)))
                .forEach(zone ->
                        down.addAll(bands(zone, ZoneNotes.of(study, zone).counting(), zones, mirror)));
        Collections.reverse(down);
        return new VisibleSky(down);
    }

    /** Those that the water can mirror, from the horizon up. */
    public List<SkyBand> seen() {
        return bands.stream().filter(SkyBand::isSeen).toList();
    }

    private static List<SkyBand> bands(Zone zone, List<ColorNote> notes, ZoneMap zones, Mirror mirror) {
        Optional<ZonePlace> place = zones.of(zone.id());
        if (place.isEmpty()) {
            return notes.stream()
                    .map(note -> new SkyBand(note, zone, 1, Optional.empty()))
                    .toList();
        }
        Region drawn = place.get().drawn();
        List<Mirror.Hider> hiders = mirror.before(place.get());
        double top = corners(drawn).stream().mapToDouble(Point::y).min().orElseThrow();
        double height = corners(drawn).stream().mapToDouble(Point::y).max().orElseThrow() - top;
        List<SkyBand> bands = new ArrayList<>();
        for (int i = 0; i < notes.size(); i++) {
            double from = top + height * i / notes.size();
            double to = top + height * (i + 1) / notes.size();
            Region band = drawn.intersect(Region.rectangle(0, from, zones.ratio(), to));
            bands.add(band(notes.get(i), zone, band, hiders));
        }
        return bands;
    }

    private static List<Point> corners(Region region) {
        return region.outlines().stream()
                .flatMap(ring -> ring.nodes().stream())
                .map(Node::at)
                .toList();
    }

    private static SkyBand band(ColorNote note, Zone zone, Region band, List<Mirror.Hider> hiders) {
        Region rest = band;
        for (Mirror.Hider hider : hiders) {
            rest = rest.minus(hider.region());
        }
        Optional<Zone> most = hiders.stream()
                .filter(hider -> !band.intersect(hider.region()).isEmpty())
                .max(Comparator.comparingDouble(
                        hider -> band.intersect(hider.region()).area()))
                .map(Mirror.Hider::zone);
        double left = band.isEmpty() ? 0 : Math.min(1, rest.area() / band.area());
        return new SkyBand(note, zone, left, most);
    }
}
