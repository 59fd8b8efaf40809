package umbercard.samples;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;

/** How much of each pixel is covered by strokes, drawn smoothly; places are in heights of the picture. */
final class Mask {
    private final BufferedImage image;
    private final Graphics2D pen;
    private final double scale;

    Mask(Light light) {
        image = new BufferedImage(light.width, light.height, BufferedImage.TYPE_BYTE_GRAY);
        scale = light.height;
        pen = image.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        pen.setColor(Color.WHITE);
    }

    void stroke(double fromU, double fromV, double toU, double toV, double width) {
        pen.setStroke(new BasicStroke((float) (width * scale), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        pen.draw(new Line2D.Double(fromU * scale, fromV * scale, toU * scale, toV * scale));
    }

    /** A blade: a bent line that tapers to its tip. */
    void blade(double u, double v, double bendU, double bendV, double tipU, double tipV, double width) {
        Path2D path = new Path2D.Double();
        path.moveTo((u - width / 2) * scale, v * scale);
        path.quadTo((bendU - width / 3) * scale, bendV * scale, tipU * scale, tipV * scale);
        path.quadTo((bendU + width / 3) * scale, bendV * scale, (u + width / 2) * scale, v * scale);
        path.closePath();
        pen.fill(path);
    }

    /** Ends the drawing: the cover of each pixel, 0..255. */
    byte[] cover() {
        pen.dispose();
        return ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
    }
}
