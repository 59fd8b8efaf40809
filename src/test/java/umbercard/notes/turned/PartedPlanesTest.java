package umbercard.notes.turned;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import umbercard.model.ColorNote;
import umbercard.model.LostEdge;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.model.Zone;
import umbercard.model.Zone.Distance;
import umbercard.model.Zone.Plane;
import umbercard.notes.Purposes;
import umbercard.words.Words;
import umbercard.zones.ZoneMap;

class PartedPlanesTest {
    private static final Stick FAR = Skies.stick("far", 6, -4, -14);
    private static final Stick NEAR = Skies.stick("near", 5.6, 4, 18);

    private static Study study(Stick... more) {
        Study study = Skies.study();
        study = Skies.with(
                study,
                new Zone("ridge", "ridge", Plane.SLOPE, Distance.FAR),
                Skies.rectangle(0, 0.4, Skies.RATIO, 0.5));
        study = Skies.with(
                study,
                new Zone("hill", "hill", Plane.SLOPE, Distance.MIDDLE),
                Skies.rectangle(0, 0.5, Skies.RATIO, 0.6));
        List<Stick> out = new ArrayList<>(List.of(FAR, NEAR));
        out.addAll(Arrays.asList(more));
        return study.withSetOut(out)
                .withNotes(List.of(
                        Skies.note("n1", FAR, "ridge", Purposes.LAND_EDGE),
                        Skies.note("n2", NEAR, "hill", Purposes.GROUND)));
    }

    private static Offers parted(Study study) {
        Thumbnail thumbnail = study.thumbnails().get(0);
        return PartedPlanes.of(study, ZoneMap.of(study, thumbnail));
    }

    /** Common practice, no source: darken the near or lighten the far. */
    @Test
    void bothRemediesAreOfferedWithSticksOfTheirHue() {
        Stick darker = Skies.stick("darker", 4.8, 4, 18);
        Stick coolDark = Skies.stick("cool dark", 4.8, -4, -14);
        Stick lighter = Skies.stick("lighter", 6.8, -4, -14);
        Stick warmLight = Skies.stick("warm light", 6.8, 4, 18);
        Offers offers = parted(study(coolDark, darker, warmLight, lighter));
        assertThat(offers.notes()).extracting(ColorNote::stick).containsExactly(darker, lighter);
        assertThat(offers.notes()).extracting(note -> note.zone().orElseThrow()).containsExactly("hill", "ridge");
        assertThat(offers.notes()).extracting(ColorNote::layer).containsExactly(2, 2);
        assertThat(offers.notes()).extracting(ColorNote::id).doesNotHaveDuplicates();
        assertThat(Words.say(offers.offers().get(0).reason())).startsWith("Darken hill, the nearer");
    }

    @Test
    void stickJustShortOfAStepIsNotEnough() {
        Offers offers = parted(study(Skies.stick("short", 5.1, 4, 18)));
        assertThat(offers.offers()).isEmpty();
        assertThat(offers.remarks().stream().map(Words::say))
                .containsExactly(
                        "hill would part from ridge at value 5.0 or darker, and no stick at hand is so.",
                        "ridge would part from hill at value 6.6 or lighter, and no stick at hand is so.");
    }

    @Test
    void aLostEdgeAndAStepOfOneNeedNothing() {
        Study study = study(Skies.stick("darker", 4.8, 4, 18));
        assertThat(parted(study.withLostEdges(Set.of(new LostEdge("hill", "ridge"))))
                        .offers())
                .isEmpty();
        List<ColorNote> apart =
                List.of(study.notes().get(0), Skies.note("n2", Skies.stick("low", 5, 4, 18), "hill", Purposes.GROUND));
        Offers none = parted(study.withNotes(apart));
        assertThat(none.offers()).isEmpty();
        assertThat(none.remarks()).isEmpty();
    }
}
