package umbercard.notan;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import umbercard.geometry.Cubic;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.model.Mark;

/**
 * A drawing painted mark after mark by the Java platform's own 2D library, which shares nothing with ours: the curves
 * themselves, non-zero, without antialiasing, so that a pixel is what its center is (java.awt.RenderingHints, KEY_STROKE_CONTROL
 * and KEY_ANTIALIASING).
 */
final class Raster {
    private static final byte DARK = 0;

    /** In pixels. */
    private static final double FLATNESS = .01;

    final int width;
    final int height;

    /** Pixels a unit. */
    final double scale;

    private final byte[] pixels;

    /** @param longSide pixels on the frame's long side */
    Raster(Drawing drawing, int longSide) {
        double longest = Math.max(1, drawing.ratio());
        width = (int) Math.round(longSide * drawing.ratio() / longest);
        height = (int) Math.round(longSide / longest);
        scale = longSide / longest;
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D graphics = image.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_OFF);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        graphics.setColor(drawing.isDarkGround() ? Color.BLACK : Color.WHITE);
        graphics.fillRect(0, 0, width, height);
        for (Mark mark : drawing.marks()) {
            if (!mark.hidden()) {
                graphics.setColor(mark.kind() == Mark.Kind.LAY ? Color.BLACK : Color.WHITE);
                graphics.fill(flat(path(mark.outline())));
            }
        }
        graphics.dispose();
        pixels = ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
    }

    /**
     * In pixels, with its curves cut to chords by the library itself. Left to the filling of curves, it loses half of a mark that
     * is cut off by the image's right side and has a spike there.
     */
    private Path2D flat(Path2D path) {
        Path2D flat = new Path2D.Double(Path2D.WIND_NON_ZERO);
        flat.append(path.getPathIterator(AffineTransform.getScaleInstance(scale, scale), FLATNESS), false);
        return flat;
    }

    private static Path2D path(Outline outline) {
        Path2D path = new Path2D.Double(Path2D.WIND_NON_ZERO);
        boolean begun = false;
        for (Cubic c : outline.segments()) {
            if (!begun) {
                path.moveTo(c.start().x(), c.start().y());
                begun = true;
            }
            path.curveTo(
                    c.pullStart().x(),
                    c.pullStart().y(),
                    c.pullEnd().x(),
                    c.pullEnd().y(),
                    c.end().x(),
                    c.end().y());
        }
        if (begun) {
            path.closePath();
        }
        return path;
    }

    boolean isDark(int column, int row) {
        return pixels[row * width + column] == DARK;
    }

    Point center(int column, int row) {
        return new Point((column + .5) / scale, (row + .5) / scale);
    }

    double darkShare() {
        long dark = 0;
        for (byte pixel : pixels) {
            dark += pixel == DARK ? 1 : 0;
        }
        return (double) dark / pixels.length;
    }
}
