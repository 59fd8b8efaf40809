package umbercard.desk.canvas;

import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import umbercard.desk.theme.Theme;
import umbercard.model.Thumbnail;

/**
 * Paints thumbnails in two values as the hand laid them. Quick; measures nothing. What was painted of each thumbnail is
 * kept, and only where its marks look different is it drawn anew. Event thread only.
 */
public final class NotanPainter {
    private final Map<String, MarksLayer> layers = new HashMap<>();

    /** Forgets thumbnails that are no more. */
    public void keep(List<Thumbnail> thumbnails) {
        layers.keySet().retainAll(thumbnails.stream().map(Thumbnail::id).collect(Collectors.toSet()));
    }

    /**
     * Paints the thumbnail into a rectangle of the frame's proportions.
     *
     * @param g its clip and transform are left as they were
     * @param room where the frame lies; its height is the unit of the marks
     */
    public void paint(Graphics2D g, Thumbnail thumbnail, Rectangle room) {
        Graphics2D inside = (Graphics2D) g.create();
        inside.setColor(Theme.color("Umbercard.light"));
        inside.fill(room);
        AffineTransform screen = g.getTransform();
        int width = (int) Math.max(1, Math.round(room.width * screen.getScaleX()));
        int height = (int) Math.max(1, Math.round(room.height * screen.getScaleY()));
        BufferedImage darks = layers.computeIfAbsent(thumbnail.id(), id -> new MarksLayer())
                .image(thumbnail, width, height, Theme.color("Umbercard.dark"));
        AffineTransform place = AffineTransform.getTranslateInstance(room.x, room.y);
        place.scale((double) room.width / width, (double) room.height / height);
        inside.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        inside.drawImage(darks, place, null);
        inside.dispose();
    }
}
