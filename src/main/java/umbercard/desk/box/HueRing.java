package umbercard.desk.box;

import com.formdev.flatlaf.ui.FlatUIUtils;
import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.util.List;
import umbercard.desk.theme.Drawn;
import umbercard.desk.theme.Theme;
import umbercard.model.Stick;
import umbercard.notes.StickPlace;
import umbercard.words.Words;

/**
 * Sticks by hue about a ring, the grays in its middle: by a* to the right and b* upward, so that red lies at the right, yellow
 * above, green at the left and blue below. The ring itself has no color, which would falsify theirs.
 */
final class HueRing extends Drawn {
    private static final int DOT = 9;

    private List<Stick> sticks = List.of();

    HueRing() {
        setName("box.set-out.ring");
    }

    @Override
    protected String spoken() {
        return Words.say("box.set-out.ring");
    }

    void show(List<Stick> now) {
        sticks = now;
        repaint();
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(UIScale.scale(150), UIScale.scale(104));
    }

    @Override
    protected void paintComponent(Graphics g) {
        Graphics2D smooth = Theme.smooth(g);
        smooth.setFont(Theme.font("small.font"));
        FontMetrics metrics = smooth.getFontMetrics();
        double middle = getWidth() / 2.0;
        double height = getHeight() / 2.0;
        double radius = height - metrics.getHeight() - UIScale.scale(1f);
        smooth.setColor(Theme.color("Umbercard.inkFaint"));
        smooth.setStroke(new BasicStroke(UIScale.scale(1f)));
        smooth.draw(circle(middle, height, radius));
        smooth.draw(circle(middle, height, UIScale.scale(2f)));
        smooth.setColor(Theme.color("Umbercard.inkSoft"));
        int gap = UIScale.scale(5);
        int base = (int) Math.round(height) + (metrics.getAscent() - metrics.getDescent()) / 2;
        say(smooth, "red", (int) Math.round(middle + radius) + gap, base);
        say(smooth, "green", (int) Math.round(middle - radius) - gap - wide(metrics, "green"), base);
        say(smooth, "yellow", (int) Math.round(middle - wide(metrics, "yellow") / 2.0), metrics.getAscent());
        say(smooth, "blue", (int) Math.round(middle - wide(metrics, "blue") / 2.0), getHeight() - metrics.getDescent());
        double dot = UIScale.scale((float) DOT) / 2;
        for (Stick stick : sticks) {
            paintDot(smooth, StickPlace.of(stick), middle, height, radius - dot, dot);
        }
        smooth.dispose();
    }

    private static int wide(FontMetrics metrics, String key) {
        return metrics.stringWidth(Words.say("box.set-out." + key));
    }

    private void say(Graphics2D g, String key, int x, int y) {
        FlatUIUtils.drawString(this, g, Words.say("box.set-out." + key), x, y);
    }

    private static Ellipse2D circle(double x, double y, double radius) {
        return new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
    }

    private static void paintDot(Graphics2D g, StickPlace place, double x, double y, double radius, double dot) {
        Ellipse2D where = circle(x + place.x() * radius, y + place.y() * radius, dot);
        g.setColor(new Color(place.stick().color().srgb()));
        g.fill(where);
        g.setColor(Theme.color("Umbercard.inkSoft"));
        g.draw(where);
    }
}
