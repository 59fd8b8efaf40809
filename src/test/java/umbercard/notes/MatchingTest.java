package umbercard.notes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import umbercard.color.Ciede2000;
import umbercard.color.Lab;
import umbercard.model.Stick;
import umbercard.store.Samples;

class MatchingTest {
    private static final AtHand KILN_YARD = AtHand.of(Samples.kilnYard().box().sticks());

    private static ColorMatches match(Lab wanted, AtHand atHand, Trust trust, int most) {
        return new Matching(atHand, trust)
                .of(List.of(Sticks.zone("bank", 1, wanted)), most)
                .get(0);
    }

    private static List<String> ids(ColorMatches matches) {
        return matches.sticks().stream().map(match -> match.stick().id()).toList();
    }

    /** Every stick, in the order of the formula that Ciede2000Test holds to the pairs of Sharma, Wu and Dalal 2005. */
    @Test
    void withoutTrustInValueTheOrderIsThatOfAPlainSearch() {
        Random random = new Random(2000);
        AtHand many = AtHand.of(Sticks.random(500, random));
        for (Stick wanted : Sticks.random(40, random)) {
            List<String> plain = many.sticks().stream()
                    .sorted(Comparator.comparingDouble(stick -> Ciede2000.difference(wanted.color(), stick.color())))
                    .map(Stick::id)
                    .toList();
            ColorMatches matches = match(wanted.color(), many, Trust.NONE, 500);
            assertThat(ids(matches)).hasSize(500).isEqualTo(plain);
            StickMatch best = matches.sticks().get(0);
            assertThat(best.likeness().difference())
                    .isEqualTo(Ciede2000.difference(wanted.color(), best.stick().color()));
        }
    }

    /** What is within half a step, found by looking at every stick, in the order of the formula without its lightness term. */
    @Test
    void valueGoesFirstAsInAPlainSearch() {
        Random random = new Random(31);
        AtHand many = AtHand.of(Sticks.random(500, random));
        for (Stick wanted : Sticks.random(40, random)) {
            Lab color = wanted.color();
            List<String> plain = many.sticks().stream()
                    .filter(stick -> Math.abs(stick.color().value() - color.value()) <= 0.5)
                    .sorted(Comparator.comparingDouble(stick -> {
                        Ciede2000.Parts parts = Ciede2000.parts(color, stick.color());
                        return Math.sqrt(parts.chroma() * parts.chroma() + parts.hue() * parts.hue() + parts.turning());
                    }))
                    .map(Stick::id)
                    .toList();
            ColorMatches matches = match(color, many, Trust.VALUE_FIRST, 500);
            assertThat(matches.withinValue()).isTrue();
            assertThat(plain).hasSizeGreaterThan(10);
            assertThat(ids(matches)).isEqualTo(plain);
        }
    }

    @Test
    void aCloserStickOfTheWrongValueWaitsForTrustToFall() {
        AtHand two = AtHand.of(List.of(Sticks.stick(1, 5.95, 10, 10), Sticks.stick(2, 5.1, 16, 4)));
        Lab wanted = Sticks.color(5, 10, 10);
        assertThat(ids(match(wanted, two, Trust.VALUE_FIRST, 9))).containsExactly("s2");
        assertThat(ids(match(wanted, two, new Trust(0.5), 9))).containsExactly("s1", "s2");
        assertThat(ids(match(wanted, two, Trust.NONE, 9))).containsExactly("s2", "s1");
        assertThatThrownBy(() -> new Trust(1.1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Trust(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void whereNoneIsWithinValueTheNearestInValueComeFirst() {
        AtHand dark =
                AtHand.of(List.of(Sticks.stick(1, 2, 0, 0), Sticks.stick(2, 4.15, 30, 0), Sticks.stick(3, 4.12, 1, 0)));
        ColorMatches matches = match(Sticks.color(8, 0, 0), dark, Trust.VALUE_FIRST, 9);
        assertThat(matches.withinValue()).isFalse();
        assertThat(ids(matches))
                .as("a tenth of a step alike goes by hue and chroma")
                .containsExactly("s3", "s2", "s1");
    }

    @Test
    void equallyGoodOnesKeepTheOrderOfTheBox() {
        AtHand alike = AtHand.of(List.of(Sticks.stick(7, 5, 3, 3), Sticks.stick(2, 5, 3, 3), Sticks.stick(5, 5, 3, 3)));
        assertThat(ids(match(Sticks.color(5, 0, 0), alike, Trust.VALUE_FIRST, 2)))
                .containsExactly("s7", "s2");
    }

    @Test
    void wornOutSticksAndThoseNotOwnedAreLeftOut() {
        Stick worn = Sticks.stick(1, 5, 0, 0).withState(Stick.State.WORN_OUT);
        Stick wish = Sticks.stick(2, 5, 0, 0).withState(Stick.State.NOT_OWNED);
        Stick owned = Sticks.stick(3, 5, 9, 9);
        List<Stick> box = List.of(worn, wish, owned);
        assertThat(AtHand.of(box).sticks()).containsExactly(owned);
        assertThat(AtHand.all(box).sticks()).isEqualTo(box);
        assertThat(AtHand.of(List.of(worn)).isEmpty()).isTrue();
    }

    @Test
    void everyColorOfEveryZoneIsAnsweredInTurn() {
        List<ColorMatches> matches = new Matching(KILN_YARD, Trust.VALUE_FIRST)
                .of(
                        List.of(
                                Sticks.zone("sky", 0.5, new Lab(72, -1, -4), new Lab(93, -0.4, -3)),
                                Sticks.zone("pond", 0.1, new Lab(18, -3, -11))),
                        3);
        assertThat(matches).extracting(ColorMatches::zone).containsExactly("z-sky", "z-sky", "z-pond");
        assertThat(matches.stream().map(one -> one.sticks().get(0).stick().title()))
                .containsExactly("Low cloud", "Snow light", "Deep pond");
        assertThat(matches).allSatisfy(one -> {
            assertThat(one.sticks()).hasSizeLessThanOrEqualTo(3);
            assertThat(one.sticks().get(0).likeness().difference()).isZero();
        });
    }
}
