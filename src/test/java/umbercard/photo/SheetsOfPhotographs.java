package umbercard.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import umbercard.model.Squint;
import umbercard.photo.FirstPass.Traced;
import umbercard.photo.FirstPass.Wish;
import umbercard.picture.Picture;

/**
 * First passes of photographs, beside their squints, to be looked at in target/sheets; run by the profile sheets. Those of
 * others come from a package of Debian's that is free to use (its copyright file names authors and licenses), are fetched
 * when this runs and kept nowhere but under target. Where there is no apt, or nothing to fetch from, they are skipped.
 */
class SheetsOfPhotographs {
    private static final Path TARGET = Path.of("target", "sheets");
    private static final String PACKAGE = "mate-backgrounds";

    private static final Squint EDGES = new Squint(SquintWay.KEEPING_EDGES.key(), Wish.SQUINT);

    private static final List<Wish> WISHES = List.of(
            Wish.usual(),
            Wish.share(2.0 / 3),
            new Wish(OptionalDouble.empty(), OptionalDouble.empty(), Squint.gaussian(0.008), OptionalInt.of(5)),
            new Wish(OptionalDouble.empty(), OptionalDouble.empty(), EDGES, OptionalInt.empty()));

    private static void write(BufferedImage sheet, String name) throws IOException {
        Files.createDirectories(TARGET);
        ImageIO.write(sheet, "png", TARGET.resolve(name + ".png").toFile());
    }

    @Test
    void ofKilnHillAndTheVistas() throws IOException {
        ContactSheet sheet = new ContactSheet(360, true);
        Picture kilnHill = PhotoReader.read(Path.of("samples", "kiln-hill.jpg"), Progress.NONE);
        for (Wish wish : WISHES) {
            sheet.add("Kiln Hill", kilnHill, wish);
        }
        for (Map.Entry<String, Picture> vista : Vistas.all().entrySet()) {
            sheet.add(vista.getKey(), vista.getValue(), Wish.usual());
        }
        write(sheet.image(), "generated");
    }

    @Test
    void ofFreePhotographs() throws IOException, InterruptedException {
        List<Path> files = fetched();
        assumeTrue(!files.isEmpty(), "skipped: no photographs can be fetched from Debian's packages here");
        int number = 0;
        ContactSheet sheet = new ContactSheet(300, true);
        for (Path file : files) {
            Picture photograph = PhotoReader.read(file, Progress.NONE);
            Wish wish = WISHES.get(number % WISHES.size());
            Traced traced = sheet.add(String.valueOf(file.getFileName()), photograph, wish);
            assertThat(traced.masses()).isPositive();
            number++;
        }
        write(sheet.image(), "photographs");
    }

    /** The package's photographs of nature, by name; none where they cannot be had. */
    private static List<Path> fetched() throws IOException, InterruptedException {
        Path folder = Files.createDirectories(Path.of("target", "photographs"));
        Path content = folder.resolve("content");
        if (!Files.isDirectory(content)) {
            boolean got = run(folder, "apt-get", "download", PACKAGE);
            List<Path> archives = listed(folder, ".deb");
            if (!got || archives.isEmpty()) {
                return List.of();
            }
            String archive = String.valueOf(archives.get(0).getFileName());
            if (!run(folder, "dpkg-deb", "-x", archive, "content")) {
                return List.of();
            }
        }
        return listed(content.resolve(Path.of("usr", "share", "backgrounds", "mate", "nature")), ".jpg");
    }

    private static List<Path> listed(Path folder, String end) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(end)).sorted().toList();
        }
    }

    private static boolean run(Path folder, String... words) throws InterruptedException {
        try {
            Process process = new ProcessBuilder(words)
                    .directory(folder.toFile())
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return process.waitFor(3, TimeUnit.MINUTES) && process.exitValue() == 0;
        } catch (IOException notThere) {
            System.out.println(words[0] + " cannot be run here: " + notThere.getMessage());
            return false;
        }
    }
}
