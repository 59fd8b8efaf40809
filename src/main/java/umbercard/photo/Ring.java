package umbercard.photo;

import java.util.List;
import umbercard.geometry.Point;

/**
 * A closed line of places round a region, the region on its right as it runs clockwise as seen; a hole runs the other way.
 *
 * @param border for each place, whether it lies on the frame's border
 */
record Ring(List<Point> places, List<Boolean> border) {
    Ring {
        places = List.copyOf(places);
        border = List.copyOf(border);
    }

    /** Over zero for an outer ring, under zero for a hole. */
    double area() {
        double twice = 0;
        for (int i = 0; i < places.size(); i++) {
            Point from = places.get(i);
            Point to = places.get((i + 1) % places.size());
            twice += from.x() * to.y() - to.x() * from.y();
        }
        return twice / 2;
    }
}
