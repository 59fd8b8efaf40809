package umbercard.remedies;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import umbercard.door.Finding.Verdict;
import umbercard.door.Plan;
import umbercard.door.Remedied;
import umbercard.door.Remedy;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.geometry.Region;
import umbercard.model.Frame;
import umbercard.model.Framing;
import umbercard.model.Mark;
import umbercard.model.Reference;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.readings.Designs;
import umbercard.readings.Plans;
import umbercard.readings.focus.FocusPlace;
import umbercard.readings.shapes.JoinedMasses;
import umbercard.readings.shapes.SmallPieces;
import umbercard.readings.shapes.Tangents;

class MassRemediesTest {
    private static final double RATIO = Plans.RATIO;

    /** The frame's diagonal is 5/3, so the eye makes out 0.005 and a near miss is under 0.02. */
    private static final double HAIR = 0.005;

    @Provide
    Arbitrary<Thumbnail> designs() {
        return Designs.any();
    }

    /** Two halves of a dark, 0.03 apart. */
    private static Thumbnail halves() {
        return Trials.drawn(Outline.rectangle(0.2, 0.4, 0.585, 0.8), Outline.rectangle(0.615, 0.4, 1, 0.8));
    }

    private static int masses(Plan plan) {
        return plan.masses().dark().size() + plan.masses().light().size();
    }

    @Test
    void joinsDarksOverTheNarrowestWidthThatMends() {
        assertThat(Plans.read(new JoinedMasses(), halves()).verdict()).isEqualTo(Verdict.LOOK_AGAIN);
        Remedied joined = new JoinDarks().tried(Trials.of(halves())).orElseThrow();
        assertThat(Plans.read(new JoinedMasses(), joined.thumbnail()).verdict()).isEqualTo(Verdict.HOLDS);
        // The gap of 0.03 is 1.8 % of the diagonal, so a disc of 2 %, 1/30, fills it: 0.03 × 0.4, but at either mouth
        // for the
        // segment of the disc that its chord across the gap cuts off.
        assertThat(joined.name().arguments().get(1)).isEqualTo(2.0);
        assertThat(Trials.changed(halves(), joined.thumbnail()))
                .isEqualTo(0.012 - 2 * mouth(1 / 60.0, 0.03), within(1e-5));
        assertThat(joined.thumbnail().marks())
                .hasSize(3)
                .startsWith(halves().marks().toArray(Mark[]::new));
    }

    /** Between a chord and the tangent that is parallel to it, on the side that a disc lying on both ends of the gap leaves open. */
    private static double mouth(double radius, double chord) {
        double half = Math.asin(chord / 2 / radius);
        return radius * radius * (half - Math.sin(half) * Math.cos(half));
    }

    /** The left half has a bay 0.02 wide, narrower than the gap: closing alone would fill that too. */
    @Test
    void aBayNarrowerThanTheGapStaysOpen() {
        Thumbnail bay = Trials.laid(halves(), Mark.Kind.LIFT, Outline.rectangle(0.3, 0.4, 0.32, 0.7));
        Remedied joined = new JoinDarks().tried(Trials.of(bay)).orElseThrow();
        Region dark = Trials.plan(joined.thumbnail()).design().dark();
        assertThat(dark.contains(new Point(0.6, 0.6))).as("the gap").isTrue();
        assertThat(dark.contains(new Point(0.31, 0.6))).as("the bay").isFalse();
    }

    @Test
    void aWideGapAndAMassByItselfAreNotJoined() {
        Thumbnail wide = Trials.drawn(Outline.rectangle(0.1, 0.4, 0.4, 0.8), Outline.rectangle(0.7, 0.4, 1, 0.8));
        assertThat(new JoinDarks().tried(Trials.of(wide))).isEmpty();
        assertThat(new JoinDarks().tried(Trials.of(Plans.dark(0.3)))).isEmpty();
    }

    @Property(seed = "6", tries = 60)
    void joiningNeverRaisesTheNumberOfMassesNorTakesFromTheValue(@ForAll("designs") Thumbnail before) {
        Plan plan = Trials.plan(before);
        for (Remedy remedy : List.of(new JoinDarks(), new JoinLights())) {
            remedy.tried(Trials.of(before)).ifPresent(joined -> {
                Plan after = Trials.plan(joined.thumbnail());
                assertThat(masses(after)).isLessThanOrEqualTo(masses(plan));
                var from = plan.design();
                var to = after.design();
                double lost = remedy instanceof JoinDarks
                        ? from.dark().minus(to.dark()).area()
                        : from.light().minus(to.light()).area();
                assertThat(lost).isLessThan(1e-6);
            });
        }
    }

    @Property(seed = "6", tries = 60)
    void smallPiecesAreGoneAndNothingElseMoves(@ForAll("designs") Thumbnail before) {
        Thumbnail some = Trials.laid(
                Trials.laid(before, Mark.Kind.LAY, Outline.rectangle(0.5, 0.5, 0.56, 0.56)),
                Mark.Kind.LIFT,
                Outline.rectangle(0.7, 0.5, 0.76, 0.56));
        double share = Plans.figure(Plans.read(new SmallPieces(), some), "share");
        new DropPieces().tried(Trials.of(some)).ifPresent(dropped -> {
            assertThat(Plans.figure(Plans.read(new SmallPieces(), dropped.thumbnail()), "pieces"))
                    .isZero();
            assertThat(Trials.changed(some, dropped.thumbnail())).isLessThan(share * RATIO + 1e-3);
        });
    }

    @Test
    void dropsEverySmallPieceAndLeavesTheOthers() {
        Thumbnail big = Plans.dark(0.3);
        Thumbnail before = big;
        for (int i = 0; i < 4; i++) {
            double x = 0.2 + 0.2 * i;
            before = Trials.laid(before, Mark.Kind.LAY, Outline.rectangle(x, 0.2, x + 0.05, 0.25));
            before = Trials.laid(before, Mark.Kind.LIFT, Outline.rectangle(x, 0.8, x + 0.05, 0.85));
        }
        Remedied dropped = new DropPieces().tried(Trials.of(before)).orElseThrow();
        assertThat(dropped.name().arguments()).containsExactly(8);
        assertThat(Trials.changed(big, dropped.thumbnail())).isLessThan(1e-6);
        assertThat(new DropPieces().tried(Trials.of(big))).isEmpty();
    }

    static Stream<Thumbnail> nearMisses() {
        return Stream.of(
                // Two darks 0.01 apart, one dark 0.01 from the frame, two lights in the dark 0.01 apart.
                Trials.drawn(Outline.rectangle(0.2, 0.3, 0.5, 0.8), Outline.rectangle(0.51, 0.4, 0.8, 0.6)),
                Trials.drawn(Outline.rectangle(0.01, 0.3, 0.5, 0.8)),
                Plans.inverted(
                        Trials.drawn(Outline.rectangle(0.2, 0.3, 0.5, 0.8), Outline.rectangle(0.51, 0.4, 0.8, 0.6))));
    }

    @ParameterizedTest
    @MethodSource("nearMisses")
    void nearMissesMeetOrPart(Thumbnail before) {
        assertThat(Plans.read(new Tangents(), before).verdict()).isEqualTo(Verdict.LOOK_AGAIN);
        for (Remedy remedy : List.of(new JoinTangents(), new PartTangents())) {
            Remedied mended = remedy.tried(Trials.of(before)).orElseThrow();
            assertThat(Plans.read(new Tangents(), mended.thumbnail()).verdict())
                    .as(remedy.id())
                    .isEqualTo(Verdict.HOLDS);
            assertThat(Trials.changed(before, mended.thumbnail()))
                    .as(remedy.id())
                    .isBetween(1e-5, 0.02);
        }
    }

    @Test
    void meetingMakesOneMassAndPartingLeavesTwo() {
        Thumbnail before = nearMisses().findFirst().orElseThrow();
        Plan met = Trials.plan(
                new JoinTangents().tried(Trials.of(before)).orElseThrow().thumbnail());
        Plan parted = Trials.plan(
                new PartTangents().tried(Trials.of(before)).orElseThrow().thumbnail());
        assertThat(met.masses().dark()).hasSize(1);
        assertThat(parted.masses().dark()).hasSize(2);
        // From the smaller one, 0.2 high, so much that 0.01 becomes 1.1 × 0.02.
        assertThat(Trials.changed(before, parted.thumbnail())).isEqualTo(0.2 * 0.012, within(HAIR * 0.02));
    }

    @Test
    void aCropPutsTheFocusOnACrossingOfThirdsAndThePhotographWithIt() {
        Thumbnail before = Plans.dark(0.4).withFocus(Optional.of(new Point(RATIO / 2, 0.5)));
        Frame seen = new Frame(new Point(0.5, 0.5), 0.8, 3, true);
        Study study = Trials.with(before).withReference(Optional.of(Reference.to("hill.jpg", "", seen)));
        Remedied cropped = new CropToFocus()
                .tried(Trials.of(study, before, OptionalDouble.of(1.5)))
                .orElseThrow();
        Thumbnail after = cropped.thumbnail();
        Point focus = after.focus().orElseThrow();
        assertThat(Plans.figure(Plans.read(new FocusPlace(), after), "to-thirds"))
                .isLessThan(1e-9);
        assertThat(Plans.read(new FocusPlace(), after).verdict()).isEqualTo(Verdict.HOLDS);
        Framing framing = new Framing(1.5, RATIO);
        Point was = framing.onPhotograph(seen, before.focus().orElseThrow());
        Point is = framing.onPhotograph(after.frame().orElseThrow(), focus);
        assertThat(is.distance(was)).isLessThan(1e-9);
        // A focus in the middle leaves three quarters of the height.
        assertThat((double) cropped.name().arguments().get(0)).isEqualTo(75, within(1e-9));
    }
}
