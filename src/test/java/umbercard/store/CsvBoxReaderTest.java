package umbercard.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import umbercard.color.Lab;
import umbercard.door.Reads;
import umbercard.model.Stick;
import umbercard.model.Stick.Hardness;
import umbercard.model.Stick.Slot;
import umbercard.model.Stick.State;
import umbercard.words.Trouble;
import umbercard.words.Words;

class CsvBoxReaderTest {
    private static Reads read(byte[] bytes) throws IOException {
        return new CsvBoxReader().read("trays/Shed tray.csv", new ByteArrayInputStream(bytes));
    }

    private static Reads read(String... lines) throws IOException {
        return read(String.join("\r\n", lines).getBytes(StandardCharsets.UTF_8));
    }

    private static List<String> faults(Reads reads) {
        return reads.faults().stream()
                .map(fault -> fault.line() + ": " + Words.say(fault.reason()))
                .toList();
    }

    private static List<String> remarks(Reads reads) {
        return reads.remarks().stream().map(Words::say).toList();
    }

    private static List<Integer> colors(Reads reads) {
        return reads.box().sticks().stream().map(stick -> stick.color().srgb()).toList();
    }

    @Test
    void everyColumnIsRead() throws IOException {
        Reads reads = read(
                "id,name,place,L,a,b,white,hardness,owned,note,grain",
                "s9,Wet slate,B3,30.5,-2,-8.25,D65,Hard,worn out,\"a stub, nearly\",fine",
                ",,,41,0,0,D65,,,,");
        assertThat(reads.box().name()).isEqualTo("Shed tray");
        assertThat(reads.box().id()).isEqualTo("shed-tray");
        assertThat(reads.box().sticks().get(0))
                .isEqualTo(new Stick(
                        "s9",
                        Optional.of("Wet slate"),
                        Optional.of(new Slot(2, 3)),
                        new Lab(30.5, -2, -8.25),
                        Optional.of(Hardness.HARD),
                        State.WORN_OUT,
                        "a stub, nearly",
                        Map.of("grain", "fine")));
        Stick bare = reads.box().sticks().get(1);
        assertThat(bare)
                .isEqualTo(new Stick(
                        bare.id(),
                        Optional.empty(),
                        Optional.empty(),
                        new Lab(41, 0, 0),
                        Optional.empty(),
                        State.OWNED,
                        "",
                        Map.of()));
        assertThat(faults(reads)).isEmpty();
        assertThat(remarks(reads))
                .containsExactly(
                        "Read as a table with commas between its cells; colors from L, a, b (D65).",
                        "This column means nothing here and is kept as it is: grain.");
    }

    @ParameterizedTest
    @CsvSource({"B3, 2, 3", "b 12, 2, 12", "Z1, 26, 1", "2-3, 2, 3", "27 - 4, 27, 4"})
    void aPlaceIsALetterOrANumberAndANumber(String place, int row, int column) throws IOException {
        Stick stick = read("hex,place", "#7a5c48," + place).box().sticks().get(0);
        assertThat(stick.slot()).contains(new Slot(row, column));
    }

    @Test
    void aPlaceMayStandInTwoColumns() throws IOException {
        Reads reads = read("hex,row,column", "#7a5c48,2,3", "#7a5c48,c,4", "#7a5c48,,", "#7a5c48,2,", "#7a5c48,0,1");
        assertThat(reads.box().sticks())
                .extracting(Stick::slot)
                .containsExactly(Optional.of(new Slot(2, 3)), Optional.of(new Slot(3, 4)), Optional.empty());
        assertThat(faults(reads))
                .containsExactly("5: column is missing", "6: row should be a whole number of 1 or more");
    }

    @ParameterizedTest
    @CsvSource({
        "yes, OWNED",
        "No, NOT_OWNED",
        "worn out, WORN_OUT",
        "WORN-OUT, WORN_OUT",
        "not owned, NOT_OWNED",
        "owned, OWNED"
    })
    void whetherItIsOwnedIsSaidInWords(String owned, State state) throws IOException {
        assertThat(read("hex,owned", "#7a5c48," + owned).box().sticks())
                .extracting(Stick::state)
                .containsExactly(state);
    }

    @Test
    void badLinesAreNamedByLineAndReasonAndTheGoodOnesKept() throws IOException {
        Reads reads = read(
                "name,L,a,b,white,place,hardness,owned,id",
                "good,50,0,0,D65,A1,,,1",
                "no lightness,,0,0,D65,,,,2",
                "letters,5O,0,0,D65,,,,3",
                "too light,101,0,0,D65,,,,4",
                "too red,50,300,0,D65,,,,5",
                "white,50,0,0,D93,,,,6",
                "place,50,0,0,D65,33,,,7",
                "hardness,50,0,0,D65,,crumbly,,8",
                "owned,50,0,0,D65,,,maybe,9",
                "\"two",
                "lines\",50,x,0,D65,,,,10",
                "too many, cells,50,0,0,D65,,,,11",
                "nothing,,,,,,,,12",
                "same id,50,0,0,D65,,,,1",
                ",,,,,,,,",
                "",
                "good too,51,0,0,D65");
        assertThat(reads.box().sticks()).extracting(Stick::title).containsExactly("good", "good too");
        assertThat(faults(reads))
                .containsExactly(
                        "3: L is missing",
                        "4: L is \"5O\" and should be a number",
                        "5: L should be a number from 0 to 100",
                        "6: a should be numbers from -200 to 200",
                        "7: white is \"D93\" and should be one of: A, C, D50, D65",
                        "8: place is \"33\" and should be a row and a column such as B3 or 2-3",
                        "9: hardness is \"crumbly\" and should be one of: hard, medium, soft",
                        "10: owned is \"maybe\" and should be one of: yes, no, worn out",
                        "11: a is \"x\" and should be a number",
                        "13: the whole has 10 cells, and the first line has 9; put a cell with a comma in quotes",
                        "14: L is missing",
                        "15: id has the id \"1\", which another stick has");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            hex,white;#7a5c48,C          | 2: white is C, and hex has D65 by its standard
            hex;7a5c4                    | 2: hex should be a color such as "#7a5c48"
            x,y,Y;0.3,0,20               | 2: y should be a number over 0 and up to 1
            x,y,Y;0.6,0.5,20             | 2: x should leave something over for z: x and y are more than 1
            x,y,Y;0.3,0.3,120            | 2: Y should be a number from 0 to 100
            x,y,Y;0.001,0.9,90           | 2: x, y, Y is no color that a stick can have once it is seen under D65
            """)
    void colorsThatCannotBeAreNamed(String lines, String fault) throws IOException {
        Reads reads = read(lines.split(";"));
        assertThat(reads.box().sticks()).isEmpty();
        assertThat(faults(reads)).containsExactly(fault);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            name,hardness      | has no column of colors, for its first line is: name, hardness; name the columns there: hex, or L, a, b, or x, y, Y.
            #7a5c48            | has no column of colors, for its first line is: #7a5c48; name the columns there: hex, or L, a, b, or x, y, Y.
            name,L,a           | has some of the columns L, a, b, but not b; name all three in its first line.
            X,Y,Z              | has some of the columns x, y, Y, but not y; name all three in its first line.
            x,y,y              | has the column y twice; leave one (of y and Y, the capital one is the luminance).
            hex,Hex            | has the column Hex twice; leave one (of y and Y, the capital one is the luminance).
            "hex               | has a quote out of place in line 1; mend it there in a text editor.
            """, quoteCharacter = '`')
    void aFirstLineWithoutAColorIsRefused(String first, String sentence) {
        assertThatThrownBy(() -> read(first, "#7a5c48"))
                .isInstanceOf(Trouble.class)
                .hasMessage("trays/Shed tray.csv " + sentence);
    }

    @Test
    void aFirstLineMayBeInEitherCaseWithSpacesAndQuotes() throws IOException {
        Reads reads = read(" HEX , \"Name\" ,Owned", "7A5C48 ,  \" Peat \" , no", " #000000,Soot ,yes");
        assertThat(colors(reads)).containsExactly(0x7a5c48, 0);
        assertThat(reads.box().sticks())
                .extracting(stick -> stick.name().orElseThrow())
                .containsExactly(" Peat ", "Soot");
        assertThat(read("X,y,Y", "0.3127,0.3290,20").box().sticks()).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource({"';', semicolons", "'\t', tabs"})
    void decimalCommasStandBetweenSemicolonsOrTabs(String separator, String said) throws IOException {
        Reads reads = read(
                "name|L|a|b|white".replace("|", separator),
                "Slate, wet|30,5|-2|\u22128,25|D65".replace("|", separator));
        assertThat(reads.box().sticks().get(0).title()).isEqualTo("Slate, wet");
        assertThat(reads.box().sticks().get(0).color()).isEqualTo(new Lab(30.5, -2, -8.25));
        assertThat(remarks(reads))
                .containsExactly("Read as a table with " + said
                        + " between its cells and decimal commas; colors from L, a, b (D65).");
    }

    @Test
    void decimalPointsAndCommasInOneTableAreTold() throws IOException {
        Reads reads = read("L,a,b,white", "\"30,5\",1.5,0,D65", "1.234,5,0,0,D65");
        assertThat(reads.box().sticks()).extracting(Stick::color).containsExactly(new Lab(30.5, 1.5, 0));
        assertThat(remarks(reads).get(0)).contains(", decimal points and decimal commas;");
    }

    @Test
    void ofSeveralColorsTheMeasuredOneIsTakenAndThatIsTold() throws IOException {
        Reads reads = read("hex,L,a,b", "#ffffff,0,0,0", "#7a5c48,,,", "#7a5c48,50,,");
        assertThat(colors(reads)).containsExactly(0, 0x7a5c48);
        assertThat(faults(reads)).containsExactly("4: a is missing");
        assertThat(remarks(reads))
                .contains(
                        "Read as a table with commas between its cells; colors from L, a, b (D50); hex (D65).",
                        "Where a line has several colors, the first of these is taken: L, a, b \u00b7 hex.");
    }

    @Test
    void columnsPassedOverAreTold() throws IOException {
        Reads reads = read("hex,,grain,grain,x,state,place,row", "#7a5c48,?,fine,coarse,1,gone,A1,9");
        assertThat(reads.box().sticks().get(0).more()).isEqualTo(Map.of("grain", "fine"));
        assertThat(reads.box().sticks().get(0).slot()).contains(new Slot(1, 1));
        assertThat(remarks(reads))
                .contains(
                        "These columns were passed over: 2, grain, state, x.",
                        "Where a line has a place, its row and column are passed over.");
    }

    @Test
    void aLuminanceThatMayNotBeInPercentIsTold() throws IOException {
        assertThat(remarks(read("x,y,Y", "0.31,0.32,0.6", "0.31,0.32,1")))
                .anyMatch(s -> s.startsWith("No Y is over 1;"));
        assertThat(remarks(read("x,y,Y", "0.31,0.32,0.6", "0.31,0.32,1.1"))).noneMatch(s -> s.contains("No Y"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"\r\n", "\n", "\r"})
    void linesMayEndInAnyWayAndBlankOnesFollow(String end) throws IOException {
        byte[] bytes = String.join(end, "", "hex,note", "#7a5c48,\"one" + end + "two\"", "bad", "", "  ", "")
                .getBytes(StandardCharsets.UTF_8);
        Reads reads = read(bytes);
        assertThat(reads.box().sticks()).extracting(Stick::note).containsExactly("one" + end + "two");
        assertThat(faults(reads)).containsExactly("5: hex should be a color such as \"#7a5c48\"");
    }

    @ParameterizedTest
    @CsvSource({"UTF-8, false", "UTF-8, true", "UTF-16LE, true", "UTF-16BE, true"})
    void aByteOrderMarkTellsTheEncoding(Charset charset, boolean marked) throws IOException {
        String text = (marked ? "\uFEFF" : "") + "hex;name\n#7a5c48;Caf\u00e9 \u96ea";
        assertThat(read(text.getBytes(charset)).box().sticks())
                .extracting(Stick::title)
                .containsExactly("Caf\u00e9 \u96ea");
    }

    @ParameterizedTest
    @ValueSource(strings = {"ISO-8859-1", "UTF-16LE"})
    void anotherEncodingIsRefusedWithTheRemedy(Charset charset) {
        String filling = "#7a5c48,Peat\n".repeat(20_000);
        assertThatThrownBy(() -> read(("hex,name\n" + filling + "#7a5c48,Caf\u00e9").getBytes(charset)))
                .isInstanceOf(Trouble.class)
                .hasMessage("trays/Shed tray.csv is not in UTF-8; save it as CSV in UTF-8 and open that.");
    }

    @Test
    void whatStandsBeforeAQuoteOutOfPlaceIsKept() throws IOException {
        Reads open = read("hex,name", "#7a5c48,Peat", "#7a5c48,\"Moss", "#7a5c48,Reed");
        assertThat(open.box().sticks()).extracting(Stick::title).containsExactly("Peat");
        assertThat(faults(open)).containsExactly("3: a quote is out of place here, and nothing after it could be read");
        Reads torn = read("hex,name", "#7a5c48,Peat", "", "#7a5c48,\"Mo\"ss", "#7a5c48,Reed");
        assertThat(torn.box().sticks()).hasSize(1);
        assertThat(faults(torn)).containsExactly("4: a quote is out of place here, and nothing after it could be read");
    }

    @ParameterizedTest
    @ValueSource(strings = {"\n\n  \n", "\uFEFF"})
    void aBlankFileIsEmpty(String text) {
        assertThatThrownBy(() -> read(text.getBytes(StandardCharsets.UTF_8)))
                .hasMessage("trays/Shed tray.csv is empty; open another copy of it.");
    }

    @Test
    void aFirstLineAloneIsABoxWithoutSticks() throws IOException {
        assertThat(read("hex,name")).isEqualTo(new Reads(read("hex,name").box(), List.of()));
        assertThat(read("hex,name").box().sticks()).isEmpty();
    }

    @Test
    void tenThousandLinesAreReadEachWithAnIdOfItsOwn() throws IOException {
        String[] lines = IntStream.rangeClosed(0, 10_000)
                .mapToObj(i -> i == 0 ? "hex,name" : i == 7777 ? "red,Stick" : String.format("%06x,Stick", i))
                .toArray(String[]::new);
        Reads reads = read(lines);
        assertThat(reads.box().sticks()).hasSize(9999).extracting(Stick::id).doesNotHaveDuplicates();
        assertThat(reads.box().sticks().get(9998).color().srgb()).isEqualTo(10_000);
        assertThat(faults(reads)).containsExactly("7778: hex should be a color such as \"#7a5c48\"");
    }

    @Test
    void isKnownByItsEndingOrItsFirstLine() {
        CsvBoxReader reader = new CsvBoxReader();
        byte[] table = "Name;L;a;b\nPeat".getBytes(StandardCharsets.UTF_8);
        byte[] letter = "Dear painter,\nhere are L, a, b".getBytes(StandardCharsets.UTF_8);
        assertThat(reader.reads("box.CSV", letter)).isTrue();
        assertThat(reader.reads("box.txt", table)).isTrue();
        assertThat(reader.reads("box.txt", letter)).isFalse();
        assertThat(reader.reads("csv", letter)).isFalse();
    }
}
