package umbercard.photo;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import umbercard.color.MunsellValue;
import umbercard.geometry.Outline;
import umbercard.kernel.EventThread;
import umbercard.model.Mark;
import umbercard.model.Reference;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.model.edit.Edits;
import umbercard.picture.ValueField;

/**
 * Traces the big shapes of a squinted reference into marks that a painter can edit. The framed field is blurred and split
 * into two values; small masses give in to what surrounds them; what is left is outlined by marching squares on the blurred
 * field and fitted with smooth curves. The same field and wish give the same marks on every machine.
 */
public final class FirstPass {
    /** A good height for the framed field, in pixels: finer ones give the same big shapes more slowly. */
    public static final int HEIGHT = 600;

    /** The least share of the frame that a mass may have. */
    static final double LEAST_SHARE = 0.002;

    private static final double TOLERANCE = 0.0015;

    private final Lattice lattice;
    private final Wish wish;
    private final BooleanSupplier stopped;
    private final RingFit fit;

    /**
     * What to trace.
     *
     * @param darkShare the share of the frame that the marks shall leave dark, 0..1; empty follows the split
     * @param split the Munsell value below which the field goes dark, 0..10; empty takes Otsu's, unless a share is wished
     * @param squintSigma the blur's standard deviation as a share of the frame's diagonal, 0..0.5
     * @param masses the most masses of dark and light together, 2 or more
     */
    public record Wish(OptionalDouble darkShare, OptionalDouble split, double squintSigma, int masses) {
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
            if (!(squintSigma >= 0 && squintSigma <= 0.5) || masses < 2) {
                throw new IllegalArgumentException("no such first pass: sigma " + squintSigma + ", masses " + masses);
            }
        }

        /** The split that parts the values best, the usual squint, the usual number of masses. */
        public static Wish usual() {
            return new Wish(OptionalDouble.empty(), OptionalDouble.empty(), SQUINT, MASSES);
        }

        /** The squint and the split of a study's reference; the usual squint where it is not squinted at. */
        public static Wish following(Reference reference) {
            double own = reference.squint().sigma();
            return new Wish(OptionalDouble.empty(), reference.split(), own > 0 ? own : SQUINT, MASSES);
        }

        /** As {@link #usual()}, with a share of dark. */
        public static Wish share(double darkShare) {
            return new Wish(OptionalDouble.of(darkShare), OptionalDouble.empty(), SQUINT, MASSES);
        }

        /** As {@link #usual()}, split at a Munsell value. */
        public static Wish split(double split) {
            return new Wish(OptionalDouble.empty(), OptionalDouble.of(split), SQUINT, MASSES);
        }
    }

    /**
     * What was traced.
     *
     * @param ground dark where more than half is dark, else light: the marks draw the lesser value
     * @param marks in order, with the ids m1, m2, and so on; none crosses itself or leaves the frame
     * @param split the Munsell value that the field was split at
     * @param darkShare the share of the frame that the marks leave dark, 0..1
     */
    public record Traced(Thumbnail.Ground ground, List<Mark> marks, double split, double darkShare) {
        public Traced {
            marks = List.copyOf(marks);
        }

        /**
         * The study with these marks as a further thumbnail; the marks get ids of their own in the study, and the
         * chosen thumbnail's lines and focus come along where it frames the photograph alike. It becomes the
         * chosen one if the chosen one has no marks: a bare card is not what anyone will paint.
         */
        public Study addedTo(Study study, String id, String name) {
            boolean bare = study.chosenThumbnail().map(t -> t.marks().isEmpty()).orElse(true);
            Study longer = Edits.addThumbnail(
                            lined(study, Thumbnail.empty(id, name).withGround(ground)))
                    .apply(study);
            for (Mark mark : marks) {
                longer = Edits.addMark(id, mark.withId(longer.newId("m"))).apply(longer);
            }
            return bare ? Edits.choose(id).apply(longer) : longer;
        }

        /** With the lines and the focus of the chosen thumbnail, if that one frames the photograph alike. */
        private static Thumbnail lined(Study study, Thumbnail traced) {
            return study.chosenThumbnail()
                    .filter(chosen -> chosen.frame().isEmpty())
                    .map(chosen -> traced.withHorizon(chosen.horizon())
                            .withLandEdge(chosen.landEdge())
                            .withWaterline(chosen.waterline())
                            .withFocus(chosen.focus()))
                    .orElse(traced);
        }
    }

    private FirstPass(Lattice lattice, Wish wish, BooleanSupplier stopped) {
        this.lattice = lattice;
        this.wish = wish;
        this.stopped = stopped;
        fit = new RingFit(lattice.ratio(), TOLERANCE);
    }

    /** {@link #trace(ValueField, double, Wish, BooleanSupplier)} in a frame of the field's own proportions. */
    public static Traced trace(ValueField framed, Wish wish, BooleanSupplier stopped) {
        return trace(framed, (double) framed.width() / framed.height(), wish, stopped);
    }

    /**
     * Traces the big shapes. A wished share of dark is met to 0.005 wherever some split comes to it; a mass that appears or
     * gives in whole can make a share that lies between impossible, and then the nearest is taken.
     *
     * @param framed the reference within the frame, {@link #HEIGHT} rows or so
     * @param ratio the frame's exact width divided by its height: the field spans it, rounded to whole pixels
     * @param stopped asked now and then whether to give up
     * @throws CancellationException once {@code stopped} says so
     * @throws IllegalStateException on the event thread
     */
    public static Traced trace(ValueField framed, double ratio, Wish wish, BooleanSupplier stopped) {
        EventThread.refuse("tracing a photograph");
        double diagonal = Math.hypot(ratio, 1) * framed.height();
        ValueField blurred = Squinter.squint(framed, wish.squintSigma() * diagonal);
        FirstPass pass = new FirstPass(new Lattice(blurred, ratio), wish, stopped);
        if (wish.darkShare().isPresent()) {
            double share = wish.darkShare().getAsDouble();
            return new ShareSearch(blurred, pass::trace, pass::share).nearest(share);
        }
        return pass.trace(wish.split().orElseGet(() -> Values.otsu(blurred)));
    }

    /** The marks for a split. */
    private Traced trace(double split) {
        double border = MunsellValue.luminance(split);
        boolean[] dark = dark(border);
        boolean onLight = share(dark, border) <= 0.5;
        List<Ring> rings = Contours.round(lattice, dark, border, onLight);
        List<Mark> marks = marks(rings, onLight ? Mark.Kind.LAY : Mark.Kind.LIFT);
        double marked = 0;
        for (Mark mark : marks) {
            double area = Math.abs(RingFit.area(mark.outline()));
            marked += mark.kind() == Mark.Kind.LAY ? area : -area;
        }
        return new Traced(
                onLight ? Thumbnail.Ground.LIGHT : Thumbnail.Ground.DARK,
                marks,
                split,
                (onLight ? 0 : 1) + marked / lattice.ratio());
    }

    /** The share of dark for a split, before curves are fitted. */
    private double share(double split) {
        double border = MunsellValue.luminance(split);
        return share(dark(border), border);
    }

    private double share(boolean[] dark, double border) {
        double area = 0;
        for (Ring ring : Contours.round(lattice, dark, border, true)) {
            area += ring.area();
        }
        return area / lattice.ratio();
    }

    private boolean[] dark(double border) {
        if (stopped.getAsBoolean()) {
            throw new CancellationException("the first pass was stopped");
        }
        return Masses.dark(lattice, border, wish.masses(), LEAST_SHARE * lattice.ratio());
    }

    /** Larger rings first, so that each lies on what surrounds it. */
    private List<Mark> marks(List<Ring> rings, Mark.Kind outer) {
        Mark.Kind hole = outer == Mark.Kind.LAY ? Mark.Kind.LIFT : Mark.Kind.LAY;
        List<Ring> ordered = new ArrayList<>(rings);
        ordered.sort(Comparator.comparingDouble(ring -> -Math.abs(ring.area())));
        List<Mark> marks = new ArrayList<>();
        for (Ring ring : ordered) {
            Outline outline = fit.outline(ring);
            marks.add(new Mark("m" + (marks.size() + 1), ring.area() > 0 ? outer : hole, outline));
        }
        return marks;
    }
}
