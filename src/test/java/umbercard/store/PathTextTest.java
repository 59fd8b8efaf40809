package umbercard.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import umbercard.geometry.Node;
import umbercard.geometry.Outline;
import umbercard.geometry.Path;
import umbercard.geometry.Point;

class PathTextTest {
    @Property(tries = 300, seed = "7", edgeCases = EdgeCasesMode.NONE)
    void anOutlineComesBackExactly(@ForAll("outlines") Outline outline) {
        String letters = PathText.letters(outline.nodes());
        assertThat(PathText.outline(PathText.of(outline), Optional.of(letters))).isEqualTo(outline);
    }

    @Property(tries = 300, seed = "7", edgeCases = EdgeCasesMode.NONE)
    void aPathComesBackExactly(@ForAll("paths") Path path) {
        String letters = PathText.letters(path.nodes());
        assertThat(PathText.path(PathText.of(path), Optional.of(letters))).isEqualTo(path);
    }

    @Provide
    static Arbitrary<Outline> outlines() {
        return Studies.outlines();
    }

    @Provide
    static Arbitrary<Path> paths() {
        return Studies.paths();
    }

    @Test
    void neighborsOnTheGridStayApartPastOne() {
        // single precision could not tell these two apart
        Outline outline = Outline.polygon(
                List.of(new Point(1.3529411, 0.9999999), new Point(1.3529412, 0.9999998), new Point(1.2, 1e-7)));
        assertThat(PathText.outline(PathText.of(outline), Optional.of("sss"))).isEqualTo(outline);
        assertThat(PathText.of(outline)).isEqualTo("M1.3529411 .9999999L1.3529412 .9999998L1.2 .0000001Z");
    }

    @Test
    void aLastPointOnTheFirstStaysAPoint() {
        Outline outline = Outline.polygon(List.of(new Point(0, 0), new Point(1, 0), new Point(0, 0)));
        assertThat(PathText.outline(PathText.of(outline), Optional.of("sss"))).isEqualTo(outline);
    }

    @Test
    void withoutLettersAllPointsAreSharp() {
        assertThat(PathText.outline("M0 0L1 0L1 1Z", Optional.empty()))
                .isEqualTo(Outline.polygon(List.of(new Point(0, 0), new Point(1, 0), new Point(1, 1))));
        assertThat(PathText.outline("M0 0L1 0C1 1 0 1 0 0Z", Optional.empty()).nodes())
                .hasSize(2)
                .noneMatch(Node::round);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    m.25.5l.5 0 0,-.25z             | M.25 .5L.75 .5L.75 .25Z
                    M0 0H1V1h-1z                    | M0 0L1 0L1 1L0 1Z
                    M 0 0 1 0 1 1 Z                 | M0 0L1 0L1 1Z
                    M1e-1-.2c0 .5.25 .5.5 0 Z       | M.1 -.2C.1 .3 .35 .3 .6 -.2Z
                    """)
    void everyWayToWriteMovesLinesAndCubicsIsRead(String written, String plain) {
        assertThat(PathText.of(PathText.outline(written, Optional.empty()))).isEqualTo(plain);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "0 0L1 1",
                "M0",
                "M0 0L1",
                "L1 1",
                "M0 0X1 1",
                "M0 0Q1 1 2 2",
                "M0 0A1 1 0 0 0 2 2",
                "M0 0S1 1 2 2",
                "M0 0T1 1",
                "M0 0L1 0ZM2 2L3 3",
                "M0 0L1e999 0Z",
                "M0 0L1 0ZL3 3",
                "M0 0LNaN 0Z",
                "M0 0 L1 1 %"
            })
    void whatIsNoSingleOutlineIsRefused(String data) {
        assertThatThrownBy(() -> PathText.outline(data, Optional.empty())).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void lettersMustFit() {
        assertThatThrownBy(() -> PathText.outline("M0 0L1 0L1 1Z", Optional.of("ss")))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> PathText.outline("M0 0L1 0L1 1Z", Optional.of("ssx")))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> PathText.path("M0 0L1 0Z", Optional.empty()))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
