package umbercard.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import ij.process.AutoThresholder;
import java.io.IOException;
import java.util.Arrays;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class OtsuTest {
    static Stream<JsonNode> thresholds() throws IOException {
        JsonNode all = new ObjectMapper().readTree(Photographs.resource("threshold_checks.json"));
        return StreamSupport.stream(all.get("cases").spliterator(), false);
    }

    static long[] histogram(JsonNode check) {
        return StreamSupport.stream(check.get("histogram").spliterator(), false)
                .mapToLong(JsonNode::asLong)
                .toArray();
    }

    /** Source: Otsu 1979, with the histograms and sources named in threshold_checks.json. */
    @ParameterizedTest
    @MethodSource("thresholds")
    void partsHistogramsWhereTheyPartBest(JsonNode check) {
        long[] histogram = histogram(check);
        Otsu.Parting parting = Otsu.of(histogram);
        assertThat(parting.level())
                .as(check.get("name").asText())
                .isBetween(
                        check.get("threshold_first").asInt(),
                        check.get("threshold_last").asInt());
        long pixels = check.get("pixels").asLong();
        assertThat(parting.gain() / pixels)
                .isCloseTo(check.get("between_variance").asDouble(), within(1e-8));
        long below = Arrays.stream(histogram, 0, parting.level() + 1).sum();
        assertThat((double) below / pixels).isCloseTo(check.get("class0_share").asDouble(), within(1e-9));
    }

    /** ImageJ looks for the same largest variance; where several levels in a row are equally good it may take another. */
    @ParameterizedTest
    @MethodSource("thresholds")
    void agreesWithImageJ(JsonNode check) {
        long[] histogram = histogram(check);
        int[] whole = new int[256];
        IntStream.range(0, histogram.length).forEach(i -> whole[i] = (int) histogram[i]);
        int theirs = new AutoThresholder().getThreshold(AutoThresholder.Method.Otsu, whole);
        int ours = Otsu.of(histogram).level();
        assertThat(Arrays.stream(histogram, Math.min(ours, theirs) + 1, Math.max(ours, theirs) + 1)
                        .sum())
                .as("samples between level %d and ImageJ's %d", ours, theirs)
                .isZero();
    }

    @Test
    void partsAStretchOfLevelsAsIfItWereAlone() {
        long[] histogram = {9, 1, 0, 5, 0, 5, 0, 7, 2};
        Otsu.Parting part = Otsu.of(histogram, 3, 6);
        assertThat(part.level()).isBetween(3, 4);
        assertThat(part.gain()).isCloseTo(10, within(1e-12));
        assertThat(Otsu.of(histogram, 2, 4).level()).isEqualTo(-1);
    }
}
