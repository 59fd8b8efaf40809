package umbercard.photo;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import umbercard.color.MunsellValue;
import umbercard.geometry.Outline;
import umbercard.model.Mark;
import umbercard.model.Thumbnail;
import umbercard.picture.ValueField;

/** Traces one squinted field at one split or another. */
final class Tracer {
    /** How far an outline may stray from where the field crosses the split, as a share of the blur's sigma. */
    private static final double STRAY = 0.15;

    /** The same at least and at most, in frame units: half a pixel of the notan card on a screen, and half a millimeter
     * or less on an index card. */
    private static final double LEAST_STRAY = 0.001;

    private static final double MOST_STRAY = 0.004;

    private final Lattice lattice;
    private final BooleanSupplier stopped;
    private final RingFit fit;

    /**
     * @param sigma of the blur, in frame units
     * @param stopped asked before each look at a split whether to give up
     */
    Tracer(ValueField blurred, double ratio, double sigma, BooleanSupplier stopped) {
        lattice = new Lattice(blurred, ratio);
        this.stopped = stopped;
        fit = new RingFit(ratio, Math.min(MOST_STRAY, Math.max(LEAST_STRAY, STRAY * sigma)));
    }

    /** The masses at a split. */
    Masses masses(double split, Masses.Limits limits) {
        if (stopped.getAsBoolean()) {
            throw new CancellationException("the first pass was stopped");
        }
        double border = MunsellValue.luminance(split);
        return Masses.of(Necks.without(lattice, border), border, limits);
    }

    /** The marks at a split. */
    FirstPass.Traced trace(double split, Masses.Limits limits) {
        Masses masses = masses(split, limits);
        boolean onLight = masses.darkShare() <= 0.5;
        List<Ring> rings = new ArrayList<>(
                Contours.round(masses.lattice(), masses.dark(), MunsellValue.luminance(split), onLight));
        // Larger rings first, so that each lies on what surrounds it.
        rings.sort(Comparator.comparingDouble(ring -> -Math.abs(ring.area())));
        List<Outline> outlines = fit.outlines(rings);
        Mark.Kind outer = onLight ? Mark.Kind.LAY : Mark.Kind.LIFT;
        Mark.Kind hole = onLight ? Mark.Kind.LIFT : Mark.Kind.LAY;
        List<Mark> marks = new ArrayList<>();
        double marked = 0;
        for (int i = 0; i < rings.size(); i++) {
            Mark.Kind kind = rings.get(i).area() > 0 ? outer : hole;
            double area = Math.abs(RingFit.area(outlines.get(i)));
            marked += kind == Mark.Kind.LAY ? area : -area;
            marks.add(new Mark("m" + (i + 1), kind, Overrun.of(outlines.get(i), lattice.ratio())));
        }
        return new FirstPass.Traced(
                onLight ? Thumbnail.Ground.LIGHT : Thumbnail.Ground.DARK,
                marks,
                split,
                (onLight ? 0 : 1) + marked / lattice.ratio(),
                masses.count());
    }
}
