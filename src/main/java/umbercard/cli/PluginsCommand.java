package umbercard.cli;

import java.io.PrintWriter;
import java.util.List;
import picocli.CommandLine.Command;
import umbercard.door.BoxReader;
import umbercard.door.Face;
import umbercard.door.Instrument;
import umbercard.door.Ranked;
import umbercard.door.Reading;
import umbercard.door.Remedy;
import umbercard.door.Writer;
import umbercard.kernel.Plugins;
import umbercard.words.Words;

/** Lists what was found behind each door, and what was switched off. */
@Command(name = "plugins")
final class PluginsCommand implements Runnable {
    private static final List<Class<? extends Ranked>> DOORS =
            List.of(Instrument.class, Reading.class, Remedy.class, Face.class, Writer.class, BoxReader.class);

    private final PrintWriter out;

    PluginsCommand(PrintWriter out) {
        this.out = out;
    }

    @Override
    public void run() {
        DOORS.forEach(door -> list(door.getSimpleName(), Plugins.find(door, Ranked.ORDER)));
    }

    void list(String door, Plugins<? extends Ranked> plugins) {
        out.println(Words.say("cli.plugins." + door));
        for (Ranked plugin : plugins.on()) {
            out.println(Words.say(
                    "cli.plugins.found", plugin.id(), plugin.getClass().getName()));
        }
        plugins.switchedOff()
                .forEach(off ->
                        out.println(Words.say("cli.plugins.switched-off", off.name(), SwitchedOffWords.cause(off))));
        if (plugins.on().isEmpty() && plugins.switchedOff().isEmpty()) {
            out.println(Words.say("cli.plugins.none"));
        }
    }
}
