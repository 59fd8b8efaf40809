package umbercard.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/** Finds which of some regions that are apart holds a piece. */
final class Near {
    private final List<Region> holders;
    private final STRtree index = new STRtree();

    Near(List<Region> holders) {
        this.holders = holders;
        for (int i = 0; i < holders.size(); i++) {
            index.insert(holders.get(i).bounds(), i);
        }
    }

    /** For each holder the pieces in it, each of which lies wholly in one or in none. */
    static List<List<Region>> sorted(List<Region> pieces, List<Region> holders) {
        List<List<Region>> sorted = new ArrayList<>();
        holders.forEach(holder -> sorted.add(new ArrayList<>()));
        Near near = new Near(holders);
        for (Region piece : pieces) {
            near.holder(piece).ifPresent(i -> sorted.get(i).add(piece));
        }
        return sorted;
    }

    /** Which one holds a piece, counted from 0, told by a place well inside the piece. */
    OptionalInt holder(Region piece) {
        Coordinate inside = piece.geometry().getInteriorPoint().getCoordinate();
        for (Object found : index.query(new Envelope(inside))) {
            int i = (Integer) found;
            if (holders.get(i).contains(new Point(inside.x, inside.y))) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }
}
