package umbercard.readings;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import umbercard.door.Finding;
import umbercard.door.Finding.Verdict;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.store.StudyFile;

/** Quiet designs that a teacher would praise are told to be looked at again nowhere, but for what is said beside them. */
class GoodCardsTest {
    private static String again(Study study, Thumbnail thumbnail) {
        Map<String, Finding> findings = Evaluation.of(Evaluation.find(), Plans.plan(study, thumbnail), Wishes.NONE);
        assertThat(findings).hasSizeGreaterThanOrEqualTo(15);
        return findings.entrySet().stream()
                .filter(entry -> entry.getValue().verdict() == Verdict.LOOK_AGAIN)
                .map(Map.Entry::getKey)
                .collect(Collectors.joining(" "));
    }

    /**
     * But for four: all four sides are of one value, and there is much edge elsewhere too; the sky goes dark on the notan while
     * its sticks are light, nearly as light as the snow. Whether that is fair is a matter of taste.
     */
    @Test
    void theSamplesChosenThumbnailPasses() throws Exception {
        Study study = StudyFile.read(Path.of("samples/kiln-hill.json"));
        assertThat(again(study, study.chosenThumbnail().orElseThrow()))
                .isEqualTo("borders focus-contrast value-side plane-separation");
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "good_cards.csv", numLinesToSkip = 1, delimiter = '|')
    void quietDesignsPass(String name, String drawing, String but) {
        assertThat(again(Plans.study(), Drawn.thumbnail(drawing)))
                .isEqualTo(Optional.ofNullable(but).orElse(""));
    }

    /** So that the cards above pass for what they are, not because nothing is ever told. */
    @Test
    void aPoorCardIsToldOften() {
        Thumbnail poor = Drawn.thumbnail("30 20 60 80; 73.33333333 20 103.33333333 80; focus 66 50; path 66 50 R 100");
        assertThat(Arrays.asList(again(Plans.study(), poor).split(" ")))
                .containsExactly("mirror", "borders", "joined-masses", "alike-masses", "focus-place", "eye-path");
    }
}
