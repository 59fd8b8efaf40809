package umbercard.desk.canvas;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.util.List;
import org.junit.jupiter.api.Test;
import umbercard.geometry.Outline;
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
    void theImageIsKeptUntilSomethingChanges() {
        BufferedImage first = drawn(Thumbnail.Ground.LIGHT, LAY);
        assertThat(drawn(Thumbnail.Ground.LIGHT, LAY)).isSameAs(first);
        assertThat(drawn(Thumbnail.Ground.LIGHT, LAY, LIFT)).isNotSameAs(first);
        Thumbnail empty = Thumbnail.empty("t1", "first");
        assertThat(layer.image(empty, 30, 20, Color.BLACK).getWidth()).isEqualTo(30);
    }
}
