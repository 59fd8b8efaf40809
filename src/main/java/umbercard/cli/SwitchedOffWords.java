package umbercard.cli;

import java.io.PrintWriter;
import java.util.List;
import umbercard.kernel.Plugins.SwitchedOff;
import umbercard.words.Words;

/** Tells that plug-ins failed; the call goes on without them. */
final class SwitchedOffWords {
    private SwitchedOffWords() {}

    static void tell(List<SwitchedOff> failed, PrintWriter err) {
        failed.forEach(off -> err.println(Words.say("cli.plugins.failed", off.name(), cause(off))));
    }

    /** What the failure says of itself; its kind, if it says nothing. */
    static String cause(SwitchedOff off) {
        String message = off.cause().getMessage();
        return message == null || message.isBlank() ? off.cause().getClass().getSimpleName() : message;
    }
}
