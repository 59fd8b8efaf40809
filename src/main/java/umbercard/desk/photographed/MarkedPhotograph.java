package umbercard.desk.photographed;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import umbercard.desk.theme.Theme;
import umbercard.geometry.Point;
import umbercard.picture.Picture;
import umbercard.words.Words;

/**
 * A photograph with the four corners of a flat thing marked in it, and lines of the thing drawn in perspective; where that is
 * asked for, pressing the photograph marks what is white as well. All places are in pixels of the picture. Event thread only.
 */
final class MarkedPhotograph extends JPanel implements Handle.Owner {
    /** Where the corners stand at first, as a share of the picture from its border. */
    private static final double INSET = 0.15;

    private static final String[] CORNERS = {"upper-left", "upper-right", "lower-right", "lower-left"};

    private final transient Picture picture;
    private final transient Fitted fitted;
    private final Magnified magnified;
    private final transient Runnable changed;
    private final transient List<Handle> corners = new ArrayList<>();
    private final transient List<Handle> whites = new ArrayList<>();
    private transient Function<List<Point>, List<List<Point>>> lines = seen -> List.of();

    /** How many whites were ever marked. */
    private int marked;

    /**
     * A photograph with its corners somewhere.
     *
     * @param marksWhites whether pressing the photograph marks a white
     * @param changed run whenever a mark has moved, come or gone
     */
    MarkedPhotograph(Picture picture, boolean marksWhites, Runnable changed) {
        super(null);
        this.picture = picture;
        this.changed = changed;
        fitted = new Fitted(picture, this::repaint);
        magnified = new Magnified(Fitted.image(picture));
        setName("photographed.photograph");
        setOpaque(false);
        getAccessibleContext().setAccessibleName(Words.say("photographed.photograph"));
        for (int i = 0; i < CORNERS.length; i++) {
            double x = i == 0 || i == 3 ? INSET : 1 - INSET;
            double y = i < 2 ? INSET : 1 - INSET;
            Point place = new Point(x * picture.width(), y * picture.height());
            String words = Words.say("photographed.corner." + CORNERS[i]);
            Handle corner = new Handle(words, place, false, this);
            corner.setName("photographed.corner." + (i + 1));
            corners.add(corner);
            add(corner);
        }
        if (marksWhites) {
            addMouseListener(new MouseAdapter() {
                @Override
                public void mousePressed(MouseEvent event) {
                    if (SwingUtilities.isLeftMouseButton(event)) {
                        mark(onPicture(event.getX(), event.getY()));
                    }
                }
            });
        }
    }

    /** What shows the place being marked pixel by pixel. */
    Magnified magnified() {
        return magnified;
    }

    /** Draws these lines, given where the corners are seen. */
    void draw(Function<List<Point>, List<List<Point>>> wanted) {
        lines = wanted;
        repaint();
    }

    /** The corners as they stand: upper left, upper right, lower right, lower left. */
    List<Point> corners() {
        return corners.stream().map(Handle::place).toList();
    }

    /** Puts the corners there. */
    void corners(List<Point> places) {
        for (int i = 0; i < CORNERS.length; i++) {
            corners.get(i).place(places.get(i));
        }
        settle();
    }

    /** The handle that the keyboard begins at. */
    JComponent first() {
        return corners.get(0);
    }

    /** The whites that were marked. */
    List<Point> whites() {
        return whites.stream().map(Handle::place).toList();
    }

    /** Marks a white in the picture's middle, to be moved from there. */
    void markInTheMiddle() {
        mark(new Point(picture.width() / 2.0, picture.height() / 2.0));
    }

    private void mark(Point place) {
        if (place.x() < 0 || place.y() < 0 || place.x() >= picture.width() || place.y() >= picture.height()) {
            return;
        }
        marked++;
        Handle white = new Handle(Words.say("photographed.white", marked), place, true, this);
        white.setName("photographed.white." + marked);
        whites.add(white);
        add(white);
        settle();
        white.requestFocusInWindow();
    }

    private void settle() {
        revalidate();
        doLayout();
        repaint();
        changed.run();
    }

    @Override
    public void move(Handle handle, Point to) {
        handle.place(new Point(
                Math.max(0, Math.min(picture.width(), to.x())), Math.max(0, Math.min(picture.height(), to.y()))));
        magnified.look(handle.place());
        settle();
    }

    @Override
    public void look(Handle handle) {
        magnified.look(handle.place());
    }

    @Override
    public void remove(Handle handle) {
        if (whites.remove(handle)) {
            super.remove(handle);
            corners.get(0).requestFocusInWindow();
            settle();
        }
    }

    private double scale() {
        int edge = UIScale.scale(Handle.SIZE);
        return Math.max(
                1e-3,
                Math.min(
                        (double) (getWidth() - edge) / picture.width(),
                        (double) (getHeight() - edge) / picture.height()));
    }

    private Point origin() {
        return new Point((getWidth() - scale() * picture.width()) / 2, (getHeight() - scale() * picture.height()) / 2);
    }

    @Override
    public Point onPicture(double x, double y) {
        return new Point((x - origin().x()) / scale(), (y - origin().y()) / scale());
    }

    /** The pixel of this component at a place of the photograph. */
    Point onScreen(Point place) {
        return new Point(origin().x() + scale() * place.x(), origin().y() + scale() * place.y());
    }

    @Override
    public void doLayout() {
        int size = UIScale.scale(Handle.SIZE);
        for (List<Handle> some : List.of(corners, whites)) {
            for (Handle handle : some) {
                Point at = onScreen(handle.place());
                handle.setBounds(
                        (int) Math.round(at.x() - size / 2.0), (int) Math.round(at.y() - size / 2.0), size, size);
            }
        }
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(UIScale.scale(700), UIScale.scale(570));
    }

    @Override
    protected void paintComponent(Graphics g) {
        super.paintComponent(g);
        Graphics2D smooth = Theme.smooth(g);
        double onDevice = smooth.getTransform().getScaleY();
        Point origin = origin();
        int wide = (int) Math.round(scale() * picture.width());
        int high = (int) Math.round(scale() * picture.height());
        fitted.image(Math.max(1, (int) Math.round(onDevice * high))).ifPresent(image -> {
            smooth.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
            smooth.drawImage(image, (int) Math.round(origin.x()), (int) Math.round(origin.y()), wide, high, null);
        });
        Path2D drawn = new Path2D.Double();
        lines.apply(corners()).forEach(line -> append(line, drawn));
        stroke(smooth, drawn, Theme.color("Umbercard.light"), 3);
        stroke(smooth, drawn, Theme.color("Umbercard.ink"), 1);
        smooth.dispose();
    }

    private void append(List<Point> line, Path2D path) {
        for (int i = 0; i < line.size(); i++) {
            Point at = onScreen(line.get(i));
            if (i == 0) {
                path.moveTo(at.x(), at.y());
            } else {
                path.lineTo(at.x(), at.y());
            }
        }
    }

    private static void stroke(Graphics2D g, Path2D path, Color color, float line) {
        g.setColor(color);
        g.setStroke(new BasicStroke(UIScale.scale(line), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(path);
    }
}
