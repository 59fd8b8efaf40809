package umbercard.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;

/**
 * Where the masses are: for each one the places that belong to it if they have its value, apart from those of the others of
 * its value. See {@link Masses} for what parts and joins them.
 *
 * <p>With cores the places further than w/2 from the border, the dark's bodies are its cores swelled by w/2. Swelled
 * once more, those nearer than w meet; what then is left of the frame, w/2 within its sides, are the light's cores.
 */
record Bodies(List<Body> dark, List<Body> light) {
    /**
     * One mass's places.
     *
     * @param layer two of one layer share no border
     */
    record Body(Region region, int layer) {}

    /** @param width in units; 0 for whole pieces */
    static Bodies of(Region dark, double ratio, double width) {
        Optional<Bodies> found = width > 0 ? found(dark, ratio, width) : Optional.empty();
        return found.orElseGet(() ->
                new Bodies(apart(dark), apart(Region.rectangle(0, 0, ratio, 1).minus(dark))));
    }

    private static List<Body> apart(Region region) {
        return region.pieces().stream().map(piece -> new Body(piece, 0)).toList();
    }

    private static Optional<Bodies> found(Region dark, double ratio, double width) {
        Optional<Region> reach = Swelling.swelled(Swelling.prepared(dark), width / 2)
                .flatMap(closed -> Swelling.swelled(closed, -width))
                .flatMap(cores -> Swelling.swelled(cores, width))
                .map(Region::covered);
        return reach.flatMap(taken -> {
            double half = width / 2;
            Region cores = half < ratio - half && width < 1
                    ? Region.rectangle(half, half, ratio - half, 1 - half).minus(taken)
                    : Region.empty();
            return swelled(cores, half).map(light -> new Bodies(apart(taken), light));
        });
    }

    /** Each core swelled; where those of two overlap, the larger core's has the place. */
    private static Optional<List<Body>> swelled(Region cores, double by) {
        return Swelling.swelled(Swelling.prepared(cores), by)
                .map(Region::covered)
                .map(all -> {
                    List<Region> swelled = all.pieces();
                    List<List<Region>> within = Near.sorted(cores.pieces(), swelled);
                    List<Body> bodies = new ArrayList<>();
                    for (int i = 0; i < swelled.size(); i++) {
                        bodies.addAll(
                                within.get(i).size() < 2
                                        ? List.of(new Body(swelled.get(i), 0))
                                        : parted(swelled.get(i), within.get(i), by));
                    }
                    return bodies;
                });
    }

    private static List<Body> parted(Region swelled, List<Region> cores, double by) {
        List<Region> open = new ArrayList<>(cores);
        open.sort(Comparator.comparingDouble(Region::area).reversed());
        List<Body> parts = new ArrayList<>();
        Region left = swelled;
        for (Region core : open) {
            Geometry prepared = Swelling.prepared(core);
            Region part = left.intersect(
                    Swelling.swelled(prepared, by).map(Region::covered).orElse(core));
            parts.add(new Body(part, parts.size()));
            left = left.minus(part);
        }
        return parts;
    }
}
