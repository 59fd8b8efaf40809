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
import umbercard.model.Mark;
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
    private static final Map<String, ValueField> FIELDS = new HashMap<>();
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

    private static ValueField field(String name) {
        return FIELDS.computeIfAbsent(name, it -> CoarseSquint.averaged(Values.of(vista(it)), 640, 480));
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
        for (double sigma : new double[] {0.004, 0.015}) {
            Traced traced = FirstPass.trace(
                    field(name),
                    RATIO,
                    new Wish(OptionalDouble.empty(), OptionalDouble.empty(), sigma, OptionalInt.empty()),
                    () -> false);
            Design design = fold(traced);
            assertThat(design.darkShare()).isCloseTo(traced.darkShare(), within(1e-5));
            assertThat(design.darkShare())
                    .as("sigma %s", sigma)
                    .isCloseTo(rasterShare(field(name), sigma, traced.split(), design), within(0.003));
        }
    }

    @ParameterizedTest
    @MethodSource("names")
    void comesToAWishedShareWhateverTheMasses(String name) {
        for (double share : new double[] {0.25, 2.0 / 3}) {
            Traced traced = FirstPass.trace(
                    field(name),
                    RATIO,
                    new Wish(OptionalDouble.of(share), OptionalDouble.empty(), 0.015, OptionalInt.of(3)),
                    () -> false);
            assertThat(fold(traced).darkShare()).isCloseTo(share, within(0.003));
            assertThat(masses(traced)).isEqualTo(traced.masses());
        }
    }

    @ParameterizedTest
    @MethodSource("names")
    void nestsMarksWithoutACrossing(String name) {
        Traced traced = FirstPass.trace(
                field(name),
                RATIO,
                new Wish(OptionalDouble.empty(), OptionalDouble.empty(), 0.006, OptionalInt.of(40)),
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
                    field("backlit"),
                    RATIO,
                    new Wish(OptionalDouble.empty(), OptionalDouble.empty(), 0.01, OptionalInt.of(masses)),
                    () -> false);
            assertThat(traced.masses()).isEqualTo(masses);
        }
    }

    /** The share of dark pixels once each connected piece of the split that the design shows otherwise is turned over. */
    private static double rasterShare(ValueField field, double sigma, double split, Design design) {
        double pixels = sigma * Math.hypot(RATIO, 1) * field.height();
        ValueField blurred = Squinter.squint(field, pixels);
        boolean[] dark = new boolean[blurred.luminance().length];
        double border = MunsellValue.luminance(split);
        for (int i = 0; i < dark.length; i++) {
            dark[i] = blurred.luminance()[i] < border;
        }
        boolean[] seen = new boolean[dark.length];
        int count = 0;
        for (int i = 0; i < dark.length; i++) {
            if (!seen[i]) {
                List<Integer> piece = piece(dark, seen, i, field.width());
                count += isShownDark(piece, field, design) ? piece.size() : 0;
            }
        }
        return (double) count / dark.length;
    }

    private static boolean isShownDark(List<Integer> piece, ValueField field, Design design) {
        int dark = 0;
        int all = 0;
        for (int i = 0; i < piece.size(); i += Math.max(1, piece.size() / 400)) {
            double x = (piece.get(i) % field.width() + 0.5) / field.height();
            double y = ((double) (piece.get(i) / field.width()) + 0.5) / field.height();
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
