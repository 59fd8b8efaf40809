package umbercard.desk.ledger;

import com.formdev.flatlaf.ui.FlatUIUtils;
import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import umbercard.desk.theme.Drawn;
import umbercard.desk.theme.Theme;
import umbercard.readings.Fraction;
import umbercard.words.Words;

/** The dark share as one long rule: dark from the left, light from the right, ticks at the fractions that the trade names. */
final class ShareRule extends Drawn {
    private static final int BAR = 18;
    private static final int TICK = 5;
    private static final int CLEAR = 6;

    private OptionalDouble share = OptionalDouble.empty();
    private boolean old;

    ShareRule() {
        setName("ledger.share");
    }

    /** Shows a share, 0..1, or an empty rule; an old one is dimmed. */
    void show(OptionalDouble dark, boolean isOld) {
        share = dark;
        old = isOld;
        getAccessibleContext().setAccessibleDescription(figure());
        repaint();
    }

    /** The share in words, or nothing. */
    String figure() {
        if (share.isEmpty()) {
            return "";
        }
        long dark = Math.round(100 * share.getAsDouble());
        return Words.say("ledger.share.figure", Long.toString(dark), Long.toString(100 - dark));
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(UIScale.scale(560), UIScale.scale(82));
    }

    @Override
    protected void paintComponent(Graphics g) {
        Graphics2D smooth = Theme.smooth(g);
        paintTicks(smooth);
        Dim.apply(smooth, old);
        paintBar(smooth);
        paintFigure(smooth);
        smooth.dispose();
    }

    private void paintBar(Graphics2D g) {
        int height = UIScale.scale(BAR);
        var whole = new Rectangle2D.Float(.5f, .5f, getWidth() - 1f, height);
        g.setColor(Theme.color("Umbercard.light"));
        g.fill(whole);
        share.ifPresent(dark -> {
            g.setColor(Theme.color("Umbercard.dark"));
            g.fill(new Rectangle2D.Double(.5, .5, dark * (getWidth() - 1), height));
        });
        g.setColor(Theme.color("Umbercard.sheetLine"));
        g.setStroke(new BasicStroke(1));
        g.draw(whole);
    }

    private void paintTicks(Graphics2D g) {
        g.setFont(Theme.font("small.font"));
        FontMetrics metrics = g.getFontMetrics();
        Set<Fraction> labelled = TickLabels.clear(getWidth(), UIScale.scale(CLEAR), metrics::stringWidth);
        int top = UIScale.scale(BAR) + 1;
        int foot = top + UIScale.scale(TICK);
        int baseline = foot + UIScale.scale(2) + metrics.getAscent();
        for (Fraction fraction : Fraction.values()) {
            int x = (int) Math.round(fraction.share() * (getWidth() - 1));
            boolean near = isNearest(fraction);
            g.setColor(Theme.color(near ? "Umbercard.onSheet" : "Umbercard.onSheetSoft"));
            g.setStroke(new BasicStroke(near ? UIScale.scale(2f) : 1));
            g.draw(new Line2D.Float(x + .5f, top, x + .5f, foot));
            if (labelled.contains(fraction)) {
                String words = TickLabels.words(fraction);
                FlatUIUtils.drawString(this, g, words, x - metrics.stringWidth(words) / 2, baseline);
            }
        }
    }

    private boolean isNearest(Fraction fraction) {
        return share.isPresent() && Fraction.nearest(share.getAsDouble(), List.of(Fraction.values())) == fraction;
    }

    private void paintFigure(Graphics2D g) {
        g.setFont(Theme.font("h3.font"));
        g.setColor(Theme.color("Umbercard.onSheet"));
        int baseline = getHeight() - UIScale.scale(2) - g.getFontMetrics().getDescent();
        FlatUIUtils.drawString(this, g, figure(), 0, baseline);
    }

    @Override
    protected String spoken() {
        return Words.say("ledger.share.name");
    }
}
