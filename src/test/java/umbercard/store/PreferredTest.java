package umbercard.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Set;
import java.util.prefs.Preferences;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import umbercard.color.ValueScale;

class PreferredTest {
    private final Preferences kept = Preferences.userRoot().node("umbercard");

    @BeforeEach
    @AfterEach
    void forget() {
        kept.remove("values");
        kept.remove("trust-in-value");
        Preferred.keepLimits(Map.of());
        Preferred.keepSilenced(Set.of());
    }

    @ParameterizedTest
    @EnumSource
    void theNumberingIsKept(ValueScale scale) {
        Preferred.keepValues(scale);
        assertThat(Preferred.values()).isEqualTo(scale);
    }

    @Test
    void withoutAChoiceOrWithOneThatIsNotKnownItIsMunsells() {
        assertThat(Preferred.values()).isEqualTo(ValueScale.MUNSELL);
        kept.put("values", "in-dozens");
        assertThat(Preferred.values()).isEqualTo(ValueScale.MUNSELL);
    }

    @Test
    void howFarValueIsTrustedIsKept() {
        assertThat(Preferred.trust()).isEqualTo(1);
        Preferred.keepTrust(0.35);
        assertThat(Preferred.trust()).isEqualTo(0.35);
    }

    @ParameterizedTest
    @ValueSource(strings = {"2", "-0.1", "NaN", "much"})
    void aTrustThatIsNoneIsAsIfItHadNeverBeenChosen(String written) {
        kept.put("trust-in-value", written);
        assertThat(Preferred.trust()).isEqualTo(1);
    }

    @Test
    void limitsOfReadingsAreKeptAndNoOthersThanTheLast() {
        assertThat(Preferred.limits()).isEmpty();
        Preferred.keepLimits(Map.of("dark-share", Map.of("even", 0.08, "least", 0.2), "mirror", Map.of("most", 0.9)));
        assertThat(Preferred.limits())
                .isEqualTo(Map.of("dark-share", Map.of("even", 0.08, "least", 0.2), "mirror", Map.of("most", 0.9)));
        Preferred.keepLimits(Map.of("dark-share", Map.of("even", 0.07)));
        assertThat(Preferred.limits()).isEqualTo(Map.of("dark-share", Map.of("even", 0.07)));
        Preferred.keepLimits(Map.of());
        assertThat(Preferred.limits()).isEmpty();
    }

    @Test
    void silencedReadingsAreKeptAndNoOthersThanTheLast() {
        assertThat(Preferred.silenced()).isEmpty();
        Preferred.keepSilenced(Set.of("corners", "mirror"));
        assertThat(Preferred.silenced()).containsExactly("corners", "mirror");
        Preferred.keepSilenced(Set.of("mirror"));
        assertThat(Preferred.silenced()).containsExactly("mirror");
    }

    @ParameterizedTest
    @CsvSource({
        "dark-share/even, much",
        "dark-share/even, NaN",
        "dark-share/even, Infinity",
        "dark-share/even, ''",
        "even, 0.1",
        "/even, 0.1"
    })
    void limitsThatAreNoneAreAsIfTheyHadNeverBeenChosen(String key, String written) {
        Preferred.keepLimits(Map.of("mirror", Map.of("most", 0.9)));
        kept.node("limits").put(key, written);
        assertThat(Preferred.limits()).isEqualTo(Map.of("mirror", Map.of("most", 0.9)));
    }

    @Test
    void aNameTooLongToBeKeptIsLeftOutAndTheOthersKept() {
        String longName = "a".repeat(Preferences.MAX_KEY_LENGTH);
        Preferred.keepLimits(Map.of(longName, Map.of("even", 0.1), "mirror", Map.of("most", 0.9)));
        assertThat(Preferred.limits()).containsOnlyKeys("mirror");
    }
}
