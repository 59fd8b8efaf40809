package umbercard.desk.notes;

import com.formdev.flatlaf.FlatClientProperties;
import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;
import javax.swing.JButton;
import umbercard.desk.theme.Theme;
import umbercard.model.Stick;

/** One stick of the box to press. A dot shows that it is on the card already. */
final class StickButton extends JButton {
    /** The stick's width as a share of its slot's. */
    private static final double WIDTH = 0.56;

    /** How much of its length is worn off at one side of its head. */
    private static final double WORN = 0.2;

    private final transient Stick stick;
    private boolean used;

    StickButton(Stick stick) {
        this.stick = stick;
        setName("notes.stick." + stick.id());
        setContentAreaFilled(false);
        setBorderPainted(false);
        putClientProperty(FlatClientProperties.MINIMUM_WIDTH, 0);
    }

    Stick stick() {
        return stick;
    }

    /** Says what the stick is, and whether it is on the card. */
    void say(String words, boolean isUsed) {
        used = isUsed;
        getAccessibleContext().setAccessibleName(words);
        repaint();
    }

    @Override
    protected void paintComponent(Graphics g) {
        Graphics2D smooth = Theme.smooth(g);
        Path2D body = body();
        smooth.setColor(new Color(stick.color().srgb()));
        smooth.fill(body);
        smooth.setColor(Theme.color("Umbercard.inkFaint"));
        smooth.setStroke(new BasicStroke(1));
        smooth.draw(body);
        if (isFocusOwner() || getModel().isRollover()) {
            paintRing(smooth);
        }
        if (used) {
            paintDot(smooth);
        }
        smooth.dispose();
    }

    /** A stick standing in its slot: longer than wide, square at the foot, worn to a slant at the head. */
    private Path2D body() {
        double inset = UIScale.scale(3f) + .5;
        double wide = Math.round(WIDTH * getWidth());
        double left = Math.round((getWidth() - wide) / 2) + .5;
        double top = inset;
        double foot = getHeight() - inset;
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
        var dot = new Ellipse2D.Float((getWidth() - size) / 2, .62f * getHeight() - size / 2, size, size);
        boolean darkStick = stick.color().l() < 50;
        g.setColor(Theme.color(darkStick ? "Umbercard.paper" : "Umbercard.ink"));
        g.fill(dot);
    }
}
