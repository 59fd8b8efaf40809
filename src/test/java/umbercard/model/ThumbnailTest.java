package umbercard.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class ThumbnailTest {
    private static final Thumbnail BARE = Thumbnail.empty("t1", "first");

    @Test
    void theHorizonGoesBeforeTheLandEdge() {
        Optional<Level> horizon = Optional.of(Level.at(0.4));
        Optional<Level> landEdge = Optional.of(Level.at(0.6));
        assertThat(BARE.horizonOrLandEdge()).isEmpty();
        assertThat(BARE.withLandEdge(landEdge).horizonOrLandEdge()).isEqualTo(landEdge);
        assertThat(BARE.withHorizon(horizon).horizonOrLandEdge()).isEqualTo(horizon);
        assertThat(BARE.withLandEdge(landEdge).withHorizon(horizon).horizonOrLandEdge())
                .isEqualTo(horizon);
    }

    @Test
    void aWaterlineIsNeither() {
        assertThat(BARE.withWaterline(Optional.of(Level.at(0.7))).horizonOrLandEdge())
                .isEmpty();
    }
}
