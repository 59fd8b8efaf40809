package umbercard.desk.canvas;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.awt.image.DirectColorModel;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.swing.SwingUtilities;
import umbercard.geometry.Eye;
import umbercard.kernel.Latest;
import umbercard.model.Frame;
import umbercard.model.Squint;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.notan.HatchFold;
import umbercard.photo.FramedView;
import umbercard.photo.SquintPyramid;
import umbercard.photo.SquintWay;
import umbercard.photo.ValueCurve;
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
            Squint squint,
            SeenAs seenAs,
            OptionalDouble split,
            Optional<Thumbnail> design) {

        /** What to show of a study's reference with a thumbnail on the card; empty without a reference. */
        static Optional<Wanted> of(
                Picture photograph, Study study, Optional<Thumbnail> thumbnail, int height, SeenAs seenAs) {
            return study.reference().map(reference -> {
                boolean follows = seenAs.splits() && reference.split().isEmpty();
                return new Wanted(
                        photograph,
                        thumbnail.flatMap(Thumbnail::frame).orElse(reference.frame()),
                        study.ratio(),
                        height,
                        reference.squint(),
                        seenAs,
                        seenAs.splits() ? reference.split() : OptionalDouble.empty(),
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

    /**
     * What is seen.
     *
     * @param framed the photograph in the frame, not squinted at
     * @param curve of the values as squinted at
     * @param split where it is parted, if it is
     */
    record Seen(BufferedImage image, Picture framed, ValueCurve curve, OptionalDouble split) {}

    private record Framed(Wanted wanted, Picture picture, SquintPyramid pyramid) {}

    private record Squinted(Picture framed, Squint squint, ValueField values, ValueCurve curve) {}

    private record Colored(Picture framed, Squint squint, Picture picture) {}

    private record Shown(Wanted wanted, Seen seen) {}

    /** What came of asking; without anything seen where nothing was wanted, or it could not be made. */
    private record Answer(Optional<Wanted> wanted, Optional<Seen> seen) {}

    private final Latest<Optional<Wanted>, Answer> latest;
    private final Runnable changed;

    // Used on the background thread only.
    private final HatchFold folds = new HatchFold(Eye.DEFAULT);
    private Optional<Framed> framed = Optional.empty();
    private Optional<Squinted> squinted = Optional.empty();
    private Optional<Colored> colored = Optional.empty();
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
        return shown.map(Shown::seen).map(Seen::image);
    }

    /** What is shown; of the photograph that was asked for last, though it may be seen otherwise by now. */
    Optional<Seen> seen() {
        return shown.map(Shown::seen);
    }

    /** Whether what is shown is what was asked for last. */
    boolean isSettled() {
        return shown.map(Shown::wanted).equals(asked);
    }

    private void show(Answer answer) {
        Optional<Shown> made = answer.wanted()
                .filter(this::isOfWanted)
                .flatMap(wanted -> answer.seen().map(seen -> new Shown(wanted, seen)));
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
            return new Answer(wanted, wanted.map(some -> seen(some, stopped)));
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
        colored = Optional.empty();
    }

    private Seen seen(Wanted wanted, BooleanSupplier stopped) {
        Framed frame = framed.filter(f -> f.wanted().framesLike(wanted)).orElseGet(() -> framed(wanted));
        framed = Optional.of(frame);
        if (stopped.getAsBoolean()) {
            // Not delivered: a newer one is wanted.
            return new Seen(
                    image(frame.picture()),
                    frame.picture(),
                    squinted(frame, Squint.gaussian(0)).curve(),
                    OptionalDouble.empty());
        }
        Squinted squint = squinted.filter(s -> s.framed().equals(frame.picture()))
                .filter(s -> s.squint().equals(wanted.squint()))
                .orElseGet(() -> squinted(frame, wanted.squint()));
        squinted = Optional.of(squint);
        OptionalDouble split =
                wanted.seenAs().splits() ? OptionalDouble.of(split(wanted, squint)) : OptionalDouble.empty();
        return new Seen(image(picture(wanted, frame, squint, split)), frame.picture(), squint.curve(), split);
    }

    private Picture picture(Wanted wanted, Framed frame, Squinted squint, OptionalDouble split) {
        return switch (wanted.seenAs()) {
            case COLOR -> colors(frame, wanted.squint());
            case GRAY -> Values.gray(squint.values());
            case TWO_VALUES -> Values.twoValues(squint.values(), split.orElseThrow());
            case THREE_VALUES, FOUR_VALUES, FIVE_VALUES ->
                Values.inSteps(
                        squint.values(), squint.curve().steps(wanted.seenAs().steps(), split.orElseThrow()));
        };
    }

    private static Framed framed(Wanted wanted) {
        Picture picture = FramedView.of(wanted.photograph(), wanted.frame(), wanted.ratio(), wanted.height());
        return new Framed(wanted, picture, new SquintPyramid(picture));
    }

    private static double sigma(Framed frame, Squint squint) {
        return squint.sigma()
                * Math.hypot(frame.picture().width(), frame.picture().height());
    }

    private static Squinted squinted(Framed frame, Squint squint) {
        ValueField values = frame.pyramid().values(SquintWay.of(squint), sigma(frame, squint));
        return new Squinted(frame.picture(), squint, values, ValueCurve.of(values));
    }

    private Picture colors(Framed frame, Squint squint) {
        Colored colors = colored.filter(c -> c.framed().equals(frame.picture()))
                .filter(c -> c.squint().equals(squint))
                .orElseGet(() -> new Colored(
                        frame.picture(),
                        squint,
                        frame.pyramid()
                                .colors(SquintWay.of(squint), sigma(frame, squint))
                                .picture()));
        colored = Optional.of(colors);
        return colors.picture();
    }

    /** The painter's own split, else the one that gives the thumbnail's dark share, else Otsu's. */
    private double split(Wanted wanted, Squinted squint) {
        return wanted.split()
                .orElseGet(() -> wanted.design()
                        .map(thumbnail -> folds.of(thumbnail, wanted.ratio()).darkShare())
                        .filter(share -> share > 0 && share < 1)
                        .map(share -> Values.splitForShare(squint.values(), share))
                        .orElseGet(() -> squint.curve().otsu()));
    }

    /** The pixels as they are, not copied: neither is written to any more. */
    private static BufferedImage image(Picture picture) {
        int[] pixels = picture.pixels();
        DirectColorModel rgb = new DirectColorModel(24, 0xff0000, 0xff00, 0xff);
        WritableRaster raster = Raster.createPackedRaster(
                new DataBufferInt(pixels, pixels.length),
                picture.width(),
                picture.height(),
                picture.width(),
                rgb.getMasks(),
                null);
        return new BufferedImage(rgb, raster, false, null);
    }
}
