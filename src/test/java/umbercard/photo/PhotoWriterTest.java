package umbercard.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.Toolkit;
import java.awt.image.BaseMultiResolutionImage;
import java.awt.image.BufferedImage;
import java.awt.image.MemoryImageSource;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import umbercard.picture.Picture;

class PhotoWriterTest {
    private static Picture read(byte[] bytes) throws IOException {
        return PhotoReader.read("pasted.png", bytes, Progress.NONE);
    }

    @Test
    void aPictureComesBackPixelForPixel() throws IOException {
        Picture noise = Photographs.noise(31, 17, 5);
        byte[] png = PhotoWriter.png(Photographs.image(noise, BufferedImage.TYPE_INT_RGB));
        assertThat(read(png).pixels()).isEqualTo(noise.pixels());
    }

    @Test
    void soDoesOneThatIsNotInMemoryYet() throws IOException {
        Picture noise = Photographs.noise(31, 17, 6);
        int[] opaque = java.util.Arrays.stream(noise.pixels())
                .map(rgb -> rgb | 0xff000000)
                .toArray();
        var source = new MemoryImageSource(31, 17, opaque, 0, 31);
        byte[] png = PhotoWriter.png(Toolkit.getDefaultToolkit().createImage(source));
        assertThat(read(png).pixels()).isEqualTo(noise.pixels());
    }

    @Test
    void ofSeveralResolutionsTheLargestIsTaken() throws IOException {
        var small = Photographs.image(Photographs.noise(10, 5, 7), BufferedImage.TYPE_INT_RGB);
        Picture noise = Photographs.noise(20, 10, 8);
        var large = Photographs.image(noise, BufferedImage.TYPE_INT_RGB);
        assertThat(read(PhotoWriter.png(new BaseMultiResolutionImage(small, large)))
                        .pixels())
                .isEqualTo(noise.pixels());
    }

    @Test
    void anImageWithoutPixelsIsToldSo() {
        var broken = Toolkit.getDefaultToolkit().createImage(new byte[] {1, 2, 3});
        assertThatThrownBy(() -> PhotoWriter.png(broken)).isInstanceOf(IOException.class);
    }
}
