package umbercard.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/**
 * Where the masses are: for each one the places that belong to it if they have its value, apart from those of the others of
 * its value. See {@link Masses} for what parts and joins them.
 *
 * <p>With cores the places further than w/2 from the border, the dark's bodies are its cores swelled by w/2. Swelled
 * once more, those nearer than w meet; what then is left of the frame, w/2 within its sides, are the light's cores.
 */
record Bodies(List<Region> dark, List<Region> light) {

    /** @param width in units; 0 for whole pieces */
    static Bodies of(Region dark, double ratio, double width) {
        Optional<Bodies> found = width > 0 ? found(dark, ratio, width) : Optional.empty();
        return found.orElseGet(() -> new Bodies(
                dark.pieces(), Region.rectangle(0, 0, ratio, 1).minus(dark).pieces()));
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
            return swelled(cores, half).map(light -> new Bodies(taken.pieces(), light));
        });
    }

    /** Each core swelled; where those of two overlap, the larger core's has the place. */
    private static Optional<List<Region>> swelled(Region cores, double by) {
        return Swelling.swelled(Swelling.prepared(cores), by)
                .map(Region::covered)
                .map(all -> {
                    List<Region> open = new ArrayList<>(cores.pieces());
                    open.sort(Comparator.comparingDouble(Region::area).reversed());
                    List<Region> apart = new ArrayList<>();
                    for (Region piece : all.pieces()) {
                        List<Region> own =
                                open.stream().filter(core -> holds(piece, core)).toList();
                        open.removeAll(own);
                        apart.addAll(own.size() < 2 ? List.of(piece) : parted(piece, own, by));
                    }
                    return apart;
                });
    }

    private static boolean holds(Region piece, Region core) {
        Coordinate corner = core.geometry().getCoordinate();
        return piece.bounds().contains(corner) && piece.contains(new Point(corner.x, corner.y));
    }

    private static List<Region> parted(Region piece, List<Region> cores, double by) {
        List<Region> parts = new ArrayList<>();
        Region left = piece;
        for (Region core : cores) {
            Geometry prepared = Swelling.prepared(core);
            Region part = left.intersect(
                    Swelling.swelled(prepared, by).map(Region::covered).orElse(core));
            parts.add(part);
            left = left.minus(part);
        }
        return parts;
    }
}
