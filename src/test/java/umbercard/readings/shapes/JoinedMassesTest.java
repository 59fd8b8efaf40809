package umbercard.readings.shapes;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import umbercard.readings.Drawn;

class JoinedMassesTest {
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "joined_masses.csv", numLinesToSkip = 1, delimiter = '|')
    void readsWhatIsDrawn(
            String name,
            String drawing,
            String limits,
            String verdict,
            String figures,
            String sentence,
            String places) {
        Drawn.check(new JoinedMasses(), drawing == null ? "" : drawing, limits, verdict, figures, sentence, places);
    }
}
