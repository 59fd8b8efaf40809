package umbercard.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ij.process.ByteProcessor;
import ij.process.FloatProcessor;
import ij.process.FloodFiller;
import ij.process.ImageStatistics;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.statistics.Statistics;
import umbercard.door.Finding;
import umbercard.door.Limits;
import umbercard.door.Plan;
import umbercard.geometry.Point;
import umbercard.model.Mark;
import umbercard.model.Thumbnail;
import umbercard.notan.Fold;
import umbercard.picture.Picture;
import umbercard.readings.placement.Balance;
import umbercard.readings.shapes.BigMasses;
import umbercard.readings.shapes.JoinedMasses;
import umbercard.readings.share.ReferenceAgreement;

/**
 * Random designs painted by the Java platform (java.awt.geom, non-zero, without antialiasing: a pixel is what its center is) and
 * measured by ImageJ's statistics and flood, against what is read of their true curves.
 */
class ReadingsOnPixelsTest {
    private static final int HEIGHT = 600;
    private static final int WIDTH = 800;

    /** The least share that ImageJ counts as large is 2 %; masses within a tenth of it are not counted for sure. */
    private static final double LARGE = 0.02;

    private static BufferedImage painted(Thumbnail thumbnail) {
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D graphics = image.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, WIDTH, HEIGHT);
        for (Mark mark : thumbnail.marks()) {
            Path2D path = new Path2D.Double(Path2D.WIND_NON_ZERO);
            mark.outline().nodes().forEach(node -> to(path, node.at()));
            path.closePath();
            graphics.setColor(mark.kind() == Mark.Kind.LAY ? Color.BLACK : Color.WHITE);
            graphics.fill(path);
        }
        graphics.dispose();
        return image;
    }

    private static void to(Path2D path, Point at) {
        if (path.getCurrentPoint() == null) {
            path.moveTo(at.x() * HEIGHT, at.y() * HEIGHT);
        } else {
            path.lineTo(at.x() * HEIGHT, at.y() * HEIGHT);
        }
    }

    /** Moments of pixels: the center of mass of an image whose pixels weigh x to a power is the next power's mean over this one's. */
    private static double[] acrossAndSpread(ByteProcessor pixels) {
        FloatProcessor even = new FloatProcessor(WIDTH, HEIGHT);
        FloatProcessor byX = new FloatProcessor(WIDTH, HEIGHT);
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                boolean dark = pixels.get(x, y) == 0;
                even.setf(x, y, dark ? 1 : 0);
                byX.setf(x, y, dark ? x + 0.5f : 0);
            }
        }
        ImageStatistics one = ImageStatistics.getStatistics(even, ImageStatistics.CENTER_OF_MASS, null);
        ImageStatistics two = ImageStatistics.getStatistics(byX, ImageStatistics.CENTER_OF_MASS, null);
        double half = WIDTH / 2.0;
        double variance = two.xCenterOfMass * one.xCenterOfMass - one.xCenterOfMass * one.xCenterOfMass;
        return new double[] {
            (one.xCenterOfMass - half) / half,
            (one.yCenterOfMass - HEIGHT / 2.0) / (HEIGHT / 2.0),
            Math.sqrt(Math.max(0, variance)) / half
        };
    }

    /** A border of length l is off by some √l pixels in all; over a dark of a twentieth of the frame that moves its middle by less than this. */
    @Property(tries = 40, seed = "71", shrinking = ShrinkingMode.OFF)
    void theMiddleAndTheSpreadOfTheDarkAreThoseOfItsPixels(@ForAll("designs") Thumbnail thumbnail) {
        ByteProcessor pixels = new ByteProcessor(painted(thumbnail));
        Finding balance = Plans.read(new Balance(), thumbnail);
        boolean measured = Fold.of(thumbnail, Plans.RATIO).darkShare() > 0.1
                && !balance.figures().isEmpty();
        Statistics.label("measured")
                .collect(measured)
                .coverage(all -> all.check(true).percentage(share -> share > 20));
        if (measured) {
            double[] expected = acrossAndSpread(pixels);
            assertThat(Plans.figure(balance, "across")).isEqualTo(expected[0], within(0.003));
            assertThat(Plans.figure(balance, "down")).isEqualTo(expected[1], within(0.003));
            assertThat(Plans.figure(balance, "spread-across")).isEqualTo(expected[2], within(0.003));
        }
    }

    /** Pieces of one value over sides, by ImageJ's flood, in pixels. */
    private static List<Integer> pieces(ByteProcessor original, int value) {
        ByteProcessor pixels = (ByteProcessor) original.duplicate();
        FloodFiller flood = new FloodFiller(pixels);
        pixels.setColor(128);
        List<Integer> sizes = new ArrayList<>();
        int before = count(pixels, 128);
        for (int i = 0; i < WIDTH * HEIGHT; i++) {
            if (pixels.get(i) == value) {
                flood.fill(i % WIDTH, i / WIDTH);
                int after = count(pixels, 128);
                sizes.add(after - before);
                before = after;
            }
        }
        return sizes;
    }

    private static int count(ByteProcessor pixels, int value) {
        return pixels.getHistogram()[value];
    }

    private static List<Long> large(ByteProcessor pixels) {
        return List.of(large(pieces(pixels, 0), 1), large(pieces(pixels, 255), 1));
    }

    private static long large(List<Integer> sizes, double factor) {
        return sizes.stream()
                .filter(size -> size >= factor * LARGE * WIDTH * HEIGHT)
                .count();
    }

    /** Sure where it is the same after the dark swells and after it shrinks by more than the eye makes out, 3 pixels, and no piece is near the limit. */
    private static boolean isSure(ByteProcessor pixels) {
        ByteProcessor swollen = (ByteProcessor) pixels.duplicate();
        ByteProcessor shrunk = (ByteProcessor) pixels.duplicate();
        for (int i = 0; i < 4; i++) {
            swollen.filter(ByteProcessor.MIN);
            shrunk.filter(ByteProcessor.MAX);
        }
        boolean clear = List.of(pieces(pixels, 0), pieces(pixels, 255)).stream()
                .allMatch(sizes -> large(sizes, 0.9) == large(sizes, 1.1));
        return clear && large(pixels).equals(large(swollen)) && large(pixels).equals(large(shrunk));
    }

    @Property(tries = 40, seed = "72", shrinking = ShrinkingMode.OFF)
    void largeMassesAreThePiecesOfThePixelsWhereThatIsSure(@ForAll("designs") Thumbnail thumbnail) {
        ByteProcessor pixels = new ByteProcessor(painted(thumbnail));
        boolean sure = isSure(pixels);
        Statistics.label("sure").collect(sure).coverage(all -> all.check(true).percentage(share -> share > 40));
        if (sure) {
            Finding masses = Plans.read(new BigMasses(), thumbnail);
            assertThat(List.of((long) Plans.figure(masses, "dark"), (long) Plans.figure(masses, "light")))
                    .isEqualTo(large(pixels));
            Finding joined = Plans.read(new JoinedMasses(), thumbnail);
            if (!joined.figures().isEmpty()) {
                int value = Plans.figure(joined, "of-dark") > 0 ? 0 : 255;
                int largest = pieces(pixels, value).stream()
                        .mapToInt(size -> size)
                        .max()
                        .orElse(0);
                assertThat(Plans.figure(joined, "largest"))
                        .isEqualTo((double) largest / (WIDTH * HEIGHT), within(0.01));
            }
        }
    }

    /** A picture of the design itself agrees with it but for pixels whose middle lies on a border. */
    @Property(tries = 40, seed = "73", shrinking = ShrinkingMode.OFF)
    void aPictureOfADesignAgreesWithIt(@ForAll("designs") Thumbnail thumbnail) {
        BufferedImage image = painted(thumbnail);
        Picture picture = new Picture(WIDTH, HEIGHT, image.getRGB(0, 0, WIDTH, HEIGHT, null, 0, WIDTH));
        Plan plan =
                new Plan(Plans.study(), thumbnail, Fold.of(thumbnail, Plans.RATIO), Optional.of(picture), () -> false);
        ReferenceAgreement reading = new ReferenceAgreement();
        Finding finding = reading.read(plan, Limits.of(reading.rule(), Map.of()));
        assertThat(Plans.figure(finding, "agreement")).isGreaterThan(0.995);
    }

    @Provide
    Arbitrary<Thumbnail> designs() {
        return Designs.any();
    }
}
