package umbercard.readings.share;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Optional;
import java.util.function.IntBinaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import umbercard.door.Finding;
import umbercard.door.Finding.Verdict;
import umbercard.door.Limits;
import umbercard.door.Plan;
import umbercard.model.Thumbnail;
import umbercard.notan.Fold;
import umbercard.picture.Picture;
import umbercard.readings.Drawn;
import umbercard.readings.Plans;
import umbercard.words.Words;

class ReferenceAgreementTest {
    private static final int WIDTH = 40;
    private static final int HEIGHT = 30;

    private final ReferenceAgreement reading = new ReferenceAgreement();

    /** Of a gray that runs from 0 to 255. */
    private static Picture picture(IntBinaryOperator gray) {
        int[] pixels = new int[WIDTH * HEIGHT];
        for (int i = 0; i < pixels.length; i++) {
            pixels[i] = 0x10101 * gray.applyAsInt(i % WIDTH, i / WIDTH);
        }
        return new Picture(WIDTH, HEIGHT, pixels);
    }

    private Finding read(Thumbnail thumbnail, Optional<Picture> picture) {
        Plan plan = new Plan(Plans.study(), thumbnail, Fold.of(thumbnail, Plans.RATIO), picture, () -> false);
        return reading.read(plan, Limits.of(reading.rule(), Map.of()));
    }

    /** Shares of frames that are parted in rows or columns; those of two parted at right angles multiply. */
    @ParameterizedTest(name = "{0} over {1}")
    @CsvSource({
        "0 60 R 100, dark below, 1.0, 100",
        "0 60 R 100, dark above, 0.2, 20",
        "0 60 R 100, dark left, 0.52, 52",
        "dark; lift 0 0 R 60, dark below, 1.0, 100",
        "0 0 R 100, dark left, 1.0, 100",
        "dark; lift 0 0 R 100, dark left, 1.0, 100",
        "-50 0 66.66666667 100, dark left, 1.0, 100",
        "20 20 80 80; lift 20 20 80 80, dark left, 1.0, 100",
        "66.66666667 0 R 100; 66.66666667 0 R 100, dark left, 0.0, 0"
    })
    void agreementIsTheShareOfWhatLiesAlike(String drawing, String photograph, double share, String percent) {
        Picture picture = switch (photograph) {
            case "dark below" -> picture((x, y) -> 255 - 8 * y);
            case "dark above" -> picture((x, y) -> 8 * y);
            default -> picture((x, y) -> 6 * x);
        };

        Finding finding = read(Drawn.thumbnail(drawing), Optional.of(picture));

        assertThat(finding.verdict()).isEqualTo(Verdict.FIGURE_ONLY);
        assertThat(Plans.figure(finding, "agreement")).isEqualTo(share, within(1e-12));
        assertThat(Words.say(finding.sentence()))
                .isEqualTo("Dark and light lie as in the photograph in " + percent + " % of the frame.");
        assertThat(finding.places()).isEmpty();
    }

    @Test
    void whatIsLiftedOutOfTheDarkIsLight() {
        Picture ring = picture(
                (x, y) -> x >= 6 && x < 24 && y >= 6 && y < 24 && !(x >= 12 && x < 18 && y >= 12 && y < 18) ? 9 : 200);
        Finding finding = read(Drawn.thumbnail("20 20 80 80; lift 40 40 60 60"), Optional.of(ring));
        assertThat(Plans.figure(finding, "agreement")).isEqualTo(1);
    }

    /** Pixels equally light are not parted: all of them go to the side that brings the share nearest. */
    @ParameterizedTest
    @CsvSource({"0.4, 0.6", "0.6, 0.6", "0.9, 0.9"})
    void aPhotographOfOneTintIsAllLightOrAllDark(double dark, double agreement) {
        Finding finding = read(Plans.dark(dark), Optional.of(picture((x, y) -> 90)));
        assertThat(Plans.figure(finding, "agreement")).isEqualTo(agreement, within(1e-12));
    }

    @Test
    void withoutAMarkOrAPhotographItIsNotSet() {
        Finding blank = read(Plans.blank(), Optional.of(picture((x, y) -> 6 * x)));
        assertThat(blank.verdict()).isEqualTo(Verdict.NOT_SET);
        assertThat(Words.say(blank.sentence())).isEqualTo("Nothing is laid yet.");
        Finding alone = read(Plans.dark(0.4), Optional.empty());
        assertThat(alone.verdict()).isEqualTo(Verdict.NOT_SET);
        assertThat(Words.say(alone.sentence())).isEqualTo("There is no photograph to compare with.");
        assertThat(alone.figures()).isEmpty();
    }
}
