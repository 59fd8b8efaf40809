package umbercard.readings.placement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static umbercard.readings.Plans.figure;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import umbercard.door.Finding;
import umbercard.door.Finding.Verdict;
import umbercard.door.Place;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.model.Level;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.model.Zone;
import umbercard.model.Zone.Distance;
import umbercard.model.Zone.Plane;
import umbercard.readings.Designs;
import umbercard.readings.Plans;
import umbercard.words.Words;

class HorizonHeightTest {
    private static final double EXACT = 1e-6;

    private final HorizonHeight reading = new HorizonHeight();

    private static Thumbnail withHorizon(double height, double tilt) {
        return Plans.dark(0.3).withHorizon(Optional.of(new Level(1 - height, tilt)));
    }

    /** A study with one zone of that plane, which fills the frame of the thumbnail up to {@code top}. */
    private static Study zoned(Plane plane) {
        return Plans.study()
                .withZones(List.of(new Zone("z1", "ground", plane, Distance.NEAR, OptionalDouble.empty(), Map.of())));
    }

    private static Thumbnail zonedFrom(Thumbnail thumbnail, double left) {
        return thumbnail.withZoneAreas(Map.of("z1", List.of(Outline.rectangle(left, 0.2, Plans.RATIO, 1))));
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "horizon_height.csv", numLinesToSkip = 1)
    void verdictAndSentenceFollowTheHeight(double height, String verdict, String sentence) {
        Finding finding = Plans.read(reading, withHorizon(height, 0));

        assertThat(finding.figures().get(0).name()).isEqualTo("height");
        assertThat(figure(finding, "height")).isEqualTo(height, within(EXACT));
        assertThat(figure(finding, "tilt")).isZero();
        assertThat(finding.verdict().key()).isEqualTo(verdict);
        assertThat(Words.say(finding.sentence())).isEqualTo(sentence);
    }

    @Test
    void withoutAHorizonTheLandEdgeIsRead() {
        Thumbnail both = withHorizon(0.3, 0).withLandEdge(Optional.of(Level.at(0.4)));
        assertThat(figure(Plans.read(reading, both), "height")).isEqualTo(0.3, within(EXACT));

        Finding landEdge = Plans.read(reading, both.withHorizon(Optional.empty()));
        assertThat(figure(landEdge, "height")).isEqualTo(0.6, within(EXACT));
        assertThat(Words.say(landEdge.sentence())).startsWith("The land edge ");
    }

    @Test
    void withNeitherItIsNotSet() {
        Finding finding = Plans.read(reading, Plans.dark(0.3));
        assertThat(finding.verdict()).isEqualTo(Verdict.NOT_SET);
        assertThat(finding.figures()).isEmpty();
        assertThat(Words.say(finding.sentence())).isEqualTo("Neither horizon nor land edge is set. Set one of them.");
    }

    @Test
    void darkIsSharedOutAboveAndBelow() {
        Finding finding = Plans.read(reading, withHorizon(0.4, 0));
        assertThat(figure(finding, "dark-above")).isEqualTo(0, within(EXACT));
        assertThat(figure(finding, "dark-below")).isEqualTo(0.3 / 0.4, within(EXACT));

        Finding through = Plans.read(reading, withHorizon(0.2, 0));
        assertThat(figure(through, "dark-above")).isEqualTo(0.1 / 0.8, within(EXACT));
        assertThat(figure(through, "dark-below")).isEqualTo(1, within(EXACT));
    }

    @Test
    void aSideWithoutRoomHasNoShare() {
        assertThat(Plans.read(reading, withHorizon(1.2, 0)).figures())
                .extracting("name")
                .containsExactly("height", "dark-below", "tilt");
        assertThat(Plans.read(reading, withHorizon(-0.1, 0)).figures())
                .extracting("name")
                .containsExactly("height", "dark-above", "tilt");
    }

    @Test
    void theHeightOfATiltedLineIsThatAtTheMiddle() {
        Finding finding = Plans.read(reading, withHorizon(0.7, 10));
        assertThat(figure(finding, "height")).isEqualTo(0.7, within(EXACT));
        assertThat(figure(finding, "tilt")).isEqualTo(10);
        double rise = Math.tan(Math.toRadians(10)) * Plans.RATIO / 2;
        Place.Between line = (Place.Between) finding.places().get(0);
        assertThat(line.from().x()).isZero();
        assertThat(line.from().y()).isEqualTo(0.3 + rise, within(EXACT));
        assertThat(line.to()).isEqualTo(new Point(Plans.RATIO, line.to().y()));
        assertThat(line.to().y()).isEqualTo(0.3 - rise, within(EXACT));
    }

    @ParameterizedTest(name = "{1}° over {0}")
    @CsvSource({
        "WATER, 0.8, LOOK_AGAIN",
        "FLAT, -0.8, LOOK_AGAIN",
        "WATER, 0.5, HOLDS",
        "SLOPE, 0.8, HOLDS",
        "SKY, 0.8, HOLDS",
        "UPRIGHT, 0.8, HOLDS"
    })
    void aTiltCountsOnlyOverWaterOrPlain(Plane plane, double tilt, Verdict verdict) {
        Thumbnail thumbnail = zonedFrom(withHorizon(0.7, tilt), 0);
        assertThat(Plans.read(reading, zoned(plane), thumbnail).verdict()).isEqualTo(verdict);
    }

    @Test
    void aTiltCountsOnlyWhereMostOfTheLineLiesOverWater() {
        Study study = zoned(Plane.WATER);
        Thumbnail tilted = withHorizon(0.7, 2);
        assertThat(Plans.read(reading, study, tilted).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(Plans.read(reading, study, zonedFrom(tilted, 0.6 * Plans.RATIO))
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
        assertThat(Plans.read(reading, study, zonedFrom(tilted, 0.4 * Plans.RATIO))
                        .verdict())
                .isEqualTo(Verdict.LOOK_AGAIN);
    }

    @Test
    void aLandEdgeMaySlopeOverWater() {
        Thumbnail sloping = zonedFrom(Plans.dark(0.3), 0).withLandEdge(Optional.of(new Level(0.3, 6)));
        assertThat(Plans.read(reading, zoned(Plane.WATER), sloping).verdict()).isEqualTo(Verdict.HOLDS);
    }

    @Test
    void aTiltIsSaidWithItsRemedy() {
        Study study = zoned(Plane.WATER);
        assertThat(Words.say(Plans.read(reading, study, zonedFrom(withHorizon(0.7, -1.24), 0))
                        .sentence()))
                .isEqualTo("The horizon tilts 1.2° over water or plain. Level it.");
        assertThat(Words.say(Plans.read(reading, study, zonedFrom(withHorizon(0.52, 1), 0))
                        .sentence()))
                .isEqualTo("The horizon runs at 52 % of the height, near the middle, and tilts 1.0°."
                        + " Raise or lower it, and level it.");
    }

    @Test
    void aStudysOwnLimitsCount() {
        Study study = zoned(Plane.WATER).withLimits(Map.of("horizon-height", Map.of("middle", 0.01, "tilt", 3.0)));
        assertThat(Plans.read(reading, study, zonedFrom(withHorizon(0.52, 2), 0))
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
    }

    @Property(tries = 40, seed = "21")
    void mirroringChangesNothingButTheTiltsSide(@ForAll("designs") Thumbnail thumbnail) {
        Finding one = Plans.read(reading, thumbnail);
        Finding other = Plans.read(reading, Plans.mirrored(thumbnail));
        for (String name : List.of("height", "dark-above", "dark-below")) {
            assertThat(figure(other, name)).as(name).isEqualTo(figure(one, name), within(EXACT));
        }
        assertThat(figure(other, "tilt")).isEqualTo(-figure(one, "tilt"));
        assertThat(other.verdict()).isEqualTo(one.verdict());
    }

    @Property(tries = 40, seed = "22")
    void changingDarkAndLightOverSwapsBothShares(@ForAll("designs") Thumbnail thumbnail) {
        Finding one = Plans.read(reading, thumbnail);
        Finding other = Plans.read(reading, Plans.inverted(thumbnail));
        assertThat(figure(other, "height")).isEqualTo(figure(one, "height"));
        for (String name : List.of("dark-above", "dark-below")) {
            assertThat(figure(other, name)).as(name).isEqualTo(1 - figure(one, name), within(EXACT));
        }
    }

    @Provide
    Arbitrary<Thumbnail> designs() {
        return Designs.any();
    }
}
