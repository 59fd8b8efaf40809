package umbercard.desk.ledger;

import com.formdev.flatlaf.ui.FlatUIUtils;
import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;
import java.util.Optional;
import umbercard.desk.theme.Drawn;
import umbercard.desk.theme.Theme;
import umbercard.door.Finding;
import umbercard.words.Words;

/** One reading: its verdict as a shape and a word, and its sentence. */
final class ReadingLine extends Drawn {
    private static final int PAD = 4;
    private static final int PAD_ABOVE = 1;
    private static final int SHAPE = 18;
    private static final int VERDICT = 80;

    private final String id;
    private final transient Finding finding;
    private final String verdict;
    private final String sentence;
    private boolean old;

    ReadingLine(String id, Finding finding) {
        this.id = id;
        this.finding = finding;
        this.verdict = Words.say("trade.verdict." + finding.verdict().key());
        this.sentence = Words.say(finding.sentence());
        setName("ledger.reading." + id);
        setFocusable(true);
    }

    String id() {
        return id;
    }

    Finding finding() {
        return finding;
    }

    /** Verdict and sentence, as a screen reader says them. */
    @Override
    protected String spoken() {
        return Words.say("ledger.line.spoken", verdict, sentence);
    }

    void old(boolean isOld) {
        old = isOld;
        repaint();
    }

    /** How high it must be to say all in that width. */
    int heightFor(int width) {
        return lines(width).size() * lineHeight() + 2 * UIScale.scale(PAD_ABOVE);
    }

    private List<String> lines(int width) {
        FontMetrics metrics = getFontMetrics(Theme.font("defaultFont"));
        return Wrapping.lines(sentence, width - UIScale.scale(SHAPE + VERDICT + 2 * PAD), metrics::stringWidth);
    }

    private int lineHeight() {
        return getFontMetrics(Theme.font("defaultFont")).getHeight() + UIScale.scale(1);
    }

    @Override
    protected void paintComponent(Graphics g) {
        Graphics2D smooth = Theme.smooth(g);
        if (isFocusOwner()) {
            smooth.setColor(Theme.color("Umbercard.onSheetSoft"));
            smooth.setStroke(new BasicStroke(1));
            float corner = UIScale.scale(6f);
            smooth.draw(new RoundRectangle2D.Float(.5f, .5f, getWidth() - 1f, getHeight() - 1f, corner, corner));
        }
        Dim.apply(smooth, old);
        boolean again = finding.verdict() == Finding.Verdict.LOOK_AGAIN;
        FontMetrics metrics = getFontMetrics(Theme.font("defaultFont"));
        int baseline = UIScale.scale(PAD_ABOVE) + (lineHeight() - metrics.getHeight()) / 2 + metrics.getAscent();
        Color tint = Theme.color(again ? "Umbercard.umberOnSheet" : "Umbercard.onSheetSoft");
        smooth.setColor(tint);
        float middle = baseline - metrics.getAscent() * .36f;
        VerdictShape.paint(smooth, Optional.of(finding.verdict()), UIScale.scale(PAD + 5f), middle);
        smooth.setFont(Theme.font(again ? "semibold.font" : "defaultFont"));
        int x = UIScale.scale(PAD + SHAPE);
        FlatUIUtils.drawString(this, smooth, verdict, x, baseline);
        smooth.setFont(metrics.getFont());
        smooth.setColor(Theme.color("Umbercard.onSheet"));
        x += UIScale.scale(VERDICT);
        for (String line : lines(getWidth())) {
            FlatUIUtils.drawString(this, smooth, line, x, baseline);
            baseline += lineHeight();
        }
        smooth.dispose();
    }
}
