package umbercard.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import umbercard.bench.DecodeTimes.Way;

/** In how little memory a photograph of 48 million pixels can be read: a program of its own for every way and every heap. */
final class LeastMemory {
    private static final int[] HEAPS = {16, 24, 32, 40, 48, 64, 96, 128, 160, 192, 256, 384, 512, 768, 1024};
    private static final int WIDTH = 8000;
    private static final int HEIGHT = 6000;

    /**
     * What one way needs, in megabytes.
     *
     * @param heap the least heap tried in which it comes to an end
     * @param resident the most memory that its process had in use then, with all libraries; 0 where the system does not say
     */
    record Needed(Way way, int heap, double resident) {}

    private LeastMemory() {}

    static List<Needed> measure(Path folder) throws IOException, InterruptedException {
        Path file = DecodeTimes.scene(folder, WIDTH, HEIGHT, false);
        List<Needed> all = new ArrayList<>();
        for (Way way : Way.values()) {
            all.add(least(way, file));
        }
        return all;
    }

    private static Needed least(Way way, Path file) throws IOException, InterruptedException {
        for (int heap : HEAPS) {
            Process process = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-Xmx" + heap + "m",
                            "-Djava.awt.headless=true",
                            "-cp",
                            System.getProperty("java.class.path"),
                            LeastMemory.class.getName(),
                            way.name(),
                            file.toString())
                    .redirectErrorStream(true)
                    .start();
            String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            if (process.waitFor(2, TimeUnit.MINUTES) && process.exitValue() == 0) {
                return new Needed(way, heap, Double.parseDouble(said.lines().reduce("", (before, line) -> line)));
            }
        }
        throw new IllegalStateException(way + " needs more than all that was tried");
    }

    /** Reads a file in one way, both named by the arguments, and says the most memory that was resident. */
    public static void main(String[] args) throws IOException {
        Path file = Path.of(args[1]);
        Way way = Way.valueOf(args[0]);
        byte[] bytes = way == Way.WORKING_PICTURE || way == Way.BARE ? Files.readAllBytes(file) : new byte[0];
        int read = way.run(file, bytes, DecodeTimes.WIDTH, DecodeTimes.WIDTH * HEIGHT / WIDTH);
        System.out.println(read > 0 ? resident() : -1);
    }

    private static double resident() throws IOException {
        Path status = Path.of("/proc/self/status");
        if (Files.notExists(status)) {
            return 0;
        }
        return Files.readAllLines(status).stream()
                .filter(line -> line.startsWith("VmHWM:"))
                .mapToDouble(line -> Double.parseDouble(line.replaceAll("\\D", "")) / 1024)
                .findFirst()
                .orElse(0);
    }
}
