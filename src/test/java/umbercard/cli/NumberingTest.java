package umbercard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import umbercard.Studies;
import umbercard.color.ValueScale;
import umbercard.store.Preferred;
import umbercard.store.StudyFile;
import umbercard.words.Words;

class NumberingTest {
    @TempDir
    private Path folder;

    private Path file;

    @BeforeEach
    void write() throws IOException {
        file = folder.resolve("hill.json");
        StudyFile.write(Studies.kilnHill(), file);
    }

    @AfterEach
    void numberValuesAsBefore() {
        Preferred.keepValues(ValueScale.MUNSELL);
        Words.useValues(ValueScale.MUNSELL);
    }

    private static double munsell() {
        return Studies.kilnHill().notes().get(0).stick().color().value();
    }

    /** The value of the first strip on the color card. */
    private String onTheCard(Object... wishes) throws IOException {
        Path out = Files.createTempDirectory(folder, "cards");
        Calls.Result result = Calls.run(
                Stream.concat(Stream.of("cards", file, "-o", out, "--faces", "color-notes"), Stream.of(wishes))
                        .toArray());
        assertThat(result.err()).isEmpty();
        Path card = Path.of(result.outLines().get(0));
        Matcher strip = Pattern.compile("value ([^,<]+),").matcher(Files.readString(card));
        assertThat(strip.find()).isTrue();
        return strip.group(1);
    }

    private static String tenths(double number) {
        return String.format(Locale.ROOT, "%.1f", number);
    }

    @Test
    void aCardHasTheNumbersAskedFor() throws IOException {
        assertThat(onTheCard()).isEqualTo(tenths(munsell()));
        assertThat(onTheCard("--values", "0-10")).isEqualTo(tenths(munsell()));
        assertThat(onTheCard("--values", "0-10", "--light-first")).isEqualTo(tenths(10 - munsell()));
        assertThat(onTheCard("--values", "1-10")).isEqualTo(tenths(1 + 0.9 * munsell()));
        assertThat(onTheCard("--values", "1-10", "--light-first")).isEqualTo(tenths(10 - 0.9 * munsell()));
        assertThat(onTheCard("--values", "1-9")).isEqualTo(tenths(1 + 0.8 * munsell()));
        assertThat(onTheCard("--values", "1-9", "--light-first")).isEqualTo(tenths(9 - 0.8 * munsell()));
        assertThat(onTheCard("--values", "names")).matches("Black|Low Dark|Dark");
        assertThat(onTheCard()).as("a wish is for one call").isEqualTo(tenths(munsell()));
    }

    @Test
    void withoutAWishTheNumbersAreThoseChosenOnTheDesk() throws IOException {
        Preferred.keepValues(ValueScale.NINE_TO_ONE);
        assertThat(onTheCard()).isEqualTo(tenths(9 - 0.8 * munsell()));
        assertThat(onTheCard("--values", "0-10")).isEqualTo(tenths(munsell()));
    }

    @ParameterizedTest
    @CsvSource({"0-10", "1-10", "1-9", "names"})
    void neitherTheStudyNorJsonChange(String scale) throws IOException {
        byte[] before = Files.readAllBytes(file);
        String json = Calls.run("readings", file, "--json").out();
        assertThat(Calls.run("readings", file, "--json", "--values", scale).out())
                .isEqualTo(json);
        onTheCard("--values", scale);
        assertThat(Files.readAllBytes(file)).isEqualTo(before);
    }

    /** Ones to nines: black is 1, white 9. */
    @Test
    void aBoxIsToldInTheNumberingToo() throws IOException {
        Path box = Files.writeString(folder.resolve("two.csv"), "name,hex\nSoot,#000000\nChalk,#ffffff\n");
        assertThat(Calls.run("box", box).out()).contains("Values from 0.0 (Soot) to 10.0 (Chalk).");
        assertThat(Calls.run("box", box, "--values", "1-9").out()).contains("Values from 1.0 (Soot) to 9.0 (Chalk).");
        assertThat(Calls.run("box", box, "--values", "1-9", "--json").out()).contains("\"value\" : 10.0");
    }
}
