package umbercard.model;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Optional;
import umbercard.color.Lab;
import umbercard.geometry.Size;

/**
 * The paper or panel to be painted: its width and height, and the width of the tape that lies inside its edge on each of
 * the four sides, all in {@code unit}.
 *
 * @param tape 0 or more, less than half of the shorter side
 * @param tone the color of the surface, if it is known
 * @param takesWet whether it bears a wet underpainting
 */
@RecordBuilder
public record Surface(double width, double height, Unit unit, double tape, Optional<Lab> tone, boolean takesWet)
        implements SurfaceBuilder.With {

    /** The units that surfaces are sold in. */
    public enum Unit implements Keyed {
        IN(25.4),
        CM(10);

        private final double millimeters;

        Unit(double millimeters) {
            this.millimeters = millimeters;
        }

        /** Millimeters in one of this unit. */
        public double millimeters() {
            return millimeters;
        }
    }

    public Surface {
        if (!(width > 0) || !(height > 0) || !Double.isFinite(width) || !Double.isFinite(height)) {
            throw new IllegalArgumentException("a surface has a width and a height: " + width + " x " + height);
        }
        if (!(tape >= 0) || 2 * tape >= Math.min(width, height)) {
            throw new IllegalArgumentException("tape of " + tape + " leaves nothing to paint");
        }
    }

    /** What the tape leaves open, in {@link #unit()}: its proportions rule the frame's. */
    public Size opening() {
        return new Size(width - 2 * tape, height - 2 * tape);
    }

    /** The opening's width divided by its height: the width of the frame, whose height is 1. */
    public double ratio() {
        return opening().ratio();
    }
}
