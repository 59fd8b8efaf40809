package umbercard.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static umbercard.geometry.Shapes.arc;
import static umbercard.geometry.Shapes.ellipse;
import static umbercard.geometry.Shapes.joined;
import static umbercard.geometry.Shapes.polygon;
import static umbercard.geometry.Shapes.star;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The published and derived areas and moments of geometry_checks.csv; sources are named in its rows. */
class GeometryChecksTest {
    private static final double K = 0.5522847498;
    private static final double PI = Math.PI;

    /** Outlines by shape and parameters: an outer one, then holes. */
    private static final Map<String, List<Outline>> DRAWN = new TreeMap<>();

    static {
        draw("circle", "r=1 at (0,0)", ellipse(0, 0, 1, 1, 64));
        draw("circle", "r=2.5 at (3,-1)", ellipse(3, -1, 2.5, 2.5, 64));
        draw("ellipse", "a=3 b=2 at (0,0)", ellipse(0, 0, 3, 2, 64));
        draw("semicircle", "r=1, y >= 0", joined(arc(0, 0, 1, 0, PI, 32)));
        draw("quarter disc", "r=1, x,y >= 0", joined(arc(0, 0, 1, 0, PI / 2, 16), List.of(Node.sharp(0, 0))));
        draw(
                "circular sector",
                "r=1, half-angle 30 deg about +x",
                joined(arc(0, 0, 1, -PI / 6, PI / 6, 16), List.of(Node.sharp(0, 0))));
        draw("circular segment", "r=1, half-angle 60 deg about +x", joined(arc(0, 0, 1, -PI / 3, PI / 3, 32)));
        draw("annulus", "R=2 r=1", ellipse(0, 0, 2, 2, 64), ellipse(0, 0, 1, 1, 64));
        draw(
                "annulus, off-centre hole",
                "R=2 at 0; hole r=0.5 at (1,0)",
                ellipse(0, 0, 2, 2, 64),
                ellipse(1, 0, .5, .5, 64));
        draw("lens of two circles (vesica piscis)", "r=R=1, d=1, centres (0,0),(1,0)", lens(1, 1, 1));
        draw("lens of two circles", "R=2 at (0,0), r=1.5 at (2,0)", lens(2, 1.5, 2));
        for (int n : new int[] {3, 4, 5, 6, 8, 12}) {
            draw("regular " + n + "-gon", "circumradius 1, vertex on +x", star(n, 1));
        }
        draw("triangle", "(0,0) (4,0) (1,3)", polygon(0, 0, 4, 0, 1, 3));
        draw("rectangle", "6 x 4 at (0,0)", Outline.rectangle(0, 0, 6, 4));
        draw("trapezoid", "bottom 5, top 3, height 2: (0,0) (5,0) (4,2) (1,2)", polygon(0, 0, 5, 0, 4, 2, 1, 2));
        draw("L shape", "4x4 less the upper right 3x3", polygon(0, 0, 4, 0, 4, 1, 1, 1, 1, 4, 0, 4));
        double h = Math.sqrt(.5);
        draw(
                "quarter turn of a rectangle (45 deg)",
                "2 x 1 rotated 45 deg about its centre at (0,0)",
                polygon(-1, -.5, 1, -.5, 1, .5, -1, .5)
                        .mapped(p -> new Point(h * (p.x() - p.y()), h * (p.x() + p.y()))));
        draw(
                "Reuleaux triangle",
                "width 1 on (0,0) (1,0) (1/2, sqrt3/2)",
                joined(
                        arc(0, 0, 1, 0, PI / 3, 16),
                        arc(1, 0, 1, 2 * PI / 3, PI, 16),
                        arc(.5, Math.sqrt(.75), 1, 4 * PI / 3, 5 * PI / 3, 16)));
        draw("parabolic segment", "y = 1 - x^2, y >= 0", quadratic(1, 0, 0, 2, -1, 0));
        draw("quadratic Bezier cap", "(0,0) (1,2) (2,0), closed by the x axis", quadratic(0, 0, 1, 2, 2, 0));
        draw(
                "cubic Bezier quarter circle",
                "k=0.5522847498: (1,0) (1,k) (k,1) (0,1), closed through (0,0)",
                joined(quarter(1, 0, 0, 1), List.of(Node.sharp(0, 0))));
        draw(
                "cubic Bezier full circle",
                "four quarters, k=0.5522847498",
                joined(quarter(1, 0, 0, 1), quarter(0, 1, -1, 0), quarter(-1, 0, 0, -1), quarter(0, -1, 1, 0)));
        draw("bow-tie polygon (crosses itself)", "(0,0) (2,2) (2,0) (0,2)", polygon(0, 0, 2, 2, 2, 0, 0, 2));
        draw("pentagram {5/2}", "circumradius 1", star(5, 2));
    }

    private static void draw(String shape, String parameters, Outline... outlines) {
        DRAWN.put(shape + "; " + parameters, List.of(outlines));
    }

    private static Outline lens(double left, double right, double apart) {
        double x = (apart * apart + left * left - right * right) / (2 * apart);
        double a = Math.acos(x / left);
        double b = Math.acos((apart - x) / right);
        return joined(arc(0, 0, left, -a, a, 32), arc(apart, 0, right, PI - b, PI + b, 32));
    }

    private static Outline quadratic(double ax, double ay, double bx, double by, double cx, double cy) {
        Point a = new Point(ax, ay);
        Point b = new Point(bx, by);
        Point c = new Point(cx, cy);
        return new Outline(
                List.of(new Node(a, a, a.toward(b, 2.0 / 3), false), new Node(c, c.toward(b, 2.0 / 3), c, false)));
    }

    private static List<Node> quarter(double ax, double ay, double bx, double by) {
        Point a = new Point(ax, ay);
        Point b = new Point(bx, by);
        return List.of(
                new Node(a, a, new Point(ax + K * bx, ay + K * by), true),
                new Node(b, new Point(bx + K * ax, by + K * ay), b, true));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvFileSource(resources = "geometry_checks.csv", numLinesToSkip = 1)
    void everyShapeHasItsPublishedMoments(
            String shape, String parameters, double area, Double cx, Double cy, Double ix, Double iy, Double ixy) {
        List<Outline> outlines = DRAWN.get(shape + "; " + parameters);
        assertThat(outlines).as("an outline for the row").isNotNull();

        Moments moments = outlines.get(0).moments();
        for (Outline hole : outlines.subList(1, outlines.size())) {
            moments = moments.plus(hole.moments().times(-1));
        }

        close("area", moments.area(), area, 1e-9);
        if (cx != null && cy != null) {
            close("cx", moments.x(), cx * area, 1e-9);
            close("cy", moments.y(), cy * area, 1e-9);
        }
        if (ix != null && iy != null && ixy != null) {
            close("Ix", moments.central().yy(), ix, 1e-9);
            close("Iy", moments.central().xx(), iy, 1e-9);
            close("Ixy", moments.central().xy(), ixy, 1e-9);
        }
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvFileSource(resources = "geometry_checks.csv", numLinesToSkip = 1)
    void everyRegionHasThePublishedMomentsToTheGrid(
            String shape,
            String parameters,
            double area,
            Double cx,
            Double cy,
            Double ix,
            Double iy,
            Double ixy,
            double perimeter) {
        Region region = Region.evenOdd(DRAWN.get(shape + "; " + parameters));
        if (ix == null || iy == null || ixy == null || cx == null || cy == null) {
            return;
        }

        Moments moments = region.moments();
        close("area", region.area(), area, perimeter * 0x1p-31);
        close("area", moments.area(), area, perimeter * 0x1p-31);
        close("cx", moments.x(), cx * area, 2e-8);
        close("cy", moments.y(), cy * area, 2e-8);
        close("Ix", moments.central().yy(), ix, 1e-6);
        close("Iy", moments.central().xx(), iy, 1e-6);
        close("Ixy", moments.central().xy(), ixy, 1e-6);
        close("perimeter", region.perimeter(), perimeter, 1e-5);
    }

    private static void close(String what, double actual, double expected, double tolerance) {
        assertThat(actual).as(what).isCloseTo(expected, within(tolerance * Math.max(1, Math.abs(expected))));
    }
}
