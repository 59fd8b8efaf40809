package umbercard.model.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import umbercard.color.Lab;
import umbercard.model.ColorNote;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.model.Surface;

/** Cards are written as letters, one a note, and a bar for each break. */
class NotesTest {
    private static final Stick STICK = new Stick("s1", "Slate", new Stick.Slot(1, 1), new Lab(40, 0, -8));

    private static Study study(String card) {
        List<ColorNote> notes = new ArrayList<>();
        boolean after = false;
        for (char letter : card.toCharArray()) {
            if (letter != '|') {
                notes.add(ColorNote.of(String.valueOf(letter), STICK).withBreakBefore(after));
            }
            after = letter == '|';
        }
        return Study.begin("Hill", new Surface(12, 9, Surface.Unit.IN, 0.25, Optional.empty(), true))
                .withNotes(notes);
    }

    private static String card(Study study) {
        StringBuilder card = new StringBuilder();
        for (ColorNote note : study.notes()) {
            card.append(note.breakBefore() ? "|" : "").append(note.id());
        }
        return card.toString();
    }

    private static List<String> ids(String letters) {
        return letters.chars().mapToObj(letter -> String.valueOf((char) letter)).toList();
    }

    private static void holds(String card, UnaryOperator<Study> edit, String then) {
        assertThat(card(edit.apply(study(card)))).isEqualTo(then);
    }

    @Test
    void notesAreAddedLastAndChangedById() {
        holds("ab", Notes.add(List.of(ColorNote.of("c", STICK), ColorNote.of("d", STICK))), "abcd");
        Study changed = Notes.change(List.of("b", "gone"), note -> note.withPurpose("sky"))
                .apply(study("abc"));
        assertThat(changed.notes()).extracting(ColorNote::purpose).containsExactly("", "sky", "");
    }

    @ParameterizedTest
    @CsvSource({
        "abcd, b, acd",
        "abcd, ad, bc",
        "ab|cd, c, ab|d",
        "ab|cd, cd, ab",
        "ab|cd, ab, cd",
        "a|b|c, b, a|c",
        "abcd, x, abcd"
    })
    void removingLeavesTheBreaks(String card, String removed, String then) {
        holds(card, Notes.remove(ids(removed)), then);
    }

    @ParameterizedTest
    @CsvSource({
        "abcd, a, 3, bcad",
        "abcd, d, 0, dabc",
        "abcd, b, 2, abcd",
        "abcd, b, 99, acdb",
        "abcd, c, -5, cabd",
        "abcd, ca, 4, bdac",
        "abcd, bd, 1, abdc",
        "ab|cd, a, 3, b|acd",
        "ab|cd, a, 2, ba|cd",
        "ab|cd, c, 2, abc|d",
        "ab|cd, ab, 5, cdab",
        "abcd, x, 0, abcd"
    })
    void movedNotesStandTogetherInTheGap(String card, String moved, int gap, String then) {
        holds(card, Notes.move(ids(moved), gap), then);
    }

    @ParameterizedTest
    @CsvSource({
        "abcd, c, acbd, abdc",
        "abcd, a, abcd, bacd",
        "abcd, d, abdc, abcd",
        "ab|cd, b, ba|cd, a|bcd",
        "ab|cd, c, abc|d, ab|dc",
        "abcd, bc, bcad, adbc",
        "abcd, ac, acbd, bdac",
        "abcd, x, abcd, abcd"
    })
    void aStepGoesPastOneNoteOrOneBreak(String card, String moved, String earlier, String later) {
        holds(card, Notes.earlier(ids(moved)), earlier);
        holds(card, Notes.later(ids(moved)), later);
    }

    @Property(tries = 100)
    void movingKeepsEveryNoteAndTheOrderOfThoseThatStay(
            @ForAll @Size(max = 5) Set<@IntRange(max = 6) Integer> moved, @ForAll @IntRange(max = 10) int gap) {
        List<String> ids =
                moved.stream().map(place -> ids("abcdefg").get(place)).toList();
        String then = card(Notes.move(ids, gap).apply(study("abc|de|fg"))).replace("|", "");
        assertThat(then.chars().sorted().toArray()).isEqualTo("abcdefg".chars().toArray());
        String stay = "abcdefg".replaceAll("[" + String.join("", ids) + "-]", "");
        assertThat(then.replaceAll("[^" + stay + "-]", "")).isEqualTo(stay);
    }

    @Test
    void copiesStandAfterTheLastWithIdsOfTheirOwnAndAreNotPinned() {
        Study pinned = Notes.change(List.of("b"), note -> note.withPinned(true)).apply(study("a|bcd"));
        Study after = Notes.duplicate(List.of("b", "c")).apply(pinned);
        assertThat(card(after)).isEqualTo("a|bcn1n2d");
        assertThat(after.notes().get(3))
                .isEqualTo(pinned.notes().get(1).withId("n1").withPinned(false).withBreakBefore(false));
        holds("abc", Notes.duplicate(List.of("x")), "abc");
    }

    @Test
    void aBreakIsSetOverAnyNoteButTheFirst() {
        holds("abc", Notes.breakBefore("b", true), "a|bc");
        holds("a|bc", Notes.breakBefore("b", false), "abc");
        holds("abc", Notes.breakBefore("a", true), "abc");
        holds("abc", Notes.breakBefore("x", true), "abc");
    }
}
