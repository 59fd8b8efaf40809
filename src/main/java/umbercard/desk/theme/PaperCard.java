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

    /** Of a rule inside the edge, and of the paper round it. */
    private static final float RULE = 2;

    private static final float MARGIN = 2;

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
     * @param ruled whether a rule in ink runs inside its edge: it shows on a light and on a dark desk alike
     */
    public static void paint(Graphics2D g, Shape shape, boolean ruled) {
        g.setColor(Theme.color("Umbercard.underEdge"));
        g.fill(AffineTransform.getTranslateInstance(0, 1.5).createTransformedShape(shape));
        g.setColor(Theme.color("Umbercard.paper"));
        g.fill(shape);
        if (ruled) {
            Graphics2D inside = (Graphics2D) g.create();
            inside.clip(shape);
            line(inside, shape, "Umbercard.ink", 2 * UIScale.scale(MARGIN + RULE));
            line(inside, shape, "Umbercard.paper", 2 * UIScale.scale(MARGIN));
            inside.dispose();
        }
        line(g, shape, "Umbercard.edge", 1);
    }

    private static void line(Graphics2D g, Shape shape, String color, float width) {
        g.setColor(Theme.color(color));
        g.setStroke(new BasicStroke(width));
        g.draw(shape);
    }
}
