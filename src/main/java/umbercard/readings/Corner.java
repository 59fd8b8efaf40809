package umbercard.readings;

import java.util.Comparator;
import java.util.Locale;
import java.util.stream.Stream;
import umbercard.geometry.Point;
import umbercard.words.Message;

/** A corner of the frame, as seen on the card. */
public enum Corner {
    UPPER_LEFT(0, 0),
    UPPER_RIGHT(1, 0),
    LOWER_RIGHT(1, 1),
    LOWER_LEFT(0, 1);

    private final double across;
    private final double down;

    Corner(double across, double down) {
        this.across = across;
        this.down = down;
    }

    /** Where it is, in a frame {@code ratio} wide. */
    public Point at(double ratio) {
        return new Point(across * ratio, down);
    }

    /** The one that is nearest to a place. */
    public static Corner nearest(Point place, double ratio) {
        return Stream.of(values())
                .min(Comparator.comparingDouble(corner -> corner.at(ratio).distance(place)))
                .orElseThrow();
    }

    /** What the painter calls it. */
    public Message words() {
        return Message.of("readings.corner." + name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }
}
