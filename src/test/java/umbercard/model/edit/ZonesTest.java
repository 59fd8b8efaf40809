package umbercard.model.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import umbercard.color.Lab;
import umbercard.geometry.Outline;
import umbercard.geometry.Region;
import umbercard.model.ColorNote;
import umbercard.model.LostEdge;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.model.Surface;
import umbercard.model.Thumbnail;
import umbercard.model.Zone;
import umbercard.model.Zone.Distance;
import umbercard.model.Zone.Plane;

class ZonesTest {
    private static final ColorNote NOTE = ColorNote.of(
                    "n1", new Stick("s1", "Slate", new Stick.Slot(1, 1), new Lab(40, 0, 0)))
            .withZone(Optional.of("slope"));

    private static final Study STUDY = Study.begin(
                    "Hill", new Surface(12, 9, Surface.Unit.IN, 0, Optional.empty(), true))
            .withThumbnails(List.of(
                    Thumbnail.empty("t1", "first").withZoneAreas(Map.of("slope", rectangle(0, 1))),
                    Thumbnail.empty("t2", "second").withZoneAreas(Map.of("slope", rectangle(0, 1)))))
            .withZones(List.of(
                    new Zone("slope", "slope", Plane.SLOPE, Distance.FAR),
                    new Zone("other", "other slope", Plane.SLOPE, Distance.FAR),
                    new Zone("tree", "tree", Plane.UPRIGHT, Distance.NEAR)))
            .withLostEdges(Set.of(new LostEdge("slope", "tree"), new LostEdge("other", "tree")))
            .withNotes(List.of(NOTE));

    private static List<Outline> rectangle(double left, double right) {
        return List.of(Outline.rectangle(left, 0, right, 1));
    }

    private static double area(Study study, String thumbnail, String zone) {
        return Region.of(study.thumbnail(thumbnail).orElseThrow().zoneAreas().getOrDefault(zone, List.of()))
                .area();
    }

    @Test
    void aZoneIsAddedAndChangedAndKeepsItsId() {
        Study more =
                Zones.add(new Zone("z", "pond", Plane.WATER, Distance.NEAR)).apply(STUDY);
        assertThat(more.zones()).hasSize(4);
        Study changed =
                Zones.change("z", zone -> zone.withName("mere").withId("y")).apply(more);
        assertThat(changed.zone("z").map(Zone::name)).contains("mere");
        assertThat(Zones.change("gone", zone -> zone.withName("x")).apply(STUDY))
                .isEqualTo(STUDY);
    }

    @Test
    void aZoneGoesWithItsAreasAndLostEdgesAndItsNotesStay() {
        Study after = Zones.remove("slope").apply(STUDY);
        assertThat(after.zones()).extracting(Zone::id).containsExactly("other", "tree");
        assertThat(after.thumbnails()).allSatisfy(t -> assertThat(t.zoneAreas()).isEmpty());
        assertThat(after.lostEdges()).containsExactly(new LostEdge("other", "tree"));
        assertThat(after.notes()).containsExactly(NOTE.withZone(Optional.empty()));
        assertThat(Zones.remove("gone").apply(STUDY)).isEqualTo(STUDY);
    }

    @Test
    void anOutlineIsAddedOnOneThumbnail() {
        Study after =
                Zones.draw("t1", "tree", Outline.rectangle(0.5, 0.5, 1.2, 1)).apply(STUDY);
        assertThat(area(after, "t1", "tree")).isEqualTo(0.35, within(1e-6));
        assertThat(area(after, "t2", "tree")).isZero();
        Study twice =
                Zones.draw("t1", "tree", Outline.rectangle(0, 0, 0.1, 0.1)).apply(after);
        assertThat(twice.thumbnails().get(0).zoneAreas().get("tree")).hasSize(2);
        assertThat(Zones.draw("t1", "gone", Outline.rectangle(0, 0, 1, 1)).apply(STUDY))
                .isEqualTo(STUDY);
        assertThat(Zones.area("t1", "slope", List.of())
                        .apply(STUDY)
                        .thumbnails()
                        .get(0)
                        .zoneAreas())
                .isEmpty();
    }

    /** Of one plane and distance; the one that was there first keeps what it has. */
    @Property(tries = 50)
    void zonesOfOnePlaneAndDistanceNeverOverlap(
            @ForAll @DoubleRange(min = 0, max = 1.2) double left,
            @ForAll @DoubleRange(min = 0.05, max = 1) double width) {
        Study after = Zones.draw("t1", "other", Outline.rectangle(left, 0.2, left + width, 0.7))
                .apply(STUDY);
        Region slope = Region.of(after.thumbnails().get(0).zoneAreas().getOrDefault("slope", List.of()));
        Region other = Region.of(after.thumbnails().get(0).zoneAreas().getOrDefault("other", List.of()));
        assertThat(slope.intersect(other).area()).isLessThan(1e-6);
        assertThat(slope.area()).isEqualTo(1, within(1e-6));
        assertThat(other.area())
                .isEqualTo(0.5 * (left + width - Math.max(1, left)) * (left + width > 1 ? 1 : 0), within(1e-4));
    }

    @Test
    void anEdgeIsLostAndFound() {
        LostEdge edge = new LostEdge("slope", "other");
        Study lost = Zones.lose(edge, true).apply(STUDY);
        assertThat(lost.lostEdges()).hasSize(3).contains(new LostEdge("other", "slope"));
        assertThat(Zones.lose(edge, false).apply(lost)).isEqualTo(STUDY);
        assertThat(Zones.lose(new LostEdge("slope", "gone"), true).apply(STUDY)).isEqualTo(STUDY);
    }
}
