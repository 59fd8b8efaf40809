package umbercard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;
import umbercard.door.Finding;
import umbercard.door.Limits;
import umbercard.door.Plan;
import umbercard.door.Reading;
import umbercard.door.Rule;
import umbercard.kernel.Plugins;

class PluginsCommandTest {
    /** One that cannot even say its name. */
    private static final class Broken implements Reading {
        @Override
        public Rule rule() {
            throw new IllegalStateException("on purpose");
        }

        @Override
        public Finding read(Plan plan, Limits limits) {
            throw new IllegalStateException("on purpose");
        }
    }

    @Test
    void listsWhatWasFoundDoorByDoor() {
        Calls.Result result = Calls.run("plugins");
        assertThat(result.code()).isZero();
        assertThat(result.err()).isEmpty();
        assertThat(result.outLines())
                .containsSubsequence(
                        "Instruments",
                        "Readings",
                        "  dark-share  (umbercard.readings.share.DarkShare)",
                        "  horizon-height  (umbercard.readings.placement.HorizonHeight)",
                        "Faces",
                        "  notan  (umbercard.cards.faces.NotanFace)",
                        "Writers",
                        "Box readers")
                .noneMatch(line -> line.contains("switched off"));
    }

    @Test
    void namesTheOnesSwitchedOffAndWhy() {
        Broken broken = new Broken();
        Plugins<Reading> readings = Plugins.of(List.of(broken));
        readings.ask(broken, Reading::id);
        StringWriter out = new StringWriter();
        new PluginsCommand(new PrintWriter(out)).list("Reading", readings);
        assertThat(out.toString().lines())
                .containsExactly("Readings", "  switched off: " + Broken.class.getName() + " (on purpose)");
    }
}
