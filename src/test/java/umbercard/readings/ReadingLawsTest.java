package umbercard.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import umbercard.door.Figure;
import umbercard.door.Finding;
import umbercard.door.Reading;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.kernel.Plugins;
import umbercard.model.Mark;
import umbercard.model.Study;
import umbercard.model.Surface;
import umbercard.model.Surface.Unit;
import umbercard.model.Thumbnail;
import umbercard.words.Words;

/** What holds of every reading of every thumbnail, found as the program finds them. */
class ReadingLawsTest {
    /** Regions are held to a grid of 1e-9; areas of a piece and lengths of many sides sum up to some thousand such steps. */
    private static final double EXACT = 1e-5;

    /** Readings of the masses: a mass may pass a limit by a step of the grid, so figures of few thumbnails may differ. */
    private static final Set<String> OF_MASSES =
            Set.of("big-masses", "small-pieces", "joined-masses", "alike-masses", "tangents", "corners");

    private static final int TRIES = 40;

    /** What becomes of a figure: which one of the other reading it equals, after what. */
    private record Becomes(String name, DoubleUnaryOperator how) {}

    /** Left and right changed over; what is not told stays. */
    private static final Map<String, Becomes> MIRRORED = Map.of(
            "horizon-height.tilt", new Becomes("tilt", value -> -value),
            "balance.across", new Becomes("across", value -> -value),
            "balance.left", new Becomes("left", value -> 1 - value),
            "borders.dark-left", new Becomes("dark-right", value -> value),
            "borders.dark-right", new Becomes("dark-left", value -> value),
            "borders.changes-left", new Becomes("changes-right", value -> value),
            "borders.changes-right", new Becomes("changes-left", value -> value));

    private static final DoubleUnaryOperator REST = value -> 1 - value;

    /** Dark and light changed over; what is not told stays, but see {@link #NOT_INVERTED}. */
    private static final Map<String, Becomes> INVERTED = Map.of(
            "dark-share.dark", new Becomes("dark", REST),
            "horizon-height.dark-above", new Becomes("dark-above", REST),
            "horizon-height.dark-below", new Becomes("dark-below", REST),
            "borders.dark-top", new Becomes("dark-top", REST),
            "borders.dark-right", new Becomes("dark-right", REST),
            "borders.dark-bottom", new Becomes("dark-bottom", REST),
            "borders.dark-left", new Becomes("dark-left", REST));

    /** Those of the dark alone, of the nearest fraction, and of masses, where dark comes first. */
    private static final Set<String> NOT_INVERTED = Set.of(
            "balance",
            "mirror",
            "dark-share.nearest",
            "dark-share.distance",
            "big-masses",
            "small-pieces",
            "joined-masses",
            "alike-masses",
            "tangents");

    private static Map<String, Finding> take(Study study, Thumbnail thumbnail) {
        Plugins<Reading> readings = Evaluation.find();
        Map<String, Finding> findings = Evaluation.of(readings, Plans.plan(study, thumbnail), Wishes.NONE);
        assertThat(readings.switchedOff()).as("readings that failed").isEmpty();
        assertThat(findings.keySet()).contains("dark-share", "borders", "balance", "tangents", "eye-path");
        return findings;
    }

    private static Map<String, Finding> take(Thumbnail thumbnail) {
        return take(Plans.study(), thumbnail);
    }

    /** Each figure of one is, as the table says, that of the other; how many readings of masses differ. */
    private static long compared(
            Map<String, Finding> one, Map<String, Finding> other, Map<String, Becomes> table, Set<String> left) {
        List<String> differ = new ArrayList<>();
        one.forEach((id, finding) -> {
            for (Figure figure : finding.figures()) {
                String full = id + "." + figure.name();
                if (left.contains(id) || left.contains(full)) {
                    continue;
                }
                Becomes becomes = table.getOrDefault(full, new Becomes(figure.name(), value -> value));
                double value = other.get(id).figures().stream()
                        .filter(found -> found.name().equals(becomes.name))
                        .mapToDouble(Figure::value)
                        .findFirst()
                        .orElse(Double.NaN);
                if (!(Math.abs(value - becomes.how.applyAsDouble(figure.value())) <= EXACT)) {
                    differ.add(full + " " + figure.value() + " became " + value);
                }
            }
        });
        assertThat(differ)
                .filteredOn(told -> OF_MASSES.stream().noneMatch(told::startsWith))
                .isEmpty();
        return differ.isEmpty() ? 0 : 1;
    }

    @Property(tries = 3 * TRIES, seed = "61")
    void everyFigureIsANumberAndEverySentenceIsSaid(@ForAll("designs") Thumbnail thumbnail) {
        take(thumbnail).forEach((id, finding) -> {
            assertThat(finding.figures())
                    .as(id)
                    .allSatisfy(figure -> assertThat(figure.value()).isFinite());
            assertThat(Words.say(finding.sentence())).as(id).endsWith(".").doesNotContain("{", "-0 ", "NaN", "\uFFFD");
        });
    }

    @Property(tries = TRIES, seed = "62", shrinking = ShrinkingMode.OFF)
    void mirroringChangesSidesOnly(@ForAll("designs") Thumbnail thumbnail) {
        Map<String, Finding> one = take(thumbnail);
        Map<String, Finding> other = take(Plans.mirrored(thumbnail));
        assertThat(compared(one, other, MIRRORED, Set.of())).isZero();
    }

    @Property(tries = TRIES, seed = "63", shrinking = ShrinkingMode.OFF)
    void changingDarkAndLightOverSwapsShares(@ForAll("designs") Thumbnail thumbnail) {
        Map<String, Finding> one = take(thumbnail);
        Map<String, Finding> other = take(Plans.inverted(thumbnail));
        assertThat(compared(one, other, INVERTED, NOT_INVERTED)).isZero();
    }

    @Property(tries = TRIES, seed = "64", shrinking = ShrinkingMode.OFF)
    void aSurfaceTwiceTheSizeReadsAlike(@ForAll("designs") Thumbnail thumbnail) {
        Study twice = Plans.study().withSurface(new Surface(24, 18, Unit.IN, 0, Optional.empty(), false));
        Map<String, Finding> one = take(thumbnail);
        Map<String, Finding> other = take(twice, thumbnail);
        assertThat(compared(one, other, Map.of(), Set.of())).isZero();
        one.forEach((id, finding) -> assertThat(other.get(id).verdict()).as(id).isEqualTo(finding.verdict()));
    }

    /** Cut along an upright line, whose two halves lie edge to edge: the fold closes what rounding leaves between them. */
    @Property(tries = TRIES, seed = "65", shrinking = ShrinkingMode.OFF)
    void cuttingALaidMarkInTwoChangesNothing(@ForAll("designs") Thumbnail thumbnail) {
        List<Mark> marks = new ArrayList<>(thumbnail.marks());
        Mark last = new Mark("n1", Mark.Kind.LAY, Outline.rectangle(0.2, 0.3, 0.9, 0.7));
        Mark left = last.withOutline(Outline.rectangle(0.2, 0.3, 0.53, 0.7));
        Mark right = new Mark(
                "n2",
                Mark.Kind.LAY,
                Outline.polygon(
                        List.of(new Point(0.53, 0.3), new Point(0.9, 0.3), new Point(0.9, 0.7), new Point(0.53, 0.7))));
        marks.add(last);
        Map<String, Finding> whole = take(thumbnail.withMarks(marks));
        marks.set(marks.size() - 1, left);
        marks.add(right);
        assertThat(compared(whole, take(thumbnail.withMarks(marks)), Map.of(), Set.of()))
                .isZero();
    }

    @Property(tries = TRIES, seed = "66", shrinking = ShrinkingMode.OFF)
    void sharesLieWithinTheirRange(@ForAll("designs") Thumbnail thumbnail) {
        take(thumbnail)
                .forEach((id, finding) -> finding.figures().forEach(figure -> {
                    if (figure.unit().equals("share") || figure.unit().equals("count")) {
                        boolean outside =
                                id.equals("horizon-height") && figure.name().equals("height");
                        double most = figure.unit().equals("share") ? 1 + EXACT : 1000;
                        assertThat(outside ? 0 : figure.value())
                                .as(id + "." + figure.name())
                                .isBetween(-EXACT, most);
                    }
                }));
        assertThat(Plans.figure(take(thumbnail).get("borders"), "changes") % 2).isEqualTo(0, within(EXACT));
    }

    @Provide
    Arbitrary<Thumbnail> designs() {
        return Designs.withEverything();
    }
}
