package umbercard.readings.share;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static umbercard.readings.Plans.figure;

import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import umbercard.door.Finding;
import umbercard.door.Finding.Verdict;
import umbercard.model.Keyed;
import umbercard.model.Light;
import umbercard.model.Mark;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.readings.Designs;
import umbercard.readings.Plans;
import umbercard.words.Words;

class DarkShareTest {
    private static final double EXACT = 1e-6;

    private final DarkShare reading = new DarkShare();

    @ParameterizedTest(name = "{0} in {1}")
    @CsvFileSource(resources = "dark_share.csv", numLinesToSkip = 1)
    void verdictAndSentenceFollowTheShare(double dark, String light, String verdict, double nearest, String sentence) {
        Study study = Plans.study(Keyed.find(Light.class, light).orElseThrow());
        Finding finding = Plans.read(reading, study, Plans.dark(dark));

        assertThat(finding.figures().get(0).name()).isEqualTo("dark");
        assertThat(figure(finding, "dark")).isEqualTo(dark, within(EXACT));
        assertThat(figure(finding, "nearest")).isEqualTo(nearest, within(5e-4));
        assertThat(figure(finding, "distance")).isEqualTo(Math.abs(dark - nearest), within(5e-4));
        assertThat(finding.verdict().key()).isEqualTo(verdict);
        assertThat(Words.say(finding.sentence())).isEqualTo(sentence);
    }

    @Test
    void aCardWithoutAMarkThatCountsIsNotSet() {
        Mark hidden = Plans.band("m1", Mark.Kind.LAY, 0.6, 1).withHidden(true);
        for (Thumbnail thumbnail : List.of(Plans.blank(), Plans.blank().withMarks(List.of(hidden)))) {
            Finding finding = Plans.read(reading, thumbnail);
            assertThat(finding.verdict()).isEqualTo(Verdict.NOT_SET);
            assertThat(figure(finding, "dark")).isZero();
        }
    }

    @Test
    void aStudysOwnLimitCounts() {
        Study wider = Plans.study().withLimits(Map.of("dark-share", Map.of("even", 0.1)));
        assertThat(Plans.read(reading, Plans.dark(0.42)).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(Plans.read(reading, wider, Plans.dark(0.42)).verdict()).isEqualTo(Verdict.LOOK_AGAIN);
    }

    @Property(tries = 40, seed = "11")
    void mirroringChangesNothing(@ForAll("designs") Thumbnail thumbnail) {
        Finding one = Plans.read(reading, thumbnail);
        Finding other = Plans.read(reading, Plans.mirrored(thumbnail));
        assertThat(figure(other, "dark")).isEqualTo(figure(one, "dark"), within(EXACT));
    }

    @Property(tries = 40, seed = "12")
    void changingDarkAndLightOverSwapsTheShare(@ForAll("designs") Thumbnail thumbnail) {
        Finding one = Plans.read(reading, thumbnail);
        Finding other = Plans.read(reading, Plans.inverted(thumbnail));
        assertThat(figure(other, "dark")).isEqualTo(1 - figure(one, "dark"), within(EXACT));
    }

    @Provide
    Arbitrary<Thumbnail> designs() {
        return Designs.any();
    }
}
