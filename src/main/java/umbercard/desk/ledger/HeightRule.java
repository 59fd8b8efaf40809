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
import java.util.Optional;
import umbercard.desk.theme.Drawn;
import umbercard.desk.theme.Theme;
import umbercard.model.Level;
import umbercard.model.Thumbnail;
import umbercard.readings.Fraction;
import umbercard.words.Words;

/** The height of the horizon, or of the land edge where no horizon is set, as a short upright rule. */
final class HeightRule extends Drawn {
    private static final int BAR = 14;
    private static final int TICK = 5;
    private static final List<Fraction> TICKS = List.of(Fraction.THIRD, Fraction.HALF, Fraction.TWO_THIRDS);

    private Optional<Thumbnail> thumbnail = Optional.empty();
    private boolean old;

    HeightRule() {
        setName("ledger.height");
    }

    /** Shows where the thumbnail's line lies, or that it has none; an old one is dimmed. */
    void show(Optional<Thumbnail> shown, boolean isOld) {
        thumbnail = shown;
        old = isOld;
        getAccessibleContext().setAccessibleDescription(Words.say("ledger.height.spoken", line(), figure()));
        repaint();
    }

    private Optional<Double> height() {
        return thumbnail.flatMap(Thumbnail::horizonOrLandEdge).map(Level::y).map(y -> 1 - y);
    }

    /** Which line it is, in words. */
    String line() {
        boolean land = thumbnail
                .filter(t -> t.horizon().isEmpty() && t.landEdge().isPresent())
                .isPresent();
        return Words.say(land ? "ledger.height.land-edge" : "ledger.height.horizon");
    }

    /** Its height in words, for example {@code .61}. */
    String figure() {
        return height().map(height -> Words.say("ledger.height.figure", height))
                .orElseGet(() -> Words.say("ledger.height.not-set"));
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(UIScale.scale(92), UIScale.scale(82));
    }

    @Override
    protected void paintComponent(Graphics g) {
        Graphics2D smooth = Theme.smooth(g);
        float left = UIScale.scale((float) TICK);
        float width = UIScale.scale((float) BAR);
        float tall = getHeight() - 1f;
        smooth.setStroke(new BasicStroke(1));
        smooth.setColor(Theme.color("Umbercard.onSheetSoft"));
        for (Fraction fraction : TICKS) {
            float y = Math.round((1 - fraction.share()) * tall) + .5f;
            smooth.draw(new Line2D.Float(0, y, left, y));
        }
        var whole = new Rectangle2D.Float(left + .5f, .5f, width, tall);
        smooth.setColor(Theme.color("Umbercard.light"));
        smooth.fill(whole);
        Dim.apply(smooth, old);
        height().ifPresent(height -> paintLevel(smooth, whole, height));
        smooth.setColor(Theme.color("Umbercard.sheetLine"));
        smooth.draw(whole);
        paintWords(smooth, (int) (left + width + UIScale.scale(10)));
        smooth.dispose();
    }

    private void paintLevel(Graphics2D g, Rectangle2D.Float whole, double height) {
        double within = Math.min(1, Math.max(0, height));
        double top = whole.y + (1 - within) * whole.height;
        g.setColor(Theme.color("Umbercard.valueFive"));
        g.fill(new Rectangle2D.Double(whole.x, top, whole.width, whole.getMaxY() - top));
        g.setColor(Theme.color("Umbercard.dark"));
        float thick = UIScale.scale(3f);
        g.fill(new Rectangle2D.Double(whole.x, top - thick / 2, whole.width, thick));
    }

    /** Two lines of words beside the level, kept within the rule's own height. */
    private void paintWords(Graphics2D g, int x) {
        FontMetrics small = getFontMetrics(Theme.font("small.font"));
        FontMetrics large = getFontMetrics(Theme.font("h3.font"));
        int gap = UIScale.scale(3);
        int block = small.getAscent() + gap + large.getAscent();
        double level = height().map(height -> (1 - height) * getHeight()).orElse(getHeight() / 2.0);
        int last = getHeight() - block - large.getDescent();
        int top = (int) Math.max(0, Math.min(last, level - block / 2.0));
        g.setFont(small.getFont());
        g.setColor(Theme.color("Umbercard.onSheetSoft"));
        FlatUIUtils.drawString(this, g, line(), x, top + small.getAscent());
        boolean set = height().isPresent();
        FontMetrics figure = set ? large : getFontMetrics(Theme.font("defaultFont"));
        g.setFont(figure.getFont());
        g.setColor(Theme.color("Umbercard.onSheet"));
        FlatUIUtils.drawString(this, g, figure(), x, top + small.getAscent() + gap + figure.getAscent());
    }

    @Override
    protected String spoken() {
        return Words.say("ledger.height.name");
    }
}
