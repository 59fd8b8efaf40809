package umbercard.notes.order;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.Size;
import umbercard.model.ColorNote;
import umbercard.model.Study;
import umbercard.notes.Purposes;

class ArrangingLawsTest {
    private static final List<String> PURPOSES = IntStream.range(0, Purposes.KEYS.size() + 2)
            .mapToObj(i -> i < Purposes.KEYS.size() ? Purposes.KEYS.get(i) : i == Purposes.KEYS.size() ? "" : "glow")
            .toList();
    private static final List<String> ZONES = List.of("high", "low", "ridge", "slope", "trees", "bank", "pond", "-");

    @Provide
    Arbitrary<ColorNote> loose() {
        return notes(Arbitraries.of("", "", "h", "s", "c", "l", "|"));
    }

    @Provide
    Arbitrary<ColorNote> any() {
        return notes(Arbitraries.of("", "", "h", "s", "c", "l", "p", "p|"));
    }

    /** Few purposes and zones, so that many rules speak of few notes, pinned ones among them. */
    @Provide
    Arbitrary<ColorNote> tight() {
        return Combinators.combine(
                        Arbitraries.of("darks", "land-edge", "sky", "glow"),
                        Arbitraries.of("high", "trees", "pond"),
                        Arbitraries.of("", "", "p"))
                .as((purpose, zone, marks) -> Scene.note("n:" + purpose + "@" + zone + "/5" + marks));
    }

    private static Arbitrary<ColorNote> notes(Arbitrary<String> marks) {
        return Combinators.combine(
                        Arbitraries.of(PURPOSES),
                        Arbitraries.of(ZONES),
                        Arbitraries.integers().between(1, 9),
                        marks)
                .as((purpose, zone, value, mark) -> Scene.note("n:" + purpose + "@" + zone + "/" + value + mark));
    }

    private static Study study(List<ColorNote> notes) {
        List<ColorNote> named = new ArrayList<>();
        for (ColorNote note : notes) {
            named.add(note.withId("n" + named.size()));
        }
        return Scene.of(named);
    }

    @Property(tries = 200)
    void arrangingTwiceChangesNothing(@ForAll @Size(max = 14) List<@net.jqwik.api.From("any") ColorNote> notes) {
        Study study = study(notes);
        Study once = study.withNotes(Scene.arranged(study).notes());
        assertThat(Scene.arranged(once).notes()).isEqualTo(once.notes());
        assertThat(once.notes()).hasSameSizeAs(study.notes());
        assertThat(once.notes().stream().map(ColorNote::id).collect(Collectors.toSet()))
                .isEqualTo(study.notes().stream().map(ColorNote::id).collect(Collectors.toSet()));
        for (int place = 0; place < notes.size(); place++) {
            assertThat(once.notes().get(place).breakBefore())
                    .isEqualTo(notes.get(place).breakBefore());
            if (notes.get(place).pinned()) {
                assertThat(once.notes().get(place).id()).isEqualTo("n" + place);
            }
        }
    }

    @Property(tries = 200)
    void anyShuffleOfUnpinnedNotesComesToAnOrderWithoutABrokenRule(
            @ForAll @Size(max = 12) List<@net.jqwik.api.From("loose") ColorNote> notes,
            @ForAll java.util.Random random) {
        Study study = study(notes);
        List<Integer> order =
                new ArrayList<>(IntStream.range(0, notes.size()).boxed().toList());
        java.util.Collections.shuffle(order, random);
        for (Study one : List.of(study, Scene.shuffled(study, order))) {
            Arranged arranged = Scene.arranged(one);
            assertThat(arranged.kept()).isEmpty();
            Arranged again = Scene.arranged(one.withNotes(arranged.notes()));
            assertThat(again.broken()).isEmpty();
            assertThat(again.dust()).isZero();
        }
    }

    /** Held to what trying all orders of six notes finds. */
    @Property(tries = 300)
    void ifAnyOrderHoldsAllRulesAndPinsOursDoes(
            @ForAll @Size(max = 6) List<@net.jqwik.api.From("tight") ColorNote> notes) {
        Study study = study(notes).withRulesOff(Set.of());
        Arranged ours = Scene.arranged(study);
        boolean[] possible = {false};
        permute(new ArrayList<>(), notes.size(), order -> {
            Study tried = Scene.shuffled(study, order);
            boolean pinsHold = IntStream.range(0, order.size())
                    .filter(place -> study.notes().get(place).pinned())
                    .allMatch(place -> order.get(place) == place);
            if (pinsHold && !possible[0]) {
                possible[0] = holds(tried);
            }
        });
        assertThat(ours.kept().isEmpty()).isEqualTo(possible[0]);
        assertThat(holds(study.withNotes(ours.notes()))).isEqualTo(possible[0]);
    }

    /** Asked of the rules themselves, pair by pair. */
    private static boolean holds(Study study) {
        List<Laid> laid = IntStream.range(0, study.notes().size())
                .mapToObj(i -> Laid.of(study, Scene.map(study), i, java.util.Map.of()))
                .toList();
        for (Laid one : laid) {
            for (Laid other : laid) {
                Optional<OrderRule> against = OrderRule.ALL.stream()
                        .filter(rule -> rule != OrderRule.UPPER_BEFORE_LOWER && rule.before(one, other, Set.of()))
                        .findFirst();
                if (one.index() > other.index() && against.isPresent()) {
                    return false;
                }
            }
        }
        return true;
    }

    private static void permute(List<Integer> begun, int n, Consumer<List<Integer>> tried) {
        if (begun.size() == n) {
            tried.accept(begun);
        }
        for (int i = 0; i < n; i++) {
            if (!begun.contains(i)) {
                begun.add(i);
                permute(begun, n, tried);
                begun.remove(begun.size() - 1);
            }
        }
    }
}
