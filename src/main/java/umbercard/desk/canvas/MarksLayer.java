package umbercard.desk.canvas;

import java.awt.AlphaComposite;
import java.awt.Color;
import java.awt.EventQueue;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import umbercard.desk.canvas.Surroundings.Canvas;
import umbercard.desk.canvas.Surroundings.Wanted;
import umbercard.kernel.Latest;
import umbercard.model.Mark;
import umbercard.model.Thumbnail;

/**
 * A thumbnail's darks as an image, transparent where it is light: marks in order, lay fills and lift clears. Only the window
 * in which the marks look different from the last time is drawn anew. Where many marks reach into it, pictures of those
 * before and after the changed ones are made in the background and used from then on, so a mark is dragged as quickly among
 * many as alone. To be used on one thread, to which {@code deliverOn} belongs.
 */
public final class MarksLayer {
    /** So many marks in the window are drawn quickly enough one by one. */
    private static final int FEW = 16;

    private final Latest<Wanted, Surroundings> worker;
    private final MarkShapes shapes = new MarkShapes();
    private Optional<Canvas> canvas = Optional.empty();
    private BufferedImage image = new BufferedImage(1, 1, BufferedImage.TYPE_INT_ARGB_PRE);
    private List<Mark> drawn = List.of();
    private Optional<Wanted> asked = Optional.empty();
    private Optional<Surroundings> kept = Optional.empty();

    /** A layer for the event thread. */
    public MarksLayer() {
        this(EventQueue::invokeLater);
    }

    MarksLayer(Executor deliverOn) {
        worker = new Latest<>(
                "umbercard-marks",
                (wanted, stopped) -> Surroundings.of(wanted),
                made -> kept = Optional.of(made),
                deliverOn);
    }

    /** Whether pictures asked for last have not come yet. */
    boolean isAsking() {
        return !asked.equals(kept.map(Surroundings::wanted));
    }

    /**
     * The darks of the thumbnail in a frame of that many device pixels. The image is good until the next call, which may draw
     * into it.
     */
    public BufferedImage image(Thumbnail thumbnail, int width, int height, Color ink) {
        Canvas wanted = new Canvas(width, height, ink, thumbnail.ground() == Thumbnail.Ground.DARK);
        List<Mark> marks = Windows.visible(thumbnail);
        if (canvas.equals(Optional.of(wanted))) {
            draw(wanted, marks, Windows.pixels(Windows.between(drawn, marks), height));
        } else {
            image = wanted.image();
            canvas = Optional.of(wanted);
            draw(wanted, marks, new Rectangle(width, height));
        }
        drawn = marks;
        shapes.keep(marks);
        return image;
    }

    private void draw(Canvas on, List<Mark> marks, Rectangle window) {
        Rectangle inside = window.intersection(new Rectangle(on.width(), on.height()));
        if (inside.isEmpty()) {
            return;
        }
        Graphics2D g = smooth(image, on);
        g.setClip(inside);
        Optional<Surroundings> around = kept.filter(k -> k.wanted().fits(on, marks))
                .filter(k -> k.wanted().between(marks).size() <= FEW);
        if (around.isPresent()) {
            around.get().draw(g, marks, shapes);
        } else {
            List<Mark> reaching = shapes.reaching(marks, inside, on.height());
            ground(g, on);
            g.scale(on.height(), on.height());
            shapes.fill(g, reaching, false);
            if (reaching.size() > FEW) {
                ask(on, marks);
            }
        }
        g.dispose();
    }

    /** Asks for what lies round the marks that have changed, unless that was asked for already. */
    private void ask(Canvas on, List<Mark> marks) {
        int start = Windows.alikeAtStart(drawn, marks);
        int end = Windows.alikeAtEnd(drawn, marks, start);
        int changed = marks.size() - start - end;
        if (changed > 0
                && changed <= FEW
                && asked.filter(a -> a.fits(on, marks)).isEmpty()) {
            Wanted wanted = new Wanted(
                    on,
                    List.copyOf(marks.subList(0, start)),
                    List.copyOf(marks.subList(marks.size() - end, marks.size())));
            asked = Optional.of(wanted);
            worker.ask(wanted);
        }
    }

    static Graphics2D smooth(BufferedImage image, Canvas on) {
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setColor(on.ink());
        return g;
    }

    /** Clears what is within the clip to the ground. */
    static void ground(Graphics2D g, Canvas on) {
        g.setComposite(on.dark() ? AlphaComposite.Src : AlphaComposite.Clear);
        g.fillRect(0, 0, on.width(), on.height());
    }
}
