package umbercard.notes.order;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import umbercard.model.Study;
import umbercard.words.Words;

class ArrangingTest {
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "cases.csv", delimiter = ';')
    void putsNotesInOrder(String name, String notes, String order, String off) {
        Set<String> rulesOff =
                off == null ? Set.of() : Arrays.stream(off.split(" ")).collect(Collectors.toSet());
        Study study = Scene.of(notes).withRulesOff(rulesOff);
        Arranged arranged = Scene.arranged(study);
        assertThat(Scene.card(arranged.notes())).as(name).isEqualTo(order);
        assertThat(Scene.arranged(study.withNotes(arranged.notes())).notes()).isEqualTo(arranged.notes());
    }

    @Test
    void anEmptyCardStaysEmpty() {
        assertThat(Scene.arranged(Scene.of(List.of())).notes()).isEmpty();
    }

    @Test
    void eachNoteSaysWhyItStandsWhereItStands() {
        Arranged arranged = Scene.arranged(Scene.of(
                "sky:sky@high/7 own:glow@slope/5 edge:land-edge@ridge/5 kept:ground@slope/5p dark:darks@trees/2"));
        assertThat(reason(arranged, "dark")).isEqualTo("Before edge: darks before what comes over them.");
        assertThat(reason(arranged, "sky")).isEqualTo("After edge: the land edge before the sky.");
        assertThat(reason(arranged, "kept")).isEqualTo("Kept in place.");
        assertThat(arranged.reasons("nobody")).isEmpty();
        Arranged free = Scene.arranged(Scene.of("a:@-/5 b:@-/5"));
        assertThat(reason(free, "a")).isEqualTo("No rule speaks: it stays where you had it.");
    }

    private static String reason(Arranged arranged, String note) {
        return arranged.reasons(note).stream().map(Words::say).collect(Collectors.joining());
    }

    @Test
    void tellsWhatWasBrokenButNotWhatDustWouldHaveOtherwise() {
        Arranged arranged =
                Scene.arranged(Scene.of("wat:water@pond/6 low:darks@pond/2 sky:sky@high/7 high:darks@trees/2"));
        assertThat(arranged.broken())
                .extracting(pair ->
                        pair.early().id() + pair.late().id() + pair.rule().id())
                .containsExactly(
                        "watlowdarks-early", "wathighdarks-early", "skyhighdarks-early", "watskysky-before-land");
        assertThat(Words.say(arranged.broken().get(3).said()))
                .isEqualTo("wat stands before sky: the sky before ground, growth and water");
        assertThat(arranged.dust()).isEqualTo(1);
        assertThat(Scene.arranged(Scene.of(List.of()).withNotes(arranged.notes()))
                        .broken())
                .isEmpty();
    }

    @Test
    void aCircleIsToldAndTheWeakestRuleGivesWay() {
        Arranged arranged = Scene.arranged(Scene.of("a:darks@slope/2l b:ground@slope/7 c:darks@trees/2"));
        assertThat(Scene.card(arranged.notes())).isEqualTo("c b a");
        assertThat(arranged.circles()).hasSize(1);
        assertThat(arranged.circles().get(0).gaveWay()).isEqualTo(OrderRule.DARKS_EARLY);
        assertThat(Words.say(arranged.remarks().get(0)))
                .isEqualTo(
                        "The rules send a, b round in a circle; so one is passed over there: darks before what comes over them.");
    }

    @Test
    void whatAPinnedNoteKeepsFromHoldingIsTold() {
        Arranged arranged = Scene.arranged(Scene.of("sky:sky@high/7p edge:land-edge@ridge/5"));
        assertThat(Scene.card(arranged.notes())).isEqualTo("sky edge");
        assertThat(arranged.remarks().stream().map(Words::say))
                .containsExactly(
                        "sky stands before edge: the land edge before the sky. A strip that is kept in place leaves"
                                + " no room for it.");
    }

    @Test
    void everyRuleHasWords() {
        assertThat(OrderRule.ALL)
                .extracting(OrderRule::id)
                .doesNotHaveDuplicates()
                .contains("darks-early");
        assertThat(OrderRule.ALL)
                .allSatisfy(rule -> assertThat(Words.say(rule.words())).isNotBlank());
    }
}
