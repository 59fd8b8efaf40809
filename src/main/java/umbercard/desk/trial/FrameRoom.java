package umbercard.desk.trial;

import java.awt.Graphics;
import java.awt.Rectangle;
import umbercard.desk.theme.Theme;

/** Where a picture in the frame's proportions lies in a component: as large as fits, in the middle, with a thin border. */
final class FrameRoom {
    private FrameRoom() {}

    static Rectangle in(int width, int height, double ratio) {
        int high = (int) Math.max(1, Math.min(height - 2, Math.floor((width - 2) / ratio)));
        int wide = (int) Math.max(1, Math.round(high * ratio));
        return new Rectangle((width - wide) / 2, (height - high) / 2, wide, high);
    }

    static void border(Graphics g, Rectangle room) {
        g.setColor(Theme.color("Umbercard.inkFaint"));
        g.drawRect(room.x - 1, room.y - 1, room.width + 1, room.height + 1);
    }
}
