package umbercard.photo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.util.List;
import umbercard.geometry.Cubic;
import umbercard.geometry.Outline;

/** Which pixels of a framed picture lie in a zone. */
public final class ZoneMask {
    /** How far chords may stray from a curve, in pixels. */
    private static final double FLATNESS = 0.05;

    private ZoneMask() {}

    /**
     * For each pixel of a picture that spans the frame, row after row, whether its middle lies in the zone.
     *
     * @param outlines the zone's, in frame units, filled together by the non-zero rule
     */
    public static boolean[] of(List<Outline> outlines, int width, int height) {
        Path2D.Double curves = new Path2D.Double(Path2D.WIND_NON_ZERO);
        outlines.forEach(outline -> add(outline, height, curves));
        // Cut to chords first: the library loses some curves that it is left to cut while it fills.
        Path2D.Double chords = new Path2D.Double(Path2D.WIND_NON_ZERO);
        chords.append(curves.getPathIterator(null, FLATNESS), false);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fill(chords);
        g.dispose();
        int[] filled = image.getRaster().getSamples(0, 0, width, height, 0, new int[width * height]);
        boolean[] inside = new boolean[filled.length];
        for (int i = 0; i < inside.length; i++) {
            inside[i] = filled[i] != 0;
        }
        return inside;
    }

    private static void add(Outline outline, double scale, Path2D path) {
        List<Cubic> segments = outline.segments();
        if (segments.isEmpty()) {
            return;
        }
        path.moveTo(
                scale * segments.get(0).start().x(),
                scale * segments.get(0).start().y());
        for (Cubic segment : segments) {
            path.curveTo(
                    scale * segment.pullStart().x(),
                    scale * segment.pullStart().y(),
                    scale * segment.pullEnd().x(),
                    scale * segment.pullEnd().y(),
                    scale * segment.end().x(),
                    scale * segment.end().y());
        }
        path.closePath();
    }
}
