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
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;
import java.util.function.Supplier;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.ListCellRenderer;
import javax.swing.SwingUtilities;
import umbercard.cards.faces.Hatch;
import umbercard.color.Lab;
import umbercard.desk.box.StickWords;
import umbercard.desk.theme.Theme;
import umbercard.geometry.Point;
import umbercard.model.ColorNote;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.words.Words;

/**
 * Paints a strip as it is printed: number over strokes, the stick's color, a patch to rub the stick on with its last third
 * gray, then the stick and its use in words; over it the rule of a break, under it the painter's own words.
 */
final class StripRenderer extends JLabel implements ListCellRenderer<ColorNote> {
    /** Height of a strip in pixels at 100 %. */
    private static final int HEIGHT = 46;

    /** How much higher a strip is with words of the painter's own under it. */
    private static final int WORDS = 16;

    /** How much room the rule of a break takes over its strip. */
    static final int BREAK = 22;

    /** The strokes under the number, in millimeters as on the card. */
    private static final double HATCH_WIDTH = 5.2;

    private static final double HATCH_HEIGHT = 3.2;

    /** Pixels at 100 % for each of those millimeters. */
    private static final float HATCH_SCALE = 3;

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
        return new Dimension(UIScale.scale(240), UIScale.scale(HEIGHT + (hasWords() ? WORDS : 0) + above()));
    }

    private boolean hasWords() {
        return !note.words().isBlank();
    }

    private int above() {
        return StripWords.beginsSitting(note, number) ? BREAK : 0;
    }

    @Override
    protected void paintComponent(Graphics g) {
        int above = UIScale.scale(above());
        if (above > 0) {
            paintBreak(g, above);
        }
        Graphics2D smooth = Theme.smooth(g.create(0, above, getWidth(), getHeight() - above));
        paintGround(smooth, getHeight() - above);
        float top = UIScale.scale(MARGIN);
        float height = UIScale.scale(HEIGHT - 2 * MARGIN);
        paintHatch(smooth);
        float x = UIScale.scale(MARGIN + NUMBER);
        paintSwatch(smooth, x, top, height);
        x += UIScale.scale(SWATCH + 4);
        paintPatch(smooth, x, top, height);
        paintWords(smooth, (int) (x + UIScale.scale(PATCH + 12)));
        smooth.dispose();
    }

    private void paintBreak(Graphics g, int above) {
        Graphics2D smooth = Theme.smooth(g);
        Font small = Theme.font("small.font");
        FontMetrics metrics = getFontMetrics(small);
        String words = Words.say("notes.strip.sitting");
        int left = UIScale.scale((int) (MARGIN + NUMBER));
        int middle = above / 2 + UIScale.scale(2);
        int after = left + metrics.stringWidth(words) + UIScale.scale(8);
        smooth.setColor(Theme.color("Umbercard.inkSoft"));
        say(smooth, small, words, left, middle + (metrics.getAscent() - metrics.getDescent()) / 2, getWidth());
        smooth.setColor(Theme.color("Umbercard.inkFaint"));
        smooth.fill(new Rectangle2D.Float(after, middle, Math.max(0, getWidth() - UIScale.scale(8) - after), 1));
        smooth.dispose();
    }

    private void paintGround(Graphics2D g, int height) {
        if (!selected) {
            return;
        }
        float corner = UIScale.scale(6f);
        var ground = new RoundRectangle2D.Float(.5f, .5f, getWidth() - 1f, height - 1f, corner, corner);
        g.setColor(Theme.color("Umbercard.paperSelected"));
        g.fill(ground);
        if (focused) {
            g.setColor(Theme.color("Umbercard.ink"));
            g.setStroke(new BasicStroke(1));
            g.draw(ground);
        }
    }

    private void paintHatch(Graphics2D g) {
        float scale = UIScale.scale(HATCH_SCALE);
        Graphics2D field = Theme.smooth(g);
        field.translate(
                UIScale.scale(MARGIN - 2), UIScale.scale(HEIGHT - MARGIN - (float) HATCH_HEIGHT * HATCH_SCALE - 1));
        field.setColor(Theme.color("Umbercard.inkSoft"));
        field.setStroke(new BasicStroke(
                scale * (float) Hatch.thickness(note.touch()), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
        for (List<Point> stroke : Hatch.strokes(note.direction(), HATCH_WIDTH, HATCH_HEIGHT)) {
            Path2D path = new Path2D.Double();
            path.moveTo(scale * stroke.get(0).x(), scale * stroke.get(0).y());
            stroke.subList(1, stroke.size()).forEach(to -> path.lineTo(scale * to.x(), scale * to.y()));
            field.draw(path);
        }
        field.dispose();
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
        String value = StickWords.value(note.stick());
        int valueWidth = getFontMetrics(regular).stringWidth(value);
        say(g, regular, value, right - valueWidth, upper, valueWidth);
        String stick = StickWords.stick(note.stick());
        say(g, Theme.font("semibold.font"), stick, x, upper, right - valueWidth - UIScale.scale(8) - x);

        g.setColor(Theme.color("Umbercard.inkSoft"));
        String use = StripWords.use(study.get(), note);
        boolean fits = getFontMetrics(small).stringWidth(use) <= right - x;
        say(g, fits ? small : Theme.font("small.font"), use, x, lower, right - x);
        if (hasWords()) {
            int left = UIScale.scale((int) (MARGIN + NUMBER));
            int last = UIScale.scale(HEIGHT + WORDS - 8);
            say(g, small, note.words(), left, last, right - left);
        }
    }

    private int baseline(Font font, float middle) {
        FontMetrics metrics = getFontMetrics(font);
        return Math.round(UIScale.scale(HEIGHT) * middle + (metrics.getAscent() - metrics.getDescent()) / 2f);
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
