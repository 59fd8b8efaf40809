package umbercard.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import umbercard.photo.RubbedCard.Findings;
import umbercard.photo.RubbedCard.Look;
import umbercard.photo.RubbedCard.Rubbed;
import umbercard.spectra.Camera;
import umbercard.spectra.Falloff;
import umbercard.spectra.Lights;
import umbercard.spectra.RubbedCards;
import umbercard.spectra.Trays;
import umbercard.words.Trouble;

/** Rubbed cards photographed by spectra, some by cameras that bend the tones. */
class RubbedCardTest {
    /** Brighter in the middle tones, as most cameras make it. */
    private static final DoubleUnaryOperator BRIGHT = light -> Math.pow(light, 0.8);

    /** Softened at both ends. */
    private static final DoubleUnaryOperator S_SHAPED = light -> light - 0.06 * Math.sin(2 * Math.PI * light);

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = ';', textBlock = """
                    A, balanced for daylight; 2.7; 4.9
                    D50, balanced by the camera; 1.0; 2.5
                    D75, balanced for daylight; 1.2; 2.8
                    LED, balanced by the camera; 3.8; 6.5
                    """)
    void findsRubbedSticksByTheirTrueColor(String camera, double median, double most) throws Trouble {
        RubbedCards card = RubbedCards.card(Trays.UNEVEN);
        Findings findings = card.read(Trays.cameras().get(camera));
        double[] errors = card.errors(findings);
        assertThat(Trays.quantile(errors, 0.5)).as("median").isLessThan(median);
        assertThat(Trays.quantile(errors, 0.95)).as("95th percentile").isLessThan(most);
        assertThat(findings.patches())
                .filteredOn(patch -> patch.look() == Look.BARE)
                .extracting(Rubbed::id)
                .containsExactlyElementsOf(RubbedCards.BARE);
        assertThat(findings.patches())
                .filteredOn(patch -> patch.look() == Look.RUBBED)
                .hasSize(13);
        assertThat(findings.graysRubbedOver()).isEqualTo(RubbedCards.RUBBED_OVER);
    }

    @Test
    void aGrayUndoesWhatTheCameraDidToTheTones() throws Trouble {
        RubbedCards card = RubbedCards.card(Falloff.NONE);
        for (DoubleUnaryOperator tone : List.of(BRIGHT, S_SHAPED)) {
            Camera camera = Camera.fixed(Lights.D50, 0.85, 9).with(tone);
            double with = Trays.quantile(card.errors(card.read(camera)), 0.5);
            double without = Trays.quantile(card.errors(card.withoutGrays().read(camera)), 0.5);
            assertThat(with).isLessThan(1.5).isLessThan(0.6 * without);
        }
    }

    @Test
    void saysWhatIsWrongWithTheMarksOrTheLight() {
        RubbedCards card = RubbedCards.card(Falloff.NONE);
        refuses(() -> card.read(Camera.fixed(Lights.D50, 1.4, 9)), "overexposed");
        refuses(() -> card.read(Camera.fixed(Lights.D50, 0.015, 9)), "nearly black");
        refuses(() -> card.cornersTurned().read(Camera.fixed(Lights.D50, 0.85, 9)), "clockwise from the upper left");
        refuses(() -> card.partOutside().read(Camera.fixed(Lights.D50, 0.85, 9)), "The card reaches out of card.jpg");
    }

    private static void refuses(ThrowingCallable reading, String words) {
        assertThatThrownBy(reading)
                .isInstanceOf(Trouble.class)
                .hasMessageContaining("card.jpg")
                .hasMessageContaining(words);
    }
}
