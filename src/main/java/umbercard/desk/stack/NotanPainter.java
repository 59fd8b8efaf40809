package umbercard.desk.stack;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import umbercard.desk.canvas.Shapes;
import umbercard.desk.theme.Theme;
import umbercard.model.Mark;
import umbercard.model.Thumbnail;

/** Paints a thumbnail in two values, mark by mark, as the hand laid them. Quick; measures nothing. */
public final class NotanPainter {
    private NotanPainter() {}

    /**
     * Paints the thumbnail into a rectangle of the frame's proportions.
     *
     * @param g smooth, see {@link Theme#smooth}; its clip and transform are left as they were
     * @param room where the frame lies; its height is the unit of the marks
     */
    public static void paint(Graphics2D g, Thumbnail thumbnail, Rectangle2D room) {
        Color dark = Theme.color("Umbercard.dark");
        Color light = Theme.color("Umbercard.light");
        Graphics2D inside = (Graphics2D) g.create();
        inside.clip(room);
        inside.setColor(thumbnail.ground() == Thumbnail.Ground.DARK ? dark : light);
        inside.fill(room);
        AffineTransform place = AffineTransform.getTranslateInstance(room.getX(), room.getY());
        place.scale(room.getHeight(), room.getHeight());
        for (Mark mark : thumbnail.marks()) {
            if (!mark.hidden()) {
                inside.setColor(mark.kind() == Mark.Kind.LAY ? dark : light);
                inside.fill(place.createTransformedShape(Shapes.of(mark.outline())));
            }
        }
        inside.dispose();
    }
}
