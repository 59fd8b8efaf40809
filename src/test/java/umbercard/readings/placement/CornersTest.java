package umbercard.readings.placement;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import umbercard.readings.Drawn;

class CornersTest {
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "corners.csv", numLinesToSkip = 1, delimiter = '|')
    void readsWhatIsDrawn(
            String name,
            String drawing,
            String limits,
            String verdict,
            String figures,
            String sentence,
            String places) {
        Drawn.check(new Corners(), drawing == null ? "" : drawing, limits, verdict, figures, sentence, places);
    }
}
