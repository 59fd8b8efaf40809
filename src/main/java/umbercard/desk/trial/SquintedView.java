package umbercard.desk.trial;

import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.Optional;
import umbercard.desk.theme.Drawn;
import umbercard.picture.Picture;

/** The squinted reference in the frame's proportions; bare card until it is there. Event thread only. */
final class SquintedView extends Drawn {
    private final double ratio;
    private final String words;
    private transient Optional<BufferedImage> image = Optional.empty();

    /**
     * Without a picture.
     *
     * @param ratio of the frame, width by height
     * @param words what a screen reader calls it
     */
    SquintedView(double ratio, String words) {
        this.ratio = ratio;
        this.words = words;
    }

    void show(Picture picture) {
        BufferedImage pixels = new BufferedImage(picture.width(), picture.height(), BufferedImage.TYPE_INT_RGB);
        pixels.setRGB(0, 0, picture.width(), picture.height(), picture.pixels(), 0, picture.width());
        image = Optional.of(pixels);
        repaint();
    }

    @Override
    protected void paintComponent(Graphics g) {
        Rectangle room = FrameRoom.in(getWidth(), getHeight(), ratio);
        image.ifPresent(pixels -> {
            Graphics2D smooth = (Graphics2D) g.create();
            smooth.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
            smooth.drawImage(pixels, room.x, room.y, room.width, room.height, null);
            smooth.dispose();
        });
        FrameRoom.border(g, room);
    }

    @Override
    protected String spoken() {
        return words;
    }
}
