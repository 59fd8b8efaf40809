package umbercard.desk.framing;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.swing.SwingUtilities;
import umbercard.geometry.Point;
import umbercard.kernel.Latest;
import umbercard.model.Frame;
import umbercard.model.Framing;
import umbercard.photo.FramedView;
import umbercard.picture.Picture;

/**
 * The photograph as a sight shows it: resampled in the background at the size it is shown, the newest sight first. Until
 * that is there the last one is drawn where it now belongs.
 */
final class SightLayer {
    private static final Logger LOG = Logger.getLogger(SightLayer.class.getName());

    private record Wanted(Picture photograph, Frame frame, double ratio, int rows) {}

    private record Made(Wanted wanted, Optional<BufferedImage> image) {}

    private final Latest<Wanted, Made> latest;
    private final Runnable changed;
    private Optional<Wanted> asked = Optional.empty();
    private Optional<Made> shown = Optional.empty();

    SightLayer(Runnable changed) {
        this.changed = changed;
        latest = new Latest<>("umbercard-framing", SightLayer::make, this::show, SwingUtilities::invokeLater);
    }

    private static Made make(Wanted wanted, BooleanSupplier stopped) {
        try {
            Picture part = FramedView.of(wanted.photograph(), wanted.frame(), wanted.ratio(), wanted.rows());
            BufferedImage image = new BufferedImage(part.width(), part.height(), BufferedImage.TYPE_INT_RGB);
            image.setRGB(0, 0, part.width(), part.height(), part.pixels(), 0, part.width());
            return new Made(wanted, Optional.of(image));
        } catch (OutOfMemoryError full) {
            LOG.log(Level.WARNING, "no picture of the framed photograph", full);
            return new Made(wanted, Optional.empty());
        }
    }

    private void show(Made made) {
        if (asked.map(Wanted::photograph).equals(Optional.of(made.wanted().photograph()))) {
            shown = Optional.of(made);
            changed.run();
        }
    }

    /** Whether what is drawn is what was asked for last. */
    boolean isSettled() {
        return shown.map(Made::wanted).equals(asked);
    }

    /** Keeps nothing of a photograph. */
    void forget() {
        asked = Optional.empty();
        shown = Optional.empty();
    }

    /**
     * Draws what is there, and asks for what should be.
     *
     * @param rows of device pixels in the view
     */
    void paint(Graphics2D g, Picture photograph, Sight sight, int rows) {
        Wanted wanted = new Wanted(photograph, sight.frame(), sight.plane().frameRatio(), rows);
        if (!Optional.of(wanted).equals(asked)) {
            asked = Optional.of(wanted);
            shown = shown.filter(last -> last.wanted().photograph().equals(photograph));
            latest.ask(wanted);
        }
        shown.ifPresent(made -> made.image().ifPresent(image -> draw(g, made.wanted(), image, sight)));
    }

    private static void draw(Graphics2D g, Wanted made, BufferedImage image, Sight sight) {
        Point origin = seen(made, 0, 0, sight);
        Point right = seen(made, made.ratio(), 0, sight);
        Point down = seen(made, 0, 1, sight);
        AffineTransform place = new AffineTransform(
                (right.x() - origin.x()) / image.getWidth(),
                (right.y() - origin.y()) / image.getWidth(),
                (down.x() - origin.x()) / image.getHeight(),
                (down.y() - origin.y()) / image.getHeight(),
                origin.x(),
                origin.y());
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        g.drawImage(image, place, null);
    }

    /** Where a place of the picture that was made lies in the view now. */
    private static Point seen(Wanted made, double x, double y, Sight sight) {
        Framing plane = new Framing(sight.plane().photographRatio(), made.ratio());
        return sight.onScreen(plane.onPhotograph(made.frame(), new Point(x, y)));
    }
}
