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
import umbercard.geometry.Point;
import umbercard.kernel.Plugins;
import umbercard.model.Level;
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
}
