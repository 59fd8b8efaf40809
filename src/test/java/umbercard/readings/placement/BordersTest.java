package umbercard.readings.placement;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import umbercard.readings.Drawn;

class BordersTest {
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "borders.csv", numLinesToSkip = 1, delimiter = '|')
    void readsWhatIsDrawn(
            String name,
            String drawing,
            String limits,
            String verdict,
            String figures,
            String sentence,
            String places) {
        Drawn.check(new Borders(), drawing == null ? "" : drawing, limits, verdict, figures, sentence, places);
    }
}
