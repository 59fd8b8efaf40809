package umbercard.model;

/** Two zones whose common edge the painter means to lose. The pair has no order: the lesser id is kept first. */
public record LostEdge(String zone, String otherZone) {
    public LostEdge {
        if (zone.compareTo(otherZone) > 0) {
            String lesser = otherZone;
            otherZone = zone;
            zone = lesser;
        }
    }
}
