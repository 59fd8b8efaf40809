package umbercard.bench;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Objects;
import javax.imageio.ImageIO;
import umbercard.picture.Picture;

/** The sample's photograph at its full size. */
final class KilnHillPhotograph {
    private KilnHillPhotograph() {}

    static Picture read() throws IOException {
        Path file = Path.of("samples", "kiln-hill.jpg");
        BufferedImage image = Objects.requireNonNull(ImageIO.read(file.toFile()), file::toString);
        int[] pixels = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        return new Picture(image.getWidth(), image.getHeight(), pixels);
    }
}
