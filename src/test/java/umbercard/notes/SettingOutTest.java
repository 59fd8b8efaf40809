package umbercard.notes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import umbercard.color.Ciede2000;
import umbercard.color.Lab;
import umbercard.color.Warmth;
import umbercard.model.Stick;
import umbercard.notes.SettingOut.Wish;
import umbercard.store.Samples;
import umbercard.words.Words;

class SettingOutTest {
    private static final Stick WARM_DARK = Sticks.stick(1, 2, 8, 12);
    private static final Stick COOL_DARK = Sticks.stick(2, 2, -2, -14);
    private static final Stick ACCENT = Sticks.stick(3, 5.5, 45, 50);
    private static final Stick GRAY = Sticks.stick(4, 7.5, 0, 0);
    private static final Stick COOL_GRAY = Sticks.stick(5, 7.6, -1, -7);

    private static List<String> ids(Suggestion suggestion) {
        return suggestion.picks().stream().map(pick -> pick.stick().id()).toList();
    }

    private static String reason(Suggestion suggestion, String id) {
        return suggestion.picks().stream()
                .filter(pick -> pick.stick().id().equals(id))
                .map(pick -> Words.say(pick.reason()))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void eachChoiceSaysWhatItIsFor() {
        List<ColoredZone> zones = List.of(
                Sticks.zone("sky", 0.6, Sticks.color(7.4, 0, -2), Sticks.color(7.9, 0, -3)),
                Sticks.zone("kiln", 0.2, Sticks.color(2.2, 6, 8)));
        Suggestion suggestion =
                SettingOut.of(zones, AtHand.of(List.of(WARM_DARK, COOL_DARK, ACCENT, GRAY, COOL_GRAY)), Wish.USUAL);
        assertThat(ids(suggestion)).containsExactly("s1", "s2", "s3", "s4");
        assertThat(reason(suggestion, "s1")).isEqualTo("the warm dark, covers the dark of kiln");
        assertThat(reason(suggestion, "s2")).isEqualTo("the cool dark");
        assertThat(reason(suggestion, "s3")).isEqualTo("the accent");
        assertThat(reason(suggestion, "s4")).isEqualTo("covers two lights of sky");
        assertThat(Words.say(suggestion.summary())).isEqualTo("4 sticks cover every zone, and no fewer would.");
        assertThat(suggestion.missed()).isEmpty();
        assertThat(suggestion.lacks()).isEmpty();
        assertThat(suggestion.proven()).isTrue();
    }

    @Test
    void whatLiesBeyondTheBoxIsClampedToTheValuesItReaches() {
        List<ColoredZone> zones = List.of(Sticks.zone("kiln", 1, Sticks.color(0.5, 6, 10)));
        Suggestion suggestion = SettingOut.of(zones, AtHand.of(List.of(WARM_DARK, GRAY)), Wish.USUAL);
        assertThat(ids(suggestion)).containsExactly("s1");
        assertThat(suggestion.missed()).isEmpty();
        Goal clamped = Goal.of(zones, AtHand.of(List.of(WARM_DARK, GRAY))).get(0);
        assertThat(clamped.value()).isCloseTo(2, within(1e-6));
        assertThat(clamped.reached().value()).isCloseTo(2, within(1e-6));
        assertThat(clamped.reached().a()).isEqualTo(6);
        assertThat(clamped.reached().b()).isEqualTo(10);
    }

    @Test
    void whatNoStickCanCoverIsToldWithTheNearest() {
        List<ColoredZone> zones =
                List.of(Sticks.zone("bank", 0.75, Sticks.color(5, -30, 30)), Sticks.zone("sky", 0.25, GRAY.color()));
        Suggestion suggestion = SettingOut.of(zones, AtHand.of(List.of(GRAY, ACCENT)), Wish.USUAL);
        assertThat(suggestion.missed()).singleElement().satisfies(missed -> {
            assertThat(missed.zone()).isEqualTo("z-bank");
            assertThat(missed.nearest().stick()).isEqualTo(ACCENT);
            assertThat(Words.say(missed.said()))
                    .startsWith("bank, value 5.0: nothing near enough; s3 comes nearest, a little lighter, ");
        });
        assertThat(suggestion.lacks().stream().map(Words::say))
                .containsExactly("There is no warm dark here.", "There is no cool dark here.");
        assertThat(Words.say(suggestion.summary())).startsWith("2 sticks cover 25 % of the zones, all that these");
    }

    @Test
    void whereTheFewestAreTooManyTheLargestShareIsCovered() {
        List<Stick> box = new ArrayList<>(List.of(WARM_DARK, COOL_DARK, ACCENT));
        List<ColoredZone> zones = new ArrayList<>();
        for (int i = 0; i < 9; i++) {
            Lab color = Sticks.color(6 + i % 3, 60 * (i / 3) - 60, 60 * ((i + 1) % 3) - 60);
            box.add(new Stick("c" + i, "c" + i, new Stick.Slot(2, i + 1), color));
            zones.add(Sticks.zone("zone " + i, 0.01 * (i + 1), color));
        }
        Suggestion suggestion = SettingOut.of(zones, AtHand.of(box), Wish.USUAL.withMost(8));
        assertThat(suggestion.picks()).hasSize(8);
        assertThat(ids(suggestion)).contains("s1", "s2").doesNotContain("c0").contains("c8", "c7", "c6", "c5");
        assertThat(suggestion.missed()).hasSizeBetween(3, 4);
        assertThat(suggestion.proven()).isTrue();
        assertThat(Words.say(suggestion.summary()))
                .startsWith("8 sticks cover ")
                .endsWith("more would be needed for all.");
    }

    @Test
    void whereTheSearchEndsTooEarlyThatIsSaid() {
        AtHand box = AtHand.of(Samples.kilnYard().box().sticks());
        List<ColoredZone> zones = List.of(
                Sticks.zone("sky", 0.6, new Lab(74, -1, -5), new Lab(84, 0, -4)),
                Sticks.zone("pond", 0.4, new Lab(48, 1, -3), new Lab(33, -1, -9)));
        Suggestion cut = SettingOut.of(zones, box, Wish.USUAL, 8);
        assertThat(cut.proven()).isFalse();
        assertThat(cut.missed()).isEmpty();
        assertThat(Words.say(cut.summary()))
                .matches("\\d sticks cover every zone; whether fewer would was not settled\\.");
        assertThat(SettingOut.of(zones, box, Wish.USUAL).proven()).isTrue();
    }

    /**
     * Of all sets of sticks: the smallest that covers what can be covered and has the parts, and of these the one whose ranks,
     * color after color by share, come first.
     */
    @Property(seed = "12", tries = 150)
    void noSetOfSticksDoesBetter(@ForAll Random random) {
        List<Stick> box = Sticks.random(11, random);
        List<ColoredZone> zones = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            Lab near = box.get(random.nextInt(11)).color();
            Lab color = new Lab(near.l() + random.nextInt(5) - 2, near.a() + random.nextInt(9), near.b());
            zones.add(Sticks.zone("zone " + i, 0.3 - 0.02 * i, color));
        }
        AtHand atHand = AtHand.of(box);
        Wish wish = new Wish(12, 14, new Trust(0.5), 4);
        List<List<Integer>> serving = plainlyServing(zones, atHand, wish);
        List<Integer> best = IntStream.range(0, 1 << 11)
                .filter(set -> serving.stream()
                        .allMatch(row -> row.isEmpty() || row.stream().anyMatch(stick -> (set >> stick & 1) == 1)))
                .boxed()
                .min(Comparator.<Integer>comparingInt(Integer::bitCount)
                        .thenComparing(set -> ranks(set, serving), SettingOutTest::compare))
                .map(set -> IntStream.range(0, 11)
                        .filter(i -> (set >> i & 1) == 1)
                        .boxed()
                        .toList())
                .orElseThrow();
        assertThat(ids(SettingOut.of(zones, atHand, wish)))
                .isEqualTo(best.stream().map(place -> box.get(place).id()).toList());
    }

    /** The rows that SettingOut's comments state, put together by looking at every stick. */
    private static List<List<Integer>> plainlyServing(List<ColoredZone> zones, AtHand atHand, Wish wish) {
        List<List<Integer>> serving = new ArrayList<>();
        List<Goal> goals = Goal.of(zones, atHand);
        assertThat(goals)
                .isSortedAccordingTo(Comparator.comparingDouble(Goal::share).reversed());
        for (Goal goal : goals) {
            serving.add(IntStream.range(0, atHand.sticks().size())
                    .boxed()
                    .filter(i -> Math.abs(atHand.value(i) - goal.value()) <= 1)
                    .filter(i -> Ciede2000.difference(
                                    goal.reached(), atHand.sticks().get(i).color())
                            <= wish.within())
                    .sorted(Comparator.comparingDouble(i -> {
                        Ciede2000.Parts parts = Ciede2000.parts(
                                goal.reached(), atHand.sticks().get(i).color());
                        return parts.lightness() * parts.lightness() / 4
                                + parts.chroma() * parts.chroma()
                                + parts.hue() * parts.hue()
                                + parts.turning();
                    }))
                    .toList());
        }
        for (int sign : new int[] {1, -1}) {
            serving.add(IntStream.range(0, atHand.sticks().size())
                    .boxed()
                    .filter(i -> atHand.value(i) < 4
                            && sign * Warmth.of(atHand.sticks().get(i).color()) >= 5)
                    .sorted(Comparator.comparingDouble(
                            i -> -sign * Warmth.of(atHand.sticks().get(i).color())))
                    .toList());
        }
        serving.add(Part.ACCENT.candidates(atHand, goals, 4));
        return serving;
    }

    private static List<Integer> ranks(int set, List<List<Integer>> serving) {
        return serving.stream()
                .map(row -> (int)
                        row.stream().takeWhile(stick -> (set >> stick & 1) == 0).count())
                .toList();
    }

    private static int compare(List<Integer> one, List<Integer> other) {
        for (int i = 0; i < one.size(); i++) {
            if (!one.get(i).equals(other.get(i))) {
                return Integer.compare(one.get(i), other.get(i));
            }
        }
        return 0;
    }

    @Test
    void theAccentStandsAgainstThePicturesOwnColor() {
        Stick blue = Sticks.stick(6, 5, 0, -50);
        Stick orange = Sticks.stick(7, 6, 30, 40);
        Stick dull = Sticks.stick(8, 6, 5, 15);
        AtHand atHand = AtHand.of(List.of(blue, orange, dull));
        List<Goal> snow = Goal.of(List.of(Sticks.zone("snow", 1, Sticks.color(8, 0, -12))), atHand);
        List<Goal> glow = Goal.of(List.of(Sticks.zone("glow", 1, Sticks.color(8, 10, 30))), atHand);
        assertThat(Part.ACCENT.candidates(atHand, snow, 4)).containsExactly(1);
        assertThat(Part.ACCENT.candidates(atHand, glow, 4)).containsExactly(0);
        assertThat(Part.ACCENT.candidates(AtHand.of(List.of(dull)), glow, 4)).isEmpty();
    }

    @Test
    void theSameEveryTimeAndOnlyWithinItsLimits() {
        AtHand box = AtHand.of(Samples.kilnYard().box().sticks());
        List<ColoredZone> zones = List.of(Sticks.zone("sky", 0.6, new Lab(74, -1, -5), new Lab(84, 0, -4)));
        assertThat(SettingOut.of(zones, box, Wish.USUAL)).isEqualTo(SettingOut.of(zones, box, Wish.USUAL));
        assertThatThrownBy(() -> Wish.USUAL.withMost(7)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Wish.USUAL.withMost(17)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SettingOut.of(zones, AtHand.of(List.of()), Wish.USUAL))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
