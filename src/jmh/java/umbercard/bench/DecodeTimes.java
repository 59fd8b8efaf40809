package umbercard.bench;

import ij.io.Opener;
import ij.process.ImageProcessor;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.FileImageOutputStream;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;
import umbercard.photo.PhotoReader;
import umbercard.photo.Progress;

/**
 * From a JPEG's bytes to a picture of 2000 pixels, in turn with what others take for the same file (ImageJ and OpenCV read it from the disk): the
 * toolkit's decoder alone, which reduces nothing and is the floor, ImageJ, which reduces in gamma space, and OpenCV both ways.
 */
final class DecodeTimes {
    static final int WIDTH = 2000;
    private static final int[][] SIZES = {{4000, 3000}, {6000, 4000}, {8000, 6000}};

    /** Ways to come from bytes to a picture. */
    enum Way {
        /** Ours. */
        WORKING_PICTURE("Umbercard, to the working picture"),
        /** The toolkit's own decoder, which is the quickest of those at hand. */
        BARE("ImageIO, decoding alone"),
        /** ImageJ's opener and its own resizing with averaging. */
        IMAGEJ("ImageJ, decoding and reducing"),
        /** OpenCV's decoder and its area averaging. */
        OPENCV("OpenCV, decoding and reducing"),
        /** The same in linear light, as ours. */
        OPENCV_IN_LIGHT("OpenCV, decoding and reducing in linear light");

        private final String words;

        Way(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }

        int run(Path path, byte[] file, int width, int height) throws IOException {
            return switch (this) {
                case WORKING_PICTURE ->
                    PhotoReader.read("bench.jpg", file, Progress.NONE).width();
                case BARE -> bare(file).getWidth();
                case IMAGEJ -> {
                    ImageProcessor whole =
                            new Opener().openImage(path.toString()).getProcessor();
                    whole.setInterpolationMethod(ImageProcessor.BILINEAR);
                    yield whole.resize(width, height, true).getWidth();
                }
                case OPENCV -> OpenCv.reduced(path, width, height).length;
                case OPENCV_IN_LIGHT -> OpenCv.reducedInLight(path, width, height).length;
            };
        }
    }

    /**
     * The times of one way.
     *
     * @param megapixels of the file
     * @param progressive whether it is coded progressively
     * @param bytes the file's length
     * @param way how it was read
     * @param times in milliseconds, sorted
     */
    record Decoded(double megapixels, boolean progressive, int bytes, Way way, List<Double> times) {}

    private DecodeTimes() {}

    /** Measures every way in turn, each so many times after as many that do not count, at most three. */
    static List<Decoded> measure(Path folder, int rounds) throws IOException {
        List<Decoded> all = new ArrayList<>();
        for (int[] size : SIZES) {
            all.addAll(measure(folder, size[0], size[1], false, rounds));
        }
        all.addAll(measure(folder, SIZES[0][0], SIZES[0][1], true, Math.min(rounds, 5)));
        return all;
    }

    private static List<Decoded> measure(Path folder, int width, int height, boolean progressive, int rounds)
            throws IOException {
        Path path = scene(folder, width, height, progressive);
        byte[] file = Files.readAllBytes(path);
        Map<Way, List<Double>> times = new EnumMap<>(Way.class);
        int warm = Math.min(3, rounds);
        for (int round = -warm; round < rounds; round++) {
            for (Way way : Way.values()) {
                long start = System.nanoTime();
                int got = way.run(path, file, WIDTH, WIDTH * height / width);
                double ms = (System.nanoTime() - start) / 1e6;
                if (got == 0) {
                    throw new IllegalStateException("an empty picture");
                }
                if (round >= 0) {
                    times.computeIfAbsent(way, any -> new ArrayList<>()).add(ms);
                }
            }
        }
        List<Decoded> all = new ArrayList<>();
        times.forEach((way, taken) -> {
            Collections.sort(taken);
            all.add(new Decoded(width * (height / 1e6), progressive, file.length, way, taken));
        });
        return all;
    }

    private static BufferedImage bare(byte[] file) throws IOException {
        Iterator<ImageReader> readers = ImageIO.getImageReadersByFormatName("jpeg");
        ImageReader reader = readers.next();
        while (!reader.getClass().getName().startsWith("com.sun.imageio.")) {
            reader = readers.next();
        }
        try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(file))) {
            reader.setInput(in, true, true);
            return reader.read(0);
        } finally {
            reader.dispose();
        }
    }

    /** A photograph of varied content, the same every time: a sky, hills, growth, water, and the grain of a sensor. */
    static Path scene(Path folder, int width, int height, boolean progressive) throws IOException {
        Path file = folder.resolve("scene-" + width + (progressive ? "-progressive" : "") + ".jpg");
        if (Files.exists(file)) {
            return file;
        }
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_3BYTE_BGR);
        byte[] bgr = ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
        int grain = 1;
        for (int y = 0, at = 0; y < height; y++) {
            double down = (double) y / height;
            for (int x = 0; x < width; x++) {
                grain = grain * 1664525 + 1013904223;
                double across = (double) x / width;
                double hill = 0.45 + 0.08 * Math.sin(9 * across) + 0.02 * Math.sin(70 * across);
                double light = down < hill
                        ? 0.9 - 0.5 * down
                        : 0.35 + 0.2 * Math.sin(0.09 * x + 3 * Math.sin(0.05 * y)) * Math.sin(0.11 * y);
                int value = (int) (255 * light) + (grain >>> 28) - 8;
                bgr[at++] = clipped(value + 20);
                bgr[at++] = clipped(value + (int) (20 * across));
                bgr[at++] = clipped(value - (int) (30 * down));
            }
        }
        write(image, file, progressive);
        return file;
    }

    private static byte clipped(int value) {
        return (byte) Math.max(0, Math.min(255, value));
    }

    private static void write(BufferedImage image, Path file, boolean progressive) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ImageWriteParam settings = writer.getDefaultWriteParam();
        settings.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        settings.setCompressionQuality(0.9f);
        settings.setProgressiveMode(progressive ? ImageWriteParam.MODE_DEFAULT : ImageWriteParam.MODE_DISABLED);
        try (FileImageOutputStream out = new FileImageOutputStream(file.toFile())) {
            writer.setOutput(out);
            writer.write(null, new IIOImage(image, List.of(), null), settings);
        } finally {
            writer.dispose();
        }
    }
}
