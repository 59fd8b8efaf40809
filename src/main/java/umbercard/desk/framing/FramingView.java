package umbercard.desk.framing;

import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.JPanel;
import umbercard.desk.canvas.MarksLayer;
import umbercard.desk.session.Session;
import umbercard.desk.theme.Theme;
import umbercard.geometry.Line;
import umbercard.geometry.Point;
import umbercard.model.Frame;
import umbercard.model.Framing;
import umbercard.model.Thumbnail;
import umbercard.words.Words;

/**
 * The whole photograph with the frame on it. The frame stands upright and the photograph is turned under it, so that it
 * looks as it will on the card; beyond the photograph the frame shows bare card.
 */
final class FramingView extends JPanel {
    /** Pixels round the photograph, and the room for the hint below. */
    private static final double MARGIN = 24;

    private final transient Session session;
    private final transient Viewfinder finder;
    private final transient SightLayer layer = new SightLayer(this::repaint);
    private final transient MarksLayer marks = new MarksLayer();
    private transient Optional<FrameGrip> grip = Optional.empty();
    private transient Optional<HorizonMarking> marking = Optional.empty();

    /**
     * A view of the frame on the card's thumbnail.
     *
     * @param done run when the painter is done with framing
     */
    FramingView(Session session, Viewfinder finder, Runnable done) {
        this.session = session;
        this.finder = finder;
        setName("framing-view");
        setOpaque(false);
        setFocusable(true);
        setMinimumSize(new Dimension(320, 220));
        setPreferredSize(new Dimension(660, 440));
        getAccessibleContext().setAccessibleName(Words.say("framing.view.name"));
        getAccessibleContext().setAccessibleDescription(Words.say("framing.view.description"));
        finder.listen(this::follow);
        new FramingGestures(this, finder, done).listen();
    }

    private void follow() {
        if (finder.isPossible()) {
            repaint();
        } else {
            layer.forget();
            rest();
        }
    }

    /** Lets go of everything that is half done. */
    void rest() {
        grip = Optional.empty();
        mark(false);
        finder.drop();
    }

    /** Whether nothing is half done. */
    boolean isResting() {
        return grip.isEmpty() && marking.isEmpty();
    }

    /** Whether the picture shown is up to date. */
    boolean isSettled() {
        return !isShowing() || layer.isSettled();
    }

    Optional<HorizonMarking> marking() {
        return marking;
    }

    /** Begins to mark the photograph's own horizon, or leaves it. */
    void mark(boolean wanted) {
        if (wanted != marking.isPresent()) {
            marking = wanted
                    ? Optional.of(new HorizonMarking(new Point(getWidth() / 3.0, getHeight() / 2.0)))
                    : Optional.empty();
            finder.tell();
            repaint();
        }
    }

    /** Takes a line in pixels for the photograph's own horizon. */
    void marked(Line pixels) {
        sight().ifPresent(sight -> {
            mark(false);
            finder.level(new Line(
                    sight.onPhotograph(pixels.from().x(), pixels.from().y()),
                    sight.onPhotograph(pixels.to().x(), pixels.to().y())));
        });
    }

    /** What the view shows now; it rests while the hand holds the frame, but for turning with it. */
    Optional<Sight> sight() {
        if (grip.isPresent() && grip.get() instanceof FrameGrip.Turn turn) {
            double turned = finder.seen().map(Frame::tilt).orElse(turn.from().tilt())
                    - turn.from().tilt();
            return Optional.of(turn.sight().turned(turn.from().center(), turned));
        }
        return grip.map(FrameGrip::sight)
                .or(() -> finder.framing()
                        .flatMap(framing -> finder.frame()
                                .map(frame -> Sight.of(
                                        framing, frame, Math.max(1, getWidth()), Math.max(1, getHeight()), MARGIN))));
    }

    /** One pixel of the view in frame units. */
    OptionalDouble pixel() {
        Optional<Sight> sight = sight();
        Optional<Frame> frame = finder.frame();
        return sight.isPresent() && frame.isPresent()
                ? OptionalDouble.of(sight.get().frame().height()
                        / frame.get().height()
                        / sight.get().height())
                : OptionalDouble.empty();
    }

    /** What a hand would take hold of. */
    Optional<FrameGrip> gripAt(Point at, boolean turning) {
        return sight().flatMap(sight -> finder.framing()
                .flatMap(framing -> finder.frame()
                        .map(frame -> FrameGrip.at(at, turning, framing, frame, sight, finder.keepsInside()))));
    }

    void take(Optional<FrameGrip> taken) {
        grip = taken;
    }

    Optional<FrameGrip> grip() {
        return grip;
    }

    /** Shows by the pointer what a press there would take hold of. */
    void point(Point at) {
        int cursor = marking.isPresent()
                ? Cursor.CROSSHAIR_CURSOR
                : gripAt(at, false).map(FramingView::cursor).orElse(Cursor.DEFAULT_CURSOR);
        if (getCursor().getType() != cursor) {
            setCursor(Cursor.getPredefinedCursor(cursor));
        }
    }

    private static int cursor(FrameGrip grip) {
        if (grip instanceof FrameGrip.Corner corner) {
            boolean falling = corner.corner().x() > 0 == corner.corner().y() > 0;
            return falling ? Cursor.NW_RESIZE_CURSOR : Cursor.NE_RESIZE_CURSOR;
        }
        return grip instanceof FrameGrip.Whole ? Cursor.MOVE_CURSOR : Cursor.DEFAULT_CURSOR;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Optional<Sight> sight = sight();
        Optional<Frame> frame = finder.seen();
        Optional<Framing> framing = finder.framing();
        if (sight.isPresent() && frame.isPresent() && framing.isPresent()) {
            Graphics2D g = Theme.smooth(graphics);
            paint(g, sight.get(), FramingPainter.frame(framing.get(), frame.get(), sight.get()));
            g.dispose();
        }
    }

    private void paint(Graphics2D g, Sight sight, Rectangle2D frame) {
        Path2D photograph = FramingPainter.photograph(sight);
        int rows = (int) Math.max(1, Math.round(getHeight() * g.getTransform().getScaleY()));
        Area seen = new Area(photograph);
        seen.add(new Area(frame));
        g.setColor(Theme.color("Umbercard.paper"));
        g.fill(frame);
        Graphics2D inside = (Graphics2D) g.create();
        inside.clip(seen);
        session.photograph().ifPresent(picture -> layer.paint(inside, picture, sight, rows));
        inside.dispose();
        FramingPainter.leaveOut(g, photograph, frame);
        session.thumbnail()
                .filter(thumbnail -> marking.isEmpty() && !thumbnail.marks().isEmpty())
                .ifPresent(thumbnail -> paintMarks(g, thumbnail, frame));
        FramingPainter.border(g, frame);
        finder.ownHorizon().filter(line -> marking.isEmpty()).ifPresent(line -> FramingPainter.horizon(g, sight, line));
        marking.ifPresent(now -> FramingPainter.marking(g, now));
        if (grip.isEmpty()) {
            FramingPainter.hint(g, Words.say("framing.hint." + hint()), getWidth(), getHeight());
        }
    }

    private void paintMarks(Graphics2D g, Thumbnail thumbnail, Rectangle2D frame) {
        double scale = g.getTransform().getScaleY();
        int width = (int) Math.max(1, Math.ceil(frame.getWidth() * scale));
        int height = (int) Math.max(1, Math.round(frame.getHeight() * scale));
        BufferedImage darks = marks.image(thumbnail, width, height, Theme.color("Umbercard.dark"));
        FramingPainter.marks(g, darks, frame);
    }

    private String hint() {
        return marking.map(now -> now.first().isPresent() ? "second" : "first").orElse("frame");
    }
}
