package umbercard.bench;

import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import umbercard.desk.canvas.Shapes;
import umbercard.geometry.Moments;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.model.Mark;
import umbercard.model.Thumbnail;

/** A baseline: the areas of the drawn curves added and subtracted one after the other. Each mark's own area is kept. */
final class AreaFold implements Method.Folds {
    /** In frame units, where the result is measured. */
    private static final double FLATNESS = 1e-4;

    private final IdentityHashMap<Outline, Area> known = new IdentityHashMap<>();

    @Override
    public Figures of(Thumbnail thumbnail, double ratio) {
        Area frame = new Area(new Rectangle2D.Double(0, 0, ratio, 1));
        Area dark = thumbnail.ground() == Thumbnail.Ground.DARK ? new Area(frame) : new Area();
        for (Mark mark : thumbnail.marks()) {
            Area area = known.computeIfAbsent(mark.outline(), outline -> area(outline, frame));
            if (mark.kind() == Mark.Kind.LAY) {
                dark.add(area);
            } else {
                dark.subtract(area);
            }
        }
        return figures(dark, ratio);
    }

    private static Area area(Outline outline, Area frame) {
        Path2D shape = Shapes.of(outline);
        Area area = new Area(shape);
        area.intersect(frame);
        return area;
    }

    /** Rings that run one way are pieces, those that run the other are holes. */
    private static Figures figures(Area dark, double ratio) {
        Moments sum = Moments.ZERO;
        int left = 0;
        int right = 0;
        List<Point> ring = new ArrayList<>();
        double[] at = new double[6];
        for (PathIterator path = dark.getPathIterator(null, FLATNESS); !path.isDone(); path.next()) {
            if (path.currentSegment(at) == PathIterator.SEG_CLOSE) {
                Moments moments = moments(ring);
                sum = sum.plus(moments);
                left += moments.area() > 0 ? 1 : 0;
                right += moments.area() < 0 ? 1 : 0;
                ring.clear();
            } else {
                ring.add(new Point(at[0], at[1]));
            }
        }
        boolean turned = sum.area() < 0;
        Moments moments = turned ? sum.times(-1) : sum;
        return new Figures(moments.area() / ratio, moments, turned ? right : left);
    }

    /** Signed area and first moments of a ring of straight sides. */
    private static Moments moments(List<Point> ring) {
        double area = 0;
        double x = 0;
        double y = 0;
        for (int i = 0; i < ring.size(); i++) {
            Point from = ring.get(i);
            Point to = ring.get((i + 1) % ring.size());
            double cross = (from.x() * to.y() - to.x() * from.y()) / 2;
            area += cross;
            x += cross * (from.x() + to.x()) / 3;
            y += cross * (from.y() + to.y()) / 3;
        }
        return new Moments(area, x, y, 0, 0, 0);
    }
}
