package umbercard.notes.turned;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import umbercard.color.Lab;
import umbercard.model.ColorNote;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.model.Zone;
import umbercard.model.Zone.Distance;
import umbercard.model.Zone.Plane;
import umbercard.notes.Purposes;
import umbercard.words.Words;
import umbercard.zones.ZoneMap;

class EchoesTest {
    private static final Stick GLOW = Skies.stick("glow", 8, 6, 20);
    private static final Stick GRAY = Skies.stick("gray", 7, 0, -4);

    private static Study study(Stick... sky) {
        Zone bank = new Zone("bank", "bank", Plane.FLAT, Distance.NEAR).withTargetValue(OptionalDouble.of(5));
        Zone snow = new Zone("snow", "snow", Plane.SLOPE, Distance.MIDDLE).withTargetValue(OptionalDouble.of(7.5));
        Study study = Skies.with(Skies.study(sky), bank, Skies.rectangle(0, 0.5, Skies.RATIO, 0.6));
        return Skies.with(study, snow, Skies.rectangle(0, 0.4, Skies.RATIO, 0.5));
    }

    private static Offers echoes(Study study) {
        Thumbnail thumbnail = study.thumbnails().get(0);
        return Echoes.of(study, thumbnail, ZoneMap.of(study, thumbnail));
    }

    /** Common practice, no source: sky hues repeated in the ground tie the two together. */
    @Test
    void aSkyStickReturnsWhereItsValueFits() {
        Offers offers = echoes(study(GRAY, GLOW));
        assertThat(offers.notes()).singleElement().satisfies(note -> {
            assertThat(note.stick()).isEqualTo(GLOW);
            assertThat(note.zone()).contains("snow");
            assertThat(note.purpose()).isEqualTo(Purposes.GROUND);
        });
        assertThat(Words.say(offers.offers().get(0).reason())).isEqualTo("glow can return in snow, at value 8.0.");
    }

    @Test
    void anotherStickOfTheHueMayComeNearer() {
        Stick straw = Skies.stick("straw", 5.1, 8, 24);
        Study study = study(GLOW);
        Offers offers = echoes(study.withSetOut(List.of(GLOW, straw)));
        assertThat(offers.notes()).singleElement().satisfies(note -> {
            assertThat(note.stick()).isEqualTo(straw);
            assertThat(note.zone()).contains("bank");
        });
    }

    @Test
    void whatReturnsAlreadyOrNowhereIsSaid() {
        Study study = study(GLOW);
        List<ColorNote> notes = new ArrayList<>(study.notes());
        notes.add(Skies.note("g1", Skies.stick("ocher", 5, 8, 30), "bank", Purposes.GROUND));
        assertThat(echoes(study.withNotes(notes)).remarks().stream().map(Words::say))
                .containsExactly("glow returns already: ocher in bank.");
        assertThat(echoes(study(Skies.stick("white", 9.7, 2, 12))).remarks().stream()
                        .map(Words::say))
                .singleElement()
                .asString()
                .contains("finds no zone");
        assertThat(echoes(study(GRAY)).remarks().stream().map(Words::say))
                .singleElement()
                .asString()
                .contains("No stick of the sky has a hue");
    }

    @Property(tries = 200)
    void everyEchoLiesWithinThirtyDegrees(
            @ForAll @IntRange(min = 0, max = 359) int sky,
            @ForAll List<@IntRange(min = 0, max = 359) Integer> others,
            @ForAll @IntRange(min = 20, max = 90) int value) {
        Stick one = hued("sky", value / 10.0, sky);
        List<Stick> out = new ArrayList<>(List.of(one));
        for (int i = 0; i < others.size(); i++) {
            out.add(hued("o" + i, 5, others.get(i)));
        }
        for (Offer offer : echoes(study(one).withSetOut(out)).offers()) {
            Lab color = offer.note().stick().color();
            double turn = Math.abs(color.hue() - one.color().hue());
            assertThat(Math.min(turn, 360 - turn)).isLessThanOrEqualTo(30 + 1e-9);
            assertThat(color.chroma()).isGreaterThanOrEqualTo(5);
        }
    }

    private static Stick hued(String id, double value, int hue) {
        double angle = Math.toRadians(hue);
        return Skies.stick(id, value, 20 * Math.cos(angle), 20 * Math.sin(angle));
    }
}
