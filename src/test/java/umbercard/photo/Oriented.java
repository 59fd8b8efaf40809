package umbercard.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import umbercard.picture.Picture;

/** A photograph that looks different however it is turned, and what another decoder makes of it, held against ours. */
final class Oriented {
    /** Blocks of the coding's own size and of grays far apart, so that the coding hardly changes them. */
    private static final Picture STORED =
            Photographs.picture(48, 32, (x, y) -> 0x010101 * (10 + 13 * (x / 8 + 6 * (y / 16)) + (y / 8 % 2) * 80));

    private static final int CODING = 3;

    private Oriented() {}

    static byte[] jpeg(int tag) throws IOException {
        return Photographs.oriented(Photographs.jpeg(STORED), tag);
    }

    /** That another decoder turned the photograph at all, and to what ours turns it. */
    static void assertAgrees(int tag, Picture theirs) throws IOException {
        assertThat(isSame(theirs, STORED)).as("left as it is stored").isEqualTo(tag == 1);
        assertThat(isSame(PhotoReader.read("turned.jpg", jpeg(tag), Progress.NONE), theirs))
                .as("ours as theirs")
                .isTrue();
    }

    private static boolean isSame(Picture one, Picture other) {
        if (one.width() != other.width()) {
            return false;
        }
        for (int i = 0; i < one.pixels().length; i++) {
            if (Math.abs((one.pixels()[i] >> 8 & 0xff) - (other.pixels()[i] >> 8 & 0xff)) > CODING) {
                return false;
            }
        }
        return true;
    }
}
