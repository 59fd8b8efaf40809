package umbercard.model.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import umbercard.Studies;
import umbercard.model.Study;

class ThresholdsTest {
    private static final Study STUDY = Thresholds.resetAll().apply(Studies.kilnHill());

    private static final Study CHANGED = Thresholds.limit("dark-share", "even", 0.08)
            .andThen(Thresholds.limit("dark-share", "least", 0.2))
            .andThen(Thresholds.limit("mirror", "most", 0.9))
            .andThen(Thresholds.silence("mirror", true))
            .andThen(Thresholds.silence("corners", true))
            .apply(STUDY);

    @Test
    void limitsAreSetOneByOne() {
        assertThat(CHANGED.limits())
                .isEqualTo(Map.of("dark-share", Map.of("even", 0.08, "least", 0.2), "mirror", Map.of("most", 0.9)));
        assertThat(Thresholds.limit("mirror", "most", 0.7).apply(CHANGED).limits())
                .containsEntry("mirror", Map.of("most", 0.7))
                .containsEntry("dark-share", Map.of("even", 0.08, "least", 0.2));
    }

    @Test
    void readingsAreSilencedAndHeardAgain() {
        assertThat(CHANGED.silenced()).containsExactly("corners", "mirror");
        assertThat(Thresholds.silence("corners", false).apply(CHANGED).silenced())
                .containsExactly("mirror");
    }

    @Test
    void oneReadingOrAllArePutBack() {
        Study one = Thresholds.reset("mirror").apply(CHANGED);
        assertThat(one.limits()).containsOnlyKeys("dark-share");
        assertThat(one.silenced()).containsExactly("corners");
        assertThat(Thresholds.resetAll().apply(CHANGED)).isEqualTo(STUDY);
    }

    @Test
    void aStepIsTakenBack() {
        History<String> history = new History<>(STUDY);
        history.edit("silence", Thresholds.silence("mirror", true), Optional.empty());
        history.undo();
        assertThat(history.study()).isEqualTo(STUDY);
        history.edit("nothing", Thresholds.reset("mirror"), Optional.empty());
        assertThat(history.undoable()).as("what changes nothing is no step").isEmpty();
    }
}
