package umbercard.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.valid.IsValidOp;

/** Laws of areas, and agreement with {@link Rows}, on random strokes, near-copies, slivers, spikes and shared edges. */
class RegionPropertyTest {
    private static final double WIDTH = 1.35;
    private static final int ROWS = 50;

    private static Outline any(Random random) {
        return switch (random.nextInt(3)) {
            case 0 -> Strokes.blob(random, 3 + random.nextInt(30), .05 + .5 * random.nextDouble());
            case 1 -> Strokes.wandering(random, 3 + random.nextInt(60), .05 + random.nextDouble());
            default -> Strokes.awkward(random);
        };
    }

    /** Another drawing, or a near-copy of the one given. */
    private static Outline another(Outline one, Random random) {
        return random.nextInt(3) > 0
                ? any(random)
                : Strokes.shaken(one, random, Math.pow(10, -4 - 8 * random.nextDouble()));
    }

    @Property(seed = "7")
    void aStrokeFillsWhatItsRowsFill(@ForAll long seed) {
        Outline stroke = any(new Random(seed));

        sameRows(Region.of(stroke), List.of(stroke), seed);
    }

    @Property(seed = "8")
    void strokesTogetherFillByTheSumOfTheirWindings(@ForAll long seed) {
        Random random = new Random(seed);
        List<Outline> all = new ArrayList<>(List.of(any(random)));
        for (int i = 0; i < 4; i++) {
            all.add(another(all.get(0), random));
        }

        sameRows(Region.of(all), all, seed);
    }

    @Property(seed = "9")
    void areasObeyTheLawsOfSets(@ForAll long seed) {
        Random random = new Random(seed);
        Outline first = any(random);
        Region a = Region.of(first);
        Region b = Region.of(another(first, random));
        double off = 0x1p-30 * (a.perimeter() + b.perimeter());

        double both = a.intersect(b).area();
        assertThat(a.union(b).area() + both).isCloseTo(a.area() + b.area(), within(off));
        assertThat(a.minus(b).area() + both).isCloseTo(a.area(), within(off));
        assertThat(a.minus(b).union(a.intersect(b)).area()).isCloseTo(a.area(), within(2 * off));
        assertThat(a.minus(b).intersect(b).area()).isLessThan(off);
        assertThat(b.union(a).area()).isCloseTo(a.union(b).area(), within(off));
        assertThat(a.union(a).area()).isEqualTo(a.area());
        assertThat(a.minus(a).isEmpty()).isTrue();
    }

    @Property(seed = "10")
    void turningAndScalingKeepTheLaws(@ForAll long seed) {
        Outline stroke = any(new Random(seed));
        Region region = Region.of(stroke);
        double off = 4e-8 * (1 + region.perimeter());

        assertThat(Region.of(stroke.mapped(p -> new Point(WIDTH - p.x(), p.y())))
                        .area())
                .isCloseTo(region.area(), within(off));
        assertThat(Region.of(Shapes.reversed(stroke)).area()).isCloseTo(region.area(), within(off));
        assertThat(Region.of(stroke.mapped(p -> new Point(2 * p.x(), 2 * p.y())))
                        .area())
                .isCloseTo(4 * region.area(), within(4 * off));
    }

    /** By the overlay library's own check of polygons, which shares nothing with our sweep. */
    @Property(seed = "11")
    void everyPieceIsAValidPolygonApartFromTheOthers(@ForAll long seed) {
        Random random = new Random(seed);
        Outline first = any(random);
        Region a = Region.of(first);
        Region b = Region.of(another(first, random));
        for (Region region : List.of(a, a.union(b), a.minus(b), a.intersect(b))) {
            GeometryFactory factory = new GeometryFactory();
            List<Polygon> polygons = new ArrayList<>();
            for (Region piece : region.pieces()) {
                LinearRing[] rings = piece.outlines().stream()
                        .map(ring -> ring(factory, ring))
                        .toArray(LinearRing[]::new);
                LinearRing[] holes = List.of(rings).subList(1, rings.length).toArray(new LinearRing[0]);
                polygons.add(factory.createPolygon(rings[0], holes));
            }
            Geometry all = factory.createMultiPolygon(polygons.toArray(new Polygon[0]));
            assertThat(new IsValidOp(all).getValidationError())
                    .as("seed " + seed)
                    .isNull();
        }
    }

    private static LinearRing ring(GeometryFactory factory, Outline outline) {
        List<Coordinate> all = new ArrayList<>();
        outline.nodes()
                .forEach(node -> all.add(new Coordinate(node.at().x(), node.at().y())));
        all.add(all.get(0));
        return factory.createLinearRing(all.toArray(new Coordinate[0]));
    }

    @Property(seed = "12")
    void pointsAreInsideWhereTheRowSaysSo(@ForAll long seed) {
        Random random = new Random(seed);
        Outline stroke = any(random);
        Region region = Region.of(stroke);
        for (int i = 0; i < 20; i++) {
            double x = random.nextDouble() * WIDTH;
            double y = random.nextDouble();
            List<Rows.Span> spans = Rows.filled(List.of(stroke), y);
            boolean near = spans.stream().anyMatch(s -> Math.abs(s.from() - x) < .01 || Math.abs(s.to() - x) < .01);
            boolean inside = spans.stream().anyMatch(span -> span.from() < x && x < span.to());
            assertThat(near || region.contains(new Point(x, y)) == inside).isTrue();
        }
    }

    private static void sameRows(Region region, List<Outline> drawn, long seed) {
        Random random = new Random(seed);
        List<Outline> rings = region.outlines();
        boolean straight = drawn.stream().flatMap(o -> o.segments().stream()).allMatch(Cubic::isLine);
        double off = 0;
        for (int i = 0; i < ROWS; i++) {
            double y = random.nextDouble();
            double expected = Rows.length(Rows.filled(drawn, y), WIDTH);
            double actual = Rows.length(Rows.filled(rings, y), WIDTH);
            assertThat(actual).as("row %s of seed %s", y, seed).isCloseTo(expected, within(5e-3));
            off += Math.abs(actual - expected) / ROWS;
        }
        // A curve's polygon swings to both sides of it by up to the tolerance of flattening, so rows differ more than
        // areas.
        assertThat(off).as("mean over rows, seed %s", seed).isLessThan(straight ? 1e-7 : 2e-4);
    }
}
