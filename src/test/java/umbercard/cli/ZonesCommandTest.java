package umbercard.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.store.Samples;
import umbercard.store.StudyFile;

class ZonesCommandTest {
    @TempDir
    private Path folder;

    private Path file;
    private Path written;

    @BeforeEach
    void write() throws IOException {
        Samples.Sample sample = Samples.kilnHill();
        file = folder.resolve("hill.json");
        written = folder.resolve("zoned.json");
        StudyFile.write(sample.study(), file);
        Files.write(folder.resolve(sample.photographName()), sample.photograph());
    }

    @Test
    void tellsWhatTheZonesAreLike() {
        Calls.Result result = Calls.run("zones", file);
        assertThat(result.err()).isEmpty();
        assertThat(result.code()).isZero();
        assertThat(result.outLines().get(0)).isEqualTo("Kiln Hill, first snow: raised");
        assertThat(result.outLines())
                .anyMatch(line -> line.matches("kiln +upright +middle +\\d+ % +dark +wants 2.0 +photograph \\d\\.\\d"))
                .contains("tree line and alders touch; their edge is lost.", "sky and far ridge touch.")
                .anyMatch(line -> line.startsWith("No zone covers "));
    }

    @Test
    void scriptsGetStableKeys() throws IOException {
        JsonNode json = Calls.run("zones", file, "--json").json();
        assertThat(Calls.keys(json))
                .containsExactly("study", "thumbnail", "zones", "touching", "overlapping", "gaps", "proposed");
        assertThat(Calls.keys(json.at("/zones/0")))
                .containsExactly("id", "name", "plane", "distance", "share", "darkShare", "target", "mean");
        assertThat(json.at("/zones")).hasSize(8);
        assertThat(json.at("/proposed")).isEmpty();
    }

    private Study bare() throws IOException {
        Study study = StudyFile.read(file);
        return study.withZones(List.of())
                .withLostEdges(java.util.Set.of())
                .withNotes(study.notes().stream()
                        .map(note -> note.withZone(Optional.empty()))
                        .toList())
                .withThumbnails(study.thumbnails().stream()
                        .map(thumbnail -> thumbnail.withZoneAreas(Map.of()))
                        .toList());
    }

    @Test
    void proposesZonesForWhatNoneCovers() throws IOException {
        StudyFile.write(bare(), file);
        Calls.Result result = Calls.run("zones", file, "--propose", "-o", written);
        assertThat(result.err()).isEmpty();
        assertThat(result.code()).isZero();
        Study study = StudyFile.read(written);
        assertThat(study.zones()).extracting(zone -> zone.name()).contains("sky", "water");
        Thumbnail chosen = study.chosenThumbnail().orElseThrow();
        assertThat(chosen.zoneAreas()).hasSameSizeAs(study.zones());
        assertThat(result.outLines())
                .contains("sky: What lies above the land edge.")
                .endsWith("Added " + study.zones().size() + " zones, written to " + written + ".");
        JsonNode json = Calls.run("zones", written, "--json").json();
        assertThat(json.path("gaps").asDouble()).isLessThan(0.1);
        assertThat(json.path("overlapping")).isEmpty();
        double shares = 0;
        for (JsonNode zone : json.path("zones")) {
            shares += zone.path("share").asDouble();
        }
        assertThat(shares).isEqualTo(1, within(0.1));
        assertThat(StudyFile.read(file).zones()).isEmpty();
    }

    @Test
    void whatCannotBeProposedIsSaid() throws IOException {
        Calls.Result alone = Calls.run("zones", file, "--propose");
        assertThat(alone.code()).isEqualTo(2);
        assertThat(alone.err()).contains("--propose and -o together");
        StudyFile.write(StudyFile.read(file), written);
        Calls.Result there = Calls.run("zones", file, "--propose", "-o", written);
        assertThat(there.code()).isEqualTo(1);
        assertThat(there.err()).contains("exists already");
        Calls.run("zones", file, "--propose", "-o", folder.resolve("one.json"));
        Path one = Files.exists(folder.resolve("one.json")) ? folder.resolve("one.json") : file;
        Calls.Result none = Calls.run("zones", one, "--propose", "-o", folder.resolve("two.json"));
        assertThat(none.code()).isEqualTo(1);
        assertThat(none.errLines()).hasSize(1).allMatch(line -> line.contains("there is nothing to propose"));
        assertThat(folder.resolve("two.json")).doesNotExist();
    }
}
