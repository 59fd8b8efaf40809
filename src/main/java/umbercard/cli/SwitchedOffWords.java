package umbercard.cli;

import java.io.PrintWriter;
import java.util.List;
import umbercard.words.Words;

/** Tells that plug-ins failed; the call goes on without them. */
final class SwitchedOffWords {
    private SwitchedOffWords() {}

    static void tell(List<String> names, PrintWriter err) {
        if (!names.isEmpty()) {
            err.println(Words.say("cli.plugins.failed", String.join(", ", names)));
        }
    }
}
