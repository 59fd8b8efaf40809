package umbercard.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.Arguments;
import umbercard.picture.ValueField;

/** Fields whose pieces of dark and of light are counted here and by others. */
final class Pieces {
    private static final int DARK = 0;
    private static final int LIGHT = 1;

    private Pieces() {}

    /** How another counts: the pieces of the pixels that are set, which hang together over four sides, or over corners too. */
    @FunctionalInterface
    interface Count {
        int of(boolean[] set, int width, boolean overCorners);
    }

    /** A field and a split, after a name. */
    static Stream<Arguments> fields() throws IOException {
        ValueField kilnHill = Values.of(PhotoReader.read(Path.of("samples", "kiln-hill.jpg"), Progress.NONE));
        Stream<Arguments> squints = Stream.of(0.001, 0.004, 0.015).flatMap(part -> {
            ValueField squinted = Squinter.squint(kilnHill, part * Math.hypot(kilnHill.width(), kilnHill.height()));
            return Stream.of(Values.otsu(squinted), 4.0, 7.5)
                    .map(split -> Arguments.of("Kiln Hill squinted by " + part, squinted, split));
        });
        Stream<Arguments> made = Stream.of(3.0, 5.0, 6.5, 8.0)
                .flatMap(split -> Stream.of(
                        Arguments.of("noise", Fields.noise(61, 47, 3), split),
                        Arguments.of("noise in rows", Fields.noise(200, 3, 4), split),
                        Arguments.of("waves", Fields.smooth(90, 70, 5), split),
                        Arguments.of("checks", Fields.of(40, 30, (x, y) -> Math.floor(20 * x + 13 * y) % 2), split)));
        return Stream.concat(squints, made);
    }

    /**
     * That others count as many pieces. In fields of two luminances the middle of four pixels that meet crosswise is dark
     * wherever the two lie low, light wherever they lie high: so dark hangs together over corners and light does not, or the
     * other way round. In the field itself either may do so anywhere, and the count lies between.
     */
    static void assertAgree(ValueField field, double split, Count theirs) {
        double border = umbercard.color.MunsellValue.luminance(split);
        int size = field.luminance().length;
        boolean[] dark = new boolean[size];
        boolean[] light = new boolean[size];
        for (int i = 0; i < size; i++) {
            dark[i] = field.luminance()[i] < border;
            light[i] = !dark[i];
        }
        int width = field.width();
        int[] wide = {theirs.of(dark, width, true), theirs.of(light, width, true)};
        int[] narrow = {theirs.of(dark, width, false), theirs.of(light, width, false)};
        assertThat(ours(twoValued(field, dark, 0, 0.6f), 0.5))
                .as("dark over corners")
                .containsExactly(wide[DARK], narrow[LIGHT]);
        assertThat(ours(twoValued(field, dark, 0.4f, 1), 0.5))
                .as("light over corners")
                .containsExactly(narrow[DARK], wide[LIGHT]);
        int[] between = ours(field, border);
        for (int value = DARK; value <= LIGHT; value++) {
            assertThat(between[value]).as(value == DARK ? "dark" : "light").isBetween(wide[value], narrow[value]);
        }
    }

    private static ValueField twoValued(ValueField field, boolean[] dark, float low, float high) {
        float[] samples = new float[dark.length];
        for (int i = 0; i < samples.length; i++) {
            samples[i] = dark[i] ? low : high;
        }
        return new ValueField(field.width(), field.height(), samples);
    }

    /** The pieces of dark and of light; the masses are as many where none gives in. */
    private static int[] ours(ValueField field, double luminance) {
        Lattice lattice = new Lattice(field, (double) field.width() / field.height());
        Runs runs = new Runs(lattice, luminance);
        int[] pieces = new int[2];
        for (int run = 0; run < runs.count(); run++) {
            pieces[runs.isDark(run) ? DARK : LIGHT] += runs.root(run) == run ? 1 : 0;
        }
        assertThat(Masses.of(lattice, luminance, new Masses.Limits(Integer.MAX_VALUE, 0))
                        .count())
                .isEqualTo(pieces[DARK] + pieces[LIGHT]);
        return pieces;
    }
}
