package umbercard.zones;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.geometry.Region;
import umbercard.model.Study;
import umbercard.model.Surface;
import umbercard.model.Thumbnail;
import umbercard.model.Zone;
import umbercard.model.Zone.Distance;
import umbercard.model.Zone.Plane;
import umbercard.notan.Design;

/** Shares are of rectangles, worked out by hand in a frame 1.5 wide. */
class ZoneMapTest {
    private final List<Zone> zones = new ArrayList<>();
    private final Map<String, List<Outline>> areas = new TreeMap<>();

    private void zone(String id, Plane plane, Distance distance, Outline... area) {
        zones.add(new Zone(id, id, plane, distance));
        areas.put(id, List.of(area));
    }

    private ZoneMap map() {
        Study study = Study.begin("", new Surface(15, 10, Surface.Unit.IN, 0, Optional.empty(), false))
                .withZones(zones);
        return ZoneMap.of(study, Thumbnail.empty("t", "").withZoneAreas(areas));
    }

    private ZonePlace place(String id) {
        return map().of(id).orElseThrow();
    }

    @Test
    void aZoneIsCutAtTheFrame() {
        zone("sky", Plane.SKY, Distance.FAR, Outline.rectangle(-1, -1, 3, 0.4));
        assertThat(place("sky").share()).isEqualTo(0.4, within(1e-8));
        assertThat(place("sky").height()).isEqualTo(0.2, within(1e-8));
    }

    @Test
    void aZoneWithoutAnAreaInTheFrameIsNotOnTheMap() {
        zone("sky", Plane.SKY, Distance.FAR, Outline.rectangle(0, -1, 1, -0.1));
        assertThat(map().places()).isEmpty();
    }

    @Test
    void nearerZonesCoverFartherOnes() {
        zone("tree", Plane.UPRIGHT, Distance.NEAR, Outline.rectangle(0, 0, 0.5, 1));
        zone("sky", Plane.SKY, Distance.FAR, Outline.rectangle(0, 0, 1.5, 0.5));
        assertThat(place("sky").seen().area()).isEqualTo(0.5, within(1e-8));
        assertThat(place("sky").isCovered()).isTrue();
        assertThat(place("tree").isCovered()).isFalse();
        assertThat(map().farthestFirst()).extracting(p -> p.zone().id()).containsExactly("sky", "tree");
        assertThat(map().places()).extracting(p -> p.zone().id()).containsExactly("tree", "sky");
    }

    @Test
    void aZoneMoreThanHalfDarkIsADarkOne() {
        zone("bank", Plane.FLAT, Distance.NEAR, Outline.rectangle(0, 0, 1, 1));
        assertThat(place("bank").darkShare(new Design(1.5, Region.rectangle(0.45, 0, 1.5, 1))))
                .isEqualTo(0.55, within(1e-8));
        assertThat(place("bank").isDark(new Design(1.5, Region.rectangle(0.45, 0, 1.5, 1))))
                .isTrue();
        assertThat(place("bank").isDark(new Design(1.5, Region.rectangle(0.55, 0, 1.5, 1))))
                .isFalse();
    }

    /** The diagonal is 1.803: zones up to .0144 apart touch, along .036 or more. */
    @Test
    void zonesTouchAlongAnEdgeEvenIfDrawnWithACrack() {
        zone("sky", Plane.SKY, Distance.FAR, Outline.rectangle(0, 0, 1.5, 0.4));
        zone("ridge", Plane.SLOPE, Distance.FAR, Outline.rectangle(0, 0.41, 0.7, 0.6));
        zone("slope", Plane.SLOPE, Distance.MIDDLE, Outline.rectangle(0.7, 0.42, 1.5, 1));
        assertThat(map().touching())
                .extracting(pair ->
                        pair.farther().zone().id() + " " + pair.nearer().zone().id())
                .containsExactly("sky ridge", "ridge slope");
    }

    @Test
    void zonesThatMeetInACornerDoNotTouch() {
        zone("one", Plane.FLAT, Distance.FAR, Outline.rectangle(0, 0, 0.5, 0.5));
        zone("other", Plane.FLAT, Distance.NEAR, Outline.rectangle(0.5, 0.5, 1, 1));
        assertThat(map().touching()).isEmpty();
    }

    @Test
    void onlyZonesOfOnePlaneAndDistanceOverlapWrongly() {
        zone("a", Plane.FLAT, Distance.FAR, Outline.rectangle(0, 0, 0.5, 0.5));
        zone("b", Plane.FLAT, Distance.FAR, Outline.rectangle(0.4, 0, 1, 0.5));
        zone("c", Plane.UPRIGHT, Distance.FAR, Outline.rectangle(0.3, 0, 1, 0.5));
        assertThat(map().overlapping())
                .extracting(pair ->
                        pair.farther().zone().id() + " " + pair.nearer().zone().id())
                .containsExactly("a b");
    }

    @Test
    void gapsAreWhatNoZoneCoversButCracks() {
        zone("a", Plane.FLAT, Distance.FAR, Outline.rectangle(0, 0, 0.75, 1));
        zone("b", Plane.FLAT, Distance.NEAR, Outline.rectangle(0.7501, 0, 1.5, 0.9));
        assertThat(map().gaps().area()).isEqualTo(0.075, within(1e-4));
        assertThat(map().gaps().contains(new Point(0.75005, 0.5))).isFalse();
    }

    @Test
    void withoutZonesAllOfTheFrameIsAGap() {
        assertThat(map().gaps().area()).isEqualTo(1.5, within(1e-8));
        assertThat(map().overlapping()).isEmpty();
    }
}
