package umbercard.geometry;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/** A part of a border that no other touches except at its ends. */
final class Link implements Way {
    /** Two corners or more. */
    final List<Coordinate> corners;

    private Link(Coordinate[] corners) {
        this.corners = Collections.unmodifiableList(Arrays.asList(corners));
    }

    static Link along(Coordinate[] corners) {
        return new Link(corners.clone());
    }

    static Link against(Coordinate[] corners) {
        Coordinate[] reversed = corners.clone();
        Collections.reverse(Arrays.asList(reversed));
        return new Link(reversed);
    }

    @Override
    public Coordinate from() {
        return corners.get(0);
    }

    @Override
    public Coordinate ahead() {
        return corners.get(1);
    }

    @Override
    public Coordinate behind() {
        return corners.get(corners.size() - 2);
    }

    @Override
    public Coordinate to() {
        return corners.get(corners.size() - 1);
    }
}
