package umbercard.desk.photographed;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Cursor;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import javax.swing.SwingUtilities;
import umbercard.desk.theme.Drawn;
import umbercard.desk.theme.Keys;
import umbercard.desk.theme.Theme;
import umbercard.geometry.Point;

/** A place in the photograph that can be dragged, or moved by the arrow keys: a ring about a small cross. */
final class Handle extends Drawn {
    /** A target of 24 pixels and more. */
    static final int SIZE = 28;

    private static final int SHIFT_FACTOR = 10;

    /** Told of what is done with a handle. */
    interface Owner {
        /** It is to stand at a place of the photograph, in its pixels. */
        void move(Handle handle, Point to);

        /** The place of the photograph at a pixel of the component that holds the handle. */
        Point onPicture(double x, double y);

        /** It has the keyboard or the pointer. */
        void look(Handle handle);

        void remove(Handle handle);
    }

    private final String words;
    private transient Point place;

    /**
     * A handle.
     *
     * @param words how it is spoken of
     * @param removable whether Delete takes it away
     */
    Handle(String words, Point place, boolean removable, Owner owner) {
        this.words = words;
        this.place = place;
        setToolTipText(words);
        setFocusable(true);
        setCursor(Cursor.getPredefinedCursor(Cursor.MOVE_CURSOR));
        Hand hand = new Hand(owner);
        addMouseListener(hand);
        addMouseMotionListener(hand);
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent event) {
                owner.look(Handle.this);
                repaint();
            }

            @Override
            public void focusLost(FocusEvent event) {
                repaint();
            }
        });
        bind(owner, "LEFT", -1, 0);
        bind(owner, "RIGHT", 1, 0);
        bind(owner, "UP", 0, -1);
        bind(owner, "DOWN", 0, 1);
        if (removable) {
            Keys.bind(this, WHEN_FOCUSED, "DELETE", "remove", () -> owner.remove(this));
            Keys.bind(this, WHEN_FOCUSED, "BACK_SPACE", "remove", () -> owner.remove(this));
        }
    }

    private void bind(Owner owner, String key, int right, int down) {
        Keys.bind(this, WHEN_FOCUSED, key, key, () -> owner.move(this, place.plus(right, down)));
        Keys.bind(
                this,
                WHEN_FOCUSED,
                "shift " + key,
                "shift " + key,
                () -> owner.move(this, place.plus(SHIFT_FACTOR * right, SHIFT_FACTOR * down)));
    }

    @Override
    protected String spoken() {
        return words;
    }

    /** In pixels of the picture. */
    Point place() {
        return place;
    }

    void place(Point now) {
        place = now;
    }

    /** Drags without a jump: the place moves as far as the hand. */
    private final class Hand extends MouseAdapter {
        private final Owner owner;
        private Point taken = new Point(0, 0);

        Hand(Owner owner) {
            this.owner = owner;
        }

        private Point under(MouseEvent event) {
            java.awt.Point at = SwingUtilities.convertPoint(Handle.this, event.getPoint(), getParent());
            return owner.onPicture(at.x, at.y);
        }

        @Override
        public void mousePressed(MouseEvent event) {
            requestFocusInWindow();
            Point under = under(event);
            taken = new Point(place.x() - under.x(), place.y() - under.y());
            owner.look(Handle.this);
        }

        @Override
        public void mouseDragged(MouseEvent event) {
            owner.move(Handle.this, under(event).plus(taken.x(), taken.y()));
        }
    }

    @Override
    protected void paintComponent(Graphics g) {
        Graphics2D smooth = Theme.smooth(g);
        paint(smooth, Theme.color("Umbercard.light"), 4);
        paint(smooth, Theme.color("Umbercard.ink"), isFocusOwner() ? 2.2f : 1.2f);
        smooth.dispose();
    }

    private void paint(Graphics2D g, Color color, float line) {
        double middle = getWidth() / 2.0;
        double radius = UIScale.scale(isFocusOwner() ? 10f : 8f);
        double arm = UIScale.scale(3f);
        g.setColor(color);
        g.setStroke(new BasicStroke(UIScale.scale(line)));
        g.draw(new Ellipse2D.Double(middle - radius, middle - radius, 2 * radius, 2 * radius));
        g.draw(new Line2D.Double(middle - arm, middle, middle + arm, middle));
        g.draw(new Line2D.Double(middle, middle - arm, middle, middle + arm));
    }
}
