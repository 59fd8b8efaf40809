package umbercard.desk.canvas;

import java.awt.AlphaComposite;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.Optional;
import umbercard.model.Mark;
import umbercard.model.Thumbnail;

/**
 * A thumbnail's darks as an image, transparent where it is light: marks in order, lay fills and lift clears. The last image
 * is kept until something changes.
 */
public final class MarksLayer {
    private record Drawn(Thumbnail thumbnail, int width, int height, Color ink, BufferedImage image) {}

    private Optional<Drawn> last = Optional.empty();

    /** The darks of the thumbnail in a frame of that many device pixels. */
    public BufferedImage image(Thumbnail thumbnail, int width, int height, Color ink) {
        Drawn drawn = last.filter(d -> d.width() == width
                        && d.height() == height
                        && d.ink().equals(ink)
                        && d.thumbnail().equals(thumbnail))
                .orElseGet(() -> new Drawn(thumbnail, width, height, ink, draw(thumbnail, width, height, ink)));
        last = Optional.of(drawn);
        return drawn.image();
    }

    private static BufferedImage draw(Thumbnail thumbnail, int width, int height, Color ink) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB_PRE);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setColor(ink);
        if (thumbnail.ground() == Thumbnail.Ground.DARK) {
            g.fillRect(0, 0, width, height);
        }
        g.scale(height, height);
        for (Mark mark : thumbnail.marks()) {
            if (!mark.hidden()) {
                g.setComposite(mark.kind() == Mark.Kind.LAY ? AlphaComposite.SrcOver : AlphaComposite.DstOut);
                g.fill(Shapes.of(mark.outline()));
            }
        }
        g.dispose();
        return image;
    }
}
