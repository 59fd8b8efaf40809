package umbercard.notan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static umbercard.model.Mark.Kind.LAY;
import static umbercard.model.Mark.Kind.LIFT;
import static umbercard.model.Thumbnail.Ground.DARK;
import static umbercard.model.Thumbnail.Ground.LIGHT;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import umbercard.geometry.Cubic;
import umbercard.geometry.Eye;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.geometry.Region;
import umbercard.geometry.Slabs;
import umbercard.geometry.Validity;
import umbercard.model.Mark;
import umbercard.model.Thumbnail;

/**
 * What must hold of every drawing. Bounds follow from the grid of 2⁻³⁰ that regions lie on: each overlay may move a border
 * by one of its steps, so an area is off by that times the length of the borders, for each overlay that takes part.
 */
final class Laws {
    static final double GRID = 0x1p-30;

    /** Beyond it corners are held, so a drawing is no longer what its curves say. */
    private static final double REACH = 0x1p20;

    /** Drawings of more sides than this are too slow to sum by slabs. */
    private static final int MOST_SIDES = 6000;

    private static final int PLACES = 16;

    /** A law that does not hold. */
    record Broken(String law, String what) {}

    /** Held against every drawing. */
    private static final Map<String, Consumer<Laws>> ALWAYS = new LinkedHashMap<>();

    /** Held against every drawing that is checked in full. */
    private static final Map<String, Consumer<Laws>> IN_TURN = new LinkedHashMap<>();

    static {
        ALWAYS.put("its area is the sum of exact slabs", Laws::slabs);
        ALWAYS.put("dark and light are valid polygons that share the frame", Laws::polygons);
        ALWAYS.put("known figures come out", Laws::knownFigures);
        IN_TURN.put("the fold is what one overlay after the other gives", Laws::naiveFold);
        IN_TURN.put("a place is dark where the last mark over it lays", Laws::places);
        IN_TURN.put("union and intersection have the areas of both", Laws::unions);
        IN_TURN.put("laying twice is laying once", Laws::layingTwice);
        IN_TURN.put("two lays commute", Laws::twoLays);
        IN_TURN.put("what is lifted after laying is gone", Laws::liftAfterLay);
        IN_TURN.put("hidden marks and marks outside the frame change nothing", Laws::without);
        IN_TURN.put("turning the ground and every mark swaps dark and light", Laws::turned);
        IN_TURN.put("a dragged mark gives what a fresh fold gives", Laws::dragged);
        IN_TURN.put("a mirror changes no share", Laws::mirrored);
        IN_TURN.put("the share on hatch lines is right to 3e-6", Laws::hatched);
    }

    private final Drawing drawing;
    private final BiFunction<Thumbnail, Double, Design> fold;
    private final Random random;
    private final Design design;
    private final List<Mark> visible;
    private final double off;

    private Laws(Drawing drawing, BiFunction<Thumbnail, Double, Design> fold) {
        this.drawing = drawing;
        this.fold = fold;
        random = new Random(DrawingText.written(drawing).hashCode());
        design = folded(drawing);
        visible = drawing.marks().stream().filter(mark -> !mark.hidden()).toList();
        double length = 2 * (1 + drawing.ratio());
        for (Mark mark : visible) {
            length += mark.outline().segments().stream()
                    .mapToDouble(this::lengthInFrame)
                    .sum();
        }
        off = GRID * length * (visible.size() + 4);
    }

    /** At most: a cubic is no longer than its pulls, and no row or column meets it more than three times. */
    private double lengthInFrame(Cubic c) {
        double whole = c.start().distance(c.pullStart())
                + c.pullStart().distance(c.pullEnd())
                + c.pullEnd().distance(c.end());
        return Math.min(whole, (c.isLine() ? 1 : 3) * (1 + drawing.ratio()));
    }

    /** The first law that a drawing breaks; an exception breaks any. */
    static Optional<Broken> broken(Drawing drawing) {
        return broken(drawing, Fold::of);
    }

    /** The same of another way to fold. */
    static Optional<Broken> broken(Drawing drawing, BiFunction<Thumbnail, Double, Design> fold) {
        Map<String, Consumer<Laws>> all = new LinkedHashMap<>(ALWAYS);
        all.putAll(IN_TURN);
        return broken(drawing, fold, all);
    }

    /** The exact area, valid polygons and one of the other laws: quicker, for a great many drawings. */
    static Optional<Broken> broken(Drawing drawing, int one) {
        Map<String, Consumer<Laws>> some = new LinkedHashMap<>(ALWAYS);
        String law = List.copyOf(IN_TURN.keySet()).get(Math.floorMod(one, IN_TURN.size()));
        some.put(law, IN_TURN.get(law));
        return broken(drawing, Fold::of, some);
    }

    private static Optional<Broken> broken(
            Drawing drawing, BiFunction<Thumbnail, Double, Design> fold, Map<String, Consumer<Laws>> laws) {
        String at = "folding never fails";
        try {
            Laws of = new Laws(drawing, fold);
            for (Map.Entry<String, Consumer<Laws>> law : laws.entrySet()) {
                at = law.getKey();
                law.getValue().accept(of);
            }
            return Optional.empty();
        } catch (AssertionError | RuntimeException failed) {
            return Optional.of(new Broken(at, String.valueOf(failed)));
        }
    }

    private void same(Region one, Region two) {
        assertThat(one.minus(two).area() + two.minus(one).area())
                .as("area of the difference")
                .isLessThanOrEqualTo(off);
        assertThat(one.area()).isCloseTo(two.area(), within(off));
    }

    private Design folded(Drawing other) {
        return fold.apply(other.thumbnail(), other.ratio());
    }

    private Region folded(List<Mark> marks) {
        return folded(drawing.marked(marks)).dark();
    }

    private void naiveFold() {
        same(design.dark(), Drawings.naive(drawing.thumbnail(), drawing.ratio()));
    }

    private void slabs() {
        List<Slabs.Layer> layers = visible.stream()
                .map(mark -> new Slabs.Layer(mark.kind() == LAY, mark.outline()))
                .toList();
        if (Slabs.sides(layers) <= MOST_SIDES) {
            assertThat(design.dark().area())
                    .isCloseTo(Slabs.area(layers, drawing.isDarkGround(), drawing.ratio()), within(off));
        }
    }

    /** At random places and beside corners, unless a border passes nearer than borders may be off. */
    private void places() {
        if (visible.stream()
                .flatMap(mark -> mark.outline().nodes().stream())
                .anyMatch(node -> far(node.at()) || far(node.in()) || far(node.out()))) {
            return;
        }
        Borders borders = new Borders(visible, 2 * GRID * (visible.size() + 4));
        for (int i = 0; i < PLACES; i++) {
            Point place = i % 2 == 0 || visible.isEmpty() ? anywhere() : besideACorner(borders.margin());
            if (inFrame(place) && borders.isClear(place)) {
                assertThat(design.dark().contains(place))
                        .as("dark at %s", place)
                        .isEqualTo(Drawings.isDark(drawing.thumbnail(), place));
            }
        }
    }

    private static boolean far(Point point) {
        return Math.max(Math.abs(point.x()), Math.abs(point.y())) > REACH;
    }

    private boolean inFrame(Point p) {
        return p.x() > GRID && p.x() < drawing.ratio() - GRID && p.y() > GRID && p.y() < 1 - GRID;
    }

    private Point anywhere() {
        return new Point(drawing.ratio() * random.nextDouble(), random.nextDouble());
    }

    private Point besideACorner(double margin) {
        Outline outline = anyOutline();
        if (outline.nodes().isEmpty()) {
            return anywhere();
        }
        Point corner =
                outline.nodes().get(random.nextInt(outline.nodes().size())).at();
        return corner.plus(4 * margin * random.nextGaussian(), 4 * margin * random.nextGaussian());
    }

    private void polygons() {
        Validity.check(design.dark());
        Validity.check(design.light());
        assertThat(design.dark().area() + design.light().area()).isCloseTo(drawing.ratio(), within(off));
        assertThat(design.dark().intersect(design.light()).area()).isLessThanOrEqualTo(off);
        assertThat(design.dark().minus(design.frame()).isEmpty()).isTrue();
    }

    private void knownFigures() {
        drawing.share().ifPresent(share -> assertThat(design.darkShare()).isCloseTo(share, within(drawing.within())));
        drawing.pieces().ifPresent(pieces -> assertThat(design.dark().pieces()).hasSize(pieces));
    }

    private Outline anyOutline() {
        return visible.isEmpty()
                ? Outline.rectangle(.1, .2, .7, .6)
                : visible.get(random.nextInt(visible.size())).outline();
    }

    private List<Mark> with(Mark... more) {
        List<Mark> marks = new ArrayList<>(drawing.marks());
        marks.addAll(List.of(more));
        return marks;
    }

    private void unions() {
        Region a = Region.of(anyOutline()).intersect(design.frame());
        Region b = Region.of(anyOutline());
        double whole = b.area();
        double both = a.intersect(b).area();
        double bound = off + GRID * b.perimeter() * 4;
        assertThat(a.union(b).area() + both).isCloseTo(a.area() + whole, within(bound));
        assertThat(a.minus(b).area() + both).isCloseTo(a.area(), within(bound));
        assertThat(b.minus(a).area() + both).isCloseTo(whole, within(bound));
    }

    private void layingTwice() {
        Mark mark = Drawings.mark(LAY, anyOutline());
        same(folded(with(mark)), folded(with(mark, mark)));
    }

    private void twoLays() {
        Mark one = Drawings.mark(LAY, anyOutline());
        Mark two = Drawings.mark(LAY, anyOutline());
        same(folded(with(one, two)), folded(with(two, one)));
    }

    private void liftAfterLay() {
        Outline outline = anyOutline();
        Region gone = design.dark().minus(Region.of(outline));
        same(folded(with(Drawings.mark(LAY, outline), Drawings.mark(LIFT, outline))), gone);
    }

    private void without() {
        List<Mark> more = new ArrayList<>(drawing.marks());
        more.add(
                random.nextInt(more.size() + 1),
                Drawings.mark(random.nextBoolean() ? LAY : LIFT, Outline.rectangle(0, 0, 1, 1))
                        .withHidden(true));
        more.add(random.nextInt(more.size() + 1), Drawings.mark(random.nextBoolean() ? LAY : LIFT, outside()));
        same(folded(more), design.dark());
    }

    /** One of the outlines moved out of the frame, so that it touches the frame's right border at most. */
    private Outline outside() {
        Outline outline = anyOutline();
        double left = outline.nodes().stream()
                .mapToDouble(node -> Math.min(
                        node.at().x(), Math.min(node.in().x(), node.out().x())))
                .min()
                .orElse(0);
        return outline.mapped(p -> p.plus(-left, 0)).mapped(p -> p.plus(drawing.ratio(), 0));
    }

    private void turned() {
        List<Mark> marks = drawing.marks().stream()
                .map(mark -> mark.withKind(mark.kind() == LAY ? LIFT : LAY))
                .toList();
        Drawing other =
                drawing.drawn(drawing.thumbnail().withMarks(marks).withGround(drawing.isDarkGround() ? LIGHT : DARK));
        same(folded(other).dark(), design.light());
    }

    private void hatched() {
        Glance glance = new HatchFold(Eye.DEFAULT).of(drawing.thumbnail(), drawing.ratio());
        assertThat(glance.darkShare()).isCloseTo(design.darkShare(), within(3e-6));
    }

    private void dragged() {
        if (drawing.marks().isEmpty()) {
            return;
        }
        FoldCache cache = new FoldCache();
        List<Mark> marks = new ArrayList<>(drawing.marks());
        cache.of(drawing.thumbnail(), drawing.ratio());
        int at = random.nextInt(marks.size());
        for (int i = 0; i < 3; i++) {
            double by = Math.pow(10, -12 * random.nextDouble());
            marks.set(at, marks.get(at).withOutline(marks.get(at).outline().mapped(p -> p.plus(by / 3, -by / 5))));
            Drawing moved = drawing.marked(marks);
            double bound = off + GRID * (marks.size() + 4) * 2;
            Region dark = cache.of(moved.thumbnail(), moved.ratio()).dark();
            Region fresh = folded(moved).dark();
            assertThat(dark.minus(fresh).area() + fresh.minus(dark).area()).isLessThanOrEqualTo(bound);
        }
    }

    private void mirrored() {
        List<Mark> marks = drawing.marks().stream()
                .map(mark -> mark.withOutline(mark.outline().mapped(p -> new Point(drawing.ratio() - p.x(), p.y()))))
                .toList();
        assertThat(folded(marks).area()).isCloseTo(design.dark().area(), within(2 * off));
    }
}
