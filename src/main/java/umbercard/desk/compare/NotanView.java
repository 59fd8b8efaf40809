package umbercard.desk.compare;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import umbercard.desk.canvas.NotanPainter;
import umbercard.desk.theme.Drawn;
import umbercard.desk.theme.Theme;
import umbercard.model.Thumbnail;
import umbercard.words.Words;

/** A thumbnail in two values, as large as fits. */
final class NotanView extends Drawn {
    private final transient NotanPainter painter = new NotanPainter();
    private final double ratio;
    private final int height;
    private transient Thumbnail thumbnail;

    /**
     * Shows a thumbnail.
     *
     * @param ratio of the frame, width by height
     * @param width at most, in pixels at 100 %
     * @param height at most
     */
    NotanView(Thumbnail thumbnail, double ratio, int width, int height) {
        this.thumbnail = thumbnail;
        this.ratio = ratio;
        this.height = (int) Math.min(height, Math.floor(width / ratio));
    }

    void show(Thumbnail now) {
        thumbnail = now;
        getAccessibleContext().setAccessibleName(spoken());
        repaint();
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(UIScale.scale((int) Math.round(height * ratio)) + 2, UIScale.scale(height) + 2);
    }

    @Override
    protected void paintComponent(Graphics g) {
        Dimension size = getPreferredSize();
        Rectangle room = new Rectangle(
                (getWidth() - size.width) / 2 + 1,
                (getHeight() - size.height) / 2 + 1,
                size.width - 2,
                size.height - 2);
        Graphics2D own = (Graphics2D) g.create();
        painter.paint(own, thumbnail, room);
        own.setColor(Theme.color("Umbercard.inkFaint"));
        own.setStroke(new BasicStroke(1));
        own.drawRect(room.x - 1, room.y - 1, room.width + 1, room.height + 1);
        own.dispose();
    }

    @Override
    protected String spoken() {
        return Words.say("compare.notan", thumbnail.name());
    }
}
