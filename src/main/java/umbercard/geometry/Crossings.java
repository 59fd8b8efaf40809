package umbercard.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * Where a line or an open curve passes into and out of a region. The places are those of the drawn curve itself, not of a
 * polygon in its stead; lengths along it are in units from its start, by Gauss-Legendre quadrature: to rounding for lines, to
 * about 1e-9 for curves, less well where one turns back on itself.
 *
 * <p>The border belongs to the region, as in {@link Region#contains}: a line that runs along it, within 2⁻²⁶ of it, runs
 * inside. Parts not longer than that are passed over, so one that only touches the border from outside does not enter.
 *
 * @param length of the whole line
 * @param inside the parts inside the region, in order
 * @param changes where the line passes in or out, in order
 */
public record Crossings(double length, List<Stretch> inside, List<Change> changes) {
    public Crossings {
        inside = List.copyOf(inside);
        changes = List.copyOf(changes);
    }

    /**
     * A place where the value changes.
     *
     * @param along length from the start
     * @param inward whether the line passes into the region
     */
    public record Change(Point at, double along, boolean inward) {}

    /** Along a straight line from end to end. */
    public static Crossings along(Line line, Region region) {
        return along(Path.through(List.of(line.from(), line.to())), region);
    }

    /** Along an open curve; one of fewer than two nodes has no length and no crossings. */
    public static Crossings along(Path path, Region region) {
        Track track = new Track(path);
        List<Stretch> inside = Stretches.tidied(track.inside(region), track.length(), Track.SLACK);
        List<Change> changes = new ArrayList<>();
        for (Stretch stretch : inside) {
            if (stretch.from() > 0) {
                changes.add(new Change(track.at(stretch.from()), stretch.from(), true));
            }
            if (stretch.to() < track.length()) {
                changes.add(new Change(track.at(stretch.to()), stretch.to(), false));
            }
        }
        return new Crossings(track.length(), inside, changes);
    }

    /** How much of the line runs inside, in units. */
    public double lengthInside() {
        return inside.stream().mapToDouble(Stretch::length).sum();
    }
}
