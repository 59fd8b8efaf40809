package umbercard.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.prefs.Preferences;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import umbercard.color.ValueScale;

class PreferredTest {
    private final Preferences kept = Preferences.userRoot().node("umbercard");

    @BeforeEach
    @AfterEach
    void forget() {
        kept.remove("values");
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
}
