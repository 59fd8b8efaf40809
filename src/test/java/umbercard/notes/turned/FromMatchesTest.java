package umbercard.notes.turned;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import umbercard.geometry.Outline;
import umbercard.geometry.Region;
import umbercard.model.ColorNote;
import umbercard.model.ColorNote.Direction;
import umbercard.model.ColorNote.Touch;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.model.Zone;
import umbercard.model.Zone.Distance;
import umbercard.model.Zone.Plane;
import umbercard.notan.Design;
import umbercard.notes.AtHand;
import umbercard.notes.ColoredZone;
import umbercard.notes.Purposes;
import umbercard.notes.Trust;
import umbercard.picture.MainColor;
import umbercard.words.Words;
import umbercard.zones.ZoneMap;

/** A sky, a pond and a dark wood between them, .4 to .6. */
class FromMatchesTest {
    private static final Zone WOOD =
            new Zone("wood", "wood", Plane.UPRIGHT, Distance.MIDDLE).withTargetValue(OptionalDouble.of(3));
    private static final Stick SKY_BLUE = Skies.stick("sky blue", 7, -4, -16);
    private static final Stick CLOUD = Skies.stick("cloud", 7.8, 0, -3);
    private static final Stick GLOW = Skies.stick("glow", 8.6, 6, 18);
    private static final Stick BARK = Skies.stick("bark", 3, 8, 10);
    private static final Stick SHADE = Skies.stick("shade", 2.8, -2, -12);
    private static final Stick PALE = Skies.stick("pale", 6.5, 2, 4);

    private static Study study() {
        return Skies.with(Skies.study(), WOOD, Skies.rectangle(0, 0.4, Skies.RATIO, 0.6));
    }

    private static ColoredZone zone(Study study, String id, Stick... colors) {
        return new ColoredZone(
                study.zone(id).orElseThrow(),
                0.1,
                Arrays.stream(colors)
                        .map(stick -> new MainColor(stick.color(), 1.0 / colors.length))
                        .toList());
    }

    private static Offers offers(Study study, List<Stick> sticks, OptionalInt most) {
        Thumbnail thumbnail = study.thumbnails().get(0);
        Design design = new Design(Skies.RATIO, Region.of(Outline.rectangle(0, 0.4, Skies.RATIO, 0.6)));
        List<ColoredZone> colored = List.of(
                zone(study, "sky", GLOW, SKY_BLUE, CLOUD),
                zone(study, "pond", CLOUD),
                zone(study, "wood", PALE, Skies.stick("twig", 4.5, 7, 9)));
        return FromMatches.of(
                study,
                thumbnail,
                ZoneMap.of(study, thumbnail),
                design,
                colored,
                AtHand.all(sticks),
                Trust.VALUE_FIRST,
                most);
    }

    private static final List<Stick> BOX = List.of(PALE, GLOW, CLOUD, SKY_BLUE, BARK, SHADE);

    private static List<String> sticks(Offers offers) {
        return offers.notes().stream().map(note -> note.stick().id()).toList();
    }

    /** Common practice, no source: more than one dark first, then the sky, lighter and warmer toward the horizon. */
    @Test
    void darksComeFirstThenTheSkyDownToTheHorizon() {
        Offers offers = offers(study(), BOX, OptionalInt.empty());
        assertThat(sticks(offers)).containsExactly("bark", "shade", "sky blue", "cloud", "glow");
        assertThat(offers.notes()).extracting(ColorNote::purpose).startsWith(Purposes.DARKS, Purposes.DARKS, "sky");
        assertThat(offers.notes().get(0).direction()).isEqualTo(Direction.UPRIGHT);
        assertThat(offers.notes().get(0).touch()).isEqualTo(Touch.FIRM);
        assertThat(offers.notes().get(2).touch()).isEqualTo(Touch.LIGHT);
        assertThat(offers.notes()).extracting(ColorNote::id).doesNotHaveDuplicates();
        assertThat(offers.remarks().stream().map(Words::say))
                .containsExactly("pond is left until the sky is turned over for it.");
        assertThat(Words.say(offers.offers().get(1).reason()))
                .isEqualTo("shade, value 2.8, for wood: the darks want a cool one.");
    }

    @Test
    void aDarkZoneWithoutATargetIsMatchedByItsDarkestColor() {
        Study study = study();
        Study untold = study.withZones(study.zones().stream()
                .map(zone -> zone.withTargetValue(OptionalDouble.empty()))
                .toList());
        assertThat(sticks(offers(untold, BOX, OptionalInt.of(1))))
                .contains("bark")
                .doesNotContain("pale");
    }

    @Test
    void withoutAWaterlineTheWaterIsMatchedToo() {
        Study study = study();
        Study dry = study.withThumbnails(List.of(study.thumbnails().get(0).withWaterline(Optional.empty())));
        Offers offers = offers(dry, BOX, OptionalInt.of(1));
        assertThat(sticks(offers)).containsExactly("bark", "shade", "glow", "cloud");
        assertThat(offers.notes().get(3).purpose()).isEqualTo(Purposes.WATER);
        assertThat(offers.remarks()).isEmpty();
    }

    @Test
    void zonesWithNotesStayAndMissingDarksAreTold() {
        Study study = study();
        List<ColorNote> notes = new ArrayList<>(List.of(Skies.note("n1", CLOUD, "sky", Purposes.SKY)));
        Offers offers = offers(study.withNotes(notes), List.of(GLOW, CLOUD, BARK), OptionalInt.empty());
        assertThat(sticks(offers)).containsExactly("bark");
        assertThat(offers.notes().get(0).id()).isNotEqualTo("n1");
        assertThat(offers.remarks().stream().map(Words::say))
                .contains("sky has notes already and stays as it is.", "No cool dark is at hand for the dark zones.");
    }
}
