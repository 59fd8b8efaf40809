package umbercard.door;

import java.util.List;
import umbercard.geometry.Point;
import umbercard.geometry.Region;

/** Where something is on the card, so that the desk can show it. Points are in frame units. */
public sealed interface Place {
    record At(Point point) implements Place {}

    record Between(Point from, Point to) implements Place {}

    record Along(List<Point> line) implements Place {
        public Along {
            line = List.copyOf(line);
        }
    }

    record Over(Region region) implements Place {}

    /** Zones and notes by id. */
    record Of(List<String> zones, List<String> notes) implements Place {
        public Of {
            zones = List.copyOf(zones);
            notes = List.copyOf(notes);
        }
    }
}
