package umbercard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.FieldSource;

class CliTest {
    private static final List<String> COMMANDS = List.of(
            "desk",
            "start",
            "first-pass",
            "readings",
            "raise",
            "zones",
            "match",
            "arrange",
            "turn-sky",
            "cards",
            "box",
            "plugins");

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "wrong_calls.csv", numLinesToSkip = 1)
    void aWrongCallIsSaidInASentenceWithAHint(String call, String sentence) {
        Calls.Result result = Calls.run((Object[]) call.split(" "));
        assertThat(result.errLines()).containsExactly(sentence);
        assertThat(result.code()).isEqualTo(2);
        assertThat(result.out()).isEmpty();
    }

    @Test
    void helpListsTheCommandsThatThereAre() {
        Calls.Result result = Calls.run("--help");
        assertThat(result.code()).isZero();
        assertThat(result.err()).isEmpty();
        Stream<String> commands = result.outLines().stream()
                .filter(line -> line.matches("  [a-z-]+ {2,}\\S.*"))
                .map(line -> line.strip().split(" ")[0])
                .filter(word -> !word.startsWith("-"));
        assertThat(commands).containsExactlyElementsOf(COMMANDS);
    }

    @ParameterizedTest
    @FieldSource("COMMANDS")
    void everyCommandHasHelpWithWordsForAllItTakes(String command) {
        Calls.Result result = Calls.run(command, "--help");
        assertThat(result.code()).isZero();
        assertThat(result.out()).startsWith("Usage: umbercard " + command).doesNotContain("cli.help", "null", "%%");
        String explained = result.out().substring(result.out().indexOf("\n\n"));
        ResourceBundle words = ResourceBundle.getBundle("umbercard.words.cli");
        assertThat(words.keySet().stream()
                        .filter(key -> key.startsWith("cli.help." + command + "."))
                        .map(words::getString)
                        .map(text -> text.split(" ")[0] + " " + text.split(" ")[1]))
                .allSatisfy(beginning -> assertThat(explained).contains(beginning));
    }

    @Test
    void versionIsThatOfTheBuild() {
        Calls.Result result = Calls.run("--version");
        assertThat(result.code()).isZero();
        assertThat(result.outLines()).singleElement().asString().matches("umbercard \\d+\\.\\d+\\.\\d+\\S*");
    }

    @Test
    void aDefectIsSaidInASentenceWithoutATrace() {
        assertFailsQuietly(
                () -> {
                    throw new IllegalStateException("on purpose");
                },
                "Something in the program itself went wrong");
    }

    @Test
    void exhaustedMemoryIsSaidInASentence() {
        assertFailsQuietly(
                () -> {
                    throw new StackOverflowError("on purpose");
                },
                "There was not enough memory");
    }

    private static void assertFailsQuietly(Supplier<Boolean> canOpen, String beginning) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        DeskOpener broken = new DeskOpener() {
            @Override
            public boolean canOpen() {
                return canOpen.get();
            }

            @Override
            public void open(Optional<Path> study) {
                throw new AssertionError("not reached");
            }
        };
        int code = Cli.run(List.of(), broken, new PrintWriter(out), new PrintWriter(err));
        assertThat(code).isEqualTo(1);
        assertThat(err.toString().lines()).singleElement().asString().startsWith(beginning);
        assertThat(err.toString()).doesNotContain("\tat ");
    }
}
