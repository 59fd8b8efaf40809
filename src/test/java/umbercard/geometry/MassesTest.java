package umbercard.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

class MassesTest {
    private static final double RATIO = 1.35;
    private static final Region FRAME = Region.rectangle(0, 0, RATIO, 1);

    /** A least width of a hundredth of the frame's height, so that drawings can be told in hundredths. */
    private static final Eye HUNDREDTH = new Eye(.01 / Math.hypot(RATIO, 1), .0001);

    private static Masses masses(Region dark) {
        return Masses.of(dark, RATIO, HUNDREDTH);
    }

    /** Straight-sided outlines in hundredths, parted by semicolons; those after a bar are lifted out. */
    private static Region drawn(String drawing) {
        Region dark = Region.empty();
        String[] parts = drawing.split("\\|", -1);
        for (int i = 0; i < parts.length; i++) {
            for (String outline : parts[i].split(";")) {
                double[] xy = Stream.of(outline.trim().split(" +"))
                        .filter(word -> !word.isEmpty())
                        .mapToDouble(word -> Double.parseDouble(word) / 100)
                        .toArray();
                Region shape =
                        xy.length == 4 ? Region.rectangle(xy[0], xy[1], xy[2], xy[3]) : Region.of(Shapes.polygon(xy));
                dark = i == 0 ? dark.union(shape) : dark.minus(shape);
            }
        }
        return dark;
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "masses.csv", numLinesToSkip = 1)
    void massesAreCountedAsAnEyeCountsThem(String name, String drawing, int dark, int light, double restOfDark) {
        Masses masses = masses(drawn(drawing));

        assertThat(masses.dark()).as("dark").hasSize(dark);
        assertThat(masses.light()).as("light").hasSize(light);
        assertThat(masses.darkRest().area() * 1e4).as("rest of dark").isCloseTo(restOfDark, within(1.0));
        accounted(drawn(drawing), masses);
    }

    /** Shares of masses and rests are those of the values, to the grid; and masses lie apart in their values. */
    private static void accounted(Region drawing, Masses masses) {
        Region dark = drawing.intersect(FRAME);
        accounted(dark, masses.dark(), masses.darkRest());
        accounted(FRAME.minus(dark), masses.light(), masses.lightRest());
    }

    private static void accounted(Region value, List<Mass> masses, Region rest) {
        double sum = masses.stream().mapToDouble(Mass::share).sum() + rest.area() / RATIO;
        assertThat(sum).isCloseTo(value.area() / RATIO, within(1e-8 * (1 + value.perimeter())));
        Region all = rest;
        for (Mass mass : masses) {
            all = all.union(mass.region());
            assertThat(mass.share()).isEqualTo(mass.region().area() / RATIO);
        }
        assertThat(all.area()).isCloseTo(value.area(), within(1e-8 * (1 + value.perimeter())));
        assertThat(all.minus(value).area()).isLessThan(1e-8 * (1 + value.perimeter()));
        assertThat(masses.stream().map(mass -> -mass.share())).isSorted();
    }

    @Test
    void anEmptyAndAFullCardAreOneMass() {
        assertThat(masses(Region.empty()).dark()).isEmpty();
        assertThat(masses(Region.empty()).light())
                .singleElement()
                .satisfies(mass -> assertThat(mass.share()).isCloseTo(1, within(1e-8)));
        assertThat(masses(FRAME).light()).isEmpty();
        assertThat(masses(FRAME).dark()).hasSize(1);
        assertThat(masses(Region.rectangle(-5, -5, 5, 5)).dark()).hasSize(1);
        assertThatThrownBy(() -> Masses.of(FRAME, 0, HUNDREDTH)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Eye(-1, 0)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void theDesignsEyeMakesOutThreeThousandthsOfTheDiagonal() {
        assertThat(Eye.DEFAULT.widthIn(4.0 / 3)).isCloseTo(.005, within(1e-12));
    }

    @Test
    void withoutALeastWidthPiecesAreCounted() {
        Region hair = Region.rectangle(.1, .1, .4, .4)
                .union(Region.rectangle(.4, .2, .6, .2 + 1e-6))
                .union(Region.rectangle(.6, .1, .9, .4));

        assertThat(Masses.of(hair, RATIO, new Eye(0, 0)).dark()).hasSize(1);
        assertThat(Masses.of(hair, RATIO, HUNDREDTH).dark()).hasSize(2);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1e-4, -1e-6, -1e-9, 0, 1e-9, 1e-6, 1e-4, 9e-3})
    void squaresThatTouchOrNearlyTouchAreOne(double gap) {
        Region left = Region.rectangle(.1, .1, .4, .4);

        assertThat(masses(left.union(Region.rectangle(.4 + gap, .1, .7, .4))).dark())
                .hasSize(1);
        assertThat(masses(left.union(Region.rectangle(.4 + gap * .4, .4 + gap * .4, .7, .7)))
                        .dark())
                .hasSize(1);
    }

    @Test
    void aNeckAndAGapPartAtTheLeastWidth() {
        for (double by : new double[] {-1e-4, -1e-6, 1e-6, 1e-4}) {
            Region squares = Region.rectangle(.1, .1, .4, .4).union(Region.rectangle(.6, .1, .9, .4));
            Region necked = squares.union(Region.rectangle(.39, .2, .61, .21 + by));
            Region gaping = Region.rectangle(.1, .1, .4, .4).union(Region.rectangle(.41 + by, .1, .9, .4));

            assertThat(masses(necked).dark()).as("neck").hasSize(by < 0 ? 2 : 1);
            assertThat(masses(gaping).dark()).as("gap").hasSize(by < 0 ? 1 : 2);
        }
    }

    @Test
    void aTipBelongsToItsMassAndANeckToNone() {
        Region tip = Region.of(Shapes.polygon(.1, .1, .4, .1, .4, .4, .1, .4, .1, .26, -.0, .25, .1, .24));
        Masses tipped = masses(tip.union(Region.rectangle(.6, .1, .9, .4)).union(Region.rectangle(.4, .2, .6, .204)));

        assertThat(tipped.dark()).hasSize(2);
        assertThat(tipped.dark().get(0).region().contains(new Point(.01, .25))).isTrue();
        assertThat(tipped.dark().get(0).region().contains(new Point(.5, .202))).isFalse();
        assertThat(tipped.darkRest().contains(new Point(.5, .202))).isTrue();
    }

    /** As if the library had lost it: what is wider than any that may be left out is a mass still. */
    @Test
    void aFatPieceWithoutABodyIsNotLost() {
        Region fat = Region.rectangle(.1, .1, .4, .4);
        Region thin = Region.rectangle(.5, .1, .505, .4);

        Allotment allotted = Allotment.of(fat.union(thin), List.of(), .01);

        assertThat(allotted.masses())
                .singleElement()
                .satisfies(mass -> assertThat(mass.area()).isEqualTo(fat.area()));
        assertThat(allotted.rest())
                .singleElement()
                .satisfies(rest -> assertThat(rest.area()).isEqualTo(thin.area()));
    }

    private static Region drawing(Random random) {
        Region dark = random.nextBoolean() ? Region.empty() : FRAME;
        for (int i = 0; i < 7; i++) {
            Region mark = Region.of(
                    switch (random.nextInt(4)) {
                        case 0 -> Strokes.wandering(random, 3 + random.nextInt(40), .2 + random.nextDouble());
                        case 1 -> Strokes.awkward(random);
                        default -> Strokes.blob(random, 3 + random.nextInt(20), .05 + .3 * random.nextDouble());
                    });
            dark = random.nextInt(3) > 0 ? dark.union(mark) : dark.minus(mark);
        }
        return dark.intersect(FRAME);
    }

    @Property(seed = "36", tries = 15)
    void everyPartIsAccountedForAndTheMirrorImageCountsAlike(@ForAll long seed) {
        Region dark = drawing(new Random(seed));

        Masses masses = Masses.of(dark, RATIO, Eye.DEFAULT);

        accounted(dark, masses);
        Masses mirrored = Masses.of(dark.mirrored(RATIO), RATIO, Eye.DEFAULT);
        assertThat(mirrored.dark()).hasSameSizeAs(masses.dark());
        assertThat(mirrored.light()).hasSameSizeAs(masses.light());
    }

    /** A mass that holds a disc four times the least width across is never a rest; a second, simpler way to find the large. */
    @Property(seed = "37", tries = 10)
    void noPlaceFarFromTheBorderIsARest(@ForAll long seed) {
        Random random = new Random(seed);
        Region dark = drawing(random);
        Masses masses = Masses.of(dark, RATIO, Eye.DEFAULT);
        double half = Eye.DEFAULT.widthIn(RATIO) / 2;
        for (int i = 0; i < 300; i++) {
            Point place = new Point(random.nextDouble() * RATIO, random.nextDouble());
            Circle disc = new Circle(place, 4 * half);
            boolean deep = Borderline.of(dark).lengthWithin(disc) == 0
                    && Borderline.of(FRAME).lengthWithin(disc) == 0;
            if (deep) {
                assertThat(Stream.concat(masses.dark().stream(), masses.light().stream())
                                .filter(mass -> mass.region().contains(place)))
                        .hasSize(1);
            }
        }
    }
}
