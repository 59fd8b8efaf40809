package umbercard.desk.photographed;

import com.formdev.flatlaf.ui.FlatUIUtils;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import umbercard.color.MunsellValue;
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
        setToolTipText("");
    }

    @Override
    protected String spoken() {
        return Words.say("photographed.cells");
    }

    void show(List<Cell> now, int across) {
        cells = now;
        columns = across;
        getAccessibleContext()
                .setAccessibleDescription(now.stream().map(CellsView::words).collect(Collectors.joining("; ")));
        revalidate();
        repaint();
    }

    /** What is shown. */
    List<Cell> cells() {
        return cells;
    }

    @Override
    public String getToolTipText(MouseEvent event) {
        int column = event.getX() / pitch();
        int place = event.getY() / pitch() * columns + column;
        return column < columns && place < cells.size() ? words(cells.get(place)) : "";
    }

    private static String words(Cell cell) {
        String look = "photographed.look." + cell.look().name().toLowerCase(Locale.ROOT);
        return Words.say("photographed.cell", cell.slot().label(), Words.say(look, MunsellValue.of(cell.color())));
    }

    private int pitch() {
        int rows = Math.max(1, (cells.size() + columns - 1) / columns);
        return Math.max(1, Math.min(getWidth() / columns, getHeight() / rows));
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(UIScale.scale(240), UIScale.scale(150));
    }

    @Override
    protected void paintComponent(Graphics g) {
        Graphics2D smooth = Theme.smooth(g);
        int pitch = pitch();
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
