package umbercard.desk.photographed;

import com.formdev.flatlaf.ui.FlatUIUtils;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.List;
import umbercard.desk.theme.Drawn;
import umbercard.desk.theme.Theme;
import umbercard.photo.TraySampling.Cell;
import umbercard.words.Words;

/** The colors found in a tray, as they lie in it: a dash where a place is empty, a mark of doubt where one is. */
final class CellsView extends Drawn {
    private transient List<Cell> cells = List.of();
    private int columns = 1;

    CellsView() {
        setName("photographed.cells");
    }

    @Override
    protected String spoken() {
        return Words.say("photographed.cells");
    }

    void show(List<Cell> now, int across) {
        cells = now;
        columns = across;
        revalidate();
        repaint();
    }

    /** What is shown. */
    List<Cell> cells() {
        return cells;
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(UIScale.scale(240), UIScale.scale(150));
    }

    @Override
    protected void paintComponent(Graphics g) {
        Graphics2D smooth = Theme.smooth(g);
        int rows = Math.max(1, (cells.size() + columns - 1) / columns);
        int pitch = Math.max(1, Math.min(getWidth() / columns, getHeight() / rows));
        for (int i = 0; i < cells.size(); i++) {
            paint(smooth, cells.get(i), i % columns * pitch, i / columns * pitch, pitch);
        }
        smooth.dispose();
    }

    private void paint(Graphics2D g, Cell cell, int x, int y, int pitch) {
        int edge = UIScale.scale(1);
        g.setColor(Theme.color("Umbercard.inkFaint"));
        g.drawRect(x + edge, y + edge, pitch - 2 * edge, pitch - 2 * edge);
        String sign = switch (cell.look()) {
            case STICK -> "";
            case GLARE -> "!";
            case EMPTY -> "\u2013";
            case UNCERTAIN -> "?";
        };
        boolean filled = sign.isEmpty() || sign.equals("!");
        if (filled) {
            g.setColor(new Color(cell.color().srgb()));
            g.fillRect(x + 2 * edge, y + 2 * edge, pitch - 3 * edge, pitch - 3 * edge);
        }
        FontMetrics metrics = g.getFontMetrics();
        g.setColor(filled ? Theme.color(cell.color().l() < 50 ? "Umbercard.light" : "Umbercard.ink") : getForeground());
        FlatUIUtils.drawString(
                this,
                g,
                sign,
                x + (pitch - metrics.stringWidth(sign)) / 2,
                y + (pitch + metrics.getAscent() - metrics.getDescent()) / 2);
    }
}
