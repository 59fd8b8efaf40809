package umbercard.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import umbercard.color.Lab;
import umbercard.store.BoxFile;
import umbercard.store.Boxes;
import umbercard.store.Samples;

class BoxCommandTest {
    @TempDir
    private Path folder;

    private Path box(String... lines) throws IOException {
        return Files.writeString(folder.resolve("tray.csv"), String.join("\n", lines));
    }

    @Test
    void tellsWhatIsInTheBoxAndWhatIsWrongWithIt() throws IOException {
        Path box = box(
                "name;place;L;a;b;white;owned",
                "Soot;A1;0;0;0;D65;yes",
                "Chalk;A1;100;0;0;D65;no",
                "Moss;B1;47,5;-14;22;D65;worn out",
                "Moss;B2;47;-14;22;D65;",
                "Glow;B3;50;100;100;D65;",
                "Bad;B4;fifty;0;0;D65;");

        Calls.Result result = Calls.run("box", box);

        assertThat(result.code()).isZero();
        assertThat(result.outLines())
                .containsExactly(
                        "tray: 5 sticks; 3 owned, 1 worn out, 1 not owned.",
                        "Values from 0.0 (Soot) to 10.0 (Chalk).",
                        "1 entry was left out.",
                        "Read as a table with semicolons between its cells and decimal commas; colors from L, a, b (D65).",
                        "1 color lies outside what a screen can show, and is shown only nearly: Glow.",
                        "1 name is on several sticks: Moss.",
                        "1 place has several sticks: A1.");
        assertThat(result.errLines())
                .containsExactly(box
                        + ", line 7: L is \"fifty\" and should be a number; left out, mend it there if it is wanted.");
    }

    @Test
    void tellsTheSameToScripts() throws IOException {
        Path box = box("hex,owned", "#000000,", "#ffffff,no", "white,");
        JsonNode json =
                new ObjectMapper().readTree(Calls.run("box", box, "--json").out());
        assertThat(json.get("name").asText()).isEqualTo("tray");
        assertThat(json.get("sticks").asInt()).isEqualTo(2);
        assertThat(json.get("states")).hasToString("{\"owned\":1,\"worn-out\":0,\"not-owned\":1}");
        assertThat(json.at("/darkest/id").asText()).isEqualTo("000000");
        assertThat(json.at("/lightest/value").asDouble()).isCloseTo(10, within(1e-9));
        assertThat(json.at("/faults/0/line").asInt()).isEqualTo(4);
        assertThat(json.at("/faults/0/reason").asText()).startsWith("hex should be");
        assertThat(json.get("remarks")).hasSize(1);
    }

    @Test
    void turnsATableIntoABoxAndBack() throws IOException {
        Path csv = box("name,hex,owned", "Peat,#7a5c48,", "Bad,,");
        Path json = folder.resolve("tray.json");
        Calls.Result there = Calls.run("box", csv, "-o", json);
        assertThat(there.code()).isZero();
        assertThat(there.out()).endsWith("Written to " + json + "." + System.lineSeparator());
        assertThat(new Boxes().read(json).box()).isEqualTo(new Boxes().read(csv).box());
        assertThat(new Boxes().read(json).box().sticks().get(0).color()).isEqualTo(Lab.ofSrgb(0x7a5c48));

        Path back = folder.resolve("back.csv");
        assertThat(Calls.run("box", json, "-o", back).outLines())
                .contains(back + " has no room for these fields of the box: id; name. A file that ends in .json has.");
        assertThat(new Boxes().read(back).box().sticks())
                .isEqualTo(new Boxes().read(json).box().sticks());
    }

    @Test
    void aBoxOfTheProgramsOwnIsCheckedToo() throws IOException {
        Path json = folder.resolve("yard.json");
        BoxFile.write(Samples.kilnYard().box(), json);
        Calls.Result result = Calls.run("box", json);
        assertThat(result.err()).isEmpty();
        assertThat(result.outLines().get(0)).isEqualTo("Kiln Yard 36: 36 sticks; 36 owned, 0 worn out, 0 not owned.");
    }

    @Test
    void whatExistsIsLeftAlone() throws IOException {
        Path box = box("hex", "#7a5c48");
        Calls.Result result = Calls.run("box", box, "-o", box);
        assertThat(result.code()).isEqualTo(1);
        assertThat(result.errLines())
                .containsExactly(
                        box + " exists already and stays as it is; give another name after -o, or move it away first.");
        assertThat(box).hasContent("hex\n#7a5c48");
    }

    @Test
    void withoutOneStickTheCallFailsAndNothingIsWritten() throws IOException {
        Path box = box("hex", "brown");
        Path out = folder.resolve("out.json");
        Calls.Result result = Calls.run("box", box, "-o", out);
        assertThat(result.code()).isEqualTo(1);
        assertThat(result.out()).isEmpty();
        assertThat(result.errLines())
                .containsExactly(
                        box
                                + ", line 2: hex should be a color such as \"#7a5c48\"; left out, mend it there if it is wanted.",
                        "Not one stick of " + box + " could be read; mend it in a text editor, or choose another box.");
        assertThat(out).doesNotExist();
    }

    @Test
    void aWrongCallIsSaid() {
        Calls.Result result = Calls.run("box", "--json");
        assertThat(result.code()).isEqualTo(2);
        assertThat(result.errLines()).containsExactly("box still needs FILE. For help: umbercard box --help");
    }
}
