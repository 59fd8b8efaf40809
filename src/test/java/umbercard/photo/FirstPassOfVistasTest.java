package umbercard.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import umbercard.color.MunsellValue;
import umbercard.geometry.Eye;
import umbercard.geometry.Point;
import umbercard.geometry.Region;
import umbercard.model.Frame;
import umbercard.model.Mark;
import umbercard.model.Squint;
import umbercard.model.Thumbnail;
import umbercard.notan.Design;
import umbercard.notan.Fold;
import umbercard.photo.FirstPass.Traced;
import umbercard.photo.FirstPass.Wish;
import umbercard.picture.Picture;
import umbercard.picture.ValueField;

/** First passes of landscapes that differ as much as photographs do; they are left to be looked at in target/sheets. */
class FirstPassOfVistasTest {
    private static final double RATIO = 4.0 / 3;

    private static Map<String, Picture> vistas = Map.of();
    private static final Map<String, Picture> FRAMED = new HashMap<>();
    private static final ContactSheet SHEET = new ContactSheet(240, false);

    @BeforeAll
    static void paint() {
        vistas = Vistas.all();
    }

    @AfterAll
    static void leaveTheSheet() throws IOException {
        Path folder = Files.createDirectories(Path.of("target", "sheets"));
        ImageIO.write(SHEET.image(), "png", folder.resolve("vistas.png").toFile());
    }

    static Stream<String> names() {
        return Stream.of("snow", "night", "backlit", "fog", "grasses", "water");
    }

    private static Picture vista(String name) {
        return vistas.get(name);
    }

    private static Picture framed(String name) {
        Frame all = Frame.largest(RATIO, RATIO);
        return FRAMED.computeIfAbsent(name, it -> FramedView.of(vista(it), all, RATIO, FirstPass.HEIGHT));
    }

    private static Squint squint(SquintWay way, double sigma) {
        return new Squint(way.key(), sigma);
    }

    private static Design fold(Traced traced) {
        Thumbnail empty = Thumbnail.empty("t1", "traced");
        return Fold.of(empty.withGround(traced.ground()).withMarks(traced.marks()), RATIO);
    }

    /** How many there are by the overlay of the drawn marks. */
    private static int masses(Traced traced) {
        umbercard.geometry.Masses masses =
                umbercard.geometry.Masses.of(fold(traced).dark(), RATIO, new Eye(0, 0.0001));
        return masses.dark().size() + masses.light().size();
    }

    @ParameterizedTest
    @MethodSource("names")
    void drawsAFewMarksOfFewPoints(String name) {
        Traced traced = SHEET.add(name, vista(name), Wish.usual());
        assertThat(traced.masses()).isBetween(2, Wish.MASSES);
        assertThat(masses(traced)).isEqualTo(traced.masses());
        int points = traced.marks().stream()
                .mapToInt(mark -> mark.outline().nodes().size())
                .sum();
        assertThat(points).isLessThan(45 * traced.marks().size());
    }

    @ParameterizedTest
    @MethodSource("names")
    void leavesTheShareThatTheRasterHasWithoutTheDroppedPieces(String name) {
        for (SquintWay way : SquintWay.values()) {
            for (double sigma : new double[] {0.004, 0.015}) {
                Wish wish = new Wish(
                        OptionalDouble.empty(), OptionalDouble.empty(), squint(way, sigma), OptionalInt.empty());
                Traced traced = FirstPass.trace(framed(name), RATIO, wish, () -> false);
                Design design = fold(traced);
                assertThat(design.darkShare()).isCloseTo(traced.darkShare(), within(1e-5));
                assertThat(design.darkShare())
                        .as("%s, sigma %s", way, sigma)
                        .isCloseTo(
                                rasterShare(squinted(framed(name), way, sigma), traced.split(), design), within(0.003));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("names")
    void keptEdgesGiveTheSameMarksEachTime(String name) {
        Wish wish = new Wish(
                OptionalDouble.of(0.5),
                OptionalDouble.empty(),
                squint(SquintWay.KEEPING_EDGES, 0.015),
                OptionalInt.of(5));
        Picture copy = new Picture(
                framed(name).width(),
                framed(name).height(),
                framed(name).pixels().clone());
        Traced traced = FirstPass.trace(framed(name), RATIO, wish, () -> false);
        assertThat(traced.marks()).isNotEmpty();
        assertThat(FirstPass.trace(copy, RATIO, wish, () -> false)).isEqualTo(traced);
    }

    /** A hard disk that a soft squint makes smaller, where the split lies near its dark, keeps its size about. */
    @Test
    void keptEdgesStayAboutWhereTheyAre() {
        double radius = 0.2;
        int[] pixels = new int[800 * 600];
        for (int i = 0; i < pixels.length; i++) {
            double right = (i % 800 + 0.5) / 600 - RATIO / 2;
            double down = (i / 800 + 0.5) / 600 - 0.5;
            pixels[i] = Math.hypot(right, down) < radius ? 0x303030 : 0xf0f0f0;
        }
        Picture disk = new Picture(800, 600, pixels);
        double share = Math.PI * radius * radius / RATIO;
        Wish soft = new Wish(
                OptionalDouble.empty(), OptionalDouble.of(3.2), squint(SquintWay.GAUSSIAN, 0.03), OptionalInt.empty());
        Wish kept =
                new Wish(soft.darkShare(), soft.split(), squint(SquintWay.KEEPING_EDGES, 0.03), OptionalInt.empty());
        double keptOff =
                Math.abs(FirstPass.trace(disk, RATIO, kept, () -> false).darkShare() - share);
        double softOff =
                Math.abs(FirstPass.trace(disk, RATIO, soft, () -> false).darkShare() - share);
        assertThat(softOff).isGreaterThan(0.02);
        assertThat(keptOff).isLessThan(softOff / 3);
    }

    @ParameterizedTest
    @MethodSource("names")
    void comesToAWishedShareWhateverTheMasses(String name) {
        for (double share : new double[] {0.25, 2.0 / 3}) {
            Traced traced = FirstPass.trace(
                    framed(name),
                    RATIO,
                    new Wish(
                            OptionalDouble.of(share),
                            OptionalDouble.empty(),
                            Squint.gaussian(0.015),
                            OptionalInt.of(3)),
                    () -> false);
            assertThat(fold(traced).darkShare()).isCloseTo(share, within(0.003));
            assertThat(masses(traced)).isEqualTo(traced.masses());
        }
    }

    @ParameterizedTest
    @MethodSource("names")
    void nestsMarksWithoutACrossing(String name) {
        Traced traced = FirstPass.trace(
                framed(name),
                RATIO,
                new Wish(OptionalDouble.empty(), OptionalDouble.empty(), Squint.gaussian(0.006), OptionalInt.of(40)),
                () -> false);
        List<Region> regions =
                traced.marks().stream().map(Mark::outline).map(Region::of).toList();
        for (int i = 0; i < regions.size(); i++) {
            for (int k = i + 1; k < regions.size(); k++) {
                double common = regions.get(i).intersect(regions.get(k)).area();
                double smaller = Math.min(regions.get(i).area(), regions.get(k).area());
                assertThat(Math.min(common, Math.abs(smaller - common)))
                        .as("marks %d and %d are apart or one lies in the other", i, k)
                        .isLessThan(1e-7);
            }
        }
    }

    @Test
    void comesToANumberOfMassesWhereTheSplitIsFree() {
        for (int masses : new int[] {3, 5}) {
            Traced traced = FirstPass.trace(
                    framed("backlit"),
                    RATIO,
                    new Wish(
                            OptionalDouble.empty(),
                            OptionalDouble.empty(),
                            Squint.gaussian(0.01),
                            OptionalInt.of(masses)),
                    () -> false);
            assertThat(traced.masses()).isEqualTo(masses);
        }
    }

    /** What is split into pixels: soft, by boxes at full size, which share nothing with what is traced. */
    private static ValueField squinted(Picture framed, SquintWay way, double sigma) {
        double pixels = sigma * Math.hypot(RATIO, 1) * framed.height();
        return switch (way) {
            case GAUSSIAN -> Squinter.squint(Values.of(framed), pixels);
            case KEEPING_EDGES -> new SquintPyramid(framed).values(way, pixels);
        };
    }

    /** The share of dark pixels once each connected piece of the split that the design shows otherwise is turned over. */
    private static double rasterShare(ValueField squinted, double split, Design design) {
        boolean[] dark = new boolean[squinted.luminance().length];
        double border = MunsellValue.luminance(split);
        for (int i = 0; i < dark.length; i++) {
            dark[i] = squinted.luminance()[i] < border;
        }
        boolean[] seen = new boolean[dark.length];
        int count = 0;
        for (int i = 0; i < dark.length; i++) {
            if (!seen[i]) {
                List<Integer> piece = piece(dark, seen, i, squinted.width());
                count += isShownDark(piece, squinted, design) ? piece.size() : 0;
            }
        }
        return (double) count / dark.length;
    }

    private static boolean isShownDark(List<Integer> piece, ValueField squinted, Design design) {
        int dark = 0;
        int all = 0;
        for (int i = 0; i < piece.size(); i += Math.max(1, piece.size() / 400)) {
            double x = (piece.get(i) % squinted.width() + 0.5) / squinted.height();
            double y = ((double) (piece.get(i) / squinted.width()) + 0.5) / squinted.height();
            dark += design.dark().contains(new Point(x, y)) ? 1 : 0;
            all++;
        }
        return 2 * dark > all;
    }

    private static List<Integer> piece(boolean[] dark, boolean[] seen, int first, int width) {
        List<Integer> piece = new ArrayList<>();
        piece.add(first);
        seen[first] = true;
        for (int i = 0; i < piece.size(); i++) {
            int at = piece.get(i);
            int x = at % width;
            int[] beside = {x > 0 ? at - 1 : at, x + 1 < width ? at + 1 : at, at - width, at + width};
            for (int next : beside) {
                if (next >= 0 && next < dark.length && !seen[next] && dark[next] == dark[at]) {
                    seen[next] = true;
                    piece.add(next);
                }
            }
        }
        return piece;
    }
}
