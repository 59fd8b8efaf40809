package umbercard.notan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static umbercard.model.Thumbnail.Ground.DARK;
import static umbercard.model.Thumbnail.Ground.LIGHT;
import static umbercard.notan.Drawings.thumbnail;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import umbercard.geometry.Region;
import umbercard.model.Mark;
import umbercard.model.Thumbnail;

class FoldCacheTest {
    private static final double RATIO = 1.25;

    private static void same(Design cached, Thumbnail drawn) {
        FailingDrawings.keeping(Drawing.of("FoldCacheTest", RATIO, drawn), () -> check(cached, drawn));
    }

    private static void check(Design cached, Thumbnail drawn) {
        Region plain = Drawings.naive(drawn, RATIO);
        assertThat(cached.dark().area()).isCloseTo(plain.area(), within(1e-7));
        assertThat(cached.dark().minus(plain).area()
                        + plain.minus(cached.dark()).area())
                .isLessThan(1e-7);
    }

    @Property(seed = "1", tries = 15)
    void draggingOneMarkGivesWhatAPlainFoldGives(@ForAll long seed) {
        Random random = new Random(seed);
        List<Mark> marks = new ArrayList<>(Drawings.marks(random, 1 + random.nextInt(20)));
        Thumbnail.Ground ground = random.nextBoolean() ? DARK : LIGHT;
        FoldCache cache = new FoldCache();
        same(cache.of(thumbnail(ground, marks), RATIO), thumbnail(ground, marks));
        int dragged = random.nextInt(marks.size());
        for (int i = 0; i < 4; i++) {
            marks.set(dragged, moved(marks.get(dragged), random));
            same(cache.of(thumbnail(ground, marks), RATIO), thumbnail(ground, marks));
        }
    }

    /** Whatever happens between two folds: marks added, taken away, hidden, moved in the order, the ground turned. */
    @Property(seed = "2", tries = 15)
    void anySequenceOfChangesGivesWhatAPlainFoldGives(@ForAll long seed) {
        Random random = new Random(seed);
        List<Mark> marks = new ArrayList<>(Drawings.marks(random, 6));
        Thumbnail.Ground ground = LIGHT;
        FoldCache cache = new FoldCache();
        for (int i = 0; i < 12; i++) {
            int at = random.nextInt(marks.size());
            switch (random.nextInt(9)) {
                case 0 -> ground = ground == LIGHT ? DARK : LIGHT;
                case 1 -> marks.add(at, Drawings.marks(random, 1).get(0));
                case 2 -> marks.add(marks.get(at));
                case 3 -> marks.set(at, marks.get(at).withHidden(!marks.get(at).hidden()));
                case 4 -> marks.add(marks.remove(at));
                case 5 -> marks.set(at, marks.get(at).withId("other"));
                case 6 ->
                    marks.set(
                            at,
                            marks.get(at)
                                    .withKind(marks.get(at).kind() == Mark.Kind.LAY ? Mark.Kind.LIFT : Mark.Kind.LAY));
                case 7 -> marks.set(at, moved(marks.get(at), random));
                default -> {
                    if (marks.size() > 1) {
                        marks.remove(at);
                    }
                }
            }
            same(cache.of(thumbnail(ground, marks), RATIO), thumbnail(ground, marks));
        }
    }

    private static Mark moved(Mark mark, Random random) {
        double dx = (random.nextDouble() - .5) / 5;
        double dy = (random.nextDouble() - .5) / 5;
        return mark.withOutline(mark.outline().mapped(p -> p.plus(dx, dy)));
    }

    @Test
    void theSameMarksGiveTheVeryDesignKept() {
        FoldCache cache = new FoldCache();
        List<Mark> marks = Drawings.marks(new Random(1), 8);
        Design first = cache.of(thumbnail(LIGHT, marks), RATIO);

        assertThat(cache.of(thumbnail(LIGHT, new ArrayList<>(marks)).withName("renamed"), RATIO))
                .isSameAs(first);
        assertThat(cache.of(thumbnail(DARK, marks), RATIO)).isNotSameAs(first);
    }

    @Test
    void anotherRatioIsAnotherFrame() {
        FoldCache cache = new FoldCache();
        Thumbnail dark = thumbnail(DARK, List.of());

        assertThat(cache.of(dark, 1.25).dark().area()).isCloseTo(1.25, within(1e-8));
        assertThat(cache.of(dark, 1.5).dark().area()).isCloseTo(1.5, within(1e-8));
    }

    /** One effect for a run of marks, joined in any grouping, does what the marks do one after the other. */
    @Property(seed = "3", tries = 15)
    void effectsJoinInAnyGrouping(@ForAll long seed) {
        Random random = new Random(seed);
        List<Effect> effects = Drawings.marks(random, 5).stream()
                .map(mark -> Effect.of(mark.kind(), Region.of(mark.outline())))
                .toList();
        Region dark = Region.rectangle(.2, .2, .9, .7);

        Region oneByOne = dark;
        for (Effect effect : effects) {
            oneByOne = effect.on(oneByOne);
        }
        Effect left = effects.stream().reduce(Effect.NONE, Effect::then);
        Effect right = effects.get(0)
                .then(effects.get(1).then(effects.get(2).then(effects.get(3).then(effects.get(4)))));
        assertThat(left.on(dark).area()).isCloseTo(oneByOne.area(), within(1e-7));
        assertThat(right.on(dark).area()).isCloseTo(oneByOne.area(), within(1e-7));
    }
}
