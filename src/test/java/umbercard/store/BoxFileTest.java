package umbercard.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import umbercard.color.Lab;
import umbercard.door.BoxReader;
import umbercard.door.Ranked;
import umbercard.door.Reads;
import umbercard.kernel.Plugins;
import umbercard.model.Box;
import umbercard.model.Stick;
import umbercard.words.Trouble;
import umbercard.words.Words;

class BoxFileTest {
    private static final Path HAND_WRITTEN = Path.of("src/test/resources/umbercard/store/boxes/hand-written.json");

    @TempDir
    private Path folder;

    @Property(tries = 100, seed = "20261124", edgeCases = EdgeCasesMode.NONE)
    void whatIsWrittenIsReadBackEqual(@ForAll("boxes") Box box) throws Trouble {
        assertThat(BoxFile.parse(BoxFile.text(box), "box.json")).isEqualTo(new Reads(box, List.of()));
    }

    @Provide
    static Arbitrary<Box> boxes() {
        return Studies.boxes();
    }

    @Test
    void aFileGoesOutAndComesBack() throws Exception {
        Box box = new Box(
                "b",
                "Shed tray",
                List.of(new Stick("a", "Wet slate", new Stick.Slot(1, 1), new Lab(30.5, -2, -8.25))),
                Map.of());
        Path file = folder.resolve("tray.json");
        BoxFile.write(box, file);
        assertThat(new Boxes().read(file)).isEqualTo(new Reads(box, List.of()));
        assertThat(file).content().contains("    {\"id\": \"a\", \"name\": \"Wet slate\", \"slot\": [1, 1], \"lab\"");
    }

    @Test
    void goodSticksAreKeptAndBadOnesNamed() throws Exception {
        Reads reads = new Boxes().read(HAND_WRITTEN);
        assertThat(reads.box().name()).isEqualTo("Shed tray");
        assertThat(reads.box().more()).containsOnlyKeys("maker");
        assertThat(reads.box().sticks()).extracting(Stick::id).containsExactly("a", "c", "h");
        Stick stub = reads.box().sticks().get(1);
        assertThat(stub.color().srgb()).isEqualTo(0xffffff);
        assertThat(stub.state()).isEqualTo(Stick.State.WORN_OUT);
        assertThat(stub.note()).isEqualTo("a stub");
        assertThat(stub.name()).isEmpty();
        assertThat(stub.more()).isEqualTo(Map.of("grain", "fine"));
        assertThat(reads.faults())
                .extracting(fault -> fault.line() + ": " + Words.say(fault.reason()))
                .containsExactly(
                        "0: sticks 2, lab is missing",
                        "0: sticks 4 has the id \"a\", which another stick has",
                        "0: sticks 5 should be a group of fields in braces",
                        "0: sticks 6, id is missing",
                        "0: sticks 7, hex should be a color such as \"#7a5c48\"",
                        "0: sticks 8, lab should begin with a lightness from 0 to 100",
                        "0: sticks 9, slot should be a list of numbers: row, column",
                        "0: sticks 10, hardness is \"crumbly\" and should be one of: hard, medium, soft");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
                    ``                                                                | b.json is empty; open another copy of it.
                    {                                                                 | b.json is damaged at line 1, column 2; mend it there in a text editor, or open another copy.
                    {"format": "umbercard-study", "version": "1.0"}                   | b.json is not a box of sticks; choose a file that was saved as one.
                    {"format": "umbercard-box", "version": "2.0", "name": "x"}        | b.json was saved by a newer Umbercard (format 2.0; this one reads 1); open it with the newer program.
                    {"format": "umbercard-box", "version": "1.0", "sticks": []}       | b.json: name is missing; correct it in a text editor, or open another copy.
                    {"format": "umbercard-box", "version": "1.0", "name": "x"}        | b.json: sticks is missing; correct it in a text editor, or open another copy.
                    {"format": "umbercard-box", "version": "1.0", "name": "x", "sticks": {}} | b.json: sticks should be a list in brackets; correct it in a text editor, or open another copy.
                    """)
    void whatIsNoBoxIsRefusedInOneSentence(String text, String sentence) {
        assertThatThrownBy(() -> BoxFile.parse(text, "b.json"))
                .isInstanceOf(Trouble.class)
                .hasMessage(sentence);
    }

    @Test
    void theBoxReaderIsFoundAndKnowsItsFiles() throws Exception {
        List<BoxReader> readers = Plugins.find(
                        BoxReader.class, Comparator.comparing(Ranked::rank).thenComparing(Ranked::id))
                .on();
        byte[] head = Files.readAllBytes(HAND_WRITTEN);
        Optional<BoxReader> reader =
                readers.stream().filter(r -> r.reads("tray.txt", head)).findFirst();
        assertThat(reader).containsInstanceOf(JsonBoxReader.class);
        try (var in = Files.newInputStream(HAND_WRITTEN)) {
            assertThat(reader.orElseThrow().read(HAND_WRITTEN.toString(), in))
                    .isEqualTo(new Boxes().read(HAND_WRITTEN));
        }
        byte[] study = "{\"format\": \"umbercard-study\"}".getBytes(StandardCharsets.UTF_8);
        assertThat(new JsonBoxReader().reads("box.json", study)).isFalse();
    }
}
