package umbercard.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.Properties;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import umbercard.door.Finding;
import umbercard.model.ColorNote;
import umbercard.model.Keyed;
import umbercard.model.Light;
import umbercard.model.Surface;
import umbercard.model.Zone;
import umbercard.notes.Purposes;

class WordsTest {
    private static final Path BUNDLES = Path.of("src/main/resources/umbercard/words");

    @Test
    void argumentsThatAreMessagesAreSaidFirst() {
        assertThat(Words.say("desk.menu.undo-named", Message.of("trade.purpose.land-edge")))
                .isEqualTo("Undo land edge");
    }

    @Test
    void numbersAreWrittenAlikeOnEveryMachine() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertThat(Words.say("desk.card.level", "horizon", 0.61)).isEqualTo("horizon .61");
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void aKeyThatNoBundleHasIsADefect() {
        assertThatThrownBy(() -> Words.say("desk.no-such-key")).isInstanceOf(MissingResourceException.class);
    }

    @Test
    void troubleSaysItsSentence() {
        assertThat(new Trouble(Message.of("trade.light.low-sun"))).hasMessage("low sun");
    }

    static Stream<Keyed> everyChoice() {
        return Stream.<Keyed[]>of(
                        Light.values(),
                        Surface.Unit.values(),
                        Zone.Plane.values(),
                        Zone.Distance.values(),
                        ColorNote.Direction.values(),
                        ColorNote.Touch.values(),
                        Finding.Verdict.values())
                .flatMap(Stream::of);
    }

    @ParameterizedTest
    @MethodSource("everyChoice")
    void everyChoiceHasWords(Keyed choice) {
        String kind = choice.getClass().getSimpleName().toLowerCase(Locale.ROOT);
        assertThat(Words.say("trade." + kind + "." + choice.key())).isNotBlank();
    }

    @Test
    void everyPurposeHasWordsAndIsFoundByThem() {
        assertThat(Purposes.KEYS)
                .allSatisfy(key -> assertThat(Purposes.key(Purposes.words(key))).isEqualTo(key));
        assertThat(Purposes.key("  the gate ")).isEqualTo("the gate");
    }

    static Stream<Path> bundles() throws IOException {
        return Files.list(BUNDLES);
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void everyPatternIsWellFormed(Path bundle) throws IOException {
        Properties words = new Properties();
        try (Reader in = Files.newBufferedReader(bundle, StandardCharsets.UTF_8)) {
            words.load(in);
        }
        String name = bundle.getFileName().toString().replace(".properties", "");
        assertThat(words).isNotEmpty();
        words.forEach((key, pattern) -> {
            assertThat((String) key).startsWith(name + ".");
            assertThat(new MessageFormat((String) pattern, Locale.ENGLISH).toPattern())
                    .as("%s: a single quote is written twice", key)
                    .doesNotContain("'{");
            assertThat(((String) pattern).replace("''", ""))
                    .as("%s: a single quote is written twice", key)
                    .doesNotContain("'");
        });
    }
}
