package umbercard.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import umbercard.picture.Picture;
import umbercard.words.Trouble;

class FirstSightTest {
    /** Dark left and light right, with a bright band on top; twice as wide as high. */
    private static final Picture LARGE = scene(640, 320);

    private static Picture scene(int width, int height) {
        return Photographs.picture(
                width, height, (x, y) -> y < height / 4 ? 0xe0e0e0 : x < width / 2 ? 0x303030 : 0xa0a0a0);
    }

    /** What was told while a photograph was read. */
    private static final class Told implements Progress {
        private final List<Picture> sights = new ArrayList<>();
        private double shareAtSight = -1;
        private double last;

        @Override
        public void at(double share) {
            last = share;
        }

        @Override
        public void firstSight(Picture small) {
            sights.add(small);
            shareAtSight = last;
        }
    }

    private static Told read(byte[] file) throws Trouble {
        Told told = new Told();
        PhotoReader.read("camera.jpg", file, told);
        return told;
    }

    @Test
    void comesOnceAndBeforeAnythingIsDecoded() throws IOException {
        Told told = read(Formats.withThumbnail(Photographs.jpeg(LARGE), Photographs.jpeg(scene(160, 80)), 1));
        assertThat(told.sights).singleElement().satisfies(sight -> {
            assertThat(sight.width()).isEqualTo(160);
            assertThat(sight.height()).isEqualTo(80);
        });
        assertThat(told.shareAtSight).isZero();
        assertThat(told.last).isEqualTo(1);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void standsAsThePhotographStands(int orientation) throws IOException {
        byte[] file = Formats.withThumbnail(Photographs.jpeg(LARGE), Photographs.jpeg(scene(160, 80)), orientation);
        Picture sight = read(file).sights.get(0);
        Picture upright = PhotoReader.read("camera.jpg", file, Progress.NONE);
        assertThat(sight.ratio()).isEqualTo(upright.ratio());
        for (double across : new double[] {0.1, 0.4, 0.6, 0.9}) {
            for (double down : new double[] {0.1, 0.4, 0.6, 0.9}) {
                assertThat(at(sight, across, down)).isCloseTo(at(upright, across, down), within(6));
            }
        }
    }

    private static int at(Picture picture, double across, double down) {
        return picture.rgb((int) (across * picture.width()), (int) (down * picture.height())) & 0xff;
    }

    @Test
    void losesTheBarsThatFillItsOwnProportions() throws IOException {
        Picture scene = scene(160, 80);
        Picture barred = Photographs.picture(160, 120, (x, y) -> y < 20 || y >= 100 ? 0 : scene.rgb(x, y - 20));
        Picture sight = read(Formats.withThumbnail(Photographs.jpeg(LARGE), Photographs.jpeg(barred), 1))
                .sights
                .get(0);
        assertThat(sight.height()).isEqualTo(80);
        assertThat(sight.rgb(80, 4) & 0xff).isGreaterThan(200);
    }

    @Test
    void isInThePhotographsColors() throws IOException {
        byte[] wide = Photographs.profiled(
                Photographs.jpeg(Photographs.picture(320, 160, (x, y) -> 0x60a070)), Profiles.Space.WIDE.profile());
        byte[] small = Photographs.jpeg(Photographs.picture(160, 80, (x, y) -> 0x60a070));
        byte[] file = Formats.withThumbnail(wide, small, 1);
        int sight = read(file).sights.get(0).rgb(80, 40);
        int whole = PhotoReader.read("wide.jpg", file, Progress.NONE).rgb(160, 80);
        assertThat(sight >> 16).isCloseTo(whole >> 16, within(2)).isLessThan(0x50);
    }

    @Test
    void isLeftOutWhereItIsBrokenOrMissing() throws IOException {
        byte[] small = Photographs.jpeg(scene(160, 80));
        Arrays.fill(small, 2, small.length, (byte) 7);
        assertThat(read(Formats.withThumbnail(Photographs.jpeg(LARGE), small, 1)).sights)
                .isEmpty();
        assertThat(read(Photographs.jpeg(LARGE)).sights).isEmpty();
    }
}
