package umbercard.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import umbercard.door.BoxReader;
import umbercard.door.Reads;
import umbercard.model.Stick;
import umbercard.words.Trouble;
import umbercard.words.Words;

/** Whatever a file holds, a reader gives a box that can be saved, or one sentence. */
class AnyBytesTest {
    private static final List<BoxReader> READERS = List.of(new JsonBoxReader(), new CsvBoxReader());

    private static final List<String> PIECES = List.of(
            "hex",
            "L",
            "a",
            "b",
            "x",
            "y",
            "Y",
            "white",
            "name",
            "place",
            "row",
            "column",
            "owned",
            "id",
            ",",
            ",",
            ",",
            ";",
            "\t",
            "\n",
            "\n",
            "\r\n",
            "\r",
            "\"",
            " ",
            "#7a5c48",
            "50",
            "-2,5",
            "0.3",
            "1e999",
            "9".repeat(50),
            "NaN",
            "B3",
            "999999999999-1",
            "0-0",
            "D50",
            "C",
            "yes",
            "\u0000",
            "\uFEFF",
            "\uD800",
            "{",
            "}",
            "[",
            "\"format\":\"umbercard-box\",",
            "\"version\":\"1.0\",",
            "\"sticks\":",
            "\"lab\":",
            "\u0662",
            "\u00a0");

    private static void assertReadOrToldBy(BoxReader reader, byte[] bytes) throws IOException {
        reader.reads("box", bytes);
        Reads reads;
        try {
            reads = reader.read("box", new ByteArrayInputStream(bytes));
        } catch (Trouble told) {
            assertThat(Words.say(told.said())).contains("box");
            return;
        }
        reads.remarks().forEach(Words::say);
        reads.faults().forEach(fault -> Words.say(fault.reason()));
        assertThat(reads.box().sticks()).extracting(Stick::id).doesNotHaveDuplicates();
        assertThat(BoxFile.parse(BoxFile.text(reads.box()), "box").faults()).isEmpty();
    }

    @Property(tries = 300, seed = "20261202")
    void ofBytes(@ForAll byte[] bytes) throws IOException {
        for (BoxReader reader : READERS) {
            assertReadOrToldBy(reader, bytes);
        }
    }

    @Property(tries = 1000, seed = "20261203")
    void ofPieces(@ForAll("pieces") String text) throws IOException {
        for (BoxReader reader : READERS) {
            assertReadOrToldBy(reader, text.getBytes(StandardCharsets.UTF_8));
        }
    }

    @Provide
    static Arbitrary<String> pieces() {
        Arbitrary<String> heads =
                Arbitraries.of("", "hex,name\n", "L;a;b;white\n", "x,y,Y,place,owned\n", "id\thex\trow\tcolumn\n");
        Arbitrary<String> rest = Arbitraries.of(PIECES).list().ofMaxSize(60).map(pieces -> String.join("", pieces));
        return heads.flatMap(head -> rest.map(pieces -> head + pieces));
    }

    @Property(tries = 300, seed = "20261204")
    void ofABoxWithBytesChanged(@ForAll long seed) throws IOException {
        Random random = new Random(seed);
        for (BoxReader reader : READERS) {
            String whole = reader instanceof CsvBoxReader
                    ? CsvBoxText.text(Samples.kilnYard().box())
                    : BoxFile.text(Samples.kilnYard().box());
            byte[] bytes = whole.getBytes(StandardCharsets.UTF_8);
            for (int i = random.nextInt(8); i >= 0; i--) {
                bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
            }
            assertReadOrToldBy(
                    reader, random.nextBoolean() ? bytes : Arrays.copyOf(bytes, random.nextInt(bytes.length)));
        }
    }
}
