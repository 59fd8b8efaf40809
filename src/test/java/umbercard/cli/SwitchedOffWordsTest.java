package umbercard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;
import umbercard.kernel.Plugins.SwitchedOff;

class SwitchedOffWordsTest {
    @Test
    void saysOfEachPluginWhyItIsOff() {
        StringWriter err = new StringWriter();
        SwitchedOffWords.tell(
                List.of(
                        new SwitchedOff("a.Reading", new IllegalStateException("no ink")),
                        new SwitchedOff("a.Face", new StackOverflowError())),
                new PrintWriter(err));
        assertThat(err.toString().lines())
                .containsExactly(
                        "Switched off, because it failed: a.Reading (no ink).",
                        "Switched off, because it failed: a.Face (StackOverflowError).");
    }
}
