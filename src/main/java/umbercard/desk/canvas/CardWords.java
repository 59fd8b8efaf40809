package umbercard.desk.canvas;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.util.Optional;
import umbercard.desk.theme.Theme;
import umbercard.model.Level;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.words.Words;

/** The words on the card under the frame, and the lines that cross the frame. */
final class CardWords {
    /** Pixels at least between the title and what stands at the right. */
    private static final double GAP = 24;

    private CardWords() {}

    private static Color color(String name) {
        return Theme.color("Umbercard." + name);
    }

    private static void type(Graphics2D g, int style, float size) {
        g.setFont(Theme.font("defaultFont").deriveFont(style, size));
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    }

    /**
     * Title at the left, surface and light at the right, on one line below the frame. A hint takes the place of the facts
     * while there is one; the title gives way where there is not room for both.
     */
    static void paint(Graphics2D g, CardPlace place, Study study, Optional<String> hint) {
        type(g, Font.PLAIN, 12);
        FontMetrics metrics = g.getFontMetrics();
        double room = place.card().getMaxY() - place.frame().getMaxY();
        float baseline =
                (float) (place.frame().getMaxY() + room / 2 + (metrics.getAscent() - metrics.getDescent()) / 2.0);
        double width = place.frame().getWidth();
        String facts = facts(study);
        String title = fitted(study.title(), metrics, width - metrics.stringWidth(facts) - GAP);
        String said = fitted(hint.orElse(facts), metrics, width);
        double saidWidth = metrics.stringWidth(said);
        g.setColor(color("inkSoft"));
        g.drawString(said, (float) (place.frame().getMaxX() - saidWidth), baseline);
        if (metrics.stringWidth(title) + GAP + saidWidth <= width) {
            g.setColor(color("ink"));
            g.drawString(title, (float) place.frame().getX(), baseline);
        }
    }

    private static String facts(Study study) {
        return Words.say(
                "desk.card.facts",
                study.surface().width(),
                study.surface().height(),
                Words.say("trade.unit." + study.surface().unit().key()),
                Words.say("trade.light." + study.light().key()));
    }

    private static String fitted(String words, FontMetrics metrics, double room) {
        if (metrics.stringWidth(words) <= room) {
            return words;
        }
        int length = words.length();
        while (length > 0 && metrics.stringWidth(words.substring(0, length) + "…") > room) {
            length--;
        }
        return length == 0 ? "" : words.substring(0, length).stripTrailing() + "…";
    }

    /** Horizon, land edge and waterline, each in its own dash, with its height above the bottom edge beside the frame. */
    static void paintLevels(Graphics2D g, CardPlace place, Optional<Thumbnail> thumbnail, double ratio) {
        thumbnail.ifPresent(t -> {
            t.horizon().ifPresent(level -> paintLevel(g, place, level, ratio, "horizon", 6, 5));
            t.landEdge().ifPresent(level -> paintLevel(g, place, level, ratio, "land-edge", 14, 4));
            t.waterline().ifPresent(level -> paintLevel(g, place, level, ratio, "waterline", 2, 4));
        });
    }

    private static void paintLevel(
            Graphics2D g, CardPlace place, Level level, double ratio, String name, float dash, float gap) {
        double scale = place.frame().getHeight();
        Line2D line = new Line2D.Double(
                place.frame().getX(),
                place.frame().getY() + level.yAt(0, ratio) * scale,
                place.frame().getMaxX(),
                place.frame().getY() + level.yAt(ratio, ratio) * scale);
        Graphics2D inside = (Graphics2D) g.create();
        inside.clip(place.frame());
        inside.setColor(color("paper"));
        inside.setStroke(new BasicStroke(3.2f));
        inside.draw(line);
        inside.setColor(color("ink"));
        inside.setStroke(
                new BasicStroke(1.3f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {dash, gap}, 0));
        inside.draw(line);
        inside.dispose();
        String label = Words.say("desk.card.level", Words.say("desk.card." + name), 1 - level.y());
        FontMetrics metrics = labels(g);
        double x = place.frame().getMaxX() - metrics.stringWidth(label) - 6;
        double y = place.frame().getY() + level.yAt(ratio, ratio) * scale - 5;
        if (y - metrics.getAscent() < place.frame().getY()) {
            y += metrics.getHeight() + 6;
        }
        label(g, label, x, y);
    }

    /** How wide and high labels are. */
    static FontMetrics labels(Graphics2D g) {
        type(g, Font.PLAIN, 11);
        return g.getFontMetrics();
    }

    /** Small words on a ground of paper, from {@code x} on, on a baseline. */
    static void label(Graphics2D g, String label, double x, double y) {
        FontMetrics metrics = labels(g);
        g.setColor(color("paper"));
        g.fillRoundRect(
                (int) x - 4,
                (int) (y - metrics.getAscent() - 1),
                metrics.stringWidth(label) + 8,
                metrics.getHeight(),
                4,
                4);
        g.setColor(color("ink"));
        g.drawString(label, (float) x, (float) y);
    }
}
