package umbercard.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import umbercard.store.Boxes;
import umbercard.store.StudyFile;

/** Runs the packed program as a painter's shell does, in a process of its own. */
class CommandLineIT {
    private static final String HEADLESS = "-Djava.awt.headless=true";

    @TempDir
    private Path folder;

    /** What came of a run. */
    private record Run(int code, String out, String err) {}

    private Run run(String... arguments) throws IOException, InterruptedException {
        return run(List.of(HEADLESS), arguments);
    }

    private Run run(List<String> options, String... arguments) throws IOException, InterruptedException {
        List<String> call = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()));
        call.addAll(options);
        call.add("-Djava.util.prefs.userRoot=" + folder);
        call.addAll(List.of("-jar", System.getProperty("umbercard.jar")));
        call.addAll(List.of(arguments));
        Path out = Files.createTempFile(folder, "out", ".txt");
        Path err = Files.createTempFile(folder, "err", ".txt");
        ProcessBuilder builder = new ProcessBuilder(call)
                .directory(folder.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile());
        if (!options.contains(HEADLESS)) {
            builder.environment().put("DISPLAY", ":7777");
        }
        Process process = builder.start();
        boolean ended = process.waitFor(60, TimeUnit.SECONDS);
        if (!ended) {
            process.destroyForcibly();
        }
        assertThat(ended).as("%s ends", call).isTrue();
        return new Run(process.exitValue(), Files.readString(out), Files.readString(err));
    }

    private Run done(String... arguments) throws IOException, InterruptedException {
        Run run = run(arguments);
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        return run;
    }

    @ParameterizedTest(name = "{0}, {1}, {2}, first pass {3}")
    @CsvSource({
        "12x9in, 4x6in, --landscape, --dark-share 0.6, 152.4, 101.6",
        "9x12in, a6, --portrait, --split 5, 105, 148",
        "30x20cm, 5x8in, --landscape, --squint 1%, 203.2, 127"
    })
    void fromAPhotographToACardWhoseDarkIsTheReading(
            String surface, String card, String way, String firstPass, double width, double height) throws Exception {
        Scenes.jpeg(folder.resolve("hill.jpg"));
        done("start", "hill.jpg", "-o", "hill.json", "--surface", surface, "--tape", "0.25in", "--light", "snow");
        done(Stream.concat(Stream.of("first-pass", "hill.json"), Stream.of(firstPass.split(" ")))
                .toArray(String[]::new));
        JsonNode readings = new ObjectMapper()
                .readTree(done("readings", "hill.json", "--json").out());
        Run cards = done("cards", "hill.json", "-o", "out", "--card", card, way, "--faces", "notan");

        Rasterised notan = Rasterised.of(folder.resolve(cards.out().strip()));
        assertThat(notan.width()).isCloseTo((int) Math.round(8 * width), within(1));
        assertThat(notan.height()).isCloseTo((int) Math.round(8 * height), within(1));
        JsonNode dark = readings.at("/readings/0");
        assertThat(dark.get("id").asText()).isEqualTo("dark-share");
        assertThat(dark.at("/figures/0/value").asDouble()).isBetween(0.1, 0.9);
        assertThat(notan.darkShare()).isEqualTo(dark.at("/figures/0/value").asDouble(), within(0.003));
    }

    @Test
    void aTableOfSticksBecomesABoxAndTheBoxOfAStudy() throws Exception {
        Files.writeString(folder.resolve("shed.csv"), "name;L;a;b\nPeat;31,5;7;17\nMoss;47;-14;x\nChalk;97;0;1\n");
        Run box = run("box", "shed.csv", "-o", "shed.json");
        assertThat(box.code()).isZero();
        assertThat(box.out()).startsWith("shed: 2 sticks;").contains("decimal commas", "Written to shed.json.");
        assertThat(box.err().lines()).singleElement().asString().startsWith("shed.csv, line 3: b is \"x\"");
        assertThat(done("box", "shed.json").out()).startsWith("shed: 2 sticks;");
        Scenes.jpeg(folder.resolve("hill.jpg"));
        Run start = run("start", "hill.jpg", "-o", "hill.json", "--surface", "12x9in", "--box", "shed.csv");
        assertThat(start.code()).isZero();
        assertThat(start.err()).contains("shed.csv, line 3", "decimal commas");
        assertThat(StudyFile.read(folder.resolve("hill.json")).box())
                .contains(new Boxes().read(folder.resolve("shed.json")).box());
    }

    @Test
    void aWrongCallEndsWithTwo() throws Exception {
        Run run = run("start", "hill.jpg");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err().lines()).singleElement().asString().contains("--surface", "--help");
    }

    @Test
    void aBadFileEndsWithOneAndASentence() throws Exception {
        Files.writeString(folder.resolve("letter.jpg"), "Dear painter, this is a letter.");
        Run run = run("start", "letter.jpg", "-o", "hill.json", "--surface", "12x9in");
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out()).isEmpty();
        assertThat(run.err().lines()).singleElement().asString().contains("letter.jpg is not a photograph");
        assertThat(folder.resolve("hill.json")).doesNotExist();
    }

    @Test
    void withoutADisplayKilnHillsCardsAreWritten() throws Exception {
        assertKilnHillWritten(run(List.of(HEADLESS)));
    }

    /** A display that is named but not there says so only when it is used. */
    @Test
    @EnabledOnOs(OS.LINUX)
    void withADisplayThatIsDeadKilnHillsCardsAreWritten() throws Exception {
        assertKilnHillWritten(run(List.of()));
        assertThat(run(List.of(), "desk", "missing.json").code()).isEqualTo(1);
    }

    private void assertKilnHillWritten(Run run) {
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        assertThat(run.out().lines().findFirst().orElse(""))
                .startsWith("There is no display to open the desk on")
                .endsWith("cards.");
        assertThat(run.out().lines().skip(1))
                .hasSizeGreaterThanOrEqualTo(2)
                .allSatisfy(file -> assertThat(folder.resolve(file)).isNotEmptyFile());
    }
}
