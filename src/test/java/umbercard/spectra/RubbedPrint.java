package umbercard.spectra;

import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import umbercard.geometry.Point;
import umbercard.geometry.Size;

/**
 * A printed card on a table, with sticks rubbed on it. Print takes away from the paper's light what its linear sRGB says, as
 * printers do that lay white as bare paper (ICC.1, media-relative colorimetric; from memory). The light is even but for the
 * falloff.
 *
 * @param print the card in pixels; clear ones are bare
 * @param pixels that a millimeter of the print has
 * @param rubbed later ones lie over earlier ones
 */
public record RubbedPrint(BufferedImage print, double pixels, List<CardScene.Area> rubbed, Falloff falloff) {

    public double width() {
        return print.getWidth() / pixels;
    }

    public double height() {
        return print.getHeight() / pixels;
    }

    /** A hand-held view of it, tilted and turned. */
    public Pinhole view() {
        return new CardScene(new Size(width(), height()), List.of(), falloff).view(0.3, -0.08);
    }

    /**
     * Where the hand finds room for a stick at the right of a piece of printed color: the white next to it, by what is printed,
     * but for its edge.
     *
     * @param color in millimeters
     * @param edge in millimeters
     */
    public Rectangle2D roomBeside(Rectangle2D color, double edge) {
        int row = pixel(color.getCenterY());
        int left = pixel(color.getMaxX()) + 1;
        while (!isWhite(left, row)) {
            left++;
        }
        int right = left;
        while (isWhite(right, row)) {
            right++;
        }
        int middle = (left + right) / 2;
        int top = row;
        while (isWhite(middle, top - 1)) {
            top--;
        }
        int bottom = row;
        while (isWhite(middle, bottom)) {
            bottom++;
        }
        return new Rectangle2D.Double(
                left / pixels + edge,
                top / pixels + edge,
                (right - left) / pixels - 2 * edge,
                (bottom - top) / pixels - 2 * edge);
    }

    /** A stick rubbed all over a place. */
    public static CardScene.Area rubbed(Rectangle2D place, Spectrum stick) {
        return new CardScene.Area(
                new Point(place.getX(), place.getY()), new Size(place.getWidth(), place.getHeight()), stick, true);
    }

    /** Whether nothing is printed on a place in millimeters. */
    public boolean isBare(Rectangle2D place) {
        for (int y = pixel(place.getMinY()); y < pixel(place.getMaxY()); y++) {
            for (int x = pixel(place.getMinX()); x < pixel(place.getMaxX()); x++) {
                if (!isWhite(x, y)) {
                    return false;
                }
            }
        }
        return true;
    }

    private int pixel(double millimeters) {
        return (int) Math.floor(millimeters * pixels);
    }

    private boolean isWhite(int x, int y) {
        int argb = print.getRGB(x, y);
        return argb >>> 24 == 0 || (argb & 0xffffff) == 0xffffff;
    }

    /** The photograph's file. */
    public byte[] shoot(Camera camera, Pinhole view) {
        double[] paper = camera.linear(Spectrum.neutral(CardScene.PAPER));
        double[] table = camera.linear(Spectrum.neutral(0.15));
        List<double[]> colors =
                rubbed.stream().map(area -> camera.linear(area.surface())).toList();
        double[] place = new double[2];
        return camera.shoot(view.width(), view.height(), (x, y, rgb) -> {
            view.place(x, y, place);
            boolean on = place[0] >= 0 && place[1] >= 0 && place[0] < width() && place[1] < height();
            System.arraycopy(on ? paper : table, 0, rgb, 0, 3);
            if (on) {
                printed(place, rgb);
                rub(place, colors, rgb);
            }
            double light = falloff.at(x, y, view.width(), view.height());
            for (int k = 0; k < 3; k++) {
                rgb[k] *= light;
            }
        });
    }

    private void printed(double[] place, double[] rgb) {
        int x = Math.min(print.getWidth() - 1, pixel(place[0]));
        int y = Math.min(print.getHeight() - 1, pixel(place[1]));
        if (isWhite(x, y)) {
            return;
        }
        int argb = print.getRGB(x, y);
        double cover = (argb >>> 24) / 255.0;
        for (int k = 0; k < 3; k++) {
            rgb[k] *= 1 - cover + cover * linear((argb >> 16 - 8 * k & 0xff) / 255.0);
        }
    }

    /** IEC 61966-2-1. */
    private static double linear(double encoded) {
        return encoded <= 0.04045 ? encoded / 12.92 : Math.pow((encoded + 0.055) / 1.055, 2.4);
    }

    private void rub(double[] place, List<double[]> colors, double[] rgb) {
        for (int i = 0; i < rubbed.size(); i++) {
            if (rubbed.get(i).has(place[0], place[1])) {
                double grain = 1 + 0.08 * Grain.at(4 * place[0], 4 * place[1]);
                for (int k = 0; k < 3; k++) {
                    rgb[k] = grain * colors.get(i)[k];
                }
            }
        }
    }
}
