package umbercard.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * Two of some regions that come near each other.
 *
 * @param one the place of the one in the list of regions, counted from 0
 * @param other the place of the other, after {@code one}
 * @param gap their nearest places, the first on {@code one}
 */
public record NearPair(int one, int other, Gap gap) {

    /**
     * All pairs of regions whose distance is {@code reach} or less, the nearest first, those equally near in the order of the
     * list. Those that touch or overlap are 0 apart. Empty regions are near nothing. An index keeps those far apart from being
     * tried, and the edges of a region are sorted once for all that come near it.
     *
     * @param reach in units, 0 or more
     */
    public static List<NearPair> within(List<Region> regions, double reach) {
        if (!(reach >= 0)) {
            throw new IllegalArgumentException("a distance is not negative: " + reach);
        }
        List<Facets> facets = regions.stream().map(Facets::new).toList();
        STRtree index = new STRtree();
        for (int i = 0; i < facets.size(); i++) {
            index.insert(facets.get(i).bounds(), i);
        }
        List<NearPair> pairs = new ArrayList<>();
        for (int i = 0; i < facets.size(); i++) {
            Facets one = facets.get(i);
            Envelope around = new Envelope(one.bounds());
            around.expandBy(reach);
            for (Object found : index.query(around)) {
                int other = (Integer) found;
                if (other > i && one.bounds().distance(facets.get(other).bounds()) <= reach) {
                    pairs.add(new NearPair(i, other, one.gapTo(facets.get(other))));
                }
            }
        }
        return pairs.stream()
                .filter(pair -> pair.gap.distance() <= reach)
                .sorted(Comparator.comparingDouble((NearPair pair) -> pair.gap.distance())
                        .thenComparingInt(NearPair::one)
                        .thenComparingInt(NearPair::other))
                .toList();
    }
}
