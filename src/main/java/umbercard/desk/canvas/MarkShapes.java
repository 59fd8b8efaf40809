package umbercard.desk.canvas;

import java.awt.AlphaComposite;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import umbercard.geometry.Outline;
import umbercard.model.Mark;

/** Fills marks into an image; the shape of an outline is made once and kept for as long as the outline is drawn. */
final class MarkShapes {
    /** A shape in frame units, and a rectangle round its points and pulls. */
    private record Known(Path2D shape, Rectangle2D bounds) {}

    private final IdentityHashMap<Outline, Known> known = new IdentityHashMap<>();

    private Known of(Mark mark) {
        return known.computeIfAbsent(mark.outline(), outline -> {
            Path2D shape = Shapes.of(outline);
            return new Known(shape, shape.getBounds2D());
        });
    }

    /** The marks that reach into a window of an image with so many pixels a unit. */
    List<Mark> reaching(List<Mark> marks, Rectangle window, double scale) {
        return marks.stream()
                .filter(mark -> Windows.pixels(of(mark).bounds(), scale).intersects(window))
                .toList();
    }

    /**
     * Fills the marks in order.
     *
     * @param g smooth, in frame units
     * @param both whether those that lift are filled too; else they clear
     */
    void fill(Graphics2D g, List<Mark> marks, boolean both) {
        for (Mark mark : marks) {
            boolean lays = both || mark.kind() == Mark.Kind.LAY;
            g.setComposite(lays ? AlphaComposite.SrcOver : AlphaComposite.DstOut);
            g.fill(of(mark).shape());
        }
    }

    /** Forgets outlines that none of the marks has, once they are many. */
    void keep(List<Mark> marks) {
        if (known.size() > 2 * marks.size() + 64) {
            Set<Outline> drawn = Collections.newSetFromMap(new IdentityHashMap<>());
            marks.forEach(mark -> drawn.add(mark.outline()));
            known.keySet().retainAll(drawn);
        }
    }
}
