package umbercard.store;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Builders;
import net.jqwik.api.Combinators;
import umbercard.color.Lab;
import umbercard.geometry.Line;
import umbercard.geometry.Node;
import umbercard.geometry.Outline;
import umbercard.geometry.Path;
import umbercard.geometry.Point;
import umbercard.geometry.Size;
import umbercard.model.Answer;
import umbercard.model.Box;
import umbercard.model.CardSettings;
import umbercard.model.CardSettingsBuilder;
import umbercard.model.ColorNote;
import umbercard.model.ColorNoteBuilder;
import umbercard.model.Frame;
import umbercard.model.Level;
import umbercard.model.Light;
import umbercard.model.LostEdge;
import umbercard.model.Mark;
import umbercard.model.Reference;
import umbercard.model.ReferenceBuilder;
import umbercard.model.Squint;
import umbercard.model.Stick;
import umbercard.model.StickBuilder;
import umbercard.model.Study;
import umbercard.model.StudyBuilder;
import umbercard.model.Surface;
import umbercard.model.Thumbnail;
import umbercard.model.ThumbnailBuilder;
import umbercard.model.Zone;

/** Whole studies for properties: every field of every record, coordinates on the grid of 1e-7 that edits snap to. */
final class Studies {
    private static final double GRID = 1e7;

    private Studies() {}

    static Arbitrary<Study> all() {
        Arbitrary<Surface> surfaces = surfaces();
        return Builders.withBuilder(
                        () -> StudyBuilder.builder(Study.begin("", new Surface(9, 6, Surface.Unit.IN, 0, no(), false))))
                .use(texts())
                .in((b, v) -> b.title(v))
                .use(texts())
                .in((b, v) -> b.concept(v))
                .use(Arbitraries.of(Light.class))
                .in((b, v) -> b.light(v))
                .use(surfaces)
                .in((b, v) -> b.surface(v))
                .use(references().optional())
                .in((b, v) -> b.reference(v))
                .use(numbered(thumbnails(), (t, i) -> t.withId("t" + i)))
                .in((b, v) -> b.thumbnails(v))
                .use(Arbitraries.of("t1", "t2", "gone").optional())
                .in((b, v) -> b.chosen(v))
                .use(numbered(zones(), (z, i) -> z.withId("z" + i)))
                .in((b, v) -> b.zones(v))
                .use(Combinators.combine(texts(), texts())
                        .as(LostEdge::new)
                        .set()
                        .ofMaxSize(3))
                .in((b, v) -> b.lostEdges(v))
                .use(boxes().optional())
                .in((b, v) -> b.box(v))
                .use(sticks().list().ofMaxSize(2))
                .in((b, v) -> b.setOut(v))
                .use(numbered(notes(), (n, i) -> n.withId("n" + i)))
                .in((b, v) -> b.notes(v))
                .use(cards())
                .in((b, v) -> b.cards(v))
                .use(Arbitraries.maps(
                                texts(), Arbitraries.maps(texts(), doubles()).ofMaxSize(2))
                        .ofMaxSize(2))
                .in((b, v) -> b.limits(v))
                .use(texts().set().ofMaxSize(3))
                .in((b, v) -> b.silenced(v))
                .use(Combinators.combine(texts(), texts())
                        .as(Answer::new)
                        .list()
                        .ofMaxSize(2))
                .in((b, v) -> b.finishing(v))
                .use(more())
                .in((b, v) -> b.more(v))
                .build(StudyBuilder::build);
    }

    static Arbitrary<Box> boxes() {
        return Combinators.combine(texts(), texts(), numbered(sticks(), (s, i) -> s.withId("s" + i)), more())
                .as(Box::new);
    }

    static Arbitrary<Outline> outlines() {
        return nodes().list().ofMinSize(2).ofMaxSize(6).map(Outline::new);
    }

    static Arbitrary<Path> paths() {
        return nodes().list()
                .ofMaxSize(5)
                .map(nodes -> new Path(IntStream.range(0, nodes.size())
                        .mapToObj(i -> ended(nodes.get(i), i == 0, i == nodes.size() - 1))
                        .toList()));
    }

    /** An open path's first and last point pull on nothing outside it. */
    private static Node ended(Node node, boolean first, boolean last) {
        return new Node(node.at(), first ? node.at() : node.in(), last ? node.at() : node.out(), node.round());
    }

    private static <T> Arbitrary<List<T>> numbered(
            Arbitrary<T> items, java.util.function.BiFunction<T, Integer, T> number) {
        return items.list()
                .ofMaxSize(3)
                .map(list -> IntStream.range(0, list.size())
                        .mapToObj(i -> number.apply(list.get(i), i + 1))
                        .toList());
    }

    private static <T> Optional<T> no() {
        return Optional.empty();
    }

    private static Arbitrary<String> texts() {
        return Arbitraries.strings()
                .ascii()
                .withChars('\u00fc', '\u2014', '\u2028', '"', '\\', '\n', '\u0000')
                .ofMaxLength(8);
    }

    private static Arbitrary<Double> doubles() {
        return Arbitraries.doubles().ofScale(9).filter(d -> 1 / d != Double.NEGATIVE_INFINITY);
    }

    private static Arbitrary<Double> between(double least, double most) {
        return Arbitraries.integers()
                .between((int) Math.rint(least * GRID), (int) Math.rint(most * GRID))
                .map(grid -> grid / GRID);
    }

    private static Arbitrary<OptionalDouble> perhaps(Arbitrary<Double> numbers) {
        return numbers.optional().map(n -> n.isPresent() ? OptionalDouble.of(n.get()) : OptionalDouble.empty());
    }

    private static Arbitrary<Point> points() {
        return Combinators.combine(between(-2, 4), between(-2, 4)).as(Point::new);
    }

    private static Arbitrary<Node> nodes() {
        Arbitrary<Boolean> round = Arbitraries.of(true, false);
        Arbitrary<Node> free =
                Combinators.combine(points(), points(), points(), round).as(Node::new);
        Arbitrary<Node> bare = Combinators.combine(points(), round).as((p, r) -> new Node(p, p, p, r));
        return Arbitraries.oneOf(free, bare);
    }

    private static Arbitrary<Surface> surfaces() {
        return Combinators.combine(
                        between(1, 60),
                        between(1, 60),
                        Arbitraries.of(Surface.Unit.class),
                        between(0, 0.49),
                        colors().optional(),
                        Arbitraries.of(true, false))
                .as(Surface::new);
    }

    private static Arbitrary<Lab> colors() {
        return Combinators.combine(between(0, 100), between(-120, 120), between(-120, 120))
                .as(Lab::new);
    }

    private static Arbitrary<Frame> frames() {
        return Combinators.combine(points(), between(0.01, 2), between(-40, 40), Arbitraries.of(true, false))
                .as(Frame::new);
    }

    private static Arbitrary<Reference> references() {
        Reference start = Reference.to("", "", new Frame(new Point(0, 0), 1, 0, false));
        return Builders.withBuilder(() -> ReferenceBuilder.builder(start))
                .use(texts())
                .in((b, v) -> b.file(v))
                .use(texts())
                .in((b, v) -> b.sha256(v))
                .use(frames())
                .in((b, v) -> b.frame(v))
                .use(between(0, 1))
                .in((b, v) -> b.fade(v))
                .use(Combinators.combine(texts(), between(0, 0.5)).as(Squint::new))
                .in((b, v) -> b.squint(v))
                .use(perhaps(between(0, 10)))
                .in((b, v) -> b.split(v))
                .use(Combinators.combine(points(), points()).as(Line::new).optional())
                .in((b, v) -> b.ownHorizon(v))
                .use(Combinators.combine(texts(), texts())
                        .as(Reference.Copy::new)
                        .optional())
                .in((b, v) -> b.copy(v))
                .use(more())
                .in((b, v) -> b.more(v))
                .build(ReferenceBuilder::build);
    }

    private static Arbitrary<Thumbnail> thumbnails() {
        Arbitrary<Level> levels =
                Combinators.combine(between(-1, 2), between(-89, 89)).as(Level::new);
        return Builders.withBuilder(() -> ThumbnailBuilder.builder(Thumbnail.empty("", "")))
                .use(texts())
                .in((b, v) -> b.name(v))
                .use(Arbitraries.of(Thumbnail.Ground.class))
                .in((b, v) -> b.ground(v))
                .use(numbered(marks(), (m, i) -> m.withId("m" + i)))
                .in((b, v) -> b.marks(v))
                .use(levels.optional())
                .in((b, v) -> b.horizon(v))
                .use(levels.optional())
                .in((b, v) -> b.landEdge(v))
                .use(levels.optional())
                .in((b, v) -> b.waterline(v))
                .use(points().optional())
                .in((b, v) -> b.focus(v))
                .use(paths().optional())
                .in((b, v) -> b.eyePath(v))
                .use(frames().optional())
                .in((b, v) -> b.frame(v))
                .use(Arbitraries.maps(texts(), outlines().list().ofMaxSize(2)).ofMaxSize(2))
                .in((b, v) -> b.zoneAreas(v))
                .use(more())
                .in((b, v) -> b.more(v))
                .build(ThumbnailBuilder::build);
    }

    private static Arbitrary<Mark> marks() {
        return Combinators.combine(Arbitraries.of(Mark.Kind.class), outlines(), Arbitraries.of(true, false), more())
                .as((kind, outline, hidden, more) -> new Mark("", kind, outline, hidden, more));
    }

    private static Arbitrary<Zone> zones() {
        return Combinators.combine(
                        texts(),
                        Arbitraries.of(Zone.Plane.class),
                        Arbitraries.of(Zone.Distance.class),
                        perhaps(between(0, 10)),
                        more())
                .as((name, plane, distance, value, more) -> new Zone("", name, plane, distance, value, more));
    }

    private static Arbitrary<Stick> sticks() {
        Arbitrary<Integer> places = Arbitraries.integers().between(1, 30);
        return Builders.withBuilder(() -> StickBuilder.builder(
                        new Stick("", no(), no(), new Lab(0, 0, 0), no(), Stick.State.OWNED, "", Map.of())))
                .use(texts())
                .in((b, v) -> b.id(v))
                .use(texts().optional())
                .in((b, v) -> b.name(v))
                .use(Combinators.combine(places, places).as(Stick.Slot::new).optional())
                .in((b, v) -> b.slot(v))
                .use(colors())
                .in((b, v) -> b.color(v))
                .use(Arbitraries.of(Stick.Hardness.class).optional())
                .in((b, v) -> b.hardness(v))
                .use(Arbitraries.of(Stick.State.class))
                .in((b, v) -> b.state(v))
                .use(texts())
                .in((b, v) -> b.note(v))
                .use(more())
                .in((b, v) -> b.more(v))
                .build(StickBuilder::build);
    }

    private static Arbitrary<ColorNote> notes() {
        return Builders.withBuilder(() -> ColorNoteBuilder.builder(ColorNote.of(
                        "", new Stick("", no(), no(), new Lab(0, 0, 0), no(), Stick.State.OWNED, "", Map.of()))))
                .use(sticks())
                .in((b, v) -> b.stick(v))
                .use(texts().optional())
                .in((b, v) -> b.zone(v))
                .use(texts())
                .in((b, v) -> b.purpose(v))
                .use(Arbitraries.of(ColorNote.Direction.class))
                .in((b, v) -> b.direction(v))
                .use(Arbitraries.of(ColorNote.Touch.class))
                .in((b, v) -> b.touch(v))
                .use(Arbitraries.integers().between(1, 9))
                .in((b, v) -> b.layer(v))
                .use(texts())
                .in((b, v) -> b.words(v))
                .use(Arbitraries.of(true, false))
                .in((b, v) -> b.pinned(v))
                .use(Arbitraries.of(true, false))
                .in((b, v) -> b.breakBefore(v))
                .use(more())
                .in((b, v) -> b.more(v))
                .build(ColorNoteBuilder::build);
    }

    private static Arbitrary<CardSettings> cards() {
        Arbitrary<Size> sizes =
                Combinators.combine(between(20, 210), between(20, 210)).as(Size::new);
        return Builders.withBuilder(() -> CardSettingsBuilder.builder(CardSettings.usual()))
                .use(sizes)
                .in((b, v) -> b.card(v))
                .use(Arbitraries.of(true, false))
                .in((b, v) -> b.landscape(v))
                .use(sizes.optional())
                .in((b, v) -> b.page(v))
                .use(texts().list().ofMaxSize(3))
                .in((b, v) -> b.faces(v))
                .use(Arbitraries.of(CardSettings.Backs.class))
                .in((b, v) -> b.backs(v))
                .use(between(0, 20))
                .in((b, v) -> b.gutter(v))
                .use(Arbitraries.integers().between(1, 30))
                .in((b, v) -> b.copies(v))
                .use(more())
                .in((b, v) -> b.more(v))
                .build(CardSettingsBuilder::build);
    }

    /** Fields of a later version: whatever JSON can hold, numbers with all their digits. */
    private static Arbitrary<Map<String, Object>> more() {
        Arbitrary<Object> values = Arbitraries.of(
                "words",
                true,
                7,
                5_000_000_000L,
                new BigInteger("123456789012345678901234567890"),
                new BigDecimal("1.50"),
                new BigDecimal("1E+400"),
                new BigDecimal("0.10000000000000000000001"),
                List.of(1, List.of(), Map.of("deep", List.of("er"))),
                Map.of("a", 1));
        return Arbitraries.maps(texts().map(text -> "later " + text), values).ofMaxSize(2);
    }
}
