package umbercard.desk.instruments;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import umbercard.door.Gesture.Act;
import umbercard.door.Gesture.With;
import umbercard.door.Instrument;
import umbercard.door.Step;
import umbercard.geometry.Node;
import umbercard.geometry.Point;
import umbercard.model.Mark;
import umbercard.model.Thumbnail;
import umbercard.notan.Fold;

/** Whatever a hand does, in whatever order, an instrument holds to what its door promises. */
class GesturePropertyTest {
    private record Move(Act act, Point at, String key, Set<With> with, int clicks) {}

    @Provide
    Arbitrary<Instrument> instruments() {
        return Arbitraries.of(new LayDark(), new LiftLight(), new Horizon(), new LandEdge());
    }

    /** Presses and drags most of the time; places on a coarse grid, so that they often meet each other or the border. */
    @Provide
    Arbitrary<List<Move>> moves() {
        Arbitrary<Act> acts = Arbitraries.frequency(
                Tuple.of(4, Act.PRESS),
                Tuple.of(4, Act.RELEASE),
                Tuple.of(6, Act.DRAG),
                Tuple.of(2, Act.HOVER),
                Tuple.of(2, Act.KEY),
                Tuple.of(1, Act.ESCAPE));
        Arbitrary<Double> coarse =
                Arbitraries.integers().between(-3, 14).map(tenth -> tenth / 10.0 + (tenth % 3) * Script.PIXEL);
        Arbitrary<Double> fine = Arbitraries.doubles().between(-0.3, 1.7);
        Arbitrary<Double> places = Arbitraries.oneOf(coarse, fine);
        Arbitrary<Point> points = Combinators.combine(places, places).as(Point::new);
        Arbitrary<String> keys =
                Arbitraries.of("enter", "backspace", "delete", "o", "up", "down", "left", "right", "x", "");
        Arbitrary<Set<With>> with = Arbitraries.of(With.class).set().ofMaxSize(1);
        Arbitrary<Integer> clicks = Arbitraries.frequency(Tuple.of(5, 1), Tuple.of(2, 2), Tuple.of(1, 3));
        return Combinators.combine(acts, points, keys, with, clicks)
                .as(Move::new)
                .list()
                .ofMinSize(1)
                .ofMaxSize(40);
    }

    private static void play(Script script, Move move) {
        script.holding(move.with().toArray(With[]::new))
                .feel(move.act(), move.at().x(), move.at().y(), move.act() == Act.KEY ? move.key() : "", move.clicks());
    }

    @Property(tries = 1500, edgeCases = EdgeCasesMode.NONE, seed = "20")
    void everyGestureIsAnsweredAndLeavesTheStudyWhole(
            @ForAll("instruments") Instrument instrument, @ForAll("moves") List<Move> moves) {
        Script script = Script.with(instrument);
        for (Move move : moves) {
            int before = script.edits().size();
            play(script, move);
            Step step = script.last();
            assertThat(step.preview().asIf().isPresent() && !step.held())
                    .as("whatever is shown as if it were done can be dropped")
                    .isFalse();
            if (script.edits().size() > before) {
                assertThat(step.held()).as("what is done is not half made").isFalse();
                assertThat(step.preview().asIf())
                        .as("a finished edit leaves no preview")
                        .isEmpty();
                assertIsWhole(script.thumbnail());
            }
            step.preview()
                    .asIf()
                    .ifPresent(study -> assertThat(study.thumbnails()).hasSize(2));
        }
        assertThat(script.study().thumbnail("t2")).contains(Thumbnail.empty("t2", "second"));
    }

    private static void assertIsWhole(Thumbnail thumbnail) {
        assertThat(thumbnail.marks()).extracting(Mark::id).doesNotHaveDuplicates();
        assertThat(thumbnail.marks())
                .allSatisfy(mark -> assertThat(mark.outline().nodes()).hasSizeGreaterThan(1));
        assertThat(Fold.of(thumbnail, Script.RATIO).darkShare()).isBetween(0.0, 1.0);
        Stream.concat(thumbnail.horizon().stream(), thumbnail.landEdge().stream())
                .forEach(level -> {
                    assertThat(level.y()).isBetween(0.0, 1.0);
                    assertThat(level.tilt()).isBetween(-Levels.STEEPEST, Levels.STEEPEST);
                });
    }

    @Property(tries = 500, edgeCases = EdgeCasesMode.NONE, seed = "21")
    void escapeAlwaysDropsWhatIsHalfMadeAndChangesNothing(
            @ForAll("instruments") Instrument instrument, @ForAll("moves") List<Move> moves) {
        Script script = Script.with(instrument);
        moves.forEach(move -> play(script, move));
        var before = script.study();
        assertThat(script.escape().last()).isEqualTo(Step.idle());
        assertThat(script.drag(0.3, 0.4).release().key("enter").escape().last().held())
                .isFalse();
        if (instrument instanceof LayDark || instrument instanceof LiftLight) {
            assertThat(script.study()).isEqualTo(before);
        }
    }

    @Property(tries = 300, edgeCases = EdgeCasesMode.NONE, seed = "22")
    void undoTakesEveryEditBack(@ForAll("instruments") Instrument instrument, @ForAll("moves") List<Move> moves) {
        Script script = Script.with(instrument);
        moves.forEach(move -> play(script, move));
        while (script.undoable().isPresent()) {
            script.undo();
        }
        assertThat(script.study()).isEqualTo(Script.card());
    }

    @Property(tries = 200, seed = "23")
    void cornersSetByClicksAreTheCornersOfTheMark(@ForAll("corners") List<Point> corners) {
        Script script = Script.with(new LayDark());
        corners.forEach(corner -> script.click(corner.x(), corner.y()));
        Point start = corners.get(0);
        script.click(start.x(), start.y());
        if (script.edits().isEmpty()) {
            assertThat(script.last().held())
                    .as("only what encloses nothing stays half made")
                    .isTrue();
        } else {
            assertThat(script.thumbnail().marks().get(0).outline().nodes())
                    .extracting(Node::at)
                    .containsExactlyElementsOf(corners);
        }
    }

    @Provide
    Arbitrary<List<Point>> corners() {
        Arbitrary<Integer> across = Arbitraries.integers().between(1, 70);
        Arbitrary<Integer> down = Arbitraries.integers().between(1, 45);
        return Combinators.combine(across, down)
                .as((x, y) -> new Point(x / 50.0, y / 50.0))
                .list()
                .uniqueElements()
                .ofMinSize(3)
                .ofMaxSize(12);
    }
}
