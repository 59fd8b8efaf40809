package umbercard.desk.canvas;

import java.awt.AlphaComposite;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.List;
import umbercard.model.Mark;

/**
 * What the marks before and after a few that change come to, as pictures. With coverages between 0 and 1 each mark takes a
 * pixel's dark {@code a} to {@code c + (1 − c) a} if it lays and to {@code (1 − c) a} if it lifts, so any run of them comes to
 * {@code laid + (1 − covered) a}: here in two steps, {@code (1 − lifted) a} and {@code laid} over it, where
 * {@code lifted = (covered − laid) / (1 − laid)}. So edges of the marks after are as smooth as if drawn one by one.
 *
 * @param before what the marks before come to, with the ground
 * @param lifted what those after clear, in its alpha
 * @param laid what they lay
 */
record Surroundings(Wanted wanted, BufferedImage before, BufferedImage lifted, BufferedImage laid) {

    /**
     * What marks are drawn on.
     *
     * @param dark whether the ground is
     */
    record Canvas(int width, int height, Color ink, boolean dark) {
        /** A clear one, of which no copy is kept on the screen's side: it would be sent there whole after each change. */
        BufferedImage image() {
            BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB_PRE);
            image.setAccelerationPriority(0);
            return image;
        }
    }

    /** The pictures of what is wanted; slow where the marks are many. On any thread. */
    static Surroundings of(Wanted wanted) {
        MarkShapes shapes = new MarkShapes();
        Canvas canvas = wanted.canvas();
        BufferedImage before = canvas.image();
        Graphics2D g = MarksLayer.smooth(before, canvas);
        MarksLayer.ground(g, canvas);
        g.scale(canvas.height(), canvas.height());
        shapes.fill(g, wanted.start(), false);
        g.dispose();
        BufferedImage laid = drawn(wanted, shapes, false);
        BufferedImage covered = drawn(wanted, shapes, true);
        lift(covered, laid);
        return new Surroundings(wanted, before, covered, laid);
    }

    private static BufferedImage drawn(Wanted wanted, MarkShapes shapes, boolean both) {
        BufferedImage image = wanted.canvas().image();
        Graphics2D g = MarksLayer.smooth(image, wanted.canvas());
        g.scale(image.getHeight(), image.getHeight());
        shapes.fill(g, wanted.end(), both);
        g.dispose();
        return image;
    }

    /** Turns what is covered into what is lifted. */
    private static void lift(BufferedImage covered, BufferedImage laid) {
        int[] row = new int[covered.getWidth()];
        int[] over = new int[row.length];
        for (int y = 0; y < covered.getHeight(); y++) {
            covered.getAlphaRaster().getSamples(0, y, row.length, 1, 0, row);
            laid.getAlphaRaster().getSamples(0, y, row.length, 1, 0, over);
            for (int x = 0; x < row.length; x++) {
                int clear = 255 - over[x];
                int lifted = Math.max(0, row[x] - over[x]);
                row[x] = clear == 0 ? 0 : Math.min(255, (255 * lifted + clear / 2) / clear);
            }
            covered.getAlphaRaster().setSamples(0, y, row.length, 1, 0, row);
        }
    }

    /** What is asked for: the marks before and after those that change. */
    record Wanted(Canvas canvas, List<Mark> start, List<Mark> end) {
        /** Whether these lie round some of the marks. */
        boolean fits(Canvas other, List<Mark> marks) {
            return canvas.equals(other)
                    && start.size() + end.size() <= marks.size()
                    && Windows.alikeAtStart(start, marks) == start.size()
                    && Windows.alikeAtEnd(end, marks, 0) == end.size();
        }

        /** The marks between them. */
        List<Mark> between(List<Mark> marks) {
            return marks.subList(start.size(), marks.size() - end.size());
        }
    }

    /** Draws all within the clip. */
    void draw(Graphics2D g, List<Mark> marks, MarkShapes shapes) {
        g.setComposite(AlphaComposite.Src);
        g.drawImage(before, 0, 0, null);
        Graphics2D scaled = (Graphics2D) g.create();
        scaled.scale(before.getHeight(), before.getHeight());
        shapes.fill(scaled, wanted.between(marks), false);
        scaled.dispose();
        g.setComposite(AlphaComposite.DstOut);
        g.drawImage(lifted, 0, 0, null);
        g.setComposite(AlphaComposite.SrcOver);
        g.drawImage(laid, 0, 0, null);
    }
}
