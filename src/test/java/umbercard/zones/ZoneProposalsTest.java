package umbercard.zones;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.geometry.Region;
import umbercard.model.Level;
import umbercard.model.Mark;
import umbercard.model.Study;
import umbercard.model.Surface;
import umbercard.model.Thumbnail;
import umbercard.model.Zone;
import umbercard.model.Zone.Distance;
import umbercard.model.Zone.Plane;
import umbercard.notan.Design;
import umbercard.notan.Fold;
import umbercard.words.Words;

/** What a plane is taken to be by its place and value: common practice, no source. */
class ZoneProposalsTest {
    private static final Study STUDY =
            Study.begin("Hill", new Surface(12, 9, Surface.Unit.IN, 0, Optional.empty(), true));

    /** Sky over .4, water under .8, a dark from .3 to .7 between x .2 and .6. */
    private static final Thumbnail POND = Thumbnail.empty("t1", "pond")
            .withLandEdge(Optional.of(Level.at(0.4)))
            .withWaterline(Optional.of(Level.at(0.8)))
            .withMarks(List.of(new Mark("m1", Mark.Kind.LAY, Outline.rectangle(0.2, 0.3, 0.6, 0.7))));

    private static List<Proposal> proposed(Thumbnail thumbnail) {
        Study study = STUDY.withThumbnails(List.of(thumbnail));
        return ZoneProposals.of(study, thumbnail, design(thumbnail));
    }

    private static Design design(Thumbnail thumbnail) {
        return Fold.of(thumbnail, STUDY.ratio());
    }

    @Test
    void skyLandAndWaterAreProposed() {
        List<Proposal> proposals = proposed(POND);
        assertThat(proposals)
                .extracting(one -> one.zone().plane())
                .containsExactly(Plane.SKY, Plane.UPRIGHT, Plane.SLOPE, Plane.WATER);
        assertThat(proposals)
                .extracting(one -> one.zone().name())
                .containsExactly("sky", "far growth", "middle slope", "water");
        assertThat(proposals).extracting(one -> one.zone().id()).containsExactly("z1", "z2", "z3", "z4");
        assertThat(proposals.get(0).area().area()).isEqualTo(0.4 * 4 / 3, within(1e-6));
        assertThat(proposals.get(3).area().area()).isEqualTo(0.2 * 4 / 3, within(1e-6));
        assertThat(proposals)
                .allSatisfy(one -> assertThat(Words.say(one.reason())).endsWith("."));
    }

    @Test
    void whatHasAZoneIsLeftAlone() {
        Study study = STUDY.withZones(List.of(new Zone("z1", "sky", Plane.SKY, Distance.FAR)))
                .withThumbnails(List.of(POND));
        Thumbnail covered = POND.withZoneAreas(Map.of("z1", List.of(Outline.rectangle(0, 0, 2, 0.4))));
        List<Proposal> rest = ZoneProposals.of(study, covered, design(covered));
        assertThat(rest).extracting(one -> one.zone().plane()).doesNotContain(Plane.SKY);
        Thumbnail all = POND.withZoneAreas(Map.of("z1", List.of(Outline.rectangle(0, 0, 2, 1))));
        assertThat(ZoneProposals.of(study, all, design(all))).isEmpty();
    }

    @Property(tries = 40)
    void proposalsNeverOverlapAndLeaveOutOnlyScraps(
            @ForAll @DoubleRange(min = 0.2, max = 0.6) double edge,
            @ForAll @DoubleRange(min = 0.65, max = 0.9) double water,
            @ForAll @DoubleRange(min = 0, max = 0.8) double left,
            @ForAll @DoubleRange(min = 0.1, max = 0.5) double width) {
        Thumbnail thumbnail = POND.withLandEdge(Optional.of(new Level(edge, 3)))
                .withWaterline(Optional.of(new Level(water, -2)))
                .withMarks(List.of(new Mark("m1", Mark.Kind.LAY, Outline.rectangle(left, 0.1, left + width, 0.95))));
        Region covered = Region.empty();
        for (Proposal proposal : proposed(thumbnail)) {
            assertThat(covered.intersect(proposal.area()).area()).isLessThan(1e-6);
            covered = covered.union(proposal.area());
        }
        assertThat(covered.area()).isGreaterThan(0.85 * 4 / 3);
    }

    @Test
    void aMassUnderAPointBecomesAZone() {
        Study study = STUDY.withThumbnails(List.of(POND));
        Proposal dark = ZoneProposals.mass(study, POND, design(POND), new Point(0.3, 0.5))
                .orElseThrow();
        assertThat(dark.area().area()).isEqualTo(0.16, within(1e-6));
        assertThat(dark.zone()).isEqualTo(new Zone("z1", "zone 1", Plane.UPRIGHT, Distance.FAR));
        Proposal light =
                ZoneProposals.mass(study, POND, design(POND), new Point(1, 0.9)).orElseThrow();
        assertThat(light.area().area()).isEqualTo(4 / 3.0 - 0.16, within(1e-6));
        assertThat(ZoneProposals.mass(study, POND, design(POND), new Point(3, 3)))
                .isEmpty();
        Study named = study.withZones(List.of(new Zone("z1", "zone 1", Plane.SKY, Distance.FAR)));
        assertThat(ZoneProposals.mass(named, POND, design(POND), new Point(0.3, 0.5))
                        .orElseThrow()
                        .zone()
                        .name())
                .isEqualTo("zone 2");
    }

    /** What is outlined over a zone of its kind seems to stand before it. */
    @Test
    void aNewZoneOverOneOfItsKindIsTakenToStandNearer() {
        Zone hill = new Zone("z1", "hill", Plane.SLOPE, Distance.MIDDLE);
        Thumbnail covered = POND.withZoneAreas(Map.of("z1", List.of(Outline.rectangle(0, 0.5, 1.3, 0.8))));
        Study study = STUDY.withZones(List.of(hill)).withThumbnails(List.of(covered));
        Region area = Region.rectangle(0.7, 0.6, 1, 0.75);
        assertThat(ZoneProposals.guessed(study, covered, area, false).distance())
                .isEqualTo(Distance.NEAR);
        assertThat(ZoneProposals.guessed(STUDY, POND, area, false).distance()).isEqualTo(Distance.MIDDLE);
    }
}
