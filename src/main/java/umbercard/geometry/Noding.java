package umbercard.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.noding.NodedSegmentString;
import org.locationtech.jts.noding.Noder;
import org.locationtech.jts.noding.SegmentString;

/** Cuts edges where they meet. */
final class Noding {
    private Noding() {}

    /** The edges in pieces that carry what the uncut edges carried; empty if the noder finds that it failed. */
    static Optional<List<SegmentString>> cut(Noder noder, List<NodedSegmentString> strings) {
        List<SegmentString> cut = new ArrayList<>();
        try {
            noder.computeNodes(strings);
            for (Object piece : noder.getNodedSubstrings()) {
                cut.add((SegmentString) piece);
            }
        } catch (RuntimeException failed) {
            // The library has no exception of its own for edges that it could not split.
            return Optional.empty();
        }
        return Optional.of(cut);
    }
}
