package umbercard.photo;

import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import java.util.function.BiConsumer;
import umbercard.picture.Picture;

/** Landscapes as different from each other as photographs are, made for the first pass; with grain, and always the same. */
final class Vistas {
    static final int WIDTH = 1200;
    static final int HEIGHT = 900;

    private static final double GRAIN = 5;

    private Vistas() {}

    /** All, by name. */
    static Map<String, Picture> all() {
        Map<String, Picture> all = new LinkedHashMap<>();
        all.put("snow", painted(1, Vistas::snow));
        all.put("night", painted(2, Vistas::night));
        all.put("backlit", painted(3, Vistas::backlit));
        all.put("fog", painted(4, Vistas::fog));
        all.put("grasses", painted(5, Vistas::grasses));
        all.put("water", painted(6, Vistas::water));
        return all;
    }

    private static Picture painted(long seed, BiConsumer<Graphics2D, Random> scene) {
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        Random random = new Random(seed);
        scene.accept(pen, random);
        pen.dispose();
        int[] pixels = image.getRGB(0, 0, WIDTH, HEIGHT, null, 0, WIDTH);
        for (int i = 0; i < pixels.length; i++) {
            int grain = (int) (GRAIN * random.nextGaussian());
            pixels[i] = channel(pixels[i] >> 16, grain) << 16
                    | channel(pixels[i] >> 8, grain) << 8
                    | channel(pixels[i], grain);
        }
        return new Picture(WIDTH, HEIGHT, pixels);
    }

    private static int channel(int shifted, int grain) {
        return Math.min(255, Math.max(0, (shifted & 0xff) + grain));
    }

    private static void fade(Graphics2D pen, double top, double bottom, int above, int below) {
        pen.setPaint(new GradientPaint(0, (float) top, new Color(above), 0, (float) bottom, new Color(below)));
    }

    private static void sky(Graphics2D pen, int above, int below) {
        fade(pen, 0, HEIGHT, above, below);
        pen.fillRect(0, 0, WIDTH, HEIGHT);
    }

    /** All below an edge that wanders about a height, its waves getting smaller. */
    private static Path2D land(Random random, double edge, double wave, double slope) {
        double[] phase = random.doubles(6, 0, 7).toArray();
        Path2D land = new Path2D.Double();
        land.moveTo(0, HEIGHT);
        for (int x = 0; x <= WIDTH; x += 4) {
            double y = edge + slope * (x - WIDTH / 2.0);
            for (int k = 0; k < phase.length; k++) {
                y += wave / Math.pow(1.8, k) * Math.sin(x * 0.004 * Math.pow(1.9, k) + phase[k]);
            }
            land.lineTo(x, y);
        }
        land.lineTo(WIDTH, HEIGHT);
        land.closePath();
        return land;
    }

    /** A crown of many small leaves round a middle. */
    private static void crown(Graphics2D pen, Random random, double x, double y, double reach, int leaves) {
        for (int i = 0; i < leaves; i++) {
            double turn = random.nextDouble() * 2 * Math.PI;
            double far = reach * Math.sqrt(random.nextDouble());
            double size = 3 + 8 * random.nextDouble();
            pen.fill(new Ellipse2D.Double(x + far * Math.cos(turn), y + 0.8 * far * Math.sin(turn), size, size * 0.7));
        }
    }

    private static void tree(Graphics2D pen, Random random, double x, double foot, double high) {
        Path2D trunk = new Path2D.Double();
        trunk.moveTo(x - high * 0.03, foot);
        trunk.lineTo(x - high * 0.012, foot - high * 0.7);
        trunk.lineTo(x + high * 0.012, foot - high * 0.7);
        trunk.lineTo(x + high * 0.03, foot);
        pen.fill(trunk);
        for (int i = 0; i < 7; i++) {
            double up = foot - high * (0.45 + 0.55 * random.nextDouble());
            crown(pen, random, x + high * 0.25 * (random.nextDouble() - 0.5), up, high * 0.17, 260);
        }
    }

    /** High key: a slope of snow under a white sky, a few bushes and a fence. */
    private static void snow(Graphics2D pen, Random random) {
        sky(pen, 0xdfe4ea, 0xf4f2ee);
        fade(pen, 300, 420, 0xc9d0d8, 0xd9dde2);
        pen.fill(land(random, 330, 40, -0.1));
        fade(pen, 400, HEIGHT, 0xf2f3f5, 0xe2e6ee);
        pen.fill(land(random, 470, 50, 0.12));
        fade(pen, 700, HEIGHT, 0xcdd5e2, 0xe6e9ef);
        pen.fill(land(random, 760, 30, -0.08));
        pen.setColor(new Color(0x8a857e));
        for (int i = 0; i < 5; i++) {
            crown(pen, random, 180 + 60 * i, 480 + 6 * i, 38, 240);
        }
        pen.setColor(new Color(0x6b6660));
        for (int i = 0; i < 9; i++) {
            pen.fillRect(640 + 55 * i, 520 + 8 * i, 7, 60 + 4 * i);
        }
    }

    /** A village by night: small lights, their glow, a paler sky over the roofs. */
    private static void night(Graphics2D pen, Random random) {
        sky(pen, 0x0b1020, 0x2a3148);
        pen.setColor(new Color(0x07090f));
        pen.fill(land(random, 560, 45, 0.05));
        for (int i = 0; i < 9; i++) {
            double x = 80 + 120 * i + 40 * random.nextDouble();
            double y = 600 + 90 * random.nextDouble();
            pen.setColor(new Color(0x12141b));
            pen.fillRect((int) x, (int) y, 95, 90);
            for (int k = 4; k >= 1; k--) {
                pen.setColor(new Color(255, 190, 90, 30));
                double glow = 16 * k;
                pen.fill(new Ellipse2D.Double(x + 40 - glow, y + 40 - glow, 2 * glow, 2 * glow));
            }
            pen.setColor(new Color(0xffe0a0));
            pen.fillRect((int) x + 30, (int) y + 30, 20, 24);
        }
        pen.setColor(new Color(0xe8e6da));
        pen.fill(new Ellipse2D.Double(880, 110, 74, 74));
    }

    /** Trees against a bright sky. */
    private static void backlit(Graphics2D pen, Random random) {
        sky(pen, 0xbcd0e6, 0xfff3d6);
        pen.setColor(new Color(0x3a4036));
        pen.fill(land(random, 690, 25, 0.03));
        pen.setColor(new Color(0x1c2019));
        double[] places = {120, 260, 330, 620, 900, 1010, 1130};
        for (double x : places) {
            tree(pen, random, x, 740, 380 + 220 * random.nextDouble());
        }
        pen.setColor(new Color(0x23261d));
        pen.fill(land(random, 800, 20, -0.04));
    }

    /** Low contrast: ridges one behind the other in fog. */
    private static void fog(Graphics2D pen, Random random) {
        sky(pen, 0xb9bdc0, 0xc6c8c8);
        int[] grays = {0xb2b6b9, 0xa7acb0, 0x9ca2a6, 0x8f969a};
        for (int i = 0; i < grays.length; i++) {
            fade(pen, 300 + 110 * i, 520 + 130 * i, grays[i], 0xb8bcbe);
            pen.fill(land(random, 330 + 125 * i, 55, 0.1 - 0.06 * i));
        }
        pen.setColor(new Color(0x7d8488));
        tree(pen, random, 860, 760, 330);
        tree(pen, random, 960, 780, 250);
    }

    /** A busy foreground: grasses, light and dark, before a field and a far wood. */
    private static void grasses(Graphics2D pen, Random random) {
        sky(pen, 0xa9c3df, 0xe9e6da);
        pen.setColor(new Color(0x4c5a4c));
        pen.fill(land(random, 330, 22, 0.02));
        fade(pen, 380, 640, 0xcdb878, 0x9c8a50);
        pen.fill(land(random, 400, 10, -0.01));
        for (int i = 0; i < 5200; i++) {
            double foot = 560 + 360 * Math.sqrt(random.nextDouble());
            double x = WIDTH * random.nextDouble();
            double high = (foot - 420) * (0.25 + 0.35 * random.nextDouble());
            double lean = high * 0.5 * (random.nextDouble() - 0.4);
            double part = random.nextDouble();
            pen.setColor(new Color(part < 0.62 ? 0x3a3a22 : part < 0.85 ? 0x857840 : 0xe6d9a8));
            pen.draw(new Line2D.Double(x, foot, x + lean, foot - high));
            pen.draw(new Line2D.Double(x + 1, foot, x + 1 + lean, foot - high));
        }
    }

    /** A wood on the far bank, turned over in the water. */
    private static void water(Graphics2D pen, Random random) {
        sky(pen, 0x8fb0d4, 0xf3ecdc);
        pen.setColor(new Color(0x2b352c));
        for (int i = 0; i < 15; i++) {
            double x = 20 + 70 * i + 30 * random.nextDouble();
            if (x > 620 && x < 780) {
                continue;
            }
            crown(pen, random, x, 400 - 40 * random.nextDouble(), 75, 900);
        }
        pen.fillRect(0, 420, WIDTH, 40);
        fade(pen, 460, HEIGHT, 0xe6e2d6, 0x6f8db0);
        pen.fillRect(0, 460, WIDTH, HEIGHT - 460);
        for (int y = 460; y < HEIGHT; y += 3) {
            double far = (y - 460) / 260.0;
            for (int x = 0; x < WIDTH; x += 40) {
                boolean gap = x > 580 && x < 800;
                if (!gap && random.nextDouble() > far * far) {
                    pen.setColor(new Color(0x39, 0x45, 0x41, 235));
                    pen.fillRect(x + random.nextInt(30) - 15, y, 46, 3);
                }
            }
        }
        pen.setColor(new Color(0x1f2320));
        for (int i = 0; i < 60; i++) {
            double x = 60 + 240 * random.nextDouble();
            pen.draw(new Line2D.Double(
                    x, HEIGHT, x + 30 * (random.nextDouble() - 0.5), HEIGHT - 150 - 90 * random.nextDouble()));
        }
    }
}
