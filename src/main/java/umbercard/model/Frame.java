package umbercard.model;

import io.soabase.recordbuilder.core.RecordBuilder;
import umbercard.geometry.Point;

/**
 * The part of the photograph that is painted: a rectangle in the opening's proportions.
 *
 * @param center as shares of the upright photograph's width and height
 * @param height as a share of the photograph's height, over 0
 * @param tilt degrees that the frame is turned counter-clockwise on the photograph, to level it
 * @param mirrored whether left and right change places
 */
@RecordBuilder
public record Frame(Point center, double height, double tilt, boolean mirrored) implements FrameBuilder.With {
    public Frame {
        if (!(height > 0) || !Double.isFinite(height) || !Double.isFinite(tilt)) {
            throw new IllegalArgumentException("a frame has a height over 0 and a finite tilt");
        }
    }

    /**
     * The largest upright frame in the middle of a photograph.
     *
     * @param photographRatio width divided by height of the upright photograph
     * @param frameRatio width divided by height of the frame
     */
    public static Frame largest(double photographRatio, double frameRatio) {
        return new Frame(new Point(0.5, 0.5), Math.min(1, photographRatio / frameRatio), 0, false);
    }
}
