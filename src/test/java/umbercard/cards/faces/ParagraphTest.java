package umbercard.cards.faces;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import umbercard.cards.type.Roboto;

class ParagraphTest {
    private static final Style STYLE = Style.regular(12);
    private static final Setting SETTING = new Setting(Roboto.type());

    private static Paragraph of(String words) {
        return new Paragraph(words, STYLE, Roboto.type());
    }

    @Test
    void breaksBetweenWords() {
        double width = SETTING.width("the first snow", STYLE);
        assertThat(of("the first snow on the hill").lines(width + 0.01))
                .containsExactly("the first snow", "on the hill");
    }

    @Test
    void runsOfSpacesAndLineEndsAreOneSpace() {
        assertThat(of("  first\n\n snow\t ").lines(100)).containsExactly("first snow");
    }

    @Test
    void blankWordsHaveNoLines() {
        assertThat(of(" \n ").lines(50)).isEmpty();
        assertThat(of("").block(50).height()).isZero();
    }

    @Test
    void breaksAWordThatIsLongerThanTheLine() {
        List<String> lines = of("W".repeat(40)).lines(30);
        assertThat(lines)
                .hasSizeGreaterThan(3)
                .allSatisfy(line -> assertThat(SETTING.width(line, STYLE)).isLessThanOrEqualTo(30 + 1e-9));
        assertThat(String.join("", lines)).isEqualTo("W".repeat(40));
    }

    @Test
    void breaksTextWithoutSpaces() {
        assertThat(of("初雪の丘に窯が立っている").lines(20)).hasSizeGreaterThan(2);
    }

    @Test
    void setsAtLeastOneCharacterALine() {
        assertThat(of("ab\uD83C\uDFA8").lines(0.1)).containsExactly("a", "b", "\uD83C\uDFA8");
    }

    @Test
    void balancesWithoutAnotherLine() {
        String words = "The kiln holds its dark against the first snow, and the pond gives it back.";
        List<String> full = of(words).lines(110);
        List<String> even = of(words).balanced(110).lines();
        assertThat(even).hasSameSizeAs(full);
        assertThat(shortest(even)).isGreaterThan(shortest(full));
        assertThat(String.join(" ", even)).isEqualTo(words);
    }

    private static double shortest(List<String> lines) {
        return lines.stream()
                .mapToDouble(line -> SETTING.width(line, STYLE))
                .min()
                .orElseThrow();
    }

    @Property(tries = 200, seed = "20261124")
    void losesNothingAndOverflowsNothing(
            @ForAll @StringLength(max = 80) String words, @ForAll @DoubleRange(min = 12, max = 120) double width) {
        List<String> lines = of(words).lines(width);
        assertThat(String.join("", lines).replace(" ", ""))
                .isEqualTo(Setting.plain(words).replace(" ", ""));
        assertThat(lines)
                .allSatisfy(line -> assertThat(line.codePointCount(0, line.length()) <= 1
                                || SETTING.width(line, STYLE) <= width + 1e-6)
                        .isTrue());
    }

    @Test
    void shortensWithAnEllipsisOnlyWhereNeeded() {
        assertThat(SETTING.shortened("Far slate", 60, STYLE)).isEqualTo("Far slate");
        String brief = SETTING.shortened("Far slate of the second drawer", 40, STYLE);
        assertThat(brief).startsWith("Far slate").endsWith("…");
        assertThat(SETTING.width(brief, STYLE)).isLessThanOrEqualTo(40);
    }
}
