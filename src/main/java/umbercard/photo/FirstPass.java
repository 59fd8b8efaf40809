package umbercard.photo;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleUnaryOperator;
import umbercard.kernel.EventThread;
import umbercard.model.Mark;
import umbercard.model.Reference;
import umbercard.model.Squint;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.model.edit.Edits;
import umbercard.picture.Picture;
import umbercard.picture.ValueField;

/**
 * Traces the big shapes of a squinted reference into marks that a painter can edit. The framed picture is squinted at and split
 * into two values; small masses give in to what surrounds them; what is left is outlined by marching squares on the squinted
 * field and fitted with smooth curves. The same picture and wish give the same marks on every machine.
 */
public final class FirstPass {
    /** A good height for the framed field, in pixels: finer ones give the same big shapes more slowly. */
    public static final int HEIGHT = 600;

    /** The least share of the frame that a mass may have. */
    static final double LEAST_SHARE = 0.002;

    /** A share of dark that is as good as the wished one: 0.2 of a point. */
    private static final double CLOSE = 0.002;

    private static final int CORRECTIONS = 3;

    /** How far a split may be moved to come to a number of masses, and by what steps, in Munsell values. */
    private static final double MASSES_REACH = 2;

    private static final double MASSES_STEP = 0.1;

    private final ValueField blurred;
    private final Tracer tracer;
    private final Wish wish;
    private final double ratio;

    /**
     * What to trace.
     *
     * @param darkShare the share of the frame that the marks shall leave dark, 0..1; empty follows the split
     * @param split the Munsell value below which the field goes dark, 0..10; empty takes Otsu's, unless a share is wished
     * @param squint how the framed picture is squinted at before it is traced
     * @param masses how many masses of dark and light together, 2 or more; empty takes what there is, the largest {@link
     *     #MASSES} at most
     */
    public record Wish(OptionalDouble darkShare, OptionalDouble split, Squint squint, OptionalInt masses) {
        /** The usual blur, as a share of the frame's diagonal. */
        public static final double SQUINT = 0.015;

        public static final int MASSES = 7;

        public Wish {
            if (darkShare.isPresent() && split.isPresent()) {
                throw new IllegalArgumentException("a dark share and a split cannot both be wished");
            }
            if (darkShare.isPresent() && !(darkShare.getAsDouble() >= 0 && darkShare.getAsDouble() <= 1)) {
                throw new IllegalArgumentException("a dark share is 0 to 1: " + darkShare.getAsDouble());
            }
            if (split.isPresent() && !(split.getAsDouble() >= 0 && split.getAsDouble() <= 10)) {
                throw new IllegalArgumentException("a split is a value of 0 to 10: " + split.getAsDouble());
            }
            if (masses.orElse(MASSES) < 2) {
                throw new IllegalArgumentException("there are 2 masses or more: " + masses);
            }
        }

        private int most() {
            return masses.orElse(MASSES);
        }

        /** The split that parts the values best, the usual squint, the largest masses. */
        public static Wish usual() {
            return new Wish(
                    OptionalDouble.empty(), OptionalDouble.empty(), Squint.gaussian(SQUINT), OptionalInt.empty());
        }

        /** The squint and the split of a study's reference; the usual sigma where it is not squinted at. */
        public static Wish following(Reference reference) {
            Squint own = reference.squint();
            Squint squint = own.sigma() > 0 ? own : new Squint(own.way(), SQUINT);
            return new Wish(OptionalDouble.empty(), reference.split(), squint, OptionalInt.empty());
        }

        /** As {@link #usual()}, with a share of dark. */
        public static Wish share(double darkShare) {
            return new Wish(
                    OptionalDouble.of(darkShare), OptionalDouble.empty(), Squint.gaussian(SQUINT), OptionalInt.empty());
        }

        /** As {@link #usual()}, split at a Munsell value. */
        public static Wish split(double split) {
            return new Wish(
                    OptionalDouble.empty(), OptionalDouble.of(split), Squint.gaussian(SQUINT), OptionalInt.empty());
        }
    }

    /**
     * What was traced.
     *
     * @param ground dark where more than half is dark, else light: the marks draw the lesser value
     * @param marks in order, larger before smaller, with the ids m1, m2, and so on; none crosses itself or another. Where
     *     one closes along the frame it runs a hundredth of the frame's height beyond it
     * @param split the Munsell value that the field was split at
     * @param darkShare the share of the frame that the marks leave dark, 0..1
     * @param masses how many connected regions of dark and light there are
     */
    public record Traced(Thumbnail.Ground ground, List<Mark> marks, double split, double darkShare, int masses) {
        public Traced {
            marks = List.copyOf(marks);
        }

        /**
         * The study with these marks as a further thumbnail; the marks get ids of their own in the study. It becomes the
         * chosen one if the chosen one has no marks: a bare card is not what anyone will paint.
         *
         * @param like what frames the photograph as it was traced: its own frame, if it has one, its lines and its focus
         *     come along; empty brings nothing along
         */
        public Study addedTo(Study study, Optional<Thumbnail> like, String id, String name) {
            boolean bare = study.chosenThumbnail().map(t -> t.marks().isEmpty()).orElse(true);
            Study longer = Edits.addThumbnail(framed(like, id, name)).apply(study);
            for (Mark mark : marks) {
                longer = Edits.addMark(id, mark.withId(longer.newId("m"))).apply(longer);
            }
            return bare ? Edits.choose(id).apply(longer) : longer;
        }

        private Thumbnail framed(Optional<Thumbnail> like, String id, String name) {
            Thumbnail empty = Thumbnail.empty(id, name).withGround(ground);
            return like.map(other -> empty.withFrame(other.frame())
                            .withHorizon(other.horizon())
                            .withLandEdge(other.landEdge())
                            .withWaterline(other.waterline())
                            .withFocus(other.focus()))
                    .orElse(empty);
        }
    }

    private FirstPass(ValueField squinted, double ratio, Wish wish, BooleanSupplier stopped) {
        this.blurred = squinted;
        this.wish = wish;
        this.ratio = ratio;
        tracer = new Tracer(squinted, ratio, wish.squint().sigma() * Math.hypot(ratio, 1), stopped);
    }

    /** {@link #trace(Picture, double, Wish, BooleanSupplier)} in a frame of the picture's own proportions. */
    public static Traced trace(Picture framed, Wish wish, BooleanSupplier stopped) {
        return trace(framed, framed.ratio(), wish, stopped);
    }

    /**
     * Traces the big shapes. A wished share of dark is met to {@value #CLOSE}: where no split near by comes to it with the
     * wished number of masses, it takes more of them, and smaller ones if it must. Without a wished share or split, a wished
     * number of masses is met by the split nearest to the one that parts the values best, if one within {@value
     * #MASSES_REACH} comes to it. A wished split stays, and the masses are what there is at it, the wished number at most.
     *
     * @param framed the reference within the frame, {@link #HEIGHT} rows or so
     * @param ratio the frame's exact width divided by its height: the picture spans it, rounded to whole pixels
     * @param stopped asked now and then whether to give up
     * @throws CancellationException once {@code stopped} says so
     * @throws IllegalStateException on the event thread
     */
    public static Traced trace(Picture framed, double ratio, Wish wish, BooleanSupplier stopped) {
        EventThread.refuse("tracing a photograph");
        return trace(CoarseSquint.of(framed, ratio, wish.squint()), ratio, wish, stopped);
    }

    /** The same of what has been squinted at as wished. */
    static Traced trace(ValueField squinted, double ratio, Wish wish, BooleanSupplier stopped) {
        FirstPass pass = new FirstPass(squinted, ratio, wish, stopped);
        if (wish.darkShare().isPresent()) {
            return pass.toShare(wish.darkShare().getAsDouble());
        }
        if (wish.split().isPresent()) {
            return pass.tracer.trace(wish.split().getAsDouble(), pass.limits(wish.most(), 1));
        }
        double best = Values.otsu(squinted);
        return wish.masses().isPresent()
                ? pass.toMasses(wish.most(), best)
                : pass.tracer.trace(best, pass.limits(wish.most(), 1));
    }

    private Masses.Limits limits(int most, double part) {
        return new Masses.Limits(most, part * LEAST_SHARE * ratio);
    }

    private Traced toShare(double wished) {
        ShareSearch search = new ShareSearch(blurred);
        Traced best = toShare(wished, search, limits(wish.most(), 1));
        for (Masses.Limits more : more()) {
            if (Math.abs(best.darkShare() - wished) <= CLOSE) {
                break;
            }
            Traced again = toShare(wished, search, more);
            if (Math.abs(again.darkShare() - wished) < Math.abs(best.darkShare() - wished)) {
                best = again;
            }
        }
        return best;
    }

    /** What to allow where the wished number of masses does not come to a share, the least first. */
    private List<Masses.Limits> more() {
        int most = wish.most();
        return List.of(
                limits(most + 2, 1),
                limits(2 * most + 4, 1),
                limits(Integer.MAX_VALUE, 1),
                limits(Integer.MAX_VALUE, 0));
    }

    private Traced toShare(double wished, ShareSearch search, Masses.Limits limits) {
        Map<Double, Double> known = new HashMap<>();
        DoubleUnaryOperator shareAt = split ->
                known.computeIfAbsent(split, at -> tracer.masses(at, limits).darkShare());
        double aim = wished;
        Traced last = tracer.trace(search.nearest(aim, shareAt).split(), limits);
        Traced best = last;
        for (int i = 0; i < CORRECTIONS && isWorthCorrecting(wished - last.darkShare()); i++) {
            // The curves' own small error is made up for by aiming beside the mark.
            aim = Math.min(1, Math.max(0, aim + wished - last.darkShare()));
            last = tracer.trace(search.nearest(aim, shareAt).split(), limits);
            if (Math.abs(last.darkShare() - wished) < Math.abs(best.darkShare() - wished)) {
                best = last;
            }
        }
        return best;
    }

    private static boolean isWorthCorrecting(double off) {
        return Math.abs(off) > CLOSE / 4 && Math.abs(off) < 5 * CLOSE;
    }

    private Traced toMasses(int wished, double best) {
        double split = best;
        Masses.Limits limits = limits(wished, 1);
        int nearest = Integer.MAX_VALUE;
        for (int i = 0; i * MASSES_STEP <= MASSES_REACH && nearest > 0; i++) {
            for (int side = -1; side <= (i == 0 ? -1 : 1); side += 2) {
                double at = Math.min(10, Math.max(0, best + side * i * MASSES_STEP));
                int off = Math.abs(tracer.masses(at, limits).count() - wished);
                if (off < nearest) {
                    nearest = off;
                    split = at;
                }
            }
        }
        return tracer.trace(split, limits);
    }
}
