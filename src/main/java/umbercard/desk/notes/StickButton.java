package umbercard.desk.notes;

import com.formdev.flatlaf.FlatClientProperties;
import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.RoundRectangle2D;
import javax.swing.JButton;
import umbercard.desk.theme.Theme;
import umbercard.model.Stick;

/** One stick of the box to press. A dot shows that it is on the card already. */
final class StickButton extends JButton {
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
        float inset = UIScale.scale(2f);
        float corner = UIScale.scale(4f);
        float width = getWidth() - 2 * inset;
        float height = getHeight() - 2 * inset;
        var body = new RoundRectangle2D.Float(inset + .5f, inset + .5f, width - 1, height - 1, corner, corner);
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

    private void paintRing(Graphics2D g) {
        float line = UIScale.scale(isFocusOwner() ? 2f : 1f);
        g.setStroke(new BasicStroke(line));
        g.setColor(Theme.color("Umbercard.ink"));
        float corner = UIScale.scale(7f);
        g.draw(new RoundRectangle2D.Float(line / 2, line / 2, getWidth() - line, getHeight() - line, corner, corner));
    }

    private void paintDot(Graphics2D g) {
        float size = UIScale.scale(8f);
        var dot = new Ellipse2D.Float((getWidth() - size) / 2, (getHeight() - size) / 2, size, size);
        boolean darkStick = stick.color().l() < 50;
        g.setColor(Theme.color(darkStick ? "Umbercard.paper" : "Umbercard.ink"));
        g.fill(dot);
    }
}
