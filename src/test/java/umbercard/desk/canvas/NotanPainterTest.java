package umbercard.desk.canvas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import umbercard.desk.KilnHill;
import umbercard.desk.theme.Theme;
import umbercard.model.Mark;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.notan.Fold;

class NotanPainterTest {
    private static final int HEIGHT = 300;

    private final Study study = KilnHill.study();

    @BeforeEach
    void theme() {
        Theme.install(false);
    }

    private double painted(Thumbnail thumbnail) {
        int width = (int) Math.ceil(HEIGHT * study.ratio());
        BufferedImage picture = new BufferedImage(width + 20, HEIGHT + 20, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = Theme.smooth(picture.getGraphics());
        g.setColor(Color.BLUE);
        g.fillRect(0, 0, width + 20, HEIGHT + 20);
        new NotanPainter().paint(g, thumbnail, new Rectangle(10, 10, width, HEIGHT));
        g.dispose();
        double dark = 0;
        for (int y = 0; y < HEIGHT + 20; y++) {
            for (int x = 0; x < width + 20; x++) {
                boolean outside = x < 10 || y < 10 || x >= width + 10 || y >= HEIGHT + 10;
                if (outside) {
                    assertThat(picture.getRGB(x, y) & 0xffffff).isEqualTo(0x0000ff);
                } else {
                    dark += (255 - (picture.getRGB(x, y) >> 8 & 0xff)) / (255.0 - 0x1d);
                }
            }
        }
        return dark / (HEIGHT * HEIGHT * study.ratio());
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2})
    void whatIsPaintedDarkIsWhatTheFoldMeasures(int which) {
        Thumbnail thumbnail = study.thumbnails().get(which);
        assertThat(painted(thumbnail))
                .isCloseTo(Fold.of(thumbnail, study.ratio()).darkShare(), within(0.004));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1})
    void aDarkGroundAndHiddenMarksCountAsInTheFold(int which) {
        Thumbnail thumbnail = study.thumbnails().get(0).withGround(Thumbnail.Ground.DARK);
        Mark hidden = thumbnail.marks().get(which).withHidden(true);
        Mark other = thumbnail.marks().get(1 - which);
        Thumbnail changed = thumbnail.withMarks(java.util.List.of(other, hidden));
        assertThat(painted(changed)).isCloseTo(Fold.of(changed, study.ratio()).darkShare(), within(0.004));
    }
}
