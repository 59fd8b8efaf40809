package umbercard.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class KeyedTest {
    @Test
    void aKeyIsLowerCaseWithHyphens() {
        assertThat(Light.LOW_SUN.key()).isEqualTo("low-sun");
        assertThat(CardSettings.Backs.BY_HAND.key()).isEqualTo("by-hand");
        assertThat(ColorNote.Direction.SLANT_LEFT.key()).isEqualTo("slant-left");
    }

    @Test
    void aKeyIsTheSameInEveryCountry() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr"));
            assertThat(Surface.Unit.IN.key()).isEqualTo("in");
        } finally {
            Locale.setDefault(before);
        }
    }

    static Stream<Class<? extends Enum<?>>> lists() {
        return Stream.of(
                Light.class,
                Surface.Unit.class,
                Thumbnail.Ground.class,
                Mark.Kind.class,
                Zone.Plane.class,
                Zone.Distance.class,
                Stick.Hardness.class,
                Stick.State.class,
                ColorNote.Direction.class,
                ColorNote.Touch.class,
                CardSettings.Backs.class);
    }

    @ParameterizedTest
    @MethodSource("lists")
    <E extends Enum<E> & Keyed> void everyChoiceIsFoundByItsKeyAndByNothingElse(Class<E> list) {
        assertThat(List.of(list.getEnumConstants()))
                .allSatisfy(choice -> assertThat(Keyed.find(list, choice.key())).contains(choice));
        assertThat(Keyed.find(list, "nothing")).isEmpty();
        assertThat(Keyed.find(list, list.getEnumConstants()[0].name())).isEmpty();
    }
}
