package umbercard.desk.photographed;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.Optional;
import umbercard.desk.theme.Drawn;
import umbercard.desk.theme.Theme;
import umbercard.geometry.Point;
import umbercard.words.Words;

/** A piece of the photograph, pixel by pixel, about the place that is being marked. */
final class Magnified extends Drawn {
    private static final int SIDE = 148;

    /** How many pixels of the picture go across. */
    private static final int PIXELS = 37;

    private final transient BufferedImage image;
    private transient Optional<Point> middle = Optional.empty();

    Magnified(BufferedImage image) {
        this.image = image;
        setName("photographed.magnified");
    }

    @Override
    protected String spoken() {
        return Words.say("photographed.magnified");
    }

    void look(Point at) {
        middle = Optional.of(at);
        repaint();
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(UIScale.scale(SIDE), UIScale.scale(SIDE));
    }

    @Override
    protected void paintComponent(Graphics g) {
        Graphics2D magnified = (Graphics2D) g.create();
        magnified.setColor(Theme.color("Umbercard.valueFive"));
        magnified.fillRect(0, 0, getWidth(), getHeight());
        middle.ifPresent(at -> {
            double pixel = (double) getWidth() / PIXELS;
            magnified.setRenderingHint(
                    RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_NEAREST_NEIGHBOR);
            Graphics2D picture = (Graphics2D) magnified.create();
            picture.scale(pixel, pixel);
            picture.translate(PIXELS / 2.0 - at.x(), PIXELS / 2.0 - at.y());
            picture.drawImage(image, 0, 0, null);
            picture.dispose();
            cross(magnified, Theme.color("Umbercard.light"), UIScale.scale(3));
            cross(magnified, Theme.color("Umbercard.ink"), UIScale.scale(1));
        });
        magnified.dispose();
    }

    private void cross(Graphics2D g, Color color, int thick) {
        int half = getWidth() / 2;
        int arm = UIScale.scale(14);
        g.setColor(color);
        g.fillRect(half - arm, half - thick / 2, 2 * arm, thick);
        g.fillRect(half - thick / 2, half - arm, thick, 2 * arm);
    }
}
