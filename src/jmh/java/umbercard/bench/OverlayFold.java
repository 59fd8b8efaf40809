package umbercard.bench;

import java.awt.geom.PathIterator;
import java.util.IdentityHashMap;
import org.locationtech.jts.awt.ShapeReader;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import umbercard.desk.canvas.Shapes;
import umbercard.geometry.Moments;
import umbercard.geometry.Outline;
import umbercard.model.Mark;
import umbercard.model.Thumbnail;

/** A baseline: polygons of the flattened marks overlaid one after the other. Each mark's own polygon is kept. */
final class OverlayFold implements Method.Folds {
    /** In frame units. */
    private static final double FLATNESS = 1e-4;

    private final GeometryFactory factory = new GeometryFactory();
    private final IdentityHashMap<Outline, Geometry> known = new IdentityHashMap<>();

    @Override
    public Figures of(Thumbnail thumbnail, double ratio) {
        Geometry frame = factory.toGeometry(new Envelope(0, ratio, 0, 1));
        Geometry dark = thumbnail.ground() == Thumbnail.Ground.DARK ? frame : factory.createPolygon();
        for (Mark mark : thumbnail.marks()) {
            Geometry shape = known.computeIfAbsent(mark.outline(), outline -> polygon(outline, frame));
            int operation = mark.kind() == Mark.Kind.LAY ? OverlayNG.UNION : OverlayNG.DIFFERENCE;
            dark = OverlayNGRobust.overlay(dark, shape, operation);
        }
        double area = dark.getArea();
        Moments moments = area == 0
                ? Moments.ZERO
                : new Moments(
                        area,
                        area * dark.getCentroid().getX(),
                        area * dark.getCentroid().getY(),
                        0,
                        0,
                        0);
        return new Figures(area / ratio, moments, dark.getNumGeometries());
    }

    private Geometry polygon(Outline outline, Geometry frame) {
        PathIterator flat = Shapes.of(outline).getPathIterator(null, FLATNESS);
        Geometry fixed = GeometryFixer.fix(ShapeReader.read(flat, factory));
        return OverlayNGRobust.overlay(fixed, frame, OverlayNG.INTERSECTION);
    }
}
