package umbercard.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import umbercard.picture.ValueField;

class ShareSearchTest {
    private static final ValueField FIELD = Fields.smooth(150, 100, 3);

    @Test
    void takesTheQuantileWhereNothingGivesIn() {
        ShareSearch.Found found = new ShareSearch(FIELD).nearest(0.37, split -> Values.shareBelow(FIELD, split));
        assertThat(found.share()).isCloseTo(0.37, within(3e-4));
        assertThat(Values.shareBelow(FIELD, found.split())).isEqualTo(found.share());
    }

    @Test
    void looksFurtherWhereAPieceGivesIn() {
        // A tenth of the frame is never dark.
        DoubleUnaryOperator share = split -> Math.max(0, Values.shareBelow(FIELD, split) - 0.1);
        assertThat(new ShareSearch(FIELD).nearest(0.4, share).share()).isCloseTo(0.4, within(3e-4));
    }

    @Test
    void takesTheNearestWhereTheShareJumps() {
        DoubleUnaryOperator share = split -> Values.shareBelow(FIELD, split) < 0.42 ? 0.3 : 0.5;
        assertThat(new ShareSearch(FIELD).nearest(0.38, share).share()).isEqualTo(0.3);
        assertThat(new ShareSearch(FIELD).nearest(0.45, share).share()).isEqualTo(0.5);
    }
}
