package umbercard.readings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import umbercard.door.Figure;
import umbercard.door.Finding;
import umbercard.door.Finding.Verdict;
import umbercard.words.Message;
import umbercard.words.Words;

class DifferenceTest {
    private static Finding finding(Verdict verdict, Figure... figures) {
        return new Finding(verdict, List.of(figures), Message.of("readings.nothing-laid"), List.of());
    }

    private static String said(String reading, Finding here, Finding there) {
        return Words.say(Difference.between(reading, here, there).said());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    dark-share       | share           |  .52 |  .40 | more dark by 12 points
                    dark-share       | share           |  .40 |  .52 | less dark by 12 points
                    dark-share       | share           | .401 | .409 | less dark by 1 point
                    dark-share       | share           |  .40 | .406 | less dark by 1 point
                    dark-share       | share           |  .40 | .404 | alike
                    horizon-height   | share           |  .30 |  .60 | lower by 30 points
                    balance          | half widths     |  -.2 |   .2 | further left by 40 % of the half width
                    focus-place      | of the diagonal |  .30 |  .10 | farther from the center by 20 % of the diagonal
                    focus-contrast   | times           |  2.1 | 1.72 | more edge at the focus by 0.4 times
                    focus-contrast   | times           |  2.1 | 2.06 | alike
                    tangents         | count           |    3 |    1 | 2 more
                    tangents         | count           |    0 |    1 | 1 fewer
                    somebody-elses   | share           |  .10 |  .30 | less by 20 points
                    somebody-elses   | ells            |  1.5 |  .25 | more by 1.25 ells
                    """)
    void theTellingFigureIsSaidWhereItDiffersByMoreThanAHair(
            String reading, String unit, double here, double there, String words) {
        Finding one = finding(Verdict.HOLDS, new Figure("f", here, unit), new Figure("g", 7, "count"));
        Finding other = finding(Verdict.HOLDS, new Figure("f", there, unit), new Figure("g", 1, "count"));
        assertThat(said(reading, one, other)).isEqualTo(words);
        assertThat(Difference.between(reading, one, other).isAny()).isEqualTo(!words.equals("alike"));
    }

    @Test
    void verdictsAreSaidFirst() {
        Finding here = finding(Verdict.HOLDS, new Figure("dark", .35, "share"));
        Finding there = finding(Verdict.LOOK_AGAIN, new Figure("dark", .5, "share"));
        assertThat(said("dark-share", here, there)).isEqualTo("holds here, look again there; less dark by 15 points");
        assertThat(said("dark-share", there, here)).isEqualTo("look again here, holds there; more dark by 15 points");
    }

    @Test
    void figuresThatAreNotTheSameAreNotCompared() {
        Finding none = finding(Verdict.NOT_SET);
        Finding some = finding(Verdict.HOLDS, new Figure("height", .3, "share"));
        assertThat(said("horizon-height", none, some)).isEqualTo("not set here, holds there");
        Finding other = finding(Verdict.HOLDS, new Figure("tilt", 3, "degrees"));
        assertThat(said("horizon-height", some, other)).isEqualTo("alike");
    }

    @ParameterizedTest
    @CsvSource({
        "share, .524, 52 %",
        "of the diagonal, .126, 13 %",
        "half widths, -.12, −12 %",
        "half widths, .12, +12 %",
        "times, 1.44, 1.4 ×",
        "degrees, 2, 2.0°",
        "count, 3, 3",
        "ells, .25, 0.25 ells"
    })
    void aFigureIsSaidWithItsUnit(String unit, double value, String words) {
        assertThat(Words.say(Telling.said(new Figure("f", value, unit)))).isEqualTo(words);
    }
}
