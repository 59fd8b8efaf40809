package umbercard.desk.box;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import umbercard.color.Lab;

class ColorTextTest {
    @ParameterizedTest
    @ValueSource(strings = {"52, 4.5, -18", "52 4.5 -18", "52;4.5;-18", "  52 ,4.5,  -18 "})
    void threeNumbersAreLightnessAndTheTwoAxes(String typed) {
        assertThat(ColorText.read(typed)).contains(new Lab(52, 4.5, -18));
    }

    @Test
    void sixSignsAreSrgb() {
        // #808080 has L* 53.585: IEC 61966-2-1 and CIE 15, in the table of sRGB colors.
        Optional<Lab> gray = ColorText.read("#808080");
        assertThat(gray.orElseThrow().l()).isCloseTo(53.585, Offset.offset(1e-3));
        assertThat(ColorText.read("808080")).isEqualTo(gray);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "dark", "52, 4.5", "101, 0, 0", "-1, 0, 0", "50, 0, 400", "#12345", "NaN, 0, 0", "1,2,3,4"})
    void whatIsNoColorIsNone(String typed) {
        assertThat(ColorText.read(typed)).isEmpty();
    }

    @Test
    void whatIsWrittenIsRead() {
        assertThat(ColorText.write(new Lab(13, -0.04, -1))).isEqualTo("13.0, -0.0, -1.0");
        assertThat(ColorText.read(ColorText.write(new Lab(61.2, -0.8, -10.4)))).contains(new Lab(61.2, -0.8, -10.4));
    }
}
