package umbercard.desk.theme;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import javax.swing.Icon;
import umbercard.color.Lab;

/**
 * A small square of a color, to stand before the words on it.
 *
 * @param side in pixels at 100 %
 */
public record Swatch(Lab color, int side) implements Icon {
    private static final int SIDE = 12;

    /** One as high as a letter. */
    public Swatch(Lab color) {
        this(color, SIDE);
    }

    @Override
    public void paintIcon(Component component, Graphics g, int x, int y) {
        int edge = UIScale.scale(1);
        g.setColor(Theme.color("Umbercard.inkFaint"));
        g.fillRect(x, y, getIconWidth(), getIconHeight());
        g.setColor(new Color(color.srgb()));
        g.fillRect(x + edge, y + edge, getIconWidth() - 2 * edge, getIconHeight() - 2 * edge);
    }

    @Override
    public int getIconWidth() {
        return UIScale.scale(side);
    }

    @Override
    public int getIconHeight() {
        return UIScale.scale(side);
    }
}
