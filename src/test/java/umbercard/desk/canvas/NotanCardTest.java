package umbercard.desk.canvas;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.awt.event.KeyListener;
import java.awt.event.MouseEvent;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.JComponent;
import javax.swing.RepaintManager;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import umbercard.desk.session.Session;
import umbercard.desk.theme.Theme;
import umbercard.door.Edit;
import umbercard.door.Gesture;
import umbercard.door.Instrument;
import umbercard.door.Place;
import umbercard.door.Preview;
import umbercard.door.Step;
import umbercard.geometry.Node;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.kernel.Plugins;
import umbercard.model.Level;
import umbercard.model.Mark;
import umbercard.model.Study;
import umbercard.model.edit.Edits;
import umbercard.words.Message;

class NotanCardTest {
    private static final int WIDTH = 660;
    private static final int HEIGHT = 440;

    private final Session session = Fakes.session();
    private final List<Gesture> felt = new ArrayList<>();
    private Step answer = Step.idle();
    private final Instrument fake = Fakes.with("lay-dark", "d", gesture -> {
        felt.add(gesture);
        return answer;
    });
    private NotanCard card = new NotanCard(session, Plugins.of(List.of()));

    @BeforeEach
    void card() {
        Theme.install(false);
        card = new NotanCard(session, Plugins.of(List.of(fake)));
        card.setSize(WIDTH, HEIGHT);
        card.take(fake);
    }

    private void mouse(int id, int held, int button) {
        card.dispatchEvent(new MouseEvent(card, id, 0, held, 300, 200, 1, false, button));
    }

    /** To the card's own listeners: without a screen nothing has the keyboard. */
    private void key(boolean down, int code) {
        int id = down ? KeyEvent.KEY_PRESSED : KeyEvent.KEY_RELEASED;
        KeyEvent event = new KeyEvent(card, id, 0, 0, code, KeyEvent.CHAR_UNDEFINED);
        for (KeyListener listener : card.getKeyListeners()) {
            if (down) {
                listener.keyPressed(event);
            } else {
                listener.keyReleased(event);
            }
        }
    }

    private BufferedImage picture() {
        BufferedImage picture = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = picture.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, WIDTH, HEIGHT);
        card.paint(g);
        g.dispose();
        return picture;
    }

    private static int[] pixels(BufferedImage picture, Rectangle part) {
        return picture.getRGB(part.x, part.y, part.width, part.height, null, 0, part.width);
    }

    private Rectangle frame() {
        return card.place().frame().getBounds();
    }

    /** The right half of the card below the frame, and the left one. */
    private Rectangle below(boolean right) {
        int top = (int) Math.ceil(card.place().frame().getMaxY()) + 2;
        int middle = (int) card.place().frame().getCenterX();
        int bottom = (int) card.place().card().getMaxY() - 1;
        return right
                ? new Rectangle(middle, top, WIDTH - middle, bottom - top)
                : new Rectangle(0, top, middle, bottom - top);
    }

    private void hover(Step step) {
        answer = step;
        mouse(MouseEvent.MOUSE_ENTERED, 0, MouseEvent.NOBUTTON);
        mouse(MouseEvent.MOUSE_MOVED, 0, MouseEvent.NOBUTTON);
    }

    private static Step saying(String key, Place... places) {
        return new Step(
                new Preview(List.of(places), Optional.empty(), Optional.of(Message.of(key))), Optional.empty(), false);
    }

    @Test
    void aHintTakesThePlaceOfTheFactsAndNothingMoves() {
        BufferedImage before = picture();
        hover(saying("instrument.outline.border"));
        BufferedImage hinting = picture();
        assertThat(pixels(hinting, below(true))).isNotEqualTo(pixels(before, below(true)));
        assertThat(pixels(hinting, below(false))).isEqualTo(pixels(before, below(false)));
        hover(Step.idle());
        assertThat(pixels(picture(), below(true))).isEqualTo(pixels(before, below(true)));
    }

    @Test
    void aHintGoesWithThePointer() {
        BufferedImage before = picture();
        hover(saying("instrument.level.place"));
        mouse(MouseEvent.MOUSE_EXITED, 0, MouseEvent.NOBUTTON);
        assertThat(pixels(picture(), below(true))).isEqualTo(pixels(before, below(true)));
    }

    @Test
    void wordsStayOnANarrowCard() {
        session.edit(new Edit(
                Message.of("desk.concept.done"),
                study -> study.withTitle("The kiln on the hill after the first snow")));
        card.setSize(320, 220);
        Rectangle leftOfFrame = new Rectangle(0, 0, (int) card.place().frame().getX() - 2, 200);
        BufferedImage before = picture();
        hover(saying("instrument.outline.border"));
        BufferedImage hinting = picture();
        assertThat(pixels(hinting, below(true))).isNotEqualTo(pixels(before, below(true)));
        assertThat(pixels(hinting, leftOfFrame)).isEqualTo(pixels(before, leftOfFrame));
    }

    @Test
    void spaceLeavesNothingButTheTwoValues() {
        session.edit(new Edit(
                Message.of("desk.concept.done"),
                Edits.thumbnail(
                        "t1",
                        t -> t.withMarks(List.of())
                                .withHorizon(Optional.of(Level.at(.2)))
                                .withLandEdge(Optional.of(Level.at(.4)))
                                .withWaterline(Optional.of(Level.at(.6))))));
        Place across = new Place.Between(new Point(0, .8), new Point(1, .8));
        card.look(List.of(new Place.At(new Point(.5, .5))));
        hover(saying("instrument.level.place", across));
        int paper = Theme.color("Umbercard.paper").getRGB();
        Rectangle inside = frame();
        inside.grow(-2, -2);
        assertThat(pixels(picture(), inside))
                .contains(Theme.color("Umbercard.ink").getRGB());
        for (int key : new int[] {KeyEvent.VK_SPACE, KeyEvent.VK_B}) {
            key(true, key);
            assertThat(IntStream.of(pixels(picture(), inside)).distinct()).containsExactly(paper);
            key(false, key);
            assertThat(pixels(picture(), inside))
                    .contains(Theme.color("Umbercard.ink").getRGB());
        }
    }

    @Test
    void theSecondButtonIsTheOneThatWentDownOrUpWhateverIsHeldBesides() {
        int both = MouseEvent.BUTTON1_DOWN_MASK | MouseEvent.BUTTON3_DOWN_MASK;
        mouse(MouseEvent.MOUSE_PRESSED, MouseEvent.BUTTON1_DOWN_MASK, MouseEvent.BUTTON1);
        mouse(MouseEvent.MOUSE_PRESSED, both, MouseEvent.BUTTON3);
        mouse(MouseEvent.MOUSE_RELEASED, MouseEvent.BUTTON3_DOWN_MASK, MouseEvent.BUTTON1);
        mouse(MouseEvent.MOUSE_RELEASED, 0, MouseEvent.BUTTON3);
        assertThat(felt)
                .extracting(gesture -> gesture.with().contains(Gesture.With.SECOND_BUTTON))
                .containsExactly(false, true, false, true);
    }

    @Test
    void theMiddleButtonDrawsNothingAndHindersNone() {
        int both = MouseEvent.BUTTON1_DOWN_MASK | MouseEvent.BUTTON2_DOWN_MASK;
        mouse(MouseEvent.MOUSE_PRESSED, MouseEvent.BUTTON2_DOWN_MASK, MouseEvent.BUTTON2);
        mouse(MouseEvent.MOUSE_DRAGGED, MouseEvent.BUTTON2_DOWN_MASK, MouseEvent.NOBUTTON);
        mouse(MouseEvent.MOUSE_PRESSED, both, MouseEvent.BUTTON1);
        mouse(MouseEvent.MOUSE_DRAGGED, both, MouseEvent.NOBUTTON);
        mouse(MouseEvent.MOUSE_RELEASED, MouseEvent.BUTTON2_DOWN_MASK, MouseEvent.BUTTON1);
        mouse(MouseEvent.MOUSE_RELEASED, 0, MouseEvent.BUTTON2);
        assertThat(felt)
                .extracting(Gesture::act)
                .containsExactly(Gesture.Act.PRESS, Gesture.Act.DRAG, Gesture.Act.RELEASE);
    }

    /** Paints into the picture what the card has asked for since. */
    private void follow(BufferedImage picture, List<Rectangle> asked) {
        for (Rectangle part : asked) {
            Graphics2D g = picture.createGraphics();
            g.setClip(part);
            g.setColor(Color.WHITE);
            g.fillRect(0, 0, WIDTH, HEIGHT);
            card.paint(g);
            g.dispose();
        }
        asked.clear();
    }

    private static Step as(Study study, Place... places) {
        return Step.holding(new Preview(List.of(places), Optional.of(study), Optional.empty()));
    }

    @Test
    void theSmallPartsThatAreAskedForMakeTheWholePicture() {
        List<Rectangle> asked = new ArrayList<>();
        RepaintManager before = RepaintManager.currentManager(card);
        RepaintManager.setCurrentManager(new RepaintManager() {
            @Override
            public void addDirtyRegion(JComponent c, int x, int y, int w, int h) {
                asked.add(new Rectangle(x, y, w, h));
            }
        });
        try {
            BufferedImage seen = picture();
            hover(as(session.study()));
            follow(seen, asked);
            for (int event = 0; event < 8; event++) {
                int by = event;
                Study study = Edits.thumbnail("t1", t -> t.withMarks(moved(t.marks(), .01 * by)))
                        .apply(session.study());
                Place at = new Place.At(new Point(.31 + .01 * by, .38));
                Place line = new Place.Between(new Point(.31, .38), new Point(.9, .05 * by));
                hover(event % 2 == 0 ? as(study, at) : as(study, at, line));
                assertThat(asked)
                        .allSatisfy(part -> assertThat(part.width * part.height).isLessThan(WIDTH * HEIGHT / 2));
                follow(seen, asked);
                same(seen, picture());
            }
            hover(Step.idle());
            follow(seen, asked);
            same(seen, picture());
        } finally {
            RepaintManager.setCurrentManager(before);
        }
    }

    /** The marks with the second point of the first moved to the right. */
    private static List<Mark> moved(List<Mark> marks, double by) {
        List<Mark> changed = new ArrayList<>(marks);
        List<Node> nodes = new ArrayList<>(marks.get(0).outline().nodes());
        Node node = nodes.get(1);
        nodes.set(1, new Node(node.at().plus(by, 0), node.in().plus(by, 0), node.out(), true));
        changed.set(0, marks.get(0).withOutline(new Outline(nodes)));
        return changed;
    }

    /** To 2 of 255: the marks' edges are drawn within a window or in the whole. */
    private static void same(BufferedImage one, BufferedImage two) {
        int[] left = one.getRaster().getPixels(0, 0, WIDTH, HEIGHT, (int[]) null);
        int[] right = two.getRaster().getPixels(0, 0, WIDTH, HEIGHT, (int[]) null);
        assertThat(IntStream.range(0, left.length)
                        .map(i -> Math.abs(left[i] - right[i]))
                        .max()
                        .orElseThrow())
                .isLessThanOrEqualTo(2);
    }
}
