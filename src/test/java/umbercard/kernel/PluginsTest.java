package umbercard.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import umbercard.door.Ranked;
import umbercard.door.Reading;

class PluginsTest {
    private static final Supplier<String> GOOD = () -> "good";
    private static final Supplier<String> THROWS = () -> {
        throw new IllegalStateException("broken on purpose");
    };
    private static final Supplier<String> MISSES_A_CLASS = () -> {
        throw new NoClassDefFoundError("missing on purpose");
    };

    @Test
    void findsTheProgramsOwnReadingsInOrder() {
        List<String> ids = Plugins.find(Reading.class, Ranked.ORDER).on().stream()
                .map(Reading::id)
                .toList();
        assertThat(ids).contains("dark-share", "horizon-height");
        assertThat(Plugins.find(Reading.class, Ranked.ORDER).on())
                .isSortedAccordingTo(Comparator.comparingInt(Reading::rank));
    }

    @Test
    void aPluginThatThrowsIsSwitchedOffAndReportedOnce() {
        Plugins<Supplier<String>> plugins = Plugins.of(List.of(THROWS, GOOD));
        assertThat(plugins.ask(THROWS, Supplier::get)).isEmpty();
        assertThat(plugins.ask(THROWS, Supplier::get)).isEmpty();
        assertThat(plugins.on()).containsExactly(GOOD);
        assertThat(plugins.switchedOff()).hasSize(1);
        assertThat(plugins.switchedOff().get(0).cause()).hasMessage("broken on purpose");
    }

    @Test
    void aPluginThatMissesAClassIsSwitchedOff() {
        Plugins<Supplier<String>> plugins = Plugins.of(List.of(MISSES_A_CLASS));
        assertThat(plugins.ask(MISSES_A_CLASS, Supplier::get)).isEmpty();
        assertThat(plugins.on()).isEmpty();
    }

    @Test
    void theOthersDoNotNotice() {
        Plugins<Supplier<String>> plugins = Plugins.of(List.of(THROWS, GOOD));
        assertThat(plugins.ask(THROWS, Supplier::get)).isEmpty();
        assertThat(plugins.ask(GOOD, Supplier::get)).contains("good");
    }
}
