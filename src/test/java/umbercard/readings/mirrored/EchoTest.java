package umbercard.readings.mirrored;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import umbercard.door.Finding;
import umbercard.door.Finding.Verdict;
import umbercard.door.Place;
import umbercard.model.ColorNote;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.model.Zone;
import umbercard.notes.Purposes;
import umbercard.notes.turned.Skies;
import umbercard.readings.Plans;
import umbercard.words.Words;

/** Common practice, no source: sky hues repeated in the ground tie the two together. */
class EchoTest {
    private static final Stick GRAY = Skies.stick("gray", 7, 0, -4);

    private static Stick hued(String id, double hue) {
        double angle = Math.toRadians(hue);
        return Skies.stick(id, 6, 20 * Math.cos(angle), 20 * Math.sin(angle));
    }

    private static Study study(Stick sky, String purpose, Stick... ground) {
        Study study = Skies.study(GRAY, sky);
        List<Zone> zones = new ArrayList<>(study.zones());
        zones.add(new Zone("bank", "bank", Zone.Plane.FLAT, Zone.Distance.NEAR));
        List<ColorNote> notes = new ArrayList<>(study.notes());
        for (Stick stick : ground) {
            notes.add(Skies.note("g" + stick.id(), stick, "bank", purpose));
        }
        return study.withZones(zones).withNotes(notes);
    }

    private static Finding read(Study study) {
        return Plans.read(new Echo(), study, study.thumbnails().get(0));
    }

    @Test
    void aHueWithinThirtyDegreesReturns() {
        Finding holds = read(study(hued("glow", 350), Purposes.ACCENTS, hued("rust", 19), hued("moss", 120)));
        assertThat(holds.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(Plans.figure(holds, "returning")).isEqualTo(1);
        assertThat(Plans.figure(holds, "of")).isEqualTo(1);
        assertThat(holds.places()).containsExactly(new Place.Of(List.of(), List.of("grust")));
        assertThat(Words.say(holds.sentence())).isEqualTo("1 of 1 hue of the sky returns in the ground, as in rust.");
    }

    @Test
    void noneWithinThirtyIsLookedAtAgain() {
        Study study = study(hued("glow", 350), Purposes.GROUND, hued("ocher", 21), GRAY);
        Finding again = read(study);
        assertThat(again.verdict()).isEqualTo(Verdict.LOOK_AGAIN);
        assertThat(Words.say(again.sentence())).contains("Repeat glow");
        assertThat(read(study.withLimits(Map.of("echo", Map.of("within", 32.0))))
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
    }

    @Test
    void skyHolesAndGraysAreNoEcho() {
        Finding holes = read(study(hued("glow", 90), Purposes.SKY_HOLES, hued("hole", 90)));
        assertThat(holes.verdict()).isEqualTo(Verdict.NOT_SET);
        Finding gray = read(study(GRAY, Purposes.GROUND, hued("ocher", 80)));
        assertThat(gray.verdict()).isEqualTo(Verdict.DOES_NOT_APPLY);
    }
}
