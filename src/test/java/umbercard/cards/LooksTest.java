package umbercard.cards;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.ServiceLoader;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import umbercard.door.Deck;
import umbercard.door.Drawing;
import umbercard.door.Face;
import umbercard.door.Look;
import umbercard.door.Type;
import umbercard.words.Trouble;

class LooksTest {
    private static final Map<String, Class<?>> NEEDED =
            Map.of("margin", Double.class, "titlePoints", Double.class, "cross", Boolean.class, "ink", String.class);
    private static final String MARGIN = "'margin': {'value': 5, 'unit': 'mm', 'least': 3, 'most': 15}";
    private static final String TITLE = "'titlePoints': {'value': 10, 'unit': 'pt', 'least': 5, 'most': 15}";
    private static final String REST = "'cross': false, 'ink': 'black'";

    private static Look read(String json) throws IOException {
        byte[] bytes = json.replace('\'', '"').getBytes(StandardCharsets.UTF_8);
        return Looks.read("plain.json", new ByteArrayInputStream(bytes), NEEDED);
    }

    @Test
    void readsNumbersSwitchesAndWords() throws IOException {
        Look look = read("{" + MARGIN + ", " + TITLE + ", " + REST + "}");
        assertThat(look.number("margin")).isEqualTo(5);
        assertThat(look.on("cross")).isFalse();
        assertThat(look.word("ink")).isEqualTo("black");
    }

    @Test
    void everyFaceHasAWholeLook() throws Trouble {
        for (Face face : ServiceLoader.load(Face.class)) {
            assertThat(Looks.of(face).values().keySet()).isEqualTo(face.look().keySet());
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "margin|{MARGIN, TITLE, REST, 'margn': true}|margn",
                "lacks|{TITLE, REST}|margin",
                "low|{'margin': {'value': 2, 'unit': 'mm', 'least': 3, 'most': 15}, TITLE, REST}|margin",
                "high|{'margin': {'value': 16, 'unit': 'mm', 'least': 3, 'most': 15}, TITLE, REST}|margin",
                "type under nine points|{MARGIN, 'titlePoints': {'value': 8, 'unit': 'pt', 'least': 5, 'most': 15}, REST}|titlePoints",
                "bare number|{'margin': 5, TITLE, REST}|margin",
                "word for number|{'margin': {'value': 'five', 'unit': 'mm', 'least': 3, 'most': 15}, TITLE, REST}|margin",
                "no range|{'margin': {'value': 5, 'unit': 'mm'}, TITLE, REST}|margin",
                "number for switch|{MARGIN, TITLE, 'cross': 1, 'ink': 'black'}|cross",
                "switch for word|{MARGIN, TITLE, 'cross': true, 'ink': true}|ink",
                "twice|{MARGIN, MARGIN, TITLE, REST}|line 1",
                "no JSON|{MARGIN,|line 1",
                "empty||named entries",
                "list|[1]|named entries"
            })
    void aMistakeIsToldWithFileAndEntry(String what, String json, String entry) {
        String whole = json == null ? "" : json;
        assertThatThrownBy(() -> read(
                        whole.replace("MARGIN", MARGIN).replace("TITLE", TITLE).replace("REST", REST)))
                .as(what)
                .isInstanceOf(Trouble.class)
                .hasMessageContaining("plain.json")
                .hasMessageContaining(entry);
    }

    @Test
    void aLookThatIsNotThereIsTold() {
        Face bare = new Face() {
            @Override
            public String id() {
                return "nowhere";
            }

            @Override
            public int rank() {
                return 0;
            }

            @Override
            public Map<String, Class<?>> look() {
                return NEEDED;
            }

            @Override
            public List<Consumer<Drawing>> lay(Deck deck, Look look, Type type) {
                return List.of();
            }
        };
        assertThatThrownBy(() -> Looks.of(bare)).isInstanceOf(Trouble.class).hasMessageContaining("nowhere.json");
    }
}
