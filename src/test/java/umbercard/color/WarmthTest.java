package umbercard.color;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class WarmthTest {
    @Test
    void theWarmestHueIsThatOfItsChip() {
        assertThat(Warmth.WARMEST).isCloseTo(Chips.hue("5YR 6/12"), within(0.05));
    }

    /** Which of the renotation's chips painters call warm and cool: common practice, no source. */
    @Test
    void orangesAreWarmAndBluesAreCool() {
        assertThat(Chips.read()).allSatisfy((name, chip) -> {
            if (name.matches("\\S*(5R|YR|5Y) .*")) {
                assertThat(Warmth.isWarm(chip)).as(name).isTrue();
            }
            if (name.matches("\\S*(5BG|5B|5PB) .*")) {
                assertThat(Warmth.isCool(chip) || chip.chroma() < 6).as(name).isTrue();
                assertThat(Warmth.isWarm(chip)).as(name).isFalse();
            }
            if (name.startsWith("N")) {
                assertThat(Warmth.of(chip)).as(name).isCloseTo(0, within(0.01));
            }
        });
    }

    @Property(tries = 300, seed = "64", edgeCases = EdgeCasesMode.NONE)
    void isTheChromaTimesTheCosineAndTurnsWithTheHue(
            @ForAll @Scale(7) @DoubleRange(max = 100) double l,
            @ForAll @Scale(7) @DoubleRange(max = 120) double c,
            @ForAll @Scale(7) @DoubleRange(max = 360) double h) {
        double warmth = Warmth.of(new Lch(l, c, h).lab());
        assertThat(warmth).isCloseTo(c * Math.cos(Math.toRadians(h - 64)), within(1e-9));
        assertThat(Warmth.of(new Lch(l, c, h + 180).lab())).isCloseTo(-warmth, within(1e-9));
        assertThat(Warmth.of(Lab.gray(l))).isZero();
    }

    @Test
    void aLittleEitherWayIsNeither() {
        Lab warm = new Lch(50, 5.001, 64).lab();
        Lab almost = new Lch(50, 4.999, 64).lab();
        assertThat(Warmth.isWarm(warm)).isTrue();
        assertThat(Warmth.isWarm(almost)).isFalse();
        assertThat(Warmth.isCool(new Lch(50, 5.001, 244).lab())).isTrue();
        assertThat(Warmth.isCool(new Lch(50, 4.999, 244).lab())).isFalse();
    }
}
