package umbercard.desk.ledger;

import com.formdev.flatlaf.ui.FlatUIUtils;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.List;
import java.util.Optional;
import javax.swing.JList;
import javax.swing.ListCellRenderer;
import umbercard.desk.theme.Drawn;
import umbercard.desk.theme.Theme;
import umbercard.door.Finding;

/** Paints a reading: shape and name, its verdict at the right, its sentence below. */
final class RowRenderer extends Drawn implements ListCellRenderer<ReadingRow> {
    /** Of a row, in pixels at 100 %. */
    static final int WIDTH = 350;

    private static final int PAD = 8;
    private static final int ABOVE = 5;
    private static final int SHAPE = 20;

    private Optional<ReadingRow> row = Optional.empty();
    private boolean selected;

    @Override
    public Component getListCellRendererComponent(
            JList<? extends ReadingRow> list, ReadingRow value, int index, boolean isSelected, boolean focused) {
        row = Optional.of(value);
        selected = isSelected;
        setBackground(isSelected ? list.getSelectionBackground() : list.getBackground());
        setForeground(isSelected ? list.getSelectionForeground() : list.getForeground());
        getAccessibleContext().setAccessibleName(value.spoken());
        return this;
    }

    @Override
    protected String spoken() {
        return row.map(ReadingRow::spoken).orElse("");
    }

    private FontMetrics metrics(String font) {
        return getFontMetrics(Theme.font(font));
    }

    private List<String> lines() {
        int width = UIScale.scale(WIDTH - 2 * PAD - SHAPE);
        return row.map(ReadingRow::sentence)
                .filter(sentence -> !sentence.isEmpty())
                .map(sentence -> Wrapping.lines(sentence, width, metrics("defaultFont")::stringWidth))
                .orElse(List.of());
    }

    @Override
    public Dimension getPreferredSize() {
        int height = metrics("semibold.font").getHeight()
                + lines().size() * metrics("defaultFont").getHeight()
                + 2 * UIScale.scale(ABOVE);
        return new Dimension(UIScale.scale(WIDTH), height);
    }

    @Override
    protected void paintComponent(Graphics g) {
        Graphics2D smooth = Theme.smooth(g);
        smooth.setColor(getBackground());
        smooth.fillRect(0, 0, getWidth(), getHeight());
        row.ifPresent(shown -> paint(smooth, shown));
        smooth.dispose();
    }

    private void paint(Graphics2D g, ReadingRow shown) {
        Optional<Finding.Verdict> verdict = shown.finding().map(Finding::verdict);
        boolean again = verdict.filter(Finding.Verdict.LOOK_AGAIN::equals).isPresent();
        FontMetrics bold = metrics("semibold.font");
        int baseline = UIScale.scale(ABOVE) + bold.getAscent();
        g.setColor(again && !selected ? Theme.color("Umbercard.umberOnSheet") : getForeground());
        VerdictShape.paint(g, verdict, UIScale.scale(PAD + 5f), baseline - bold.getAscent() * .36f);
        Font verdictFont = Theme.font(again ? "semibold.font" : "defaultFont");
        g.setFont(verdictFont);
        String word = shown.verdict();
        int wide = getFontMetrics(verdictFont).stringWidth(word);
        FlatUIUtils.drawString(this, g, word, getWidth() - UIScale.scale(PAD) - wide, baseline);
        g.setColor(getForeground());
        g.setFont(bold.getFont());
        int x = UIScale.scale(PAD + SHAPE);
        FlatUIUtils.drawString(this, g, shown.name(), x, baseline);
        FontMetrics plain = metrics("defaultFont");
        g.setFont(plain.getFont());
        baseline += plain.getHeight();
        for (String line : lines()) {
            FlatUIUtils.drawString(this, g, line, x, baseline);
            baseline += plain.getHeight();
        }
    }
}
