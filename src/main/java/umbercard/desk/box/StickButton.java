package umbercard.desk.box;

import com.formdev.flatlaf.FlatClientProperties;
import com.formdev.flatlaf.util.UIScale;
import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import javax.swing.JButton;
import umbercard.desk.theme.Theme;
import umbercard.model.Stick;

/**
 * One stick of the box to press. A bar at its foot shows that it is set out, a dot that it is on the card; one that is worn
 * out is crossed through, of one that is not owned there is only the outline and a little color.
 */
final class StickButton extends JButton {
    /** The stick's width as a share of its slot's. */
    private static final double WIDTH = 0.56;

    /** How much of its length is worn off at one side of its head. */
    private static final double WORN = 0.2;

    /** How much is left of a stick that is not looked for. */
    private static final float FAINT = 0.2f;

    private final transient Stick stick;
    private transient Standing standing = Standing.UNKNOWN;

    StickButton(Stick stick) {
        this.stick = stick;
        setName("box.stick." + stick.id());
        setContentAreaFilled(false);
        setBorderPainted(false);
        putClientProperty(FlatClientProperties.MINIMUM_WIDTH, 0);
    }

    Stick stick() {
        return stick;
    }

    /** Shows and says how the stick stands. */
    void stand(Standing now) {
        standing = now;
        getAccessibleContext().setAccessibleName(now.words());
        repaint();
    }

    /** Whether it is among the sticks that are looked for. */
    boolean isSought() {
        return standing.sought();
    }

    @Override
    protected void paintComponent(Graphics g) {
        Graphics2D smooth = Theme.smooth(g);
        if (isFocusOwner() || getModel().isRollover()) {
            paintRing(smooth);
        }
        if (!standing.sought()) {
            smooth.setComposite(AlphaComposite.getInstance(AlphaComposite.SRC_OVER, FAINT));
        }
        paintStick(smooth);
        if (standing.onCard()) {
            paintDot(smooth);
        }
        if (standing.setOut()) {
            paintBar(smooth);
        }
        smooth.dispose();
    }

    private void paintStick(Graphics2D g) {
        Path2D body = body();
        g.setColor(new Color(stick.color().srgb()));
        if (standing.state() == Stick.State.NOT_OWNED) {
            Graphics2D foot = (Graphics2D) g.create();
            foot.clipRect(0, 3 * getHeight() / 5, getWidth(), getHeight());
            foot.fill(body);
            foot.dispose();
        } else {
            g.fill(body);
        }
        g.setColor(Theme.color("Umbercard.inkFaint"));
        g.setStroke(new BasicStroke(1));
        g.draw(body);
        if (standing.state() == Stick.State.WORN_OUT) {
            Rectangle2D around = body.getBounds2D();
            g.setStroke(new BasicStroke(UIScale.scale(1.6f)));
            g.setColor(onStick());
            g.draw(new Line2D.Double(around.getMinX(), around.getMaxY(), around.getMaxX(), around.getCenterY()));
        }
    }

    private Color onStick() {
        return Theme.color(stick.color().l() < 50 ? "Umbercard.paper" : "Umbercard.ink");
    }

    private void paintBar(Graphics2D g) {
        float high = UIScale.scale(3f);
        double wide = Math.round(WIDTH * getWidth()) + 2.0 * UIScale.scale(3);
        g.setColor(Theme.color("Umbercard.ink"));
        g.fill(new Rectangle2D.Double((getWidth() - wide) / 2, getHeight() - high - UIScale.scale(1f), wide, high));
    }

    /** A stick standing in its slot: longer than wide, square at the foot, worn to a slant at the head. */
    private Path2D body() {
        double inset = UIScale.scale(3f) + .5;
        double wide = Math.round(WIDTH * getWidth());
        double left = Math.round((getWidth() - wide) / 2) + .5;
        double top = inset;
        double foot = getHeight() - inset - UIScale.scale(3f);
        double worn = WORN * (foot - top);
        double soft = UIScale.scale(3f);
        Path2D body = new Path2D.Double();
        body.moveTo(left, foot);
        body.lineTo(left, top + worn + soft);
        body.quadTo(left, top + worn, left + soft, top + worn - soft / 2);
        body.lineTo(left + wide - 2 * soft, top + soft / 3);
        body.quadTo(left + wide, top - soft / 3, left + wide, top + 2 * soft);
        body.lineTo(left + wide, foot);
        body.closePath();
        return body;
    }

    private void paintRing(Graphics2D g) {
        float line = UIScale.scale(isFocusOwner() ? 2f : 1f);
        g.setStroke(new BasicStroke(line));
        g.setColor(Theme.color("Umbercard.ink"));
        float corner = UIScale.scale(7f);
        g.draw(new RoundRectangle2D.Float(line / 2, line / 2, getWidth() - line, getHeight() - line, corner, corner));
    }

    private void paintDot(Graphics2D g) {
        float size = UIScale.scale(8f);
        var dot = new Ellipse2D.Float((getWidth() - size) / 2, .52f * getHeight() - size / 2, size, size);
        g.setColor(onStick());
        g.fill(dot);
    }
}
