package umbercard.desk.notes;

import com.formdev.flatlaf.ui.FlatUIUtils;
import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.function.Supplier;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.ListCellRenderer;
import javax.swing.SwingUtilities;
import umbercard.color.Lab;
import umbercard.desk.theme.Theme;
import umbercard.model.ColorNote;
import umbercard.model.Stick;
import umbercard.model.Study;

/**
 * Paints a strip as it is printed: number, the stick's color, a patch to rub the stick on with its last third gray, then
 * the stick and its use in words.
 */
final class StripRenderer extends JLabel implements ListCellRenderer<ColorNote> {
    /** Height of a strip in pixels at 100 %. */
    static final int HEIGHT = 46;

    private static final float MARGIN = 6;
    private static final float NUMBER = 20;
    private static final float SWATCH = 60;
    private static final float PATCH = 44;

    private static final ColorNote BLANK = ColorNote.of("", new Stick("", "", new Stick.Slot(1, 1), new Lab(0, 0, 0)));

    private final transient Supplier<Study> study;
    private transient ColorNote note = BLANK;
    private int number;
    private boolean selected;
    private boolean focused;

    StripRenderer(Supplier<Study> study) {
        this.study = study;
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends ColorNote> list, ColorNote value, int index, boolean isSelected, boolean cellHasFocus) {
        note = value;
        number = index + 1;
        selected = isSelected;
        focused = cellHasFocus;
        setFont(list.getFont());
        setToolTipText(StripWords.use(study.get(), note));
        getAccessibleContext().setAccessibleName(StripWords.spoken(study.get(), note, number));
        return this;
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(UIScale.scale(240), UIScale.scale(HEIGHT));
    }

    @Override
    protected void paintComponent(Graphics g) {
        Graphics2D smooth = Theme.smooth(g);
        paintGround(smooth);
        float top = UIScale.scale(MARGIN);
        float height = getHeight() - 2 * top;
        float x = UIScale.scale(MARGIN + NUMBER);
        paintSwatch(smooth, x, top, height);
        x += UIScale.scale(SWATCH + 4);
        paintPatch(smooth, x, top, height);
        smooth.dispose();
        paintWords(g, (int) (x + UIScale.scale(PATCH + 12)));
    }

    private void paintGround(Graphics2D g) {
        if (!selected) {
            return;
        }
        float corner = UIScale.scale(6f);
        var ground = new RoundRectangle2D.Float(.5f, .5f, getWidth() - 1f, getHeight() - 1f, corner, corner);
        g.setColor(Theme.color("Umbercard.paperSelected"));
        g.fill(ground);
        if (focused) {
            g.setColor(Theme.color("Umbercard.ink"));
            g.setStroke(new BasicStroke(1));
            g.draw(ground);
        }
    }

    private void paintSwatch(Graphics2D g, float x, float top, float height) {
        g.setColor(new Color(note.stick().color().srgb()));
        g.fill(new Rectangle2D.Float(x, top, UIScale.scale(SWATCH), height));
        outline(g, x, top, UIScale.scale(SWATCH), height);
    }

    private void paintPatch(Graphics2D g, float x, float top, float height) {
        float width = UIScale.scale(PATCH);
        g.setColor(Theme.color("Umbercard.paper"));
        g.fill(new Rectangle2D.Float(x, top, width, height));
        g.setColor(Theme.color("Umbercard.valueFive"));
        g.fill(new Rectangle2D.Float(x + width * 2 / 3, top, width / 3, height));
        outline(g, x, top, width, height);
    }

    private static void outline(Graphics2D g, float x, float y, float width, float height) {
        g.setColor(Theme.color("Umbercard.inkFaint"));
        g.setStroke(new BasicStroke(1));
        g.draw(new Rectangle2D.Float(x + .5f, y + .5f, width - 1, height - 1));
    }

    private void paintWords(Graphics g, int x) {
        Font regular = Theme.font("defaultFont");
        Font small = Theme.font("medium.font");
        int right = getWidth() - UIScale.scale(8);
        int upper = baseline(regular, .30f);
        int lower = baseline(small, .70f);
        g.setColor(Theme.color("Umbercard.inkSoft"));
        String count = Integer.toString(number);
        int countWidth = getFontMetrics(regular).stringWidth(count);
        say(g, regular, count, Math.round(UIScale.scale(MARGIN + NUMBER - 6)) - countWidth, upper, countWidth);

        g.setColor(Theme.color("Umbercard.ink"));
        String value = StripWords.value(note.stick());
        int valueWidth = getFontMetrics(regular).stringWidth(value);
        say(g, regular, value, right - valueWidth, upper, valueWidth);
        String stick = StripWords.stick(note.stick());
        say(g, Theme.font("semibold.font"), stick, x, upper, right - valueWidth - UIScale.scale(8) - x);

        g.setColor(Theme.color("Umbercard.inkSoft"));
        String use = StripWords.use(study.get(), note);
        boolean fits = getFontMetrics(small).stringWidth(use) <= right - x;
        say(g, fits ? small : Theme.font("small.font"), use, x, lower, right - x);
    }

    private int baseline(Font font, float middle) {
        FontMetrics metrics = getFontMetrics(font);
        return Math.round(getHeight() * middle + (metrics.getAscent() - metrics.getDescent()) / 2f);
    }

    private void say(Graphics g, Font font, String words, int x, int baseline, int width) {
        g.setFont(font);
        FontMetrics metrics = getFontMetrics(font);
        String fitting = metrics.stringWidth(words) <= width ? words : clipped(metrics, words, width);
        FlatUIUtils.drawString(this, g, fitting, x, baseline);
    }

    private String clipped(FontMetrics metrics, String words, int width) {
        var room = new Rectangle(0, 0, Math.max(0, width), metrics.getHeight());
        return SwingUtilities.layoutCompoundLabel(
                this, metrics, words, null, CENTER, LEFT, CENTER, LEFT, room, new Rectangle(), new Rectangle(), 0);
    }
}
