package umbercard.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import umbercard.color.Lab;
import umbercard.door.Reads;
import umbercard.model.Box;
import umbercard.model.Stick;
import umbercard.model.Stick.Slot;
import umbercard.words.Trouble;
import umbercard.words.Words;

class CsvBoxTextTest {
    @TempDir
    private Path folder;

    private static Reads parse(String text) throws IOException {
        return new CsvBoxReader().read("tray.csv", new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
    }

    /** What a table has room for: texts that are not blank. A name without a word is none. */
    private static Stick inATable(Stick stick) {
        Map<String, Object> texts = new TreeMap<>(stick.more());
        texts.entrySet()
                .removeIf(field -> !(field.getValue() instanceof String text)
                        || text.isBlank()
                        || !CsvHeader.isOther(field.getKey()));
        return stick.withMore(texts)
                .withName(stick.name().filter(name -> !name.isBlank()))
                .withNote(stick.note().isBlank() ? "" : stick.note());
    }

    @Property(tries = 300, seed = "20261201", edgeCases = EdgeCasesMode.MIXIN)
    void sticksComeBackEqual(@ForAll("boxes") Box box) throws IOException {
        Reads back = parse(CsvBoxText.text(box));
        assertThat(back.faults()).isEmpty();
        Box kept = box.withSticks(
                box.sticks().stream().map(CsvBoxTextTest::inATable).toList());
        assertThat(back.box().sticks()).isEqualTo(kept.sticks());
        assertThat(CsvBoxText.text(back.box())).isEqualTo(CsvBoxText.text(kept));
    }

    @Provide
    static Arbitrary<Box> boxes() {
        return Studies.boxes();
    }

    @Test
    void thePackedBoxComesBackUnderTheNameOfItsFile() throws IOException {
        Box box = Samples.kilnYard().box();
        Reads back = new CsvBoxReader()
                .read(
                        "kiln-yard-36.csv",
                        new ByteArrayInputStream(CsvBoxText.text(box).getBytes(StandardCharsets.UTF_8)));
        assertThat(back.box()).isEqualTo(box.withName("kiln-yard-36"));
        assertThat(CsvBoxText.left(back.box(), "kiln-yard-36.csv")).isEmpty();
    }

    /** RFC 4180, 2: lines end in CR LF; cells with commas, quotes or line breaks are in quotes, and quotes are doubled. */
    @Test
    void isWrittenByTheStandard() {
        Stick stick = new Stick("s1", "Slate, \"wet\"", new Slot(27, 3), new Lab(30.5, -0.1, 1e-30))
                .withNote("two\nlines")
                .withState(Stick.State.WORN_OUT);
        assertThat(CsvBoxText.text(new Box("b", "Tray", List.of(stick), Map.of())))
                .isEqualTo("name,place,L,a,b,white,hardness,owned,note,id\r\n"
                        + "\"Slate, \"\"wet\"\"\",27-3,30.5,-0.1,1E-30,D65,,worn out,\"two\nlines\",s1\r\n");
    }

    @Test
    void whatATableHasNoRoomForIsTold() {
        Stick stick = new Stick("s1", "Slate", new Slot(1, 1), new Lab(30, 0, 0))
                .withMore(Map.of("grain", "fine", "weight", 12, "row", "9"));
        Box box = new Box("b", "Shed tray", List.of(stick), Map.of("maker", "none"));
        assertThat(CsvBoxText.left(box, "out/tray.csv").map(Words::say))
                .contains(
                        "out/tray.csv has no room for these fields of the box: id; maker; name; sticks, row; sticks, weight."
                                + " A file that ends in .json has.");
        assertThat(CsvBoxText.text(box)).contains(",id,grain\r\n").doesNotContain("weight");
    }

    @Test
    void theEndingChoosesTheKindOfFile() throws IOException {
        Box box = Samples.kilnYard().box();
        Path json = folder.resolve("kiln-yard-36.JSON");
        Path csv = folder.resolve("kiln-yard-36.csv");
        assertThat(Boxes.write(box, json)).isEmpty();
        assertThat(Boxes.write(box, csv)).hasSize(1);
        assertThat(Files.readString(json)).isEqualTo(BoxFile.text(box));
        assertThat(Files.readString(csv)).isEqualTo(CsvBoxText.text(box));
        assertThat(new Boxes().read(csv).box().sticks())
                .isEqualTo(new Boxes().read(json).box().sticks());
        Path other = folder.resolve("tray.xls");
        assertThatThrownBy(() -> Boxes.write(box, other))
                .isInstanceOf(Trouble.class)
                .hasMessage(other + " does not say what kind of box to write; give a name that ends in .json or .csv.");
        assertThat(other).doesNotExist();
    }

    @Test
    void anEmptyBoxIsAFirstLine() throws IOException {
        assertThat(parse(CsvBoxText.text(new Box("b", "tray", List.of(), Map.of())))
                        .box()
                        .sticks())
                .isEmpty();
        assertThat(Optional.of(CsvBoxText.text(new Box("tray", "tray", List.of(), Map.of()))))
                .contains("name,place,L,a,b,white,hardness,owned,note,id\r\n");
    }
}
