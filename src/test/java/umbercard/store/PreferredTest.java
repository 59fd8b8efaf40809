package umbercard.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.prefs.Preferences;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
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
}
