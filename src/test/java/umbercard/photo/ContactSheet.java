package umbercard.photo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import umbercard.geometry.Cubic;
import umbercard.geometry.Node;
import umbercard.geometry.Outline;
import umbercard.model.Frame;
import umbercard.model.Mark;
import umbercard.model.Thumbnail;
import umbercard.picture.Picture;
import umbercard.picture.ValueField;

/** Rows of pictures to be looked at: a photograph, its squint, the squint in two values, and what was traced from it. */
final class ContactSheet {
    private static final int GAP = 8;
    private static final int WORDS = 18;

    private final int height;
    private final boolean points;
    private final List<BufferedImage> rows = new ArrayList<>();

    /**
     * An empty sheet.
     *
     * @param height of each picture, in pixels
     * @param points whether the points of the traced outlines are shown
     */
    ContactSheet(int height, boolean points) {
        this.height = height;
        this.points = points;
    }

    /** Adds a photograph, its whole width or height framed in 4 : 3. */
    FirstPass.Traced add(String name, Picture photograph, FirstPass.Wish wish) {
        double ratio = 4.0 / 3;
        Frame frame = Frame.largest(photograph.ratio(), ratio);
        FirstPass.Traced traced =
                FirstPass.trace(FramedView.of(photograph, frame, ratio, FirstPass.HEIGHT), ratio, wish, () -> false);
        ValueField squint = new SquintPyramid(FramedView.of(photograph, frame, ratio, height))
                .values(SquintWay.of(wish.squint()), wish.squint().sigma() * Math.hypot(ratio, 1) * height);
        int width = (int) Math.round(ratio * height);
        BufferedImage row = new BufferedImage(4 * width + 5 * GAP, height + WORDS + GAP, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = row.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setColor(new Color(0x777777));
        pen.fillRect(0, 0, row.getWidth(), row.getHeight());
        pen.setColor(Color.WHITE);
        pen.drawString(
                String.format(
                        "%s: split %.2f, dark %.1f %%, %d masses, %d marks, %d points",
                        name,
                        traced.split(),
                        100 * traced.darkShare(),
                        traced.masses(),
                        traced.marks().size(),
                        traced.marks().stream()
                                .mapToInt(mark -> mark.outline().nodes().size())
                                .sum()),
                GAP,
                WORDS - 5);
        draw(pen, 0, width, FramedView.of(photograph, frame, ratio, height));
        draw(pen, 1, width, Values.gray(squint));
        draw(pen, 2, width, Values.twoValues(squint, traced.split()));
        Graphics2D card = (Graphics2D) pen.create(GAP + 3 * (width + GAP), WORDS, width, height);
        drawMarks(card, traced);
        card.dispose();
        pen.dispose();
        rows.add(row);
        return traced;
    }

    private static void draw(Graphics2D pen, int place, int width, Picture picture) {
        BufferedImage image = Photographs.image(picture, BufferedImage.TYPE_INT_RGB);
        pen.drawImage(image, GAP + place * (width + GAP), WORDS, null);
    }

    private void drawMarks(Graphics2D pen, FirstPass.Traced traced) {
        pen.setColor(new Color(traced.ground() == Thumbnail.Ground.DARK ? Values.DARK : Values.LIGHT));
        pen.fillRect(0, 0, 10_000, 10_000);
        for (Mark mark : traced.marks()) {
            pen.setColor(new Color(mark.kind() == Mark.Kind.LAY ? Values.DARK : Values.LIGHT));
            pen.fill(path(mark.outline()));
        }
        if (points) {
            pen.setColor(new Color(0xd04010));
            for (Mark mark : traced.marks()) {
                for (Node node : mark.outline().nodes()) {
                    pen.fill(new Ellipse2D.Double(
                            node.at().x() * height - 2, node.at().y() * height - 2, 4, 4));
                }
            }
        }
    }

    private Path2D path(Outline outline) {
        Path2D path = new Path2D.Double();
        for (Cubic c : outline.segments()) {
            if (path.getCurrentPoint() == null) {
                path.moveTo(c.start().x() * height, c.start().y() * height);
            }
            path.curveTo(
                    c.pullStart().x() * height,
                    c.pullStart().y() * height,
                    c.pullEnd().x() * height,
                    c.pullEnd().y() * height,
                    c.end().x() * height,
                    c.end().y() * height);
        }
        path.closePath();
        return path;
    }

    /** All rows, one below the other. */
    BufferedImage image() {
        int width = rows.stream().mapToInt(BufferedImage::getWidth).max().orElse(1);
        int high = rows.stream().mapToInt(BufferedImage::getHeight).sum();
        BufferedImage sheet = new BufferedImage(width, Math.max(1, high), BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = sheet.createGraphics();
        int y = 0;
        for (BufferedImage row : rows) {
            pen.drawImage(row, 0, y, null);
            y += row.getHeight();
        }
        pen.dispose();
        return sheet;
    }
}
