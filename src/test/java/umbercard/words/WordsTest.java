package umbercard.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import umbercard.color.HueFamily;
import umbercard.color.MunsellValue;
import umbercard.color.ValueScale;
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

    @AfterEach
    void numberValuesAsBefore() {
        Words.useValues(ValueScale.MUNSELL);
    }

    /** Munsell's 7.5 on each scale: the mean of its middle and its white; with names, Light (Ross 1907, section 128). */
    @ParameterizedTest
    @CsvSource({
        "ZERO_TO_TEN, 7.5, 7.5",
        "TEN_TO_ZERO, 2.5, 2.5",
        "ONE_TO_TEN, 7.8, 7.8",
        "TEN_TO_ONE, 3.2, 3.2",
        "ONE_TO_NINE, 7.0, 7.0",
        "NINE_TO_ONE, 3.0, 3.0",
        "NAMES, Light, Lt"
    })
    void valuesAreSaidInThePaintersNumbering(ValueScale scale, String said, String brief) {
        MunsellValue value = new MunsellValue(7.5);
        Words.useValues(scale);
        assertThat(Words.say(value)).isEqualTo(said);
        assertThat(Words.brief(value)).isEqualTo(brief);
        assertThat(Words.say("box.stick", "Straw", value)).isEqualTo("Straw   value " + said);
        Message nested = Message.of("desk.menu.undo-named", Message.of("cards.notes.value", value));
        assertThat(Words.say(nested)).isEqualTo("Undo value " + said);
        assertThat(Words.say(nested, ValueScale.MUNSELL)).as("for scripts").isEqualTo("Undo value 7.5");
        assertThat(Words.say("desk.card.level", "horizon", 7.5))
                .as("other numbers")
                .isEqualTo("horizon 7.50");
    }

    @Test
    void everyValueHasItsNameInFullAndInBrief() {
        Words.useValues(ValueScale.NAMES);
        List<MunsellValue> values =
                ValueScale.NAMES.marks().stream().map(MunsellValue::new).toList();
        assertThat(values.stream().map(Words::say))
                .containsExactly(
                        "Black",
                        "Low Dark",
                        "Dark",
                        "High Dark",
                        "Middle",
                        "Low Light",
                        "Light",
                        "High Light",
                        "White");
        assertThat(values.stream().map(Words::brief))
                .containsExactly("Blk", "LD", "D", "HD", "M", "LLt", "Lt", "HLt", "Wh");
    }

    @ParameterizedTest
    @EnumSource
    void everyScaleAndFamilyOfHueHasWords(HueFamily family) {
        assertThat(Words.say("trade.hue-family." + family.key())).isNotBlank();
        for (ValueScale scale : ValueScale.values()) {
            assertThat(Words.say("desk.menu.values." + scale.key())).startsWith("Values: ");
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

    private static Properties read(Path bundle) throws IOException {
        Properties words = new Properties();
        try (Reader in = Files.newBufferedReader(bundle, StandardCharsets.UTF_8)) {
            words.load(in);
        }
        return words;
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void everyPatternIsWellFormed(Path bundle) throws IOException {
        Properties words = read(bundle);
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

    private static Set<String> keys() throws IOException {
        Set<String> keys = new TreeSet<>();
        for (Path bundle : bundles().toList()) {
            keys.addAll(read(bundle).stringPropertyNames());
        }
        return keys;
    }

    private static String code() throws IOException {
        StringBuilder code = new StringBuilder();
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            for (Path file :
                    files.filter(path -> path.toString().endsWith(".java")).toList()) {
                code.append(Files.readString(file));
            }
        }
        return code.toString();
    }

    private static Set<String> found(String pattern, String code) {
        return Pattern.compile(pattern)
                .matcher(code)
                .results()
                .map(match -> match.group(1))
                .collect(Collectors.toSet());
    }

    /** What keys are put together from: quoted words, names of classes, and constants the way keys write them. */
    private static Set<String> pieces(String code) {
        Set<String> pieces = found("\"[.-]?([\\w.-]+)\"", code);
        pieces.addAll(found("\\b(\\w+)\\.class\\b", code));
        found("\\b([A-Z][A-Z_]+)\\b", code)
                .forEach(name -> pieces.add(name.toLowerCase(Locale.ROOT).replace('_', '-')));
        return pieces;
    }

    /** Whether the rest of a key falls, at its dots and hyphens, into pieces. */
    private static boolean isMadeOf(String rest, Set<String> pieces) {
        if (rest.isEmpty() || pieces.contains(rest)) {
            return true;
        }
        return IntStream.range(0, rest.length())
                .filter(i -> rest.charAt(i) == '.' || rest.charAt(i) == '-')
                .anyMatch(i -> (i == 0 || pieces.contains(rest.substring(0, i)))
                        && i + 1 < rest.length()
                        && isMadeOf(rest.substring(i + 1), pieces));
    }

    @Test
    void everyKeyIsUsed() throws IOException {
        Set<String> pieces = pieces(code());
        List<String> beginnings =
                pieces.stream().filter(piece -> piece.indexOf('.') > 0).toList();
        Set<String> keys = keys();
        assertThat(keys).hasSizeGreaterThan(100);
        assertThat(keys.stream()
                        .filter(key -> beginnings.stream()
                                .noneMatch(begun ->
                                        key.startsWith(begun) && isMadeOf(key.substring(begun.length()), pieces))))
                .as("keys that no code uses")
                .isEmpty();
    }

    /** One that ends in a dot or hyphen, or that another word follows, begins a key. Names of components are no keys. */
    @Test
    void everyKeyInTheCodeExists() throws IOException {
        Set<String> keys = keys();
        String names = bundles()
                .map(bundle -> bundle.getFileName().toString().replace(".properties", ""))
                .collect(Collectors.joining("|"));
        String code = code().replaceAll("setName\\(\"[^\"]*\"", "");
        Set<String> written = found("\"((?:" + names + ")\\.[\\w.-]*)\"", code);
        assertThat(written).hasSizeGreaterThan(100);
        assertThat(written.stream()
                        .filter(key -> !keys.contains(key))
                        .map(key -> key.matches(".*[.-]") ? key : key + ".")
                        .filter(begun -> keys.stream().noneMatch(key -> key.startsWith(begun))))
                .as("keys that no bundle has")
                .isEmpty();
    }
}
