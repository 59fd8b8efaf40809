package umbercard.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import umbercard.picture.Picture;

/** Large photographs are read in a fraction of the memory that they would fill: a program of its own, with that little. */
class LittleMemoryTest {
    private static final int WIDTH = 8000;
    private static final int HEIGHT = 6000;

    /** A third of what 48 million pixels take in three bytes each. */
    private static final String HEAP = "-Xmx48m";

    @TempDir
    Path folder;

    /** Reads the file that its argument names, and says the size of the working picture. */
    static final class Reading {
        private Reading() {}

        public static void main(String[] file) throws IOException {
            Picture picture = PhotoReader.read(Path.of(file[0]), Progress.NONE);
            System.out.println(picture.width() + " x " + picture.height() + " " + picture.rgb(1000, 750));
        }
    }

    @Test
    void readsFortyEightMillionPixelsInFortyEightMegabytes() throws IOException, InterruptedException {
        BufferedImage large = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_3BYTE_BGR);
        for (int y = 0; y < HEIGHT; y += 100) {
            large.setRGB(y, y, 0xc08040);
        }
        Path jpeg = folder.resolve("large.jpg");
        ImageIO.write(large, "jpeg", jpeg.toFile());
        assertThat(run(jpeg)).startsWith("2000 x 1500 ");
    }

    private static String run(Path file) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        HEAP,
                        "-Djava.awt.headless=true",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Reading.class.getName(),
                        file.toString())
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).as(said).isZero();
        return said.lines().reduce("", (before, line) -> line);
    }
}
