package umbercard.readings;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import umbercard.color.Lab;
import umbercard.door.Finding;
import umbercard.door.Finding.Verdict;
import umbercard.door.Place;
import umbercard.door.Plan;
import umbercard.model.Study;
import umbercard.picture.MainColor;
import umbercard.store.StudyFile;

/**
 * Whole color cards as study files: of one named after a reading only that reading says to look again; of one named {@code
 * good-} none does. A file may name the reference's colors in zones as L, a, b and share. The rules are those of the readings'
 * own sources; the cards are made up for them.
 */
class ColorCardsTest {
    private static final Path FOLDER = Path.of("src/test/resources/umbercard/readings/cards");

    private static final List<String> OF_COLOR = List.of(
            "value-side",
            "dark-variety",
            "plane-values",
            "plane-separation",
            "depth",
            "sky-ramp",
            "water-turned-over",
            "echo",
            "order",
            "box-covers",
            "graying-layers");

    static Stream<String> cards() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.map(file -> file.getFileName().toString().replace(".json", "")).sorted().toList().stream();
        }
    }

    private static Map<String, Finding> findings(String card) throws IOException {
        Study study = StudyFile.read(FOLDER.resolve(card + ".json"));
        Plan plan = Plans.plan(study, study.chosenThumbnail().orElseThrow()).withColors(() -> colors(study));
        Map<String, Finding> findings = new LinkedHashMap<>(Evaluation.of(Evaluation.find(), plan, Wishes.NONE));
        findings.keySet().retainAll(OF_COLOR);
        return findings;
    }

    private static Map<String, List<MainColor>> colors(Study study) {
        Map<String, List<MainColor>> colors = new LinkedHashMap<>();
        if (study.more().get("referenceColors") instanceof Map<?, ?> zones) {
            zones.forEach((zone, listed) -> {
                List<MainColor> main = new ArrayList<>();
                for (Object one : (List<?>) listed) {
                    double[] figures = ((List<?>) one)
                            .stream()
                                    .mapToDouble(figure -> ((Number) figure).doubleValue())
                                    .toArray();
                    main.add(new MainColor(new Lab(figures[0], figures[1], figures[2]), figures[3]));
                }
                colors.put(String.valueOf(zone), main);
            });
        }
        return colors;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cards")
    void onlyTheReadingThatACardIsNamedAfterSaysToLookAgain(String card) throws IOException {
        Map<String, Finding> findings = findings(card);
        assertThat(findings.keySet()).containsExactlyInAnyOrderElementsOf(OF_COLOR);
        List<String> again = findings.entrySet().stream()
                .filter(entry -> entry.getValue().verdict() == Verdict.LOOK_AGAIN)
                .map(Map.Entry::getKey)
                .toList();
        assertThat(again).isEqualTo(card.startsWith("good-") ? List.of() : List.of(card));
        for (String reading : again) {
            assertThat(findings.get(reading).places())
                    .as("places")
                    .isNotEmpty()
                    .allSatisfy(place -> assertThat(place).isInstanceOf(Place.Of.class));
        }
    }

    /** Ten faulty cards, one for each reading with a rule, and a quiet one in each light. */
    @Test
    void thereIsACardForEveryReadingWithARule() throws IOException {
        assertThat(cards()).containsAll(OF_COLOR.subList(0, 10));
        assertThat(cards().filter(card -> card.startsWith("good-"))).hasSizeGreaterThanOrEqualTo(7);
    }

    /** So that the good cards pass for what they are: each reading with a rule holds on some of them. */
    @Test
    void everyReadingHoldsOnSomeGoodCard() throws IOException {
        List<String> hold = new ArrayList<>();
        for (String card : cards().filter(name -> name.startsWith("good-")).toList()) {
            findings(card).forEach((reading, finding) -> {
                if (finding.verdict() == Verdict.HOLDS) {
                    hold.add(reading);
                }
            });
        }
        assertThat(hold).containsAll(OF_COLOR.subList(0, 10));
    }

    /** The light rules what is asked: snow and a low sun have their own order, at night there is none. */
    @Test
    void theLightOfAStudyIsRespected() throws IOException {
        assertThat(findings("good-snow").get("plane-values").verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(findings("good-low-sun").get("plane-values").verdict()).isEqualTo(Verdict.HOLDS);
        for (String dark : List.of("good-night", "good-indoors")) {
            assertThat(findings(dark).get("plane-values").verdict()).isEqualTo(Verdict.DOES_NOT_APPLY);
        }
        for (String other : List.of("good-snow", "good-overcast", "good-night")) {
            assertThat(findings(other).get("sky-ramp").verdict()).isEqualTo(Verdict.DOES_NOT_APPLY);
        }
    }
}
