package umbercard.notan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import umbercard.geometry.Region;
import umbercard.model.Mark;
import umbercard.model.Thumbnail;

class LawsTest {
    @Property(seed = "1", tries = 60)
    void everyLawHoldsOfSmallDrawings(@ForAll long seed) {
        FailingDrawings.check(Drawings.small(new Random(seed))
                .from("small", List.of("LawsTest, a small drawing, seed " + seed + ".")));
    }

    @Property(seed = "2", tries = 4)
    void everyLawHoldsOfLargerDrawings(@ForAll long seed) {
        Thumbnail drawn = Drawings.thumbnail(Thumbnail.Ground.DARK, Drawings.marks(new Random(seed), 8));
        FailingDrawings.check(Drawing.of("larger", 1.25, drawn)
                .from("larger", List.of("LawsTest, a larger drawing, seed " + seed + ".")));
    }

    static Stream<Arguments> wrongFolds() {
        return Stream.of(
                wrong("counts hidden marks", t -> t.withMarks(each(t, m -> m.withHidden(false)))),
                wrong(
                        "forgets the last mark",
                        t -> t.withMarks(
                                t.marks().subList(0, Math.max(0, t.marks().size() - 1)))),
                wrong("lays everything", t -> t.withMarks(each(t, m -> m.withKind(Mark.Kind.LAY)))),
                wrong("forgets the ground", t -> t.withGround(Thumbnail.Ground.LIGHT)),
                wrong("takes marks the other way round", t -> t.withMarks(backward(t.marks()))),
                wrong(
                        "is off by a millionth",
                        t -> t.withMarks(each(t, m -> m.withOutline(m.outline().mapped(p -> p.plus(1e-6, 0)))))));
    }

    private static Arguments wrong(String how, UnaryOperator<Thumbnail> change) {
        return Arguments.of(how, change);
    }

    private static List<Mark> each(Thumbnail thumbnail, UnaryOperator<Mark> change) {
        return thumbnail.marks().stream().map(change).toList();
    }

    private static List<Mark> backward(List<Mark> marks) {
        List<Mark> turned = new ArrayList<>(marks);
        Collections.reverse(turned);
        return turned;
    }

    /** Laws that nothing could break would tell nothing. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("wrongFolds")
    void aFoldThatIsWrongBreaksALaw(String how, UnaryOperator<Thumbnail> change) {
        Random random = new Random(1);
        assertThat(Stream.generate(() -> Drawings.small(random)).limit(60))
                .anyMatch(drawing -> Laws.broken(drawing, (t, ratio) -> Fold.of(change.apply(t), ratio))
                        .isPresent());
    }

    /** A dark region moved sideways keeps its area and its polygons: only its places tell. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("movedRegions")
    void aRegionThatIsElsewhereBreaksALaw(String how, UnaryOperator<Region> change) {
        Random random = new Random(2);
        assertThat(Stream.generate(() -> Drawings.small(random)).limit(60))
                .anyMatch(drawing -> Laws.broken(
                                drawing,
                                (t, ratio) -> new Design(
                                        ratio, change.apply(Fold.of(t, ratio).dark())))
                        .isPresent());
    }

    static Stream<Arguments> movedRegions() {
        UnaryOperator<Region> moved = region -> Region.of(region.outlines().stream()
                .map(ring -> ring.mapped(p -> p.plus(1e-7, 1e-7)))
                .toList());
        UnaryOperator<Region> bitten = region -> region.minus(Region.rectangle(.5, .5, .5001, .501));
        return Stream.of(Arguments.of("moved by 1e-7", moved), Arguments.of("bitten by 1e-7", bitten));
    }
}
