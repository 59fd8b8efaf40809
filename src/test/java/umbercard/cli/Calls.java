package umbercard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Calls the command line in this process, with its streams captured and a desk that only remembers what it was asked. */
final class Calls implements DeskOpener {
    private final List<Optional<Path>> opened = new ArrayList<>();
    private final boolean screen;

    private Calls(boolean screen) {
        this.screen = screen;
    }

    /** What came of a call. */
    record Result(int code, String out, String err, List<Optional<Path>> opened) {
        List<String> outLines() {
            return out.lines().toList();
        }

        /** The object printed by a call that went well and said nothing else. */
        JsonNode json() throws IOException {
            assertThat(err).isEmpty();
            assertThat(code).isZero();
            return new ObjectMapper().readTree(out);
        }

        List<String> errLines() {
            return err.lines().toList();
        }
    }

    /** The names of an object's fields, in their order. */
    static List<String> keys(JsonNode object) {
        List<String> keys = new ArrayList<>();
        object.fieldNames().forEachRemaining(keys::add);
        return keys;
    }

    /** A call where there is no display. */
    static Result run(Object... arguments) {
        return new Calls(false).call(arguments);
    }

    static Result runWithScreen(Object... arguments) {
        return new Calls(true).call(arguments);
    }

    private Result call(Object... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        List<String> words = List.of(arguments).stream().map(Object::toString).toList();
        int code = Cli.run(words, this, new PrintWriter(out), new PrintWriter(err));
        return new Result(code, out.toString(), err.toString(), opened);
    }

    @Override
    public boolean canOpen() {
        return screen;
    }

    @Override
    public void open(Optional<Path> study) {
        opened.add(study);
    }
}
