package umbercard.readings.hue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import umbercard.color.Lab;
import umbercard.door.Finding;
import umbercard.door.Finding.Verdict;
import umbercard.door.Place;
import umbercard.geometry.Outline;
import umbercard.model.ColorNote;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.model.Zone;
import umbercard.readings.Plans;
import umbercard.words.Words;

/** Common practice, no source. */
class HueReadingsTest {
    private static final Thumbnail DARK = Plans.dark(1)
            .withZoneAreas(Map.of(
                    "one", List.of(Outline.rectangle(0, 0, 1, 0.5)), "two", List.of(Outline.rectangle(0, 0.5, 1, 1))));

    private static ColorNote note(String id, String zone, double chroma, double hue) {
        double angle = Math.toRadians(hue);
        Lab color = new Lab(30, chroma * Math.cos(angle), chroma * Math.sin(angle));
        return ColorNote.of(id, new Stick("s" + id, id, new Stick.Slot(1, 1), color))
                .withZone(Optional.of(zone))
                .withPurpose("darks");
    }

    private static Study study(ColorNote... notes) {
        return Plans.study()
                .withZones(List.of(
                        new Zone("one", "one", Zone.Plane.UPRIGHT, Zone.Distance.NEAR),
                        new Zone("two", "two", Zone.Plane.UPRIGHT, Zone.Distance.FAR)))
                .withNotes(List.of(notes));
    }

    private static Finding darks(ColorNote... notes) {
        return Plans.read(new DarkVariety(), study(notes), DARK);
    }

    /** The warmest hue is 64° and the coolest lies opposite; a figure under 5 either way is neither. */
    @ParameterizedTest
    @CsvSource({
        "12, 64, 12, 244, HOLDS",
        "12, 64, 12, 30, LOOK_AGAIN",
        "12, 244, 12, 270, LOOK_AGAIN",
        "12, 64, 4.9, 244, LOOK_AGAIN",
        "4, 64, 4, 244, LOOK_AGAIN",
        "12, 64, 20, 154, LOOK_AGAIN"
    })
    void oneDarkIsWarmAndOneIsCool(double chroma, double hue, double otherChroma, double otherHue, Verdict verdict) {
        assertThat(darks(note("a", "one", chroma, hue), note("b", "two", otherChroma, otherHue))
                        .verdict())
                .isEqualTo(verdict);
    }

    @Test
    void onlyWhatIsLaidFirstInADarkZoneCounts() {
        Finding late = darks(note("a", "one", 12, 64), note("b", "one", 12, 244), note("c", "two", 12, 60));
        assertThat(Words.say(late.sentence()))
                .isEqualTo("No dark that is laid first is cool. Begin one dark zone with a cool dark.");
        assertThat(late.places()).containsExactly(new Place.Of(List.of("one", "two"), List.of("a", "c")));
        Study light = study(note("a", "one", 12, 64));
        assertThat(Plans.read(new DarkVariety(), light, DARK.withMarks(List.of()))
                        .verdict())
                .isEqualTo(Verdict.NOT_SET);
    }

    private static double pairs(ColorNote... notes) {
        Finding finding = Plans.read(new GrayingLayers(), study(notes), DARK);
        assertThat(finding.verdict()).isEqualTo(Verdict.FIGURE_ONLY);
        assertThat(finding.places()).hasSize((int) Plans.figure(finding, "pairs"));
        return Plans.figure(finding, "pairs");
    }

    @ParameterizedTest
    @CsvSource({"30, 0, 30, 180, 1", "30, 10, 30, 200, 1", "30, 0, 30, 149, 0", "30, 0, 30, 211, 0", "30, 0, 19, 180, 0"
    })
    void oppositeHuesOverOneAnotherMayGray(double chroma, double hue, double otherChroma, double otherHue, int pairs) {
        assertThat(pairs(note("a", "one", chroma, hue), note("b", "one", otherChroma, otherHue)))
                .isEqualTo(pairs);
        assertThat(pairs(note("b", "one", otherChroma, otherHue), note("a", "one", chroma, hue)))
                .isEqualTo(pairs);
    }

    @Test
    void onlySuccessiveNotesOfOneZoneGray() {
        List<ColorNote> notes =
                new ArrayList<>(List.of(note("a", "one", 30, 0), note("b", "one", 30, 90), note("c", "one", 30, 180)));
        assertThat(pairs(notes.toArray(ColorNote[]::new))).isZero();
        Finding apart =
                Plans.read(new GrayingLayers(), study(note("a", "one", 30, 0), note("b", "two", 30, 180)), DARK);
        assertThat(apart.verdict()).isEqualTo(Verdict.NOT_SET);
        assertThat(Words.say(
                        Plans.read(new GrayingLayers(), study(note("a", "one", 30, 0), note("b", "one", 30, 180)), DARK)
                                .sentence()))
                .isEqualTo("b over a in one may gray each other.");
    }
}
