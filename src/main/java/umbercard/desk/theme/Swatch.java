package umbercard.desk.theme;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import javax.swing.Icon;
import umbercard.color.Lab;

/** A small square of a color, to stand before the words on it. */
public record Swatch(Lab color) implements Icon {
    /** In pixels at 100 %. */
    private static final int SIDE = 12;

    @Override
    public void paintIcon(Component component, Graphics g, int x, int y) {
        g.setColor(new Color(color.srgb()));
        g.fillRect(x, y, getIconWidth(), getIconHeight());
        g.setColor(Theme.color("Umbercard.edge"));
        g.drawRect(x, y, getIconWidth() - 1, getIconHeight() - 1);
    }

    @Override
    public int getIconWidth() {
        return UIScale.scale(SIDE);
    }

    @Override
    public int getIconHeight() {
        return UIScale.scale(SIDE);
    }
}
