package umbercard.desk.canvas;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import umbercard.geometry.Node;
import umbercard.geometry.Outline;
import umbercard.geometry.Strokes;
import umbercard.model.Mark;
import umbercard.model.Thumbnail;

class MarksLayerTest {
    private static final int WIDTH = 150;
    private static final int HEIGHT = 100;
    private static final int DARK = 0xff203040;
    private static final int CLEAR = 0;

    private static final Mark LAY = new Mark("m1", Mark.Kind.LAY, Outline.rectangle(.2, .2, 1.2, .8));
    private static final Mark LIFT = new Mark("m2", Mark.Kind.LIFT, Outline.rectangle(.5, .4, .9, .6));

    private final MarksLayer layer = new MarksLayer();
    private Color ink = new Color(DARK);
    private int width = WIDTH;
    private int height = HEIGHT;
    private int delivered;
    private final BlockingQueue<Runnable> deliveries = new LinkedBlockingQueue<>();
    private final MarksLayer followed = new MarksLayer(deliveries::add);

    private BufferedImage drawn(Thumbnail.Ground ground, Mark... marks) {
        Thumbnail thumbnail = Thumbnail.empty("t1", "first").withGround(ground).withMarks(List.of(marks));
        return layer.image(thumbnail, WIDTH, HEIGHT, new Color(DARK));
    }

    /** The pixels outside the laid rectangle, in it, and in the lifted one within that. */
    private static List<Integer> seen(BufferedImage image) {
        return List.of(image.getRGB(10, 10), image.getRGB(30, 70), image.getRGB(70, 50));
    }

    @Test
    void layFillsAndLiftClearsInTheirOrder() {
        assertThat(seen(drawn(Thumbnail.Ground.LIGHT, LAY, LIFT))).containsExactly(CLEAR, DARK, CLEAR);
        assertThat(seen(drawn(Thumbnail.Ground.LIGHT, LIFT, LAY))).containsExactly(CLEAR, DARK, DARK);
    }

    @Test
    void aDarkGroundIsDarkWhereNothingIsLifted() {
        assertThat(seen(drawn(Thumbnail.Ground.DARK))).containsExactly(DARK, DARK, DARK);
        assertThat(seen(drawn(Thumbnail.Ground.DARK, LIFT))).containsExactly(DARK, DARK, CLEAR);
    }

    @Test
    void aHiddenMarkIsNotThere() {
        assertThat(seen(drawn(Thumbnail.Ground.LIGHT, LAY, LIFT.withHidden(true))))
                .containsExactly(CLEAR, DARK, DARK);
        assertThat(seen(drawn(Thumbnail.Ground.LIGHT, LAY.withHidden(true), LIFT)))
                .containsExactly(CLEAR, CLEAR, CLEAR);
    }

    @Test
    void edgesLieWhereTheOutlineSays() {
        BufferedImage image = drawn(Thumbnail.Ground.LIGHT, LAY);
        assertThat(image.getRGB(19, 50)).isEqualTo(CLEAR);
        assertThat(image.getRGB(20, 50)).isEqualTo(DARK);
        assertThat(image.getRGB(119, 79)).isEqualTo(DARK);
        assertThat(image.getRGB(120, 80)).isEqualTo(CLEAR);
    }

    @Test
    void theImageIsKeptWhileNothingChanges() {
        BufferedImage first = drawn(Thumbnail.Ground.LIGHT, LAY);
        first.setRGB(30, 70, 0xff010203);
        assertThat(drawn(Thumbnail.Ground.LIGHT, LAY).getRGB(30, 70)).isEqualTo(0xff010203);
        Thumbnail empty = Thumbnail.empty("t1", "first");
        assertThat(layer.image(empty, 30, 20, Color.BLACK).getWidth()).isEqualTo(30);
    }

    @Test
    void onlyWhereMarksLookDifferentIsDrawnAnew() {
        drawn(Thumbnail.Ground.LIGHT, LAY, LIFT).setRGB(30, 70, 0xff010203);
        BufferedImage after = drawn(Thumbnail.Ground.LIGHT, LAY);
        assertThat(after.getRGB(70, 50)).isEqualTo(DARK);
        assertThat(after.getRGB(30, 70)).isEqualTo(0xff010203);
    }

    @ParameterizedTest
    @EnumSource(Thumbnail.Ground.class)
    void dragsLookAsIfAllWereDrawnAnew(Thumbnail.Ground ground) throws InterruptedException {
        for (int seed = 0; seed < 8; seed++) {
            Random random = new Random(seed);
            Thumbnail thumbnail =
                    Thumbnail.empty("t1", "many").withGround(ground).withMarks(marks(random, 60));
            same(thumbnail);
            int place = random.nextInt(60);
            boolean whole = seed % 4 == 0;
            for (int event = 0; event < 12; event++) {
                Mark mark = thumbnail.marks().get(place);
                Outline moved =
                        whole ? Strokes.shaken(mark.outline(), random, .02) : oneNodeMoved(mark.outline(), random);
                thumbnail = with(thumbnail, place, mark.withOutline(moved));
                same(thumbnail);
                deliver();
            }
        }
        assertThat(delivered).as("pictures of what lies round a mark").isGreaterThanOrEqualTo(3);
    }

    @Test
    void anyOtherChangeLooksAsIfAllWereDrawnAnewToo() throws InterruptedException {
        Random random = new Random(11);
        Thumbnail thumbnail = Thumbnail.empty("t1", "many").withMarks(marks(random, 50));
        same(thumbnail);
        for (int change = 0; change < 60; change++) {
            int place = random.nextInt(thumbnail.marks().size());
            Mark mark = thumbnail.marks().get(place);
            Mark.Kind other = mark.kind() == Mark.Kind.LAY ? Mark.Kind.LIFT : Mark.Kind.LAY;
            List<Mark> marks = new ArrayList<>(thumbnail.marks());
            switch (change % 6) {
                case 0 -> marks.set(place, mark.withHidden(!mark.hidden()));
                case 1 -> marks.set(place, mark.withKind(other));
                case 2 -> Collections.swap(marks, place, random.nextInt(marks.size()));
                case 3 -> marks.remove(place);
                case 4 -> marks.add(place, marks(random, 1).get(0));
                default -> marks.replaceAll(m -> m.withOutline(m.outline().mapped(p -> p.plus(0, .003))));
            }
            thumbnail = thumbnail.withMarks(marks);
            same(thumbnail);
            deliver();
        }
        same(thumbnail.withGround(Thumbnail.Ground.DARK));
        ink = Color.RED;
        same(thumbnail);
        width = 90;
        height = 60;
        same(thumbnail);
    }

    /** Lets what was made in the background arrive, where something was asked for. */
    private void deliver() throws InterruptedException {
        Runnable made = deliveries.poll(followed.isAsking() ? 20 : 0, TimeUnit.SECONDS);
        if (made != null) {
            made.run();
            delivered++;
        }
    }

    /** The picture that has followed every change so far is that of the thumbnail drawn at once, to 2 of 255. */
    private void same(Thumbnail thumbnail) {
        BufferedImage now = followed.image(thumbnail, width, height, ink);
        BufferedImage anew = new MarksLayer(Runnable::run).image(thumbnail, width, height, ink);
        int[] one = now.getRaster().getPixels(0, 0, width, height, (int[]) null);
        int[] two = anew.getRaster().getPixels(0, 0, width, height, (int[]) null);
        int most = IntStream.range(0, one.length)
                .map(i -> Math.abs(one[i] - two[i]))
                .max()
                .orElseThrow();
        assertThat(most).isLessThanOrEqualTo(2);
    }

    private static List<Mark> marks(Random random, int n) {
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            Mark.Kind kind = random.nextInt(3) > 0 ? Mark.Kind.LAY : Mark.Kind.LIFT;
            Outline outline = random.nextBoolean()
                    ? Strokes.blob(random, 3 + random.nextInt(20), .05 + .4 * random.nextDouble())
                    : Strokes.wandering(random, 3 + random.nextInt(20), .3);
            marks.add(new Mark("m" + random.nextInt(), kind, outline).withHidden(random.nextInt(10) == 0));
        }
        return marks;
    }

    private static Thumbnail with(Thumbnail thumbnail, int place, Mark mark) {
        List<Mark> marks = new ArrayList<>(thumbnail.marks());
        marks.set(place, mark);
        return thumbnail.withMarks(marks);
    }

    private static Outline oneNodeMoved(Outline outline, Random random) {
        List<Node> nodes = new ArrayList<>(outline.nodes());
        int place = random.nextInt(nodes.size());
        double dx = .1 * random.nextGaussian();
        double dy = .1 * random.nextGaussian();
        Node node = nodes.get(place);
        nodes.set(
                place,
                new Node(
                        node.at().plus(dx, dy),
                        node.in().plus(dx, dy),
                        node.out().plus(dx, dy),
                        node.round()));
        return new Outline(nodes);
    }
}
