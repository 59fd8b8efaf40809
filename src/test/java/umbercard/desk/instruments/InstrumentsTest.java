package umbercard.desk.instruments;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import umbercard.door.Instrument;
import umbercard.door.Ranked;
import umbercard.kernel.Plugins;
import umbercard.words.Words;

class InstrumentsTest {
    private final List<Instrument> found =
            Plugins.find(Instrument.class, Ranked.ORDER).on();

    @Test
    void instrumentsStandInTheOrderOfTheJob() {
        assertThat(found)
                .extracting(Instrument::id)
                .containsSubsequence("lay-dark", "lift-light", "horizon", "land-edge");
    }

    @Test
    void eachHasAKeyOfItsOwn() {
        assertThat(found).extracting(Instrument::key).doesNotHaveDuplicates().allMatch(key -> key.matches("[a-z]"));
    }

    @Test
    void eachHasItsWords() {
        assertThat(found).allSatisfy(instrument -> {
            String words = "instrument." + instrument.id();
            assertThat(Words.say(words + ".name")).matches("[A-Z][a-z ]+");
            assertThat(Words.say(words + ".tip")).matches("[A-Z].{20,140}\\.");
            assertThat(Words.say(words + ".done")).matches("[a-z ]+");
        });
    }
}
