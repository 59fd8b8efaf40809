package umbercard.samples;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import umbercard.picture.Picture;

/**
 * Makes the photograph of the sample study, <em>Kiln Hill, first snow</em>: an old lime kiln dark against a snowy slope,
 * bare alders, far ridges under a low winter sky, and the mill pond that turns it all over. Invented from end to end and
 * made in linear light from seeded noise, so it is the same each time.
 *
 * <p>To make {@code samples/kiln-hill.jpg} anew:
 * {@code mvn -q test-compile exec:java -Dexec.mainClass=umbercard.samples.KilnHill -Dexec.classpathScope=test}, with the
 * file and, if it is to be another size, the height in pixels as {@code -Dexec.args}.
 */
public final class KilnHill {
    /** The photograph's height in pixels; it is half as wide again. */
    static final int HEIGHT = 2000;

    static final float QUALITY = 0.88f;

    private KilnHill() {}

    /** {@code [FILE [HEIGHT]]}: by default {@code samples/kiln-hill.jpg}, {@value #HEIGHT} pixels high. */
    public static void main(String[] arguments) throws IOException {
        Path file = Path.of(arguments.length > 0 ? arguments[0] : "samples/kiln-hill.jpg");
        int height = arguments.length > 1 ? Integer.parseInt(arguments[1]) : HEIGHT;
        Picture picture = paint(height);
        try (OutputStream out = Files.newOutputStream(file)) {
            write(picture, out);
        }
    }

    /** The photograph at a height in pixels; the same scene at every size. */
    static Picture paint(int height) {
        Light light = new Light(height * 3 / 2, height);
        Pond pond = new Pond();
        new Sky().paint(light);
        new Hills().paint(light);
        Reeds.slope(light);
        new Kiln().paint(light);
        pond.bank(light);
        Alders.paint(light);
        Reeds.grass(light, pond);
        pond.water(light);
        Reeds.near(light);
        return Lens.expose(light);
    }

    private static void write(Picture picture, OutputStream out) throws IOException {
        BufferedImage image = new BufferedImage(picture.width(), picture.height(), BufferedImage.TYPE_INT_RGB);
        image.setRGB(0, 0, picture.width(), picture.height(), picture.pixels(), 0, picture.width());
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        try (var stream = ImageIO.createImageOutputStream(out)) {
            ImageWriteParam settings = writer.getDefaultWriteParam();
            settings.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            settings.setCompressionQuality(QUALITY);
            writer.setOutput(stream);
            writer.write(null, new IIOImage(image, List.of(), null), settings);
        } finally {
            writer.dispose();
        }
    }
}
