package umbercard.desk.canvas;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.model.Mark;
import umbercard.model.Thumbnail;
import umbercard.picture.Picture;

class UnderPointerTest {
    private static final Thumbnail THUMBNAIL = Thumbnail.empty("t1", "first")
            .withMarks(List.of(
                    new Mark("m1", Mark.Kind.LAY, Outline.rectangle(0, .5, 1.5, 1)),
                    new Mark("m2", Mark.Kind.LIFT, Outline.rectangle(.5, .6, 1, .9)),
                    new Mark("m3", Mark.Kind.LAY, Outline.rectangle(.7, .7, .8, .8))));

    private static boolean dark(Thumbnail thumbnail, double x, double y) {
        return UnderPointer.at(new Point(x, y), 0, Optional.empty(), Optional.of(thumbnail))
                .dark();
    }

    @Test
    void theLastMarkOverAPlaceSaysWhatItIs() {
        assertThat(dark(THUMBNAIL, .2, .2)).isFalse();
        assertThat(dark(THUMBNAIL, .2, .7)).isTrue();
        assertThat(dark(THUMBNAIL, .6, .75)).isFalse();
        assertThat(dark(THUMBNAIL, .75, .75)).isTrue();
        assertThat(dark(THUMBNAIL.withGround(Thumbnail.Ground.DARK), .2, .2)).isTrue();
        assertThat(dark(THUMBNAIL.withGround(Thumbnail.Ground.DARK), .6, .75)).isFalse();
    }

    @Test
    void thePhotographIsReadOverTheDisk() {
        int[] pixels = new int[150 * 100];
        Arrays.fill(pixels, 0, 150 * 50, 0xffffff);
        Picture framed = new Picture(150, 100, pixels);
        assertThat(at(framed, .49, 0)).isEqualTo(0xffffff);
        assertThat(at(framed, .51, 0)).isEqualTo(0x000000);
        // Half the light is encoded as 188 (IEC 61966-2-1).
        assertThat(at(framed, .5, .1)).isEqualTo(0xbcbcbc);
        assertThat(UnderPointer.at(new Point(.2, .2), 0, Optional.empty(), Optional.empty())
                        .reference())
                .isEmpty();
    }

    private static int at(Picture framed, double y, double disk) {
        return UnderPointer.at(new Point(.7, y), disk, Optional.of(framed), Optional.empty())
                .reference()
                .orElseThrow()
                .srgb();
    }
}
