package umbercard.desk.stack;

import com.formdev.flatlaf.ui.FlatUIUtils;
import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.ListCellRenderer;
import javax.swing.SwingUtilities;
import umbercard.desk.canvas.NotanPainter;
import umbercard.desk.session.Session;
import umbercard.desk.theme.PaperCard;
import umbercard.desk.theme.Theme;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.words.Words;

/** Paints a thumbnail as an index card whose tab bears its name. */
final class TabCardRenderer extends JLabel implements ListCellRenderer<Thumbnail> {
    private static final int TAB_MARGIN = 10;
    private static final int LEAST_TAB = 44;

    /** Where the words below begin when the notan is narrower than they are. */
    private static final int CAPTION_LEFT = 18;

    private final transient Session session;
    private final transient Shares shares;
    private final transient NotanPainter notans = new NotanPainter();
    private transient Thumbnail thumbnail = Thumbnail.empty("", "");
    private boolean shown;
    private boolean focused;

    TabCardRenderer(Session session, Shares shares) {
        this.session = session;
        this.shares = shares;
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends Thumbnail> list, Thumbnail value, int index, boolean selected, boolean cellHasFocus) {
        thumbnail = value;
        shown = selected;
        focused = cellHasFocus;
        getAccessibleContext().setAccessibleName(StackWords.spoken(value, shares.of(value), isChosen()));
        return this;
    }

    /** Forgets what was painted of thumbnails that are no more. */
    void keep(List<Thumbnail> thumbnails) {
        notans.keep(thumbnails);
    }

    private boolean isChosen() {
        Study study = session.seen();
        return study.chosen().filter(thumbnail.id()::equals).isPresent();
    }

    private TabCard measures() {
        return TabCard.of(session.seen().ratio());
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(
                UIScale.scale(TabCard.WIDTH), UIScale.scale(measures().height()));
    }

    /** The tab of a thumbnail, from the upper left corner of its cell. */
    Rectangle tabOf(Thumbnail of, boolean pulled) {
        Rectangle2D.Float tab = measures().tab(tabWidth(of), pulled ? TabCard.PULLED : 0);
        return new Rectangle(
                Math.round(UIScale.scale(tab.x)),
                Math.round(UIScale.scale(tab.y)),
                Math.round(UIScale.scale(tab.width)),
                Math.round(UIScale.scale(tab.height)));
    }

    /** The little notan of a thumbnail with the line round it, from the upper left corner of its cell. */
    Rectangle notanOf(boolean pulled) {
        Rectangle frame = within(scaled(measures().frame(), pulled ? TabCard.PULLED : 0, UIScale.getUserScaleFactor()));
        frame.grow(1, 1);
        return frame;
    }

    /** In pixels at 100 %: as wide as the name, within what the card leaves. */
    private float tabWidth(Thumbnail of) {
        FontMetrics metrics = getFontMetrics(nameFont());
        float name = UIScale.unscale(metrics.stringWidth(of.name())) + 2f * TAB_MARGIN;
        float most = measures().cardWidth() - 2 * TabCard.TAB_LEFT;
        return Math.max(LEAST_TAB, Math.min(most, name));
    }

    private static Font nameFont() {
        return Theme.font("small.font");
    }

    @Override
    protected void paintComponent(Graphics g) {
        TabCard card = measures();
        float pulled = shown ? TabCard.PULLED : 0;
        float tab = tabWidth(thumbnail);
        Graphics2D smooth = Theme.smooth(g);
        float scale = UIScale.getUserScaleFactor();
        Path2D outline = card.outline(tab, pulled);
        outline.transform(AffineTransform.getScaleInstance(scale, scale));
        PaperCard.paint(smooth, outline, isChosen());
        if (shown) {
            paintShown(smooth, card, tab, scale);
        }
        Rectangle2D.Float frame = scaled(card.frame(), pulled, scale);
        notans.paint(smooth, thumbnail, within(frame));
        smooth.setColor(Theme.color("Umbercard.inkFaint"));
        smooth.setStroke(new BasicStroke(1));
        smooth.draw(frame);
        smooth.dispose();
        paintWords(g, card, pulled);
    }

    /** The whole pixels within the line that is drawn along a frame, and those under its upper and left one. */
    private static Rectangle within(Rectangle2D.Float frame) {
        return new Rectangle(
                (int) Math.floor(frame.x),
                (int) Math.floor(frame.y),
                Math.round(frame.width),
                Math.round(frame.height));
    }

    private static Rectangle2D.Float scaled(Rectangle2D.Float place, float pulled, float scale) {
        return new Rectangle2D.Float(
                Math.round((place.x + pulled) * scale) + .5f,
                Math.round(place.y * scale) + .5f,
                Math.round(place.width * scale),
                Math.round(place.height * scale));
    }

    /** The tab of the card that is shown is inked, and a rule in ink runs along the card's head. */
    private void paintShown(Graphics2D g, TabCard card, float tab, float scale) {
        Path2D head = card.outline(tab, TabCard.PULLED);
        head.transform(AffineTransform.getScaleInstance(scale, scale));
        Graphics2D upper = (Graphics2D) g.create();
        float foot = (float) card.tab(tab, 0).getMaxY();
        upper.clip(new Rectangle2D.Float(0, 0, getWidth(), scale * (foot + 2)));
        upper.setColor(Theme.color("Umbercard.ink"));
        upper.fill(head);
        upper.setColor(Theme.color("Umbercard.shownEdge"));
        upper.setStroke(new BasicStroke(1));
        upper.draw(head);
        upper.dispose();
    }

    private void paintWords(Graphics g, TabCard card, float pulled) {
        Font font = nameFont();
        Rectangle tab = tabOf(thumbnail, shown);
        FontMetrics metrics = getFontMetrics(font);
        int baseline = tab.y + (tab.height + metrics.getAscent() - metrics.getDescent()) / 2 + 1;
        g.setFont(font);
        g.setColor(Theme.color(shown ? "Umbercard.paper" : "Umbercard.ink"));
        say(g, metrics, thumbnail.name(), tab.x, baseline, tab.width);
        if (shown && focused) {
            int margin = UIScale.scale(TAB_MARGIN);
            g.fillRect(tab.x + margin, baseline + UIScale.scale(2), tab.width - 2 * margin, UIScale.scale(1));
        }
        g.setColor(Theme.color("Umbercard.inkSoft"));
        Rectangle2D.Float frame = scaled(card.frame(), pulled, UIScale.getUserScaleFactor());
        int left = Math.round(Math.min(frame.x, UIScale.scale(1 + pulled + CAPTION_LEFT)));
        int caption = Math.round(frame.y + frame.height) + UIScale.scale(4) + metrics.getAscent();
        FlatUIUtils.drawString(this, g, StackWords.dark(shares.of(thumbnail)), left, caption);
        FlatUIUtils.drawString(this, g, StackWords.horizon(thumbnail), left, caption + metrics.getHeight());
        if (isChosen()) {
            g.setColor(Theme.color("Umbercard.ink"));
            String chosen = Words.say("stack.chosen");
            int right = Math.round(UIScale.scale(1 + pulled + card.cardWidth() - 8));
            FlatUIUtils.drawString(this, g, chosen, right - metrics.stringWidth(chosen), caption);
        }
    }

    private void say(Graphics g, FontMetrics metrics, String words, int x, int baseline, int width) {
        var room = new Rectangle(0, 0, width - 2 * UIScale.scale(TAB_MARGIN - 1), metrics.getHeight());
        String fitting = SwingUtilities.layoutCompoundLabel(
                this, metrics, words, null, CENTER, LEFT, CENTER, LEFT, room, new Rectangle(), new Rectangle(), 0);
        int left = x + (width - metrics.stringWidth(fitting)) / 2;
        FlatUIUtils.drawString(this, g, fitting, left, baseline);
    }
}
