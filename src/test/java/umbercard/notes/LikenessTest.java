package umbercard.notes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import umbercard.color.Ciede2000;
import umbercard.color.Lab;
import umbercard.color.Lch;
import umbercard.words.Words;

/** A stick against the gray of value 5, or against a color by value, chroma and hue. That orange is warm is Munsell's 5YR, as in Warmth. */
class LikenessTest {
    private static Lab color(double value, double chroma, double hue) {
        Lab round = new Lch(50, chroma, hue).lab();
        return Sticks.color(value, round.a(), round.b());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        5   | 30 | 64  | 5.2 | 30 | 64  | much the same
        5   | 30 | 64  | 5.3 | 30 | 64  | a little lighter
        5   | 30 | 64  | 4   | 30 | 64  | darker
        5   | 30 | 64  | 7   | 30 | 64  | much lighter
        5   | 30 | 64  | 5.5 | 15 | 64  | a little lighter, duller
        5   | 30 | 64  | 5   | 35 | 64  | the same value, a little stronger
        5   | 0  | 0   | 5   | 40 | 64  | the same value, much stronger, much warmer
        5   | 0  | 0   | 5   | 4  | 244 | the same value, a little stronger, a little cooler
        5   | 40 | 150 | 5   | 40 | 130 | the same value, warmer
        5   | 40 | 90  | 5   | 40 | 150 | the same value, much cooler
        5   | 40 | 60  | 5   | 40 | 80  | the same value, toward yellow
        5   | 40 | 50  | 5   | 40 | 57  | the same value, a little toward yellow
        5   | 40 | 80  | 5   | 40 | 40  | the same value, far toward red
        5   | 40 | 265 | 5   | 40 | 235 | the same value, toward blue-green
        5   | 40 | 10  | 5   | 40 | 350 | the same value, cooler
        """)
    void isSaidInAPaintersWords(double value, double chroma, double hue, double v, double c, double h, String words) {
        Likeness likeness = Likeness.of(color(value, chroma, hue), color(v, c, h));
        assertThat(Words.say(likeness.words())).isEqualTo(words);
    }

    @Test
    void hasSignedFigures() {
        Lab wanted = color(5, 20, 350);
        Lab stick = color(6.5, 35, 15);
        Likeness likeness = Likeness.of(wanted, stick);
        assertThat(likeness.value()).isCloseTo(1.5, within(1e-6));
        assertThat(likeness.chroma()).isCloseTo(15, within(1e-9));
        assertThat(likeness.hue()).isCloseTo(25, within(1e-9));
        assertThat(likeness.difference()).isEqualTo(Ciede2000.difference(wanted, stick));
        assertThat(Likeness.of(stick, wanted).hue()).isCloseTo(-25, within(1e-9));
        assertThat(Likeness.of(Lab.gray(50), stick).hue()).isZero();
        assertThat(Likeness.of(color(5, 20, 0), color(5, 20, 180)).hue()).isCloseTo(180, within(1e-9));
    }
}
