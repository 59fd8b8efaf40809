package umbercard.desk.theme;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.LayoutManager;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.RoundRectangle2D;
import javax.swing.JPanel;

/** A sheet of card lying on the desk: paper, a hairline round it, and the least bit of thickness below. */
public class PaperCard extends JPanel {
    private static final float CORNER = 3;

    /** An empty card with that layout. */
    public PaperCard(LayoutManager layout) {
        super(layout);
        setOpaque(false);
    }

    @Override
    protected void paintComponent(Graphics g) {
        Graphics2D smooth = Theme.smooth(g);
        float corner = 2 * UIScale.scale(CORNER);
        paint(smooth, new RoundRectangle2D.Float(.5f, .5f, getWidth() - 1f, getHeight() - 2f, corner, corner), false);
        smooth.dispose();
    }

    /**
     * Paints a card of any shape.
     *
     * @param g smooth, see {@link Theme#smooth}
     * @param heavy whether its edge is drawn in ink, twice as wide
     */
    public static void paint(Graphics2D g, Shape shape, boolean heavy) {
        g.setColor(Theme.color("Umbercard.underEdge"));
        g.fill(AffineTransform.getTranslateInstance(0, 1.5).createTransformedShape(shape));
        g.setColor(Theme.color("Umbercard.paper"));
        g.fill(shape);
        g.setColor(Theme.color(heavy ? "Umbercard.ink" : "Umbercard.edge"));
        g.setStroke(new BasicStroke(heavy ? UIScale.scale(2f) : 1));
        g.draw(shape);
    }
}
