package umbercard.readings.shapes;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import umbercard.readings.Drawn;

class TangentsTest {
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "tangents.csv", numLinesToSkip = 1, delimiter = '|')
    void readsWhatIsDrawn(
            String name,
            String drawing,
            String limits,
            String verdict,
            String figures,
            String sentence,
            String places) {
        Drawn.check(new Tangents(), drawing == null ? "" : drawing, limits, verdict, figures, sentence, places);
    }
}
