package umbercard.readings.value;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import umbercard.door.Finding;
import umbercard.door.Finding.Verdict;
import umbercard.door.Limits;
import umbercard.door.Place;
import umbercard.door.Plan;
import umbercard.door.Reading;
import umbercard.model.Light;
import umbercard.model.LostEdge;
import umbercard.model.Study;
import umbercard.model.Zone;
import umbercard.model.Zone.Distance;
import umbercard.model.Zone.Plane;
import umbercard.picture.MainColor;
import umbercard.readings.Plans;
import umbercard.words.Words;

/** Limits and what the readings take no notice of. The rules: Carlson 1929, Leonardo, common practice, as each reading says. */
class ValueReadingsTest {
    private static final List<Reading> ALL =
            List.of(new ValueSide(), new PlaneValues(), new PlaneSeparation(), new Depth(), new SkyRamp());

    private static ZonesOfGray hill(double sky, double slope, double bank) {
        return new ZonesOfGray()
                .zone("sky", Plane.SKY, Distance.FAR, 0, 0.4, sky)
                .zone("slope", Plane.SLOPE, Distance.MIDDLE, 0.4, 0.7, slope)
                .zone("bank", Plane.FLAT, Distance.NEAR, 0.7, 1, bank);
    }

    private static Finding read(Reading reading, ZonesOfGray zones, double dark) {
        return Plans.read(reading, zones.study(), zones.dark(dark));
    }

    /** The split is the middle of the scale where there is no reference; half a step over it is borne. */
    @ParameterizedTest
    @CsvSource({"5.49, 7, HOLDS", "5.51, 7, LOOK_AGAIN", "3, 4.51, HOLDS", "3, 4.49, LOOK_AGAIN"})
    void aZonesMedianLiesOnItsSideOfTheSplit(double dark, double light, Verdict verdict) {
        ZonesOfGray zones = hill(light, 7, dark);
        Finding finding = read(new ValueSide(), zones, 0.3);
        assertThat(finding.verdict()).isEqualTo(verdict);
        assertThat(Plans.figure(finding, "split")).isEqualTo(5);
    }

    @Test
    void aDarkZoneMayHoldSomeLights() {
        ZonesOfGray zones = hill(7, 7, 2).note("bank", "ground", 3).note("bank", "ground", 9);
        assertThat(read(new ValueSide(), zones, 0.3).verdict()).isEqualTo(Verdict.HOLDS);
        Finding again = read(new ValueSide(), zones.note("bank", "ground", 9).note("bank", "ground", 9), 0.3);
        assertThat(Words.say(again.sentence()))
                .isEqualTo(
                        "bank is dark on the notan, but its notes lie about 9.0, over the split at 5.0. Lay darker sticks"
                                + " there, or lift it on the notan.");
    }

    /** The orders of design and Carlson's theory of angles: open light, snow, a low sun. */
    @ParameterizedTest
    @CsvSource({
        "CLEAR, 8, 6, 5, HOLDS",
        "CLEAR, 8, 5, 5.49, HOLDS",
        "CLEAR, 8, 5, 5.51, LOOK_AGAIN",
        "OVERCAST, 6, 7, 5, LOOK_AGAIN",
        "SNOW, 6, 9, 7, HOLDS",
        "SNOW, 8, 7, 6, LOOK_AGAIN",
        "LOW_SUN, 8, 3, 6, HOLDS",
        "LOW_SUN, 8, 6, 5, LOOK_AGAIN",
        "NIGHT, 1, 9, 5, DOES_NOT_APPLY",
        "INDOORS, 1, 9, 5, DOES_NOT_APPLY"
    })
    void planesStandInTheOrderOfTheLight(Light light, double sky, double flat, double slope, Verdict verdict) {
        ZonesOfGray zones = hill(sky, slope, flat);
        Finding finding = Plans.read(new PlaneValues(), zones.study().withLight(light), zones.dark(0));
        assertThat(finding.verdict()).isEqualTo(verdict);
    }

    @Test
    void aSliverOfAPlaneTellsNothing() {
        ZonesOfGray zones = new ZonesOfGray()
                .zone("sky", Plane.SKY, Distance.FAR, 0, 0.9, 8)
                .zone("slope", Plane.SLOPE, Distance.MIDDLE, 0.9, 0.96, 6)
                .zone("bank", Plane.FLAT, Distance.NEAR, 0.96, 1, 2);
        assertThat(read(new PlaneValues(), zones, 0).verdict()).isEqualTo(Verdict.HOLDS);
    }

    @ParameterizedTest
    @CsvSource({"6.0, HOLDS", "6.001, LOOK_AGAIN", "8.0, HOLDS", "7.9, LOOK_AGAIN"})
    void zonesThatTouchPartByAStep(double slope, Verdict verdict) {
        ZonesOfGray zones = hill(slope < 7 ? 8 : 9, slope, 7);
        assertThat(read(new PlaneSeparation(), zones, 0).verdict()).isEqualTo(verdict);
    }

    @Test
    void aLostEdgeIsNoFaultAndZonesApartNeedNotPart() {
        ZonesOfGray zones = hill(8, 5, 5.2);
        Finding again = read(new PlaneSeparation(), zones, 0);
        assertThat(Words.say(again.sentence()))
                .isEqualTo("slope at 5.0 and bank at 5.2 run together. Darken the near one or lighten the far one.");
        assertThat(again.places()).containsExactly(new Place.Of(List.of("slope", "bank"), List.of("n1", "n2")));
        Study lost = zones.study().withLostEdges(Set.of(new LostEdge("bank", "slope")));
        assertThat(Plans.read(new PlaneSeparation(), lost, zones.dark(0)).verdict())
                .isEqualTo(Verdict.HOLDS);
        assertThat(read(new PlaneSeparation(), hill(8, 6, 8), 0).verdict()).isEqualTo(Verdict.HOLDS);
    }

    @ParameterizedTest
    @CsvSource({"5, 5.9, HOLDS", "5, 6.2, LOOK_AGAIN"})
    void whatIsFarContrastsNoMore(double dark, double light, Verdict verdict) {
        ZonesOfGray zones = new ZonesOfGray()
                .zone("far hill", Plane.SLOPE, Distance.FAR, 0, 0.5, dark, light)
                .zone("near hill", Plane.SLOPE, Distance.NEAR, 0.5, 1, 4, 4.6);
        Finding finding = read(new Depth(), zones, 0);
        assertThat(finding.verdict()).isEqualTo(verdict);
        assertThat(Plans.figure(finding, "over")).isEqualTo(light - dark - 0.6, within(1e-3));
    }

    @Test
    void oneNoteMakesNoContrast() {
        ZonesOfGray zones = new ZonesOfGray()
                .zone("far hill", Plane.SLOPE, Distance.FAR, 0, 0.5, 2, 9)
                .zone("near hill", Plane.SLOPE, Distance.NEAR, 0.5, 1, 4);
        assertThat(read(new Depth(), zones, 0).verdict()).isEqualTo(Verdict.NOT_SET);
    }

    @ParameterizedTest
    @CsvSource({
        "6, 7, 8, HOLDS",
        "6, 7, 6.6, HOLDS",
        "6, 7, 6.4, LOOK_AGAIN",
        "7, 7, 7, LOOK_AGAIN",
        "7, 7.4, 7, LOOK_AGAIN"
    })
    void aClearSkyLightensTowardTheHorizon(double top, double middle, double low, Verdict verdict) {
        ZonesOfGray zones = new ZonesOfGray()
                .zone("low sky", Plane.SKY, Distance.FAR, 0.3, 0.5, low)
                .zone("high sky", Plane.SKY, Distance.FAR, 0, 0.3, top, middle);
        assertThat(read(new SkyRamp(), zones, 0).verdict()).isEqualTo(verdict);
    }

    /** Accents, lights and sky holes are too few strokes to make a zone lighter or darker. */
    @Test
    void anAccentChangesNothing() {
        for (Reading reading : ALL) {
            Finding before = read(reading, hill(8, 6.4, 3), 0.3);
            ZonesOfGray more = hill(8, 6.4, 3);
            for (String purpose : List.of("accents", "lights", "sky-holes")) {
                more.note("slope", purpose, 1).note("sky", purpose, 1).note("bank", purpose, 9.5);
            }
            assertThat(read(reading, more, 0.3)).isEqualTo(before);
        }
    }

    @Test
    void theOrderOfTheZonesInTheStudyChangesNoVerdict() {
        for (Reading reading : ALL) {
            ZonesOfGray zones = hill(6, 6.4, 7);
            List<Zone> turned = new ArrayList<>(zones.study().zones());
            Collections.reverse(turned);
            Finding one = read(reading, zones, 0.3);
            Finding other = Plans.read(reading, zones.study().withZones(turned), zones.dark(0.3));
            assertThat(other.verdict()).isEqualTo(one.verdict());
            assertThat(other.sentence()).isEqualTo(one.sentence());
        }
    }

    @Test
    void withoutNotesTheyAreNotSet() {
        ZonesOfGray zones = new ZonesOfGray().zone("sky", Plane.SKY, Distance.FAR, 0, 0.4);
        for (Reading reading : ALL) {
            assertThat(read(reading, zones, 0.3).verdict()).as(reading.id()).isEqualTo(Verdict.NOT_SET);
        }
    }

    private static Finding covers(ZonesOfGray zones, MainColor... colors) {
        Study study = zones.study()
                .withSetOut(
                        zones.study().notes().stream().map(note -> note.stick()).toList());
        Plan plan = Plans.plan(study, zones.dark(0)).withColors(() -> Map.of("sky", List.of(colors)));
        BoxCovers reading = new BoxCovers();
        return reading.read(plan, Limits.of(reading.rule(), Map.of()));
    }

    /** A photograph's black and white lie beyond any stick: they are taken for the darkest and the lightest. */
    @Test
    void whatTheBoxReachesIsClampedToItsValues() {
        ZonesOfGray zones = hill(8, 5, 2);
        Finding black =
                covers(zones, new MainColor(ZonesOfGray.gray(0.3), 0.5), new MainColor(ZonesOfGray.gray(9.8), 0.5));
        assertThat(black.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(Plans.figure(black, "farthest")).isEqualTo(0, within(1e-9));
        MainColor red = new MainColor(new umbercard.color.Lab(50, 60, 40), 0.3);
        Finding again = covers(zones, red, new MainColor(ZonesOfGray.gray(5), 0.7));
        assertThat(again.verdict()).isEqualTo(Verdict.LOOK_AGAIN);
        assertThat(again.places()).containsExactly(new Place.Of(List.of("sky"), List.of()));
        assertThat(covers(zones, new MainColor(red.color(), 0.19), new MainColor(ZonesOfGray.gray(5), 0.81))
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
    }

    @Test
    void aBoxIsNotAskedAboutWithoutColorsOrSticks() {
        assertThat(covers(hill(8, 5, 2)).verdict()).isEqualTo(Verdict.NOT_SET);
        Study bare = Plans.study();
        assertThat(Plans.read(new BoxCovers(), bare, Plans.dark(0.3)).verdict()).isEqualTo(Verdict.NOT_SET);
        assertThat(bare.box()).isEqualTo(Optional.empty());
    }
}
