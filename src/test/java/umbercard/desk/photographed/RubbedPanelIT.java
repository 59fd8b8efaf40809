package umbercard.desk.photographed;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JFrame;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import umbercard.color.Ciede2000;
import umbercard.color.Lab;
import umbercard.color.MunsellValue;
import umbercard.desk.KilnHill;
import umbercard.desk.OnDesk;
import umbercard.desk.theme.Theme;
import umbercard.geometry.Point;
import umbercard.geometry.Size;
import umbercard.photo.CardMarks;
import umbercard.photo.Gray;
import umbercard.picture.Picture;
import umbercard.rubbed.Learned;
import umbercard.rubbed.RubbedNotes;
import umbercard.words.Trouble;

/** A color card of four notes, seen straight from above: three sticks rubbed in other colors than the box has, one not. */
class RubbedPanelIT extends OnDesk {
    private static final double PIXELS = 9;
    private static final Point CORNER = new Point(150, 90);
    private static final int[] RUBBED = {0x2b3a4d, 0x6b3f2f, 0x8296a4};

    private final List<Learned.OfStick> learned = new ArrayList<>();
    private static List<RubbedNotes> cards = List.of();
    private RubbedPanel panel;

    @BeforeAll
    static void print() throws Trouble {
        cards = RubbedNotes.cardsOf(KilnHill.study());
    }

    @Override
    protected Dimension windowSize() {
        return new Dimension(1040, 640);
    }

    @Override
    protected JFrame makeWindow() {
        Theme.install(false);
        panel = new RubbedPanel("card.jpg", photograph(), cards, learned::addAll, () -> {});
        JFrame frame = new JFrame("rubbed");
        frame.setContentPane(panel);
        return frame;
    }

    private List<Point> corners() {
        Size card = cards.get(0).marks(List.of(CORNER, CORNER, CORNER, CORNER)).card();
        double right = PIXELS * card.width();
        double foot = PIXELS * card.height();
        return List.of(CORNER, CORNER.plus(right, 0), CORNER.plus(right, foot), CORNER.plus(0, foot));
    }

    private static int gray(double value) {
        return Lab.gray(Lab.lightness(MunsellValue.luminance(value))).srgb();
    }

    private Picture photograph() {
        CardMarks marks = cards.get(0).marks(corners());
        BufferedImage image = new BufferedImage(1700, 1100, BufferedImage.TYPE_INT_RGB);
        Graphics2D hand = image.createGraphics();
        hand.setColor(new Color(0x404040));
        hand.fillRect(0, 0, image.getWidth(), image.getHeight());
        fill(hand, gray(Gray.PAPER), new Point(0, 0), marks.card());
        marks.printed().stream()
                .filter(printed -> printed.value() < 9)
                .forEach(printed -> fill(hand, gray(printed.value()), printed.corner(), printed.size()));
        for (int i = 0; i < RUBBED.length; i++) {
            fill(
                    hand,
                    RUBBED[i],
                    marks.patches().get(i).corner(),
                    marks.patches().get(i).size());
        }
        hand.dispose();
        return new Picture(
                image.getWidth(),
                image.getHeight(),
                image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth()));
    }

    private static void fill(Graphics2D hand, int rgb, Point corner, Size size) {
        hand.setColor(new Color(rgb));
        hand.fill(new Rectangle2D.Double(
                CORNER.x() + PIXELS * corner.x(),
                CORNER.y() + PIXELS * corner.y(),
                PIXELS * size.width(),
                PIXELS * size.height()));
    }

    private String told() {
        return window().textBox("photographed.told").text();
    }

    @Test
    void theColorsThatThePainterKeepsAreLearned() {
        assertThat(told()).isEqualTo("Put the rings onto the corners of the card first.");
        window().button("photographed.take").requireDisabled();
        act(() -> panel.corners(corners()));
        until("three are told", () -> told().startsWith("The colors of 3 sticks are told"));
        shots("told");
        window().checkBox("photographed.stick.s4").requireDisabled();
        window().checkBox("photographed.stick.s4").requireNotSelected();
        window().checkBox("photographed.stick.s2").uncheck();
        act(() -> panel.corners(corners().stream().map(at -> at.plus(0.5, 0)).toList()));
        until("they are told again", () -> told().startsWith("The colors of 3 sticks are told"));
        window().checkBox("photographed.stick.s2").requireNotSelected();
        window().button("photographed.take").click();
        assertThat(learned).extracting(one -> one.stick().id()).containsExactly("s1", "s3");
        assertThat(Ciede2000.difference(learned.get(0).color(), Lab.ofSrgb(RUBBED[0])))
                .isLessThan(1);
        assertThat(Ciede2000.difference(learned.get(1).color(), Lab.ofSrgb(RUBBED[2])))
                .isLessThan(1);
        assertThat(learned.get(0).stick().title()).isEqualTo("Sloe");
    }

    @Test
    void cornersThatAreNoneAreSaidToBe() {
        List<Point> right = corners();
        act(() -> panel.corners(List.of(right.get(0), right.get(3), right.get(2), right.get(1))));
        until("they are wrong", () -> told().contains("mark them clockwise"));
        window().button("photographed.take").requireDisabled();
    }
}
