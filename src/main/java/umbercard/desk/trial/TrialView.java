package umbercard.desk.trial;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.util.List;
import umbercard.desk.canvas.Shapes;
import umbercard.desk.theme.Drawn;
import umbercard.desk.theme.Theme;
import umbercard.notes.layers.Trial;

/** Flat areas in the frame's proportions, in color or in gray, as large as fits. Event thread only. */
final class TrialView extends Drawn {
    private final double ratio;
    private final boolean gray;
    private final String words;
    private transient List<Trial.Area> areas = List.of();

    /**
     * Without areas.
     *
     * @param ratio of the frame, width by height
     * @param gray whether each area shows its lightness alone
     * @param words what a screen reader calls it
     */
    TrialView(double ratio, boolean gray, String words) {
        this.ratio = ratio;
        this.gray = gray;
        this.words = words;
    }

    /** Shows these, each over those before it. */
    void show(List<Trial.Area> now) {
        areas = List.copyOf(now);
        repaint();
    }

    @Override
    protected void paintComponent(Graphics g) {
        Rectangle room = FrameRoom.in(getWidth(), getHeight(), ratio);
        Graphics2D smooth = Theme.smooth(g);
        smooth.setColor(Theme.color("Umbercard.light"));
        smooth.fill(room);
        smooth.clip(room);
        AffineTransform toScreen = AffineTransform.getTranslateInstance(room.x, room.y);
        toScreen.scale(room.height, room.height);
        for (Trial.Area area : areas) {
            Shape shape = toScreen.createTransformedShape(Shapes.of(area.region()));
            smooth.setColor(new Color((gray ? area.gray() : area.color()).srgb()));
            smooth.fill(shape);
            // Neighbors drawn edge to edge would leave a light seam between them.
            smooth.setStroke(new BasicStroke(1));
            smooth.draw(shape);
        }
        smooth.dispose();
        FrameRoom.border(g, room);
    }

    @Override
    protected String spoken() {
        return words;
    }
}
