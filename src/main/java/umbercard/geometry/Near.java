package umbercard.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.locationtech.jts.index.strtree.STRtree;

/** Finds those of some regions that may meet another, by their bounds. */
final class Near {
    private final STRtree index = new STRtree();

    Near(List<Region> regions) {
        for (int i = 0; i < regions.size(); i++) {
            index.insert(regions.get(i).bounds(), i);
        }
    }

    /** The places in the list, counted from 0, in order. */
    List<Integer> to(Region region) {
        List<Integer> found = new ArrayList<>();
        for (Object place : index.query(region.bounds())) {
            found.add((Integer) place);
        }
        Collections.sort(found);
        return found;
    }
}
