package umbercard.desk.canvas;

import java.awt.image.BufferedImage;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.swing.SwingUtilities;
import umbercard.geometry.Eye;
import umbercard.kernel.Latest;
import umbercard.model.Frame;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.notan.HatchFold;
import umbercard.photo.FramedView;
import umbercard.photo.Squinter;
import umbercard.photo.Values;
import umbercard.picture.Picture;
import umbercard.picture.ValueField;

/**
 * The framed reference as it is looked at, made in the background at the size it is shown. Steps whose inputs did not
 * change are not done again; nothing of a photograph is kept once none is wanted.
 */
final class ReferenceLayer {
    private static final Logger LOG = Logger.getLogger(ReferenceLayer.class.getName());

    /** All that the image depends on. {@code design} counts only where the split follows the thumbnail. */
    record Wanted(
            Picture photograph,
            Frame frame,
            double ratio,
            int height,
            double sigma,
            SeenAs seenAs,
            OptionalDouble split,
            Optional<Thumbnail> design) {

        /** What to show of a study's reference with a thumbnail on the card; empty without a reference. */
        static Optional<Wanted> of(
                Picture photograph, Study study, Optional<Thumbnail> thumbnail, int height, SeenAs seenAs) {
            return study.reference().map(reference -> {
                boolean follows =
                        seenAs == SeenAs.TWO_VALUES && reference.split().isEmpty();
                return new Wanted(
                        photograph,
                        thumbnail.flatMap(Thumbnail::frame).orElse(reference.frame()),
                        study.ratio(),
                        height,
                        reference.squint().sigma(),
                        seenAs,
                        seenAs == SeenAs.TWO_VALUES ? reference.split() : OptionalDouble.empty(),
                        follows ? thumbnail : Optional.empty());
            });
        }

        private boolean framesLike(Wanted other) {
            return photograph.equals(other.photograph)
                    && frame.equals(other.frame)
                    && ratio == other.ratio
                    && height == other.height;
        }
    }

    private record Framed(Wanted wanted, Picture picture) {}

    private record Squinted(Picture framed, double sigma, Picture picture, ValueField values) {}

    private record Shown(Wanted wanted, BufferedImage image) {}

    /** What came of asking; without an image where nothing was wanted, or it could not be made. */
    private record Answer(Optional<Wanted> wanted, Optional<BufferedImage> image) {}

    private final Latest<Optional<Wanted>, Answer> latest;
    private final Runnable changed;

    // Used on the background thread only.
    private final HatchFold folds = new HatchFold(Eye.DEFAULT);
    private Optional<Framed> framed = Optional.empty();
    private Optional<Squinted> squinted = Optional.empty();
    private Optional<Wanted> failed = Optional.empty();

    // Used on the event thread only.
    private Optional<Wanted> asked = Optional.empty();
    private Optional<Shown> shown = Optional.empty();

    ReferenceLayer(Runnable changed) {
        this.changed = changed;
        this.latest = new Latest<>("umbercard-reference", this::make, this::show, SwingUtilities::invokeLater);
    }

    /**
     * Asks for another image, or for none; the last one of the same photograph stays until the new one is there. What could
     * not be made may be asked for again. On the event thread.
     */
    void want(Optional<Wanted> wanted) {
        if (wanted.equals(asked)) {
            return;
        }
        asked = wanted;
        shown = shown.filter(last -> isOfWanted(last.wanted()));
        latest.ask(wanted);
    }

    private boolean isOfWanted(Wanted other) {
        return asked.map(Wanted::photograph).equals(Optional.of(other.photograph()));
    }

    Optional<BufferedImage> image() {
        return shown.map(Shown::image);
    }

    /** Whether what is shown is what was asked for last. */
    boolean isSettled() {
        return shown.map(Shown::wanted).equals(asked);
    }

    private void show(Answer answer) {
        Optional<Shown> made = answer.wanted()
                .filter(this::isOfWanted)
                .flatMap(wanted -> answer.image().map(image -> new Shown(wanted, image)));
        if (made.isPresent()) {
            shown = made;
            changed.run();
        } else if (asked.equals(answer.wanted())) {
            // Not told: showing anew would ask at once for what has just failed.
            asked = shown.map(Shown::wanted);
        }
    }

    private Answer make(Optional<Wanted> wanted, BooleanSupplier stopped) {
        if (wanted.isEmpty()) {
            forget();
            failed = Optional.empty();
            return new Answer(wanted, Optional.empty());
        }
        try {
            return new Answer(wanted, wanted.map(some -> picture(some, stopped)));
        } catch (RuntimeException | OutOfMemoryError failure) {
            forget();
            if (!failed.equals(wanted)) {
                LOG.log(Level.WARNING, "no picture of the reference", failure);
            }
            failed = wanted;
            return new Answer(wanted, Optional.empty());
        }
    }

    private void forget() {
        framed = Optional.empty();
        squinted = Optional.empty();
    }

    private BufferedImage picture(Wanted wanted, BooleanSupplier stopped) {
        Framed frame = framed.filter(f -> f.wanted().framesLike(wanted))
                .orElseGet(() -> new Framed(
                        wanted, FramedView.of(wanted.photograph(), wanted.frame(), wanted.ratio(), wanted.height())));
        framed = Optional.of(frame);
        if (stopped.getAsBoolean()) {
            return image(frame.picture());
        }
        Squinted squint = squinted.filter(s -> s.framed().equals(frame.picture()) && s.sigma() == wanted.sigma())
                .orElseGet(() -> squint(frame, wanted));
        squinted = Optional.of(squint);
        return image(
                switch (wanted.seenAs()) {
                    case COLOR -> squint.picture();
                    case GRAY -> Values.gray(squint.values());
                    case TWO_VALUES -> Values.twoValues(squint.values(), split(wanted, squint.values()));
                });
    }

    private static Squinted squint(Framed frame, Wanted wanted) {
        double diagonal = Math.hypot(frame.picture().width(), frame.picture().height());
        Picture picture = Squinter.squint(frame.picture(), wanted.sigma() * diagonal);
        return new Squinted(frame.picture(), wanted.sigma(), picture, Values.of(picture));
    }

    /** The painter's own split, else the one that gives the thumbnail's dark share, else Otsu's. */
    private double split(Wanted wanted, ValueField values) {
        return wanted.split()
                .orElseGet(() -> wanted.design()
                        .map(thumbnail -> folds.of(thumbnail, wanted.ratio()).darkShare())
                        .filter(share -> share > 0 && share < 1)
                        .map(share -> Values.splitForShare(values, share))
                        .orElseGet(() -> Values.otsu(values)));
    }

    private static BufferedImage image(Picture picture) {
        BufferedImage image = new BufferedImage(picture.width(), picture.height(), BufferedImage.TYPE_INT_RGB);
        image.setRGB(0, 0, picture.width(), picture.height(), picture.pixels(), 0, picture.width());
        return image;
    }
}
