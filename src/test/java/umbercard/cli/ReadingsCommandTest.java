package umbercard.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import umbercard.geometry.Outline;
import umbercard.model.Frame;
import umbercard.model.Level;
import umbercard.model.Mark;
import umbercard.model.Reference;
import umbercard.model.Study;
import umbercard.model.Surface;
import umbercard.model.Surface.Unit;
import umbercard.model.Thumbnail;
import umbercard.model.edit.Edits;
import umbercard.photo.Photographs;
import umbercard.picture.Picture;
import umbercard.store.Preferred;
import umbercard.store.StudyFile;

class ReadingsCommandTest {
    @TempDir
    private Path folder;

    private Path file;
    private Study study;

    @BeforeEach
    void write() throws IOException {
        Surface surface = new Surface(12, 9, Unit.IN, 0, Optional.empty(), false);
        study = Edits.addThumbnail(banded("t1", "first", 0.52))
                .andThen(Edits.addThumbnail(banded("t2", "low land", 0.3)))
                .apply(Study.begin("Alder bank", surface));
        file = folder.resolve("hill.json");
        StudyFile.write(study, file);
    }

    /** A dark band along the bottom, and the land edge over it. */
    private static Thumbnail banded(String id, String name, double dark) {
        Mark band = new Mark("m" + id, Mark.Kind.LAY, Outline.rectangle(0, 1 - dark, 4.0 / 3, 1));
        return Thumbnail.empty(id, name).withMarks(List.of(band)).withLandEdge(Optional.of(new Level(1 - dark, 0)));
    }

    private JsonNode json(Object... more) throws IOException {
        List<Object> call = new ArrayList<>(List.of("readings", file, "--json"));
        call.addAll(List.of(more));
        Calls.Result result = Calls.run(call.toArray());
        return result.json();
    }

    private static JsonNode reading(JsonNode json, String id) {
        for (JsonNode reading : json.get("readings")) {
            if (reading.get("id").asText().equals(id)) {
                return reading;
            }
        }
        throw new AssertionError("no reading " + id + " in " + json);
    }

    @Test
    void aTableNamesVerdictAndSentence() {
        Calls.Result result = Calls.run("readings", file);
        assertThat(result.code()).isZero();
        assertThat(result.outLines().get(0)).isEqualTo("Alder bank: first");
        assertThat(result.outLines())
                .contains(
                        "Dark share                     look again      Dark 52 %: nearly an even split."
                                + " Raise the land edge or join the darks.",
                        "Left and right                 does not apply  One plain band is alike left and right, and may be.",
                        "Path of the eye                not set         No path of the eye is set.");
        assertThat(result.out()).contains("Horizon height                 look again      The land edge runs at 52 %");
    }

    @Test
    void allThumbnailsStandSideBySide() throws IOException {
        Calls.Result result = Calls.run("readings", file, "--all");
        assertThat(result.code()).isZero();
        assertThat(result.outLines().get(0)).matches("Alder bank +first +low land");
        assertThat(result.outLines()).anyMatch(line -> line.matches("Dark share +52 %, look again +30 %, holds"));
        JsonNode json = json("--all");
        assertThat(json.isArray()).isTrue();
        assertThat(json.findValuesAsText("thumbnail")).containsExactly("first", "low land");
        assertThat(reading(json.get(1), "dark-share").at("/figures/0/value").asDouble())
                .isEqualTo(0.3, within(1e-6));
    }

    @Test
    void jsonHasItsKeysInTheirOrder() throws IOException {
        JsonNode json = json();
        assertThat(Calls.keys(json)).containsExactly("study", "thumbnail", "readings");
        assertThat(json.get("study").asText()).isEqualTo("Alder bank");
        assertThat(json.get("thumbnail").asText()).isEqualTo("first");
        assertThat(json.get("readings")).hasSizeGreaterThanOrEqualTo(2);
        for (JsonNode reading : json.get("readings")) {
            assertThat(Calls.keys(reading))
                    .containsExactly("id", "verdict", "figures", "sentence", "rule", "source", "places");
            for (JsonNode figure : reading.get("figures")) {
                assertThat(Calls.keys(figure)).containsExactly("name", "value", "unit");
            }
        }
    }

    @Test
    void jsonHasTheFiguresOfTheThumbnail() throws IOException {
        JsonNode dark = reading(json(), "dark-share");
        assertThat(dark.at("/figures/0/name").asText()).isEqualTo("dark");
        assertThat(dark.at("/figures/0/value").asDouble()).isEqualTo(0.52, within(1e-6));
        assertThat(dark.at("/figures/0/unit").asText()).isEqualTo("share");
        assertThat(dark.get("verdict").asText()).isEqualTo("look-again");
        assertThat(dark.get("rule").asText()).startsWith("Look again within 0.05 of one half");
        assertThat(dark.get("source").asText()).contains("Smith 1797");

        JsonNode height = reading(json(), "horizon-height");
        assertThat(height.at("/figures/0/name").asText()).isEqualTo("height");
        assertThat(height.at("/figures/0/value").asDouble()).isEqualTo(0.52, within(1e-6));
        assertThat(height.at("/places/0/between/0/1").asDouble()).isEqualTo(0.48, within(1e-6));
        assertThat(height.at("/places/0/between/1/0").asDouble()).isEqualTo(4.0 / 3, within(1e-6));
    }

    @Test
    void aThumbnailIsFoundByNameOrByPlace() throws IOException {
        assertThat(json("--thumbnail", "low land").get("thumbnail").asText()).isEqualTo("low land");
        assertThat(json("--thumbnail", "2").get("thumbnail").asText()).isEqualTo("low land");
        assertThat(json("--thumbnail", "1").get("thumbnail").asText()).isEqualTo("first");
        assertThat(reading(json("--thumbnail", "2"), "dark-share")
                        .at("/figures/0/value")
                        .asDouble())
                .isEqualTo(0.3, within(1e-6));
    }

    @Test
    void withoutAWishTheChosenOneIsRead() throws IOException {
        StudyFile.write(study.withChosen(Optional.of("t2")), file);
        assertThat(json().get("thumbnail").asText()).isEqualTo("low land");
    }

    @Test
    void aNameThatIsANumberGoesBeforeThePlace() throws IOException {
        StudyFile.write(Edits.addThumbnail(banded("t3", "1", 0.4)).apply(study), file);
        assertThat(reading(json("--thumbnail", "1"), "dark-share")
                        .at("/figures/0/value")
                        .asDouble())
                .isEqualTo(0.4, within(1e-6));
    }

    @Test
    void silencedReadingsAreLeftOut() throws IOException {
        StudyFile.write(study.withSilenced(Set.of("dark-share")), file);
        assertThat(json().get("readings").findValuesAsText("id"))
                .contains("horizon-height")
                .doesNotContain("dark-share");
        assertThat(Calls.run("readings", file).out()).doesNotContain("Dark share");
    }

    @Test
    void whatThePainterSilencesIsLeftOutAndRulesShowThePaintersLimits() throws IOException {
        try {
            Preferred.keepSilenced(Set.of("horizon-height"));
            Preferred.keepLimits(Map.of("dark-share", Map.of("even", 0.01)));
            JsonNode json = json();
            assertThat(json.get("readings").findValuesAsText("id"))
                    .contains("dark-share")
                    .doesNotContain("horizon-height");
            JsonNode dark = reading(json, "dark-share");
            assertThat(dark.get("verdict").asText()).isEqualTo("holds");
            assertThat(dark.get("rule").asText()).startsWith("Look again within 0.01 of one half");

            StudyFile.write(study.withLimits(Map.of("dark-share", Map.of("even", 0.03))), file);
            JsonNode own = reading(json(), "dark-share");
            assertThat(own.get("verdict").asText()).isEqualTo("look-again");
            assertThat(own.get("rule").asText()).startsWith("Look again within 0.03 of one half");
        } finally {
            Preferred.keepSilenced(Set.of());
            Preferred.keepLimits(Map.of());
        }
    }

    /** Upper 48 % of the photograph light, the rest dark, as the first thumbnail is. */
    private Study beside(String photograph) {
        return study.withReference(Optional.of(Reference.to(photograph, "", Frame.largest(4.0 / 3, study.ratio()))));
    }

    @Test
    void thePhotographIsReadWhereItIsThere() throws IOException {
        Picture banded = Photographs.picture(400, 300, (x, y) -> y < 144 ? 0xd0d0d0 : 0x303030);
        Files.write(folder.resolve("hill.jpg"), Photographs.jpeg(banded));
        StudyFile.write(beside("hill.jpg"), file);
        JsonNode agreement = reading(json(), "reference-agreement");
        assertThat(agreement.get("verdict").asText()).isEqualTo("figure-only");
        assertThat(agreement.at("/figures/0/value").asDouble()).isGreaterThan(0.99);
    }

    @Test
    void aPhotographThatIsNotThereOrNoneIsPassedOverWithoutAWord() throws IOException {
        Files.writeString(folder.resolve("broken.jpg"), "no photograph");
        for (String photograph : List.of("gone.jpg", "broken.jpg")) {
            StudyFile.write(beside(photograph), file);
            assertThat(reading(json(), "reference-agreement").get("verdict").asText())
                    .isEqualTo("not-set");
        }
    }
}
