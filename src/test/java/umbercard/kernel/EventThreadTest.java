package umbercard.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.util.concurrent.atomic.AtomicReference;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;

class EventThreadTest {
    @Test
    void slowWorkMayRunElsewhere() {
        assertThatCode(() -> EventThread.refuse("decoding")).doesNotThrowAnyException();
    }

    @Test
    void slowWorkMayNotRunOnTheToolkitsOwnThread() throws Exception {
        AtomicReference<String> said = new AtomicReference<>("");
        SwingUtilities.invokeAndWait(() -> {
            try {
                EventThread.refuse("decoding");
            } catch (IllegalStateException refused) {
                said.set(refused.getMessage());
            }
        });
        assertThat(said.get()).isEqualTo("decoding must not run on the event thread");
    }
}
