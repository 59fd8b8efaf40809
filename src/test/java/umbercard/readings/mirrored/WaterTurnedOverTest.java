package umbercard.readings.mirrored;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import umbercard.door.Finding;
import umbercard.door.Finding.Verdict;
import umbercard.door.Place;
import umbercard.geometry.Outline;
import umbercard.model.ColorNote;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.model.Zone;
import umbercard.notes.Purposes;
import umbercard.notes.turned.Offers;
import umbercard.notes.turned.Skies;
import umbercard.notes.turned.TurnedSky;
import umbercard.readings.Plans;
import umbercard.words.Words;
import umbercard.zones.ZoneMap;

class WaterTurnedOverTest {
    private static final Stick HIGH = Skies.stick("high", 6.5, -4, -20);
    private static final Stick CLOUD = Skies.stick("cloud", 7.5, 0, -4);
    private static final Stick GLOW = Skies.stick("glow", 8.5, 6, 20);

    private static Study water(Stick... sticks) {
        Study study = Skies.study(HIGH, CLOUD, GLOW);
        List<ColorNote> notes = new ArrayList<>(study.notes());
        for (Stick stick : sticks) {
            notes.add(Skies.note("w" + notes.size(), stick, "pond", Purposes.WATER));
        }
        return study.withNotes(notes);
    }

    private static Finding read(Study study) {
        return Plans.read(new WaterTurnedOver(), study, study.thumbnails().get(0));
    }

    /** The water's list, top to bottom, is the sky's reversed (Ruskin 1857; Pollock 1903): three pairs, of which each wrong one takes 2/3. */
    @Test
    void theSkysOrderReversedHolds() {
        Finding holds = read(water(GLOW, CLOUD, HIGH));
        assertThat(holds.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(Plans.figure(holds, "agreement")).isEqualTo(1);
        Finding once = read(water(CLOUD, GLOW, HIGH));
        assertThat(once.verdict()).isEqualTo(Verdict.LOOK_AGAIN);
        assertThat(Plans.figure(once, "agreement")).isEqualTo(1 / 3.0, within(1e-12));
        assertThat(once.places()).containsExactly(new Place.Of(List.of(), List.of("w3", "w4", "w5")));
        assertThat(Words.say(once.sentence())).contains("agreement 0.33");
        assertThat(Plans.figure(read(water(HIGH, CLOUD, GLOW)), "agreement")).isEqualTo(-1);
    }

    @Test
    void whatTurningTheSkyOverOffersHolds() {
        Study study = water();
        Thumbnail thumbnail = study.thumbnails().get(0);
        Offers offers = TurnedSky.of(study, thumbnail, ZoneMap.of(study, thumbnail));
        assertThat(read(offers.adding().apply(study)).verdict()).isEqualTo(Verdict.HOLDS);
    }

    @Test
    void underThreeNotesOfTheSkyItIsNotSet() {
        Study two = water(GLOW, CLOUD);
        assertThat(read(two).verdict()).isEqualTo(Verdict.NOT_SET);
        List<ColorNote> notes = new ArrayList<>(two.notes());
        notes.add(Skies.note("w9", HIGH, "pond", Purposes.REFLECTIONS));
        notes.add(Skies.note("w10", HIGH, "pond", Purposes.ACCENTS));
        assertThat(Words.say(read(two.withNotes(notes)).sentence())).startsWith("The water has 2 notes of the sky");
    }

    @Test
    void hiddenSkyIsLeftOut() {
        Study study = water(CLOUD, HIGH, HIGH);
        Thumbnail thumbnail = study.thumbnails().get(0);
        Zone hill = new Zone("hill", "hill", Zone.Plane.SLOPE, Zone.Distance.MIDDLE);
        Map<String, List<Outline>> areas = new TreeMap<>(thumbnail.zoneAreas());
        areas.put("hill", Skies.rectangle(0, 0.1, Plans.RATIO, 0.6));
        List<Zone> zones = new ArrayList<>(study.zones());
        zones.add(hill);
        Study hilly = study.withZones(zones).withThumbnails(List.of(thumbnail.withZoneAreas(areas)));
        assertThat(read(hilly).verdict()).isEqualTo(Verdict.NOT_SET);
        assertThat(read(study).verdict()).isEqualTo(Verdict.HOLDS);
    }

    @Test
    void thePaintersLimitCounts() {
        Study study = water(CLOUD, GLOW, HIGH);
        assertThat(read(study.withLimits(Map.of("water-turned-over", Map.of("least", 0.3))))
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
    }
}
