package umbercard.remedies;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import umbercard.door.Finding;
import umbercard.door.Remedied;
import umbercard.geometry.Outline;
import umbercard.geometry.Path;
import umbercard.geometry.Point;
import umbercard.model.Frame;
import umbercard.model.Framing;
import umbercard.model.Level;
import umbercard.model.Reference;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.readings.Designs;
import umbercard.readings.Fraction;
import umbercard.readings.Plans;
import umbercard.readings.placement.HorizonHeight;
import umbercard.words.Message;

class LineMoveTest {
    private static final double RATIO = Plans.RATIO;

    /** Marks snap to 1e-7, and a dark share is right to 1e-6. */
    private static final double HAIR = 1e-5;

    @Provide
    Arbitrary<Thumbnail> designs() {
        return Designs.any();
    }

    private static Thumbnail moved(Thumbnail thumbnail, double to) {
        return LineMove.to(to, CardLine.LAND_EDGE, Trials.with(thumbnail), thumbnail, OptionalDouble.empty())
                .map(Remedied::thumbnail)
                .orElse(thumbnail);
    }

    private static Thumbnail level(Thumbnail thumbnail) {
        return thumbnail.withLandEdge(thumbnail.landEdge().map(edge -> Level.at(edge.y())));
    }

    @Property(seed = "6", tries = 60)
    void sharesAboveAndBelowTheLineStay(
            @ForAll("designs") Thumbnail any, @ForAll @DoubleRange(min = 0.1, max = 0.9) double to) {
        Thumbnail before = level(any);
        Finding was = Plans.read(new HorizonHeight(), before);
        Finding is = Plans.read(new HorizonHeight(), moved(before, to));
        for (String name : List.of("dark-above", "dark-below")) {
            assertThat(Plans.figure(is, name)).as(name).isEqualTo(Plans.figure(was, name), within(HAIR));
        }
        assertThat(Plans.figure(is, "height")).isEqualTo(to, within(0.0005));
    }

    @Property(seed = "6", tries = 60)
    void raisedAndLoweredBackItIsTheSame(
            @ForAll("designs") Thumbnail any, @ForAll @DoubleRange(min = 0.1, max = 0.9) double to) {
        Thumbnail before = level(any);
        Thumbnail back =
                moved(moved(before, to), LineMove.height(before.landEdge().orElseThrow()));
        assertThat(back.landEdge().orElseThrow().y())
                .isEqualTo(before.landEdge().orElseThrow().y(), within(1e-9));
        assertThat(Trials.changed(before, back)).isLessThan(HAIR);
    }

    @Test
    void everythingMovesAlong() {
        Thumbnail before = Trials.drawn(Outline.rectangle(0, 0.25, RATIO, 0.75))
                .withHorizon(Optional.of(Level.at(0.5)))
                .withLandEdge(Optional.of(Level.at(0.5)))
                .withWaterline(Optional.of(Level.at(0.75)))
                .withFocus(Optional.of(new Point(0.4, 0.25)))
                .withEyePath(Optional.of(Path.through(List.of(new Point(0, 0.75), new Point(1, 0.25)))))
                .withZoneAreas(Map.of("z1", List.of(Outline.rectangle(0, 0.75, 1, 1))));
        // To three quarters: what is above is halved, what is below is half as high again.
        Remedied remedied = LineMove.to(0.75, CardLine.HORIZON, Trials.with(before), before, OptionalDouble.empty())
                .orElseThrow();
        Thumbnail after = remedied.thumbnail();
        assertThat(after.horizon()).contains(Level.at(0.25));
        assertThat(after.landEdge()).contains(Level.at(0.25));
        assertThat(after.waterline().orElseThrow().y()).isEqualTo(0.625, within(1e-12));
        assertThat(after.focus()).contains(new Point(0.4, 0.125));
        assertThat(after.eyePath().orElseThrow().nodes())
                .extracting(node -> node.at())
                .containsExactly(new Point(0, 0.625), new Point(0.5, 0.25), new Point(1, 0.125));
        assertThat(after.zoneAreas().get("z1").get(0).nodes())
                .extracting(node -> node.at().y())
                .containsExactly(0.625, 0.625, 1.0, 1.0);
        assertThat(Plans.plan(Plans.study(), after).design().darkShare()).isEqualTo(0.5, within(1e-6));
        assertThat(remedied.name())
                .isEqualTo(Message.of("remedies.raise-to", CardLine.HORIZON.words(), Fraction.THREE_QUARTERS.words()));
        assertThat(remedied.remarks()).isEmpty();
    }

    @Test
    void theFrameGoesAlongWhereThePhotographHasRoom() {
        Framing framing = new Framing(1.5, RATIO);
        Frame small = new Frame(new Point(0.5, 0.5), 0.5, 0, false);
        Thumbnail before = Plans.dark(0.5).withLandEdge(Optional.of(Level.at(0.5)));
        Study study = Trials.with(before).withReference(Optional.of(Reference.to("hill.jpg", "", small)));
        Remedied roomy = LineMove.to(0.75, CardLine.LAND_EDGE, study, before, OptionalDouble.of(1.5))
                .orElseThrow();
        Frame along = roomy.thumbnail().frame().orElseThrow();
        Point onLine = framing.onPhotograph(small, new Point(0.3, 0.5));
        assertThat(framing.inFrame(along, onLine).y()).isEqualTo(0.25, within(1e-12));
        assertThat(roomy.remarks()).isEmpty();

        Study tight = study.withReference(Optional.of(Reference.to("hill.jpg", "", framing.largest())));
        Remedied stays = LineMove.to(0.75, CardLine.LAND_EDGE, tight, before, OptionalDouble.of(1.5))
                .orElseThrow();
        assertThat(stays.thumbnail().frame()).isEmpty();
        assertThat(stays.remarks()).containsExactly(Message.of("remedies.frame-stays.no-room"));
        assertThat(LineMove.to(0.75, CardLine.LAND_EDGE, tight, before, OptionalDouble.empty())
                        .orElseThrow()
                        .remarks())
                .containsExactly(Message.of("remedies.frame-stays.not-at-hand"));
    }

    @Test
    void aLineThatIsNotSetOrOutsideOrThereAlreadyIsNotMoved() {
        Study study = Plans.study();
        Thumbnail without = Plans.dark(0.5);
        Thumbnail outside = without.withLandEdge(Optional.of(Level.at(-0.1)));
        Thumbnail there = without.withLandEdge(Optional.of(Level.at(1 / 3.0)));
        for (Thumbnail thumbnail : List.of(without, outside, there)) {
            assertThat(LineMove.to(2 / 3.0, CardLine.LAND_EDGE, study, thumbnail, OptionalDouble.empty()))
                    .isEmpty();
        }
    }

    @Test
    void theRemediesMoveAMiddleLineToTheNearestNamedFractionEachWay() {
        Thumbnail middle = Plans.dark(0.48).withLandEdge(Optional.of(Level.at(0.52)));
        assertThat(new RaiseLine().tried(Trials.of(middle)).orElseThrow().name())
                .isEqualTo(Message.of("remedies.raise-to", CardLine.LAND_EDGE.words(), Fraction.GREATER_PART.words()));
        assertThat(new LowerLine().tried(Trials.of(middle)).orElseThrow().name())
                .isEqualTo(Message.of("remedies.lower-to", CardLine.LAND_EDGE.words(), Fraction.LESSER_PART.words()));
        Thumbnail raised =
                new RaiseLine().tried(Trials.of(middle)).orElseThrow().thumbnail();
        assertThat(Plans.read(new HorizonHeight(), raised).verdict()).isEqualTo(Finding.Verdict.HOLDS);
    }
}
