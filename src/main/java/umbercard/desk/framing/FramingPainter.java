package umbercard.desk.framing;

import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import umbercard.desk.canvas.Shapes;
import umbercard.desk.theme.Theme;
import umbercard.geometry.Line;
import umbercard.geometry.Point;
import umbercard.model.Frame;
import umbercard.model.Framing;

/**
 * Draws the frame and what belongs to it over the photograph; lines are dark inside light ones, so that they read on both.
 */
final class FramingPainter {
    private static final float LINE = 1.6f;
    private static final float HALO = 4;

    /** How wide the cards are round the frame, and how far they reach beyond each other. */
    private static final double CARD = 10;

    private static final double END = 9;

    /** Half a cross that marks a place. */
    private static final double ARM = 5.5;

    /** How much of the surround lies over what is left out of the frame. */
    private static final float LEFT_OUT = 0.62f;

    /** How far marks show while the photograph is moved under them. */
    private static final float MARKS = 0.25f;

    private FramingPainter() {}

    private static Color color(String name) {
        return Theme.color("Umbercard." + name);
    }

    /** The photograph's border in the view. */
    static Path2D photograph(Sight sight) {
        List<Point> corners = List.of(new Point(0, 0), new Point(1, 0), new Point(1, 1), new Point(0, 1));
        Path2D border = Shapes.through(corners.stream().map(sight::onScreen).toList());
        border.closePath();
        return border;
    }

    /** The frame in the view: it stands upright there. */
    static Rectangle2D frame(Framing framing, Frame frame, Sight sight) {
        Point corner = sight.onScreen(framing.onPhotograph(frame, new Point(0, 0)));
        Point opposite = sight.onScreen(framing.onPhotograph(frame, new Point(framing.frameRatio(), 1)));
        Rectangle2D seen = new Rectangle2D.Double();
        seen.setFrameFromDiagonal(corner.x(), corner.y(), opposite.x(), opposite.y());
        return seen;
    }

    /** Lets what is left out of the frame step back. */
    static void leaveOut(Graphics2D g, Shape photograph, Rectangle2D frame) {
        Area out = new Area(photograph);
        out.subtract(new Area(frame));
        Graphics2D over = (Graphics2D) g.create();
        over.setComposite(AlphaComposite.SrcOver.derive(LEFT_OUT));
        over.setColor(color("surround"));
        over.fill(out);
        // The picture ends on whole pixels and beyond it is paper: a line of the surround makes the border smooth.
        Rectangle2D round = photograph.getBounds2D();
        Area beside = new Area(new Rectangle2D.Double(
                round.getX() - 2, round.getY() - 2, round.getWidth() + 4, round.getHeight() + 4));
        beside.subtract(new Area(frame));
        over.clip(beside);
        over.setComposite(AlphaComposite.SrcOver);
        over.setStroke(new BasicStroke(2));
        over.draw(photograph);
        over.dispose();
    }

    /** Lets the marks show faintly where they lie on the card. */
    static void marks(Graphics2D g, BufferedImage darks, Rectangle2D frame) {
        Graphics2D over = (Graphics2D) g.create();
        over.setComposite(AlphaComposite.SrcOver.derive(MARKS));
        over.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        AffineTransform place = AffineTransform.getTranslateInstance(frame.getX(), frame.getY());
        place.scale(frame.getWidth() / darks.getWidth(), frame.getHeight() / darks.getHeight());
        over.drawImage(darks, place, null);
        over.dispose();
    }

    /**
     * The frame as painters make it: two L-shaped pieces of card, one laid over the other, that slide along each other at
     * two of the corners.
     */
    static void border(Graphics2D g, Rectangle2D frame) {
        double left = frame.getMinX();
        double top = frame.getMinY();
        double right = frame.getMaxX();
        double foot = frame.getMaxY();
        card(g, ell(right, top, right + CARD, top - CARD, left - CARD - END, foot + CARD + END));
        card(g, ell(left, foot, left - CARD, foot + CARD, right + CARD + END, top - CARD - END));
    }

    /** An L: its inner and outer corner, and where its level and its upright arm end. */
    private static Path2D ell(double x, double y, double outerX, double outerY, double endX, double endY) {
        Path2D ell = new Path2D.Double();
        ell.moveTo(outerX, outerY);
        ell.lineTo(endX, outerY);
        ell.lineTo(endX, y);
        ell.lineTo(x, y);
        ell.lineTo(x, endY);
        ell.lineTo(outerX, endY);
        ell.closePath();
        return ell;
    }

    private static void card(Graphics2D g, Shape ell) {
        g.setColor(color("paper"));
        g.fill(ell);
        g.setColor(color("ink"));
        g.setStroke(new BasicStroke(1));
        g.draw(ell);
    }

    /** The photograph's own horizon as it was marked. */
    static void horizon(Graphics2D g, Sight sight, Line horizon) {
        Point from = sight.onScreen(horizon.from());
        Point to = sight.onScreen(horizon.to());
        line(g, new Line2D.Double(from.x(), from.y(), to.x(), to.y()), 8, 5);
    }

    /** The horizon as it is being marked. */
    static void marking(Graphics2D g, HorizonMarking marking) {
        marking.first().ifPresent(from -> {
            line(
                    g,
                    new Line2D.Double(
                            from.x(), from.y(), marking.at().x(), marking.at().y()),
                    1,
                    0);
            cross(g, from);
        });
        cross(g, marking.at());
    }

    /** A place on the photograph. */
    private static void cross(Graphics2D g, Point at) {
        Path2D cross = new Path2D.Double();
        cross.moveTo(at.x() - ARM, at.y());
        cross.lineTo(at.x() + ARM, at.y());
        cross.moveTo(at.x(), at.y() - ARM);
        cross.lineTo(at.x(), at.y() + ARM);
        line(g, cross, 1, 0);
    }

    private static void line(Graphics2D g, Shape shape, float dash, float gap) {
        g.setColor(color("paper"));
        g.setStroke(new BasicStroke(HALO));
        g.draw(shape);
        g.setColor(color("ink"));
        g.setStroke(
                gap == 0
                        ? new BasicStroke(LINE)
                        : new BasicStroke(
                                LINE, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {dash, gap}, 0));
        g.draw(shape);
    }

    /** A few words at the foot of the view. */
    static void hint(Graphics2D g, String words, int width, int height) {
        g.setFont(Theme.font("defaultFont").deriveFont(Font.PLAIN, 12f));
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        FontMetrics metrics = g.getFontMetrics();
        g.setColor(color("onSurroundSoft"));
        g.drawString(words, Math.max(0, (width - metrics.stringWidth(words)) / 2f), height - 5f);
    }
}
