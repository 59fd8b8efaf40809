package umbercard.notes;

import umbercard.color.Lab;
import umbercard.model.Stick;

/**
 * Where a stick stands on the value strip and on the hue ring of the sticks set out.
 *
 * @param value its place on the strip: Munsell value, 0 black to 10 white
 * @param hue its direction on the ring, h*ab in degrees, 0..360, red at 0 and growing toward yellow; 0 for an exact gray
 * @param radius how far from the middle: the root of C*ab over {@value #FULL}, so that the dull sticks of a landscape stand
 *     apart too; 0 for a gray to 1 at the rim, where stronger ones stay too
 */
public record StickPlace(Stick stick, double value, double hue, double radius) {
    /** The chroma at the rim, about that of the strongest sticks: common practice, no source. */
    public static final double FULL = 80;

    /** The place of a stick. */
    public static StickPlace of(Stick stick) {
        Lab color = stick.color();
        return new StickPlace(stick, color.value(), color.hue(), Math.sqrt(Math.min(1, color.chroma() / FULL)));
    }

    /** On a ring of radius 1 about 0: to the right where it is red. */
    public double x() {
        return radius * StrictMath.cos(Math.toRadians(hue));
    }

    /** On a ring of radius 1 about 0, growing downward: up where it is yellow. */
    public double y() {
        return -radius * StrictMath.sin(Math.toRadians(hue));
    }
}
