package umbercard.desk.box;

import com.formdev.flatlaf.ui.FlatUIUtils;
import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import umbercard.desk.theme.Drawn;
import umbercard.desk.theme.Theme;
import umbercard.model.Stick;
import umbercard.notes.Gap;
import umbercard.words.Words;

/** Sticks standing on a rule of values, black at the left to white at the right, so that what is missing shows. */
final class ValueStrip extends Drawn {
    private static final int STICK = 9;
    private static final int HIGH = 20;
    private static final int FOOT = 22;
    private static final int SIDE = 8;

    /** Rows of sticks that stand behind each other where they crowd. */
    private static final int ROWS = 3;

    private List<Stick> sticks = List.of();
    private List<Gap.OfValue> gaps = List.of();

    ValueStrip() {
        setName("box.set-out.strip");
    }

    @Override
    protected String spoken() {
        return Words.say("box.set-out.strip");
    }

    /** Shows the sticks, and the stretches of value that none of them has. */
    void show(List<Stick> now, List<Gap> lacking) {
        gaps = lacking.stream()
                .filter(Gap.OfValue.class::isInstance)
                .map(Gap.OfValue.class::cast)
                .toList();
        sticks = now.stream()
                .sorted(Comparator.comparingDouble(stick -> stick.color().value()))
                .toList();
        repaint();
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(UIScale.scale(230), UIScale.scale(FOOT + HIGH * ROWS + 4));
    }

    private double x(double value) {
        double side = UIScale.scale(SIDE);
        return side + value / 10 * (getWidth() - 2 * side);
    }

    private double foot() {
        return getHeight() - UIScale.scale((float) FOOT);
    }

    @Override
    protected void paintComponent(Graphics g) {
        Graphics2D smooth = Theme.smooth(g);
        paintRule(smooth);
        paintGaps(smooth);
        paintSticks(smooth);
        smooth.dispose();
    }

    /** A broken line over the rule where values are missing. */
    private void paintGaps(Graphics2D g) {
        float dash = UIScale.scale(3f);
        g.setStroke(new BasicStroke(
                UIScale.scale(2f), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {dash, dash}, 0));
        g.setColor(Theme.color("Umbercard.ink"));
        double y = foot() - UIScale.scale(6f);
        double clear = UIScale.scale(STICK / 2f + 3);
        for (Gap.OfValue gap : gaps) {
            double from = x(gap.from()) + (gap.from() == 0 ? 0 : clear);
            double to = x(gap.to()) - (gap.to() == 10 ? 0 : clear);
            g.draw(new Line2D.Double(from, y, Math.max(from, to), y));
        }
        g.setStroke(new BasicStroke(UIScale.scale(1f)));
    }

    private void paintRule(Graphics2D g) {
        g.setStroke(new BasicStroke(UIScale.scale(1f)));
        g.setFont(Theme.font("small.font"));
        FontMetrics metrics = g.getFontMetrics();
        double y = foot() + .5;
        g.setColor(Theme.color("Umbercard.inkSoft"));
        g.draw(new Line2D.Double(x(0), y, x(10), y));
        for (double value : Words.values().marks()) {
            g.draw(new Line2D.Double(x(value), y, x(value), y + UIScale.scale(4f)));
            String label = StickWords.mark(value);
            FlatUIUtils.drawString(
                    this,
                    g,
                    label,
                    (int) Math.round(x(value) - metrics.stringWidth(label) / 2.0),
                    (int) Math.round(y) + UIScale.scale(5) + metrics.getAscent());
        }
    }

    /** Each on the lowest row where it stands clear of the one before it; on the top one where there is no room. */
    private void paintSticks(Graphics2D g) {
        double wide = UIScale.scale((float) STICK);
        double high = UIScale.scale((float) HIGH) - UIScale.scale(2f);
        List<Double> ends = new ArrayList<>();
        for (Stick stick : sticks) {
            double left = Math.round(x(stick.color().value()) - wide / 2) + .5;
            int row = 0;
            while (row < ends.size() && ends.get(row) > left && row < ROWS - 1) {
                row++;
            }
            if (row == ends.size()) {
                ends.add(0.0);
            }
            ends.set(row, left + wide + UIScale.scale(1f));
            double top = foot() - (row + 1) * UIScale.scale((float) HIGH) + .5;
            Rectangle2D body = new Rectangle2D.Double(left, top, wide, high);
            g.setColor(new Color(stick.color().srgb()));
            g.fill(body);
            g.setColor(Theme.color("Umbercard.inkFaint"));
            g.draw(body);
        }
    }
}
