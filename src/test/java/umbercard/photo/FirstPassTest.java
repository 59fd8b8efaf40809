package umbercard.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowable;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleBinaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import umbercard.color.MunsellValue;
import umbercard.geometry.Cubic;
import umbercard.geometry.Node;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.model.Mark;
import umbercard.model.Squint;
import umbercard.model.Thumbnail;
import umbercard.notan.Design;
import umbercard.notan.Fold;
import umbercard.photo.FirstPass.Traced;
import umbercard.photo.FirstPass.Wish;
import umbercard.picture.ValueField;

class FirstPassTest {
    private static final double RATIO = 1.5;

    /** The split in the middle of the soft edges made here. */
    private static final OptionalDouble EDGE = OptionalDouble.of(MunsellValue.ofLuminance(0.45));

    @Test
    void laysAnOutlineRoundADarkDisc() {
        Traced traced = trace(soft((x, y) -> 0.25 - Math.hypot(x - 0.7, y - 0.5)), sharp());
        assertThat(traced.ground()).isEqualTo(Thumbnail.Ground.LIGHT);
        assertThat(traced.marks()).extracting(Mark::kind).containsExactly(Mark.Kind.LAY);
        assertThat(traced.marks()).extracting(Mark::id).containsExactly("m1");
        Outline outline = traced.marks().get(0).outline();
        assertThat(outline.nodes()).hasSizeBetween(3, 16).allSatisfy(node -> {
            assertThat(node.at().distance(new Point(0.7, 0.5))).isCloseTo(0.25, within(0.004));
            assertThat(node.round()).isTrue();
        });
        assertThat(traced.darkShare()).isCloseTo(Math.PI * 0.0625 / RATIO, within(0.002));
    }

    @Test
    void closesALandscapeBeyondTheFrame() {
        double ratio = 11.5 / 8.5;
        ValueField field = Fields.of(
                (int) Math.round(200 * ratio), 200, (x, y) -> dark(y - 0.6 - 0.06 * Math.sin(5 * x) - 0.02 * x));
        Traced traced = trace(field, ratio, sharp(), () -> false);
        List<Point> places =
                traced.marks().get(0).outline().nodes().stream().map(Node::at).toList();
        assertThat(traced.marks()).hasSize(1);
        double out = Overrun.WIDTH;
        assertThat(places).contains(new Point(-out, 1 + out), new Point(ratio + out, 1 + out));
        assertThat(places).filteredOn(place -> place.x() == 0).hasSize(1);
        assertThat(places).filteredOn(place -> place.x() == -out).hasSize(2);
        assertThat(places).filteredOn(place -> place.x() == ratio).hasSize(1);
        assertThat(places).filteredOn(place -> place.x() == ratio + out).hasSize(2);
        assertThat(places).filteredOn(place -> place.y() == 1).isEmpty();
        assertThat(fold(traced, ratio).darkShare()).isCloseTo(traced.darkShare(), within(1e-5));
        assertThat(places)
                .filteredOn(place -> place.x() > 0 && place.x() < ratio)
                .hasSizeBetween(2, 20)
                .allSatisfy(place -> assertThat(place.y())
                        .isCloseTo(0.6 + 0.06 * Math.sin(5 * place.x()) + 0.02 * place.x(), within(0.006)));
    }

    @Test
    void liftsTheHoleOfARing() {
        Traced traced = trace(soft((x, y) -> 0.08 - Math.abs(Math.hypot(x - 0.7, y - 0.5) - 0.3)), sharp());
        assertThat(traced.marks()).extracting(Mark::kind).containsExactly(Mark.Kind.LAY, Mark.Kind.LIFT);
        assertThat(traced.darkShare()).isCloseTo(Math.PI * (0.38 * 0.38 - 0.22 * 0.22) / RATIO, within(0.003));
        assertThat(traced.darkShare()).isCloseTo(fold(traced, RATIO).darkShare(), within(1e-5));
    }

    @Test
    void liftsFromADarkCardWhereMostIsDark() {
        Traced traced = trace(soft((x, y) -> Math.abs(Math.hypot(x - 0.7, y - 0.5) - 0.3) - 0.08), sharp());
        assertThat(traced.ground()).isEqualTo(Thumbnail.Ground.DARK);
        assertThat(traced.marks()).extracting(Mark::kind).containsExactly(Mark.Kind.LIFT, Mark.Kind.LAY);
        assertThat(traced.darkShare()).isCloseTo(fold(traced, RATIO).darkShare(), within(1e-5));
        assertThat(traced.darkShare()).isCloseTo(1 - Math.PI * (0.38 * 0.38 - 0.22 * 0.22) / RATIO, within(0.003));
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 5, 9})
    void keepsTheLargestMassesOnly(int masses) {
        // Eight discs, each a little larger than the one before.
        ValueField field = soft((x, y) -> {
            int column = Math.min(3, (int) (x / 0.375));
            int row = y < 0.5 ? 0 : 1;
            double radius = 0.05 + 0.012 * (column + 4 * row);
            return radius - Math.hypot(x - 0.1875 - 0.375 * column, y - 0.25 - 0.5 * row);
        });
        Traced traced =
                trace(field, new Wish(OptionalDouble.empty(), EDGE, Squint.gaussian(0.002), OptionalInt.of(masses)));
        assertThat(traced.marks()).hasSize(masses - 1);
        double area = 0;
        for (int i = 7; i > 8 - masses; i--) {
            area += Math.PI * (0.05 + 0.012 * i) * (0.05 + 0.012 * i);
        }
        assertThat(traced.darkShare()).isCloseTo(area / RATIO, within(0.003));
    }

    @Test
    void dropsWhatIsTooSmallToSee() {
        // A disc of 0.1 % of the frame, beside one of 0.5 %.
        double small = Math.sqrt(0.001 * RATIO / Math.PI);
        double large = Math.sqrt(0.005 * RATIO / Math.PI);
        ValueField field =
                soft((x, y) -> Math.max(small - Math.hypot(x - 0.4, y - 0.5), large - Math.hypot(x - 1.1, y - 0.5)));
        Traced traced =
                trace(field, new Wish(OptionalDouble.empty(), EDGE, Squint.gaussian(0.001), OptionalInt.of(100)));
        assertThat(traced.marks()).hasSize(1);
        assertThat(traced.darkShare()).isCloseTo(0.005, within(5e-4));
    }

    @Test
    void squintsNoiseIntoAFewBigShapes() {
        ValueField noise = Fields.noise(300, 200, 6);
        ValueField field = Fields.of(300, 200, (x, y) -> {
            boolean black = noise.at((int) (x * 200), (int) (y * 200)) < (y > 0.4 + 0.2 * x ? 0.8 : 0.2);
            return black ? 0.01 : 0.8;
        });
        Traced traced = trace(field, Wish.usual());
        assertThat(traced.marks()).hasSizeBetween(1, 6);
        assertThat(traced.darkShare()).isCloseTo(1 - (0.4 + 0.2 * 0.75), within(0.03));
    }

    @Property(tries = 12, seed = "21")
    void agreesWithTheSplitField(@ForAll @IntRange(max = 100_000) int seed) {
        ValueField field = Fields.smooth(240, 160, seed);
        Traced traced = trace(
                field,
                new Wish(OptionalDouble.empty(), OptionalDouble.empty(), Squint.gaussian(0.004), OptionalInt.of(40)));
        Design design = fold(traced, RATIO);
        double border = MunsellValue.luminance(traced.split());
        int agree = 0;
        int all = 0;
        for (int y = 0; y < 160; y += 2) {
            for (int x = 0; x < 240; x += 2) {
                boolean dark = design.dark().contains(new Point((x + 0.5) / 160, (y + 0.5) / 160));
                agree += dark == field.at(x, y) < border ? 1 : 0;
                all++;
            }
        }
        assertThat((double) agree / all).isGreaterThan(0.97);
    }

    @Property(tries = 12, seed = "22")
    void comesToTheWishedShare(
            @ForAll @IntRange(max = 100_000) int seed, @ForAll @DoubleRange(min = 0.15, max = 0.85) double share) {
        Traced traced = trace(Fields.smooth(240, 160, seed), Wish.share(share));
        assertThat(traced.darkShare()).isCloseTo(share, within(0.005));
        assertThat(fold(traced, RATIO).darkShare()).isCloseTo(traced.darkShare(), within(1e-4));
    }

    @Test
    void comesToTheWishedShareWithTheLargestMassAlone() {
        // One wide dark and eight narrow ones as dark: the field's own quantile counts them all, the marks one.
        ValueField field = Fields.of(300, 200, (x, y) -> {
            double dark = Math.exp(-((x - 0.3) * (x - 0.3) + (y - 0.5) * (y - 0.5)) / 0.05);
            for (int i = 0; i < 8; i++) {
                double column = x - 0.75 - 0.2 * (i % 4);
                double row = y - 0.25 - 0.5 * (i / 4);
                dark += Math.exp(-(column * column + row * row) / 0.005);
            }
            return 0.9 - 0.85 * Math.min(1, dark);
        });
        Traced traced = trace(
                field,
                new Wish(OptionalDouble.of(0.16), OptionalDouble.empty(), Squint.gaussian(0.002), OptionalInt.of(2)));
        assertThat(traced.marks()).hasSize(1);
        assertThat(traced.darkShare()).isCloseTo(0.16, within(0.005));
    }

    @Property(tries = 12, seed = "23")
    void drawsNoMarkThatCrossesItselfOrLeavesTheFrameByMoreThanItsOverrun(
            @ForAll @IntRange(max = 100_000) int seed, @ForAll @DoubleRange(min = 0.2, max = 0.8) double share) {
        ValueField smooth = Fields.smooth(150, 100, seed);
        ValueField noise = Fields.noise(150, 100, seed);
        ValueField field = Fields.of(150, 100, (x, y) -> {
            int at = (int) (x * 100);
            return 0.7 * smooth.at(at, (int) (y * 100)) + 0.3 * noise.at(at, (int) (y * 100));
        });
        Traced traced = trace(
                field,
                new Wish(
                        OptionalDouble.empty(),
                        OptionalDouble.of(10 * Math.sqrt(share)),
                        Squint.gaussian(0.006),
                        OptionalInt.of(60)));
        for (Mark mark : traced.marks()) {
            List<Point> fine = polygon(mark.outline(), 24);
            assertThat(fine).allSatisfy(place -> {
                assertThat(place.x()).isBetween(-Overrun.WIDTH - 1e-12, RATIO + Overrun.WIDTH + 1e-12);
                assertThat(place.y()).isBetween(-Overrun.WIDTH - 1e-12, 1 + Overrun.WIDTH + 1e-12);
            });
            assertThat(crossing(fine)).isEmpty();
        }
    }

    @Test
    void splitsWhereItIsTold() {
        ValueField field = Fields.of(150, 100, (x, y) -> MunsellValue.luminance(10 * x / RATIO));
        Traced traced = trace(
                field, new Wish(OptionalDouble.empty(), OptionalDouble.of(3), Squint.gaussian(0), OptionalInt.empty()));
        assertThat(traced.split()).isEqualTo(3);
        assertThat(traced.darkShare()).isCloseTo(0.3, within(0.002));
    }

    @Test
    void marksNothingOnAFieldOfOneValue() {
        Traced dark = trace(Fields.of(30, 20, (x, y) -> 0.05), Wish.usual());
        assertThat(dark.ground()).isEqualTo(Thumbnail.Ground.DARK);
        assertThat(dark.marks()).isEmpty();
        assertThat(dark.darkShare()).isEqualTo(1);
        Traced light = trace(Fields.of(30, 20, (x, y) -> 0.6), Wish.usual());
        assertThat(light.ground()).isEqualTo(Thumbnail.Ground.LIGHT);
        assertThat(light.marks()).isEmpty();
        assertThat(light.darkShare()).isZero();
    }

    @Test
    void givesTheSameMarksEachTime() {
        ValueField field = Fields.smooth(200, 140, 77);
        Wish wish = Wish.share(0.4);
        assertThat(trace(field, wish)).isEqualTo(trace(Fields.smooth(200, 140, 77), wish));
    }

    @Test
    void givesUpWhenStopped() {
        AtomicInteger asked = new AtomicInteger();
        ValueField field = Fields.smooth(200, 140, 78);
        assertThatThrownBy(() -> trace(field, RATIO, Wish.share(0.4), () -> asked.incrementAndGet() > 1))
                .isInstanceOf(CancellationException.class);
        assertThat(asked).hasValue(2);
    }

    @Test
    void refusesTheEventThread() throws InterruptedException {
        List<Throwable> thrown = new ArrayList<>();
        Thread thread = new Thread(
                () -> thrown.add(catchThrowable(
                        () -> FirstPass.trace(Values.gray(Fields.noise(4, 4, 1)), Wish.usual(), () -> false))),
                "AWT-EventQueue-0");
        thread.start();
        thread.join();
        assertThat(thrown).singleElement().isInstanceOf(IllegalStateException.class);
    }

    @Test
    void refusesAWishThatContradictsItself() {
        OptionalDouble half = OptionalDouble.of(0.5);
        OptionalDouble none = OptionalDouble.empty();
        assertThatThrownBy(() -> new Wish(half, half, Squint.gaussian(0.015), OptionalInt.empty()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Wish.share(1.2)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Wish.split(11)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Wish(none, none, Squint.gaussian(0.6), OptionalInt.empty()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Wish(none, none, Squint.gaussian(0.01), OptionalInt.of(1)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** A field that is dark where a distance is over zero, with an edge a hundredth wide. */
    private static ValueField soft(DoubleBinaryOperator inside) {
        return Fields.of(300, 200, (x, y) -> dark(inside.applyAsDouble(x, y)));
    }

    private static double dark(double inside) {
        return 0.45 - 0.4 * Math.max(-1, Math.min(1, inside / 0.01));
    }

    private static Wish sharp() {
        return new Wish(OptionalDouble.empty(), EDGE, Squint.gaussian(0.002), OptionalInt.empty());
    }

    private static Traced trace(ValueField field, Wish wish) {
        return trace(field, (double) field.width() / field.height(), wish, () -> false);
    }

    private static Traced trace(ValueField field, double ratio, Wish wish, BooleanSupplier stopped) {
        double sigma = wish.squint().sigma() * Math.hypot(ratio, 1) * field.height();
        return FirstPass.trace(CoarseSquint.of(field, sigma), ratio, wish, stopped);
    }

    private static Design fold(Traced traced, double ratio) {
        Thumbnail empty = Thumbnail.empty("t1", "traced");
        return Fold.of(empty.withGround(traced.ground()).withMarks(traced.marks()), ratio);
    }

    private static List<Point> polygon(Outline outline, int steps) {
        List<Point> places = new ArrayList<>();
        for (Cubic segment : outline.segments()) {
            for (int i = 0; i < steps; i++) {
                places.add(segment.at((double) i / steps));
            }
        }
        return places;
    }

    private static Optional<Point> crossing(List<Point> polygon) {
        int count = polygon.size();
        for (int i = 0; i < count; i++) {
            for (int k = i + 2; k < count - (i == 0 ? 1 : 0); k++) {
                Point a = polygon.get(i);
                Point b = polygon.get((i + 1) % count);
                Point c = polygon.get(k);
                Point d = polygon.get((k + 1) % count);
                if (turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0) {
                    return Optional.of(a);
                }
            }
        }
        return Optional.empty();
    }

    private static double turn(Point a, Point b, Point c) {
        return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
    }
}
