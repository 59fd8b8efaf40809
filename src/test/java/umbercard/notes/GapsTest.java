package umbercard.notes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import umbercard.color.ValueScale;
import umbercard.model.Stick;
import umbercard.model.Zone;
import umbercard.picture.MainColor;
import umbercard.words.Words;

class GapsTest {
    private static final List<Stick> SET_OUT = List.of(
            Sticks.stick(1, 9, 2, 8),
            Sticks.stick(2, 4.001, -2, -10),
            Sticks.stick(3, 2.5, 8, 12),
            Sticks.stick(4, 6, 6, 20),
            Sticks.stick(5, 7.4, 0, -8),
            Sticks.stick(6, 3, -1, -9));

    @AfterEach
    void usualNumbering() {
        Words.useValues(ValueScale.MUNSELL);
    }

    private static List<String> said(List<Gap> gaps) {
        return gaps.stream().map(gap -> Words.say(gap.said())).toList();
    }

    @Test
    void aWideStretchWithoutAStickIsAGap() {
        List<Gap> gaps = Gaps.of(SET_OUT, List.of());
        assertThat(said(gaps)).containsExactly("nothing between 4.0 and 6.0", "nothing between 7.4 and 9.0");
        assertThat(gaps.get(0)).isInstanceOfSatisfying(Gap.OfValue.class, gap -> {
            assertThat(gap.from()).isCloseTo(4.001, within(1e-6));
            assertThat(gap.to()).isCloseTo(6, within(1e-6));
        });
    }

    @Test
    void onlyGapsCountThatHoldAValueTheStudyNeeds() {
        assertThat(said(Gaps.of(SET_OUT, List.of(3.0, 4.4, 8.2)))).containsExactly("nothing between 7.4 and 9.0");
        assertThat(said(Gaps.of(SET_OUT, List.of(0.8)))).containsExactly("nothing darker than 2.5");
        assertThat(said(Gaps.of(SET_OUT, List.of(9.9))))
                .as("white is within 1.5 of the lightest")
                .isEmpty();
    }

    @Test
    void beyondTheEndsOfTheStripToo() {
        List<Stick> middles = List.of(Sticks.stick(1, 5, 5, 20), Sticks.stick(2, 6, 0, -20));
        List<Gap> gaps = Gaps.of(middles, List.of());
        assertThat(said(gaps)).containsExactly("nothing darker than 5.0", "nothing lighter than 6.0");
        assertThat(gaps.get(0))
                .isInstanceOfSatisfying(
                        Gap.OfValue.class, gap -> assertThat(gap.from()).isZero());
        assertThat(gaps.get(1))
                .isInstanceOfSatisfying(
                        Gap.OfValue.class, gap -> assertThat(gap.to()).isEqualTo(10));
        assertThat(Gaps.of(List.of(), List.of())).isEmpty();
    }

    @Test
    void aBandWithoutAWarmOrACoolStickIsAGap() {
        List<Stick> lacking =
                List.of(Sticks.stick(1, 2.5, 8, 12), Sticks.stick(2, 5, 0, 0), Sticks.stick(3, 8, 0, -12));
        List<Gap> gaps = Gaps.of(lacking, List.of(5.0));
        assertThat(said(gaps)).containsExactly("no dark cool", "no middle warm", "no middle cool", "no light warm");
        assertThat(gaps.get(0)).isInstanceOfSatisfying(Gap.OfWarmth.class, gap -> {
            assertThat(gap.band()).isEqualTo(Band.DARK);
            assertThat(gap.hue()).isEqualTo(244);
        });
    }

    @Test
    void valuesAreToldInThePaintersNumbering() {
        Words.useValues(ValueScale.TEN_TO_ZERO);
        assertThat(said(Gaps.of(SET_OUT, List.of(5.0)))).containsExactly("nothing between 6.0 and 4.0");
    }

    @Test
    void aStickStandsByValueOnTheStripAndByHueAndChromaOnTheRing() {
        StickPlace yellow = StickPlace.of(Sticks.stick(1, 8, 0, 20));
        assertThat(yellow.value()).isCloseTo(8, within(1e-6));
        assertThat(yellow.hue()).isCloseTo(90, within(1e-9));
        assertThat(yellow.radius()).isCloseTo(0.5, within(1e-9));
        assertThat(yellow.x()).isCloseTo(0, within(1e-9));
        assertThat(yellow.y()).isCloseTo(-0.5, within(1e-9));
        StickPlace gray = StickPlace.of(Sticks.stick(1, 5, 0, 0));
        assertThat(gray.radius()).isZero();
        assertThat(StickPlace.of(Sticks.stick(1, 5, 100, 0)).x()).isEqualTo(1);
    }

    @Test
    void aStudyNeedsTheValuesAimedAtAndThoseOfItsColors() {
        Zone kiln = new Zone("z1", "kiln", Zone.Plane.UPRIGHT, Zone.Distance.MIDDLE)
                .withTargetValue(OptionalDouble.of(2.5));
        Zone sky = new Zone("z2", "sky", Zone.Plane.SKY, Zone.Distance.FAR);
        ColoredZone seen = new ColoredZone(
                sky, 0.4, List.of(new MainColor(Sticks.stick(1, 8, 0, 0).color(), 1)));
        assertThat(Gaps.needed(List.of(kiln, sky), List.of(seen)))
                .hasSize(2)
                .satisfies(values -> assertThat(values.get(0)).isEqualTo(2.5))
                .satisfies(values -> assertThat(values.get(1)).isCloseTo(8, within(1e-6)));
    }
}
