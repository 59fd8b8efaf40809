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
 *
 * <p>What is shown on many rows would lag behind a hand that moves a rule. It is made at half its size first, or half of that,
 * and exactly once nothing newer is wanted.
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

        /** At its size, or as often halved as a move has time for. */
        private Wanted inTime() {
            int rows = height;
            while (rows > rowsAtOnce()) {
                rows /= 2;
            }
            return new Wanted(photograph, frame, ratio, rows, squint, seenAs, split, design);
        }

        /** Rows of a picture that 99 of 100 moves are through with in a frame's time, by the table of src/docs/benchmarks.md. */
        private int rowsAtOnce() {
            return switch (SquintWay.of(squint)) {
                case GAUSSIAN -> seenAs == SeenAs.COLOR ? 600 : 800;
                case KEEPING_EDGES -> 300;
            };
        }

        private boolean isInTime() {
            return height <= rowsAtOnce();
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

    private record Colored(Picture framed, Squint squint, SquintPyramid.Colors colors) {}

    /** What is wanted, and whether at its own size. */
    private record Asked(Optional<Wanted> wanted, boolean exact) {
        static Asked first(Optional<Wanted> wanted) {
            return new Asked(wanted, wanted.filter(some -> !some.isInTime()).isEmpty());
        }
    }

    /** The steps done last at one size. */
    private static final class Steps {
        Optional<Framed> framed = Optional.empty();
        Optional<Squinted> squinted = Optional.empty();
        Optional<Colored> colored = Optional.empty();
    }

    private record Shown(Wanted wanted, boolean exact, Seen seen) {}

    /** What came of asking; without anything seen where nothing was wanted, or it could not be made. */
    private record Answer(Asked asked, Optional<Seen> seen) {}

    private final Latest<Asked, Answer> latest;
    private final Runnable changed;

    // Used on the background thread only.
    private final HatchFold folds = new HatchFold(Eye.DEFAULT);
    private Steps coarse = new Steps();
    private Steps exact = new Steps();
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
        latest.ask(Asked.first(wanted));
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

    /** Whether what is shown is exactly what was asked for last. */
    boolean isSettled() {
        return shown.map(Shown::wanted).equals(asked) && shown.map(Shown::exact).orElse(true);
    }

    private void show(Answer answer) {
        Optional<Wanted> wanted = answer.asked().wanted();
        Optional<Shown> made = wanted.filter(this::isOfWanted)
                .flatMap(some ->
                        answer.seen().map(seen -> new Shown(some, answer.asked().exact(), seen)));
        if (made.isPresent()) {
            shown = made;
            if (!answer.asked().exact() && asked.equals(wanted)) {
                latest.ask(new Asked(wanted, true));
            }
            changed.run();
        } else if (asked.equals(wanted)) {
            // Not told: showing anew would ask at once for what has just failed.
            shown = shown.map(last -> new Shown(last.wanted(), true, last.seen()));
            asked = shown.map(Shown::wanted);
        }
    }

    private Answer make(Asked question, BooleanSupplier stopped) {
        Optional<Wanted> wanted = question.wanted();
        if (wanted.isEmpty()) {
            forget();
            failed = Optional.empty();
            return new Answer(question, Optional.empty());
        }
        try {
            return new Answer(question, wanted.map(some -> made(some, question.exact(), stopped)));
        } catch (RuntimeException | OutOfMemoryError failure) {
            forget();
            if (!failed.equals(wanted)) {
                LOG.log(Level.WARNING, "no picture of the reference", failure);
            }
            failed = wanted;
            return new Answer(question, Optional.empty());
        }
    }

    private Seen made(Wanted wanted, boolean exactly, BooleanSupplier stopped) {
        if (wanted.isInTime()) {
            coarse = new Steps();
        }
        return exactly ? seen(wanted, exact, stopped) : seen(wanted.inTime(), coarse, stopped);
    }

    private void forget() {
        coarse = new Steps();
        exact = new Steps();
    }

    private Seen seen(Wanted wanted, Steps steps, BooleanSupplier stopped) {
        Framed frame = steps.framed.filter(f -> f.wanted().framesLike(wanted)).orElseGet(() -> framed(wanted));
        steps.framed = Optional.of(frame);
        Squint asked = stopped.getAsBoolean() ? Squint.gaussian(0) : wanted.squint();
        if (wanted.seenAs() == SeenAs.COLOR) {
            SquintPyramid.Colors colors = colors(frame, asked, steps);
            return new Seen(image(colors.picture()), frame.picture(), colors.curve(), OptionalDouble.empty());
        }
        Squinted squint = steps.squinted
                .filter(s -> s.framed().equals(frame.picture()))
                .filter(s -> s.squint().equals(asked))
                .orElseGet(() -> squinted(frame, asked));
        steps.squinted = Optional.of(squint);
        OptionalDouble split =
                wanted.seenAs().splits() ? OptionalDouble.of(split(wanted, squint)) : OptionalDouble.empty();
        return new Seen(image(picture(wanted, squint, split)), frame.picture(), squint.curve(), split);
    }

    private static Picture picture(Wanted wanted, Squinted squint, OptionalDouble split) {
        return switch (wanted.seenAs()) {
            case COLOR, GRAY -> Values.gray(squint.values());
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

    private static SquintPyramid.Colors colors(Framed frame, Squint squint, Steps steps) {
        Colored colors = steps.colored
                .filter(c -> c.framed().equals(frame.picture()))
                .filter(c -> c.squint().equals(squint))
                .orElseGet(() -> new Colored(
                        frame.picture(), squint, frame.pyramid().colors(SquintWay.of(squint), sigma(frame, squint))));
        steps.colored = Optional.of(colors);
        return colors.colors();
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
