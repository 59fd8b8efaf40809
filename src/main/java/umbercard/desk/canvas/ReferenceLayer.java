package umbercard.desk.canvas;

import java.awt.image.BufferedImage;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;
import javax.swing.SwingUtilities;
import umbercard.kernel.Latest;
import umbercard.model.Frame;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.notan.Fold;
import umbercard.photo.FramedView;
import umbercard.photo.Squinter;
import umbercard.photo.Values;
import umbercard.picture.Picture;
import umbercard.picture.ValueField;

/**
 * The framed reference as it is looked at, made in the background at the size it is shown. Steps whose inputs did not
 * change are not done again.
 */
final class ReferenceLayer {

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

    private final Latest<Wanted, Shown> latest;
    private final Runnable changed;
    private Optional<Framed> framed = Optional.empty();
    private Optional<Squinted> squinted = Optional.empty();
    private Optional<Wanted> asked = Optional.empty();
    private Optional<Shown> shown = Optional.empty();

    ReferenceLayer(Runnable changed) {
        this.changed = changed;
        this.latest = new Latest<>("umbercard-reference", this::make, this::show, SwingUtilities::invokeLater);
    }

    /** Asks for another image, or for none; the last one stays until the new one is there. On the event thread. */
    void want(Optional<Wanted> wanted) {
        if (wanted.equals(asked)) {
            return;
        }
        asked = wanted;
        wanted.ifPresentOrElse(latest::ask, () -> shown = Optional.empty());
    }

    Optional<BufferedImage> image() {
        return shown.map(Shown::image);
    }

    /** Whether what is shown is what was asked for last. */
    boolean isSettled() {
        return shown.map(Shown::wanted).equals(asked);
    }

    private void show(Shown made) {
        shown = asked.map(wanted -> made);
        changed.run();
    }

    private Shown make(Wanted wanted, BooleanSupplier stopped) {
        return new Shown(wanted, picture(wanted, stopped));
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
    private static double split(Wanted wanted, ValueField values) {
        return wanted.split()
                .orElseGet(() -> wanted.design()
                        .map(thumbnail -> Fold.of(thumbnail, wanted.ratio()).darkShare())
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
