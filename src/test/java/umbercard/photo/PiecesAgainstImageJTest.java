package umbercard.photo;

import ij.process.ByteProcessor;
import ij.process.FloodFiller;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import umbercard.picture.ValueField;

/** The pieces that a split makes, counted by ImageJ's flood over sides, and over corners too. */
class PiecesAgainstImageJTest {
    @ParameterizedTest(name = "{0}, split at {2}")
    @MethodSource("umbercard.photo.Pieces#fields")
    void countsAsManyPieces(String name, ValueField field, double split) {
        Pieces.assertAgree(field, split, PiecesAgainstImageJTest::flooded);
    }

    private static int flooded(boolean[] set, int width, boolean overCorners) {
        ByteProcessor pixels = new ByteProcessor(width, set.length / width);
        for (int i = 0; i < set.length; i++) {
            pixels.set(i, set[i] ? 255 : 0);
        }
        FloodFiller flood = new FloodFiller(pixels);
        pixels.setColor(0);
        int count = 0;
        for (int i = 0; i < set.length; i++) {
            if (pixels.get(i) != 0) {
                count++;
                if (overCorners) {
                    flood.fill8(i % width, i / width);
                } else {
                    flood.fill(i % width, i / width);
                }
            }
        }
        return count;
    }
}
