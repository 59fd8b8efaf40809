package umbercard.readings.focus;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import umbercard.readings.Drawn;

class EyePathTest {
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "eye_path.csv", numLinesToSkip = 1, delimiter = '|')
    void readsWhatIsDrawn(
            String name,
            String drawing,
            String limits,
            String verdict,
            String figures,
            String sentence,
            String places) {
        Drawn.check(new EyePath(), drawing == null ? "" : drawing, limits, verdict, figures, sentence, places);
    }
}
