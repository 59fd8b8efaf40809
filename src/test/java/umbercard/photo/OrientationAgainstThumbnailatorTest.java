package umbercard.photo;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import net.coobird.thumbnailator.Thumbnails;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import umbercard.picture.Picture;

/** The eight orientations of EXIF against Thumbnailator, which turns photographs upright by itself. */
class OrientationAgainstThumbnailatorTest {
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void turnsAsTheOtherDecoderDoes(int tag) throws IOException {
        BufferedImage theirs = Thumbnails.of(new ByteArrayInputStream(Oriented.jpeg(tag)))
                .scale(1)
                .imageType(BufferedImage.TYPE_INT_RGB)
                .asBufferedImage();
        int width = theirs.getWidth();
        int height = theirs.getHeight();
        Oriented.assertAgrees(
                tag, new Picture(width, height, theirs.getRGB(0, 0, width, height, new int[width * height], 0, width)));
    }
}
