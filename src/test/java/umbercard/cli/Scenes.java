package umbercard.cli;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Polygon;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Random;
import javax.imageio.ImageIO;

/** A photograph-like landscape to begin studies from: pale sky, far ridge, snow slope with a dark hut, dark pond, some grain. */
final class Scenes {
    private static final Random GRAIN = new Random(36);

    private Scenes() {}

    /** Writes it, 900 × 600, and gives the file back. */
    static Path jpeg(Path file) throws IOException {
        BufferedImage image = new BufferedImage(900, 600, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        band(pen, new Color(0xc8cdd7), 0, 0, 0);
        band(pen, new Color(0x5c6472), 260, 40, 7);
        band(pen, new Color(0xe6e8ee), 340, 30, 3);
        pen.setColor(new Color(0x2a2523));
        pen.fillRect(560, 250, 120, 150);
        band(pen, new Color(0x474f59), 480, 18, 4);
        pen.dispose();
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                image.setRGB(x, y, grain(image.getRGB(x, y)));
            }
        }
        ImageIO.write(image, "jpeg", file.toFile());
        return file;
    }

    /** All below a wavy edge. */
    private static void band(Graphics2D pen, Color color, int edge, int wave, double waves) {
        Polygon land = new Polygon();
        land.addPoint(900, 600);
        land.addPoint(0, 600);
        for (int x = 0; x <= 900; x += 5) {
            land.addPoint(x, edge + (int) (wave * Math.sin(waves * x / 900)));
        }
        pen.setColor(color);
        pen.fillPolygon(land);
    }

    private static int grain(int rgb) {
        int noise = (int) (4 * GRAIN.nextGaussian());
        return channel(rgb >> 16, noise) << 16 | channel(rgb >> 8, noise) << 8 | channel(rgb, noise);
    }

    private static int channel(int shifted, int noise) {
        return Math.min(255, Math.max(0, (shifted & 0xff) + noise));
    }
}
