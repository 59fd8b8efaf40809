package umbercard.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import umbercard.color.Ciede2000;
import umbercard.color.Lab;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.model.Frame;
import umbercard.model.Reference;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.model.Surface;
import umbercard.model.Surface.Unit;
import umbercard.model.Thumbnail;
import umbercard.model.Zone;
import umbercard.model.edit.Edits;
import umbercard.store.Samples;
import umbercard.store.StudyFile;

class MatchCommandTest {
    private static final Path KILN_HILL = Path.of("samples/kiln-hill.json");

    @TempDir
    private Path folder;

    private Path file;

    /** Four patches of known colors, the upper two a zone, the lower two another, and the box Kiln Yard 36. */
    @BeforeEach
    void patches() throws IOException {
        BufferedImage image = new BufferedImage(400, 300, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        for (int i = 0; i < 4; i++) {
            pen.setColor(new Color(patch(i).srgb()));
            pen.fillRect(i % 2 * 300, i / 2 * 150, i % 2 == 0 ? 300 : 100, 150);
        }
        pen.dispose();
        ImageIO.write(image, "png", folder.resolve("patches.png").toFile());
        Thumbnail thumbnail = Thumbnail.empty("t1", "first")
                .withZoneAreas(Map.of(
                        "z1", List.of(Outline.rectangle(0, 0, 4.0 / 3, 0.5)),
                        "z2", List.of(Outline.rectangle(0, 0.5, 4.0 / 3, 1))));
        Study study = Edits.addThumbnail(thumbnail)
                .apply(Study.begin("Patches", new Surface(12, 9, Unit.IN, 0, Optional.empty(), false)))
                .withReference(Optional.of(Reference.to("patches.png", "", Frame.largest(4.0 / 3, 4.0 / 3))))
                .withZones(List.of(
                        new Zone("z1", "sky", Zone.Plane.SKY, Zone.Distance.FAR),
                        new Zone("z2", "bank", Zone.Plane.FLAT, Zone.Distance.NEAR)))
                .withBox(Optional.of(Samples.kilnYard().box()));
        file = folder.resolve("patches.json");
        StudyFile.write(study, file);
    }

    /** Low cloud, Snow light, Peat, Moss: four sticks of the box. */
    private static Lab patch(int place) {
        return Samples.kilnYard()
                .box()
                .sticks()
                .get(new int[] {24, 32, 9, 14}[place])
                .color();
    }

    private static JsonNode json(Object... call) throws IOException {
        List<Object> words = new ArrayList<>(List.of("match"));
        words.addAll(List.of(call));
        words.add("--json");
        Calls.Result result = Calls.run(words.toArray());
        return result.json();
    }

    private static Stream<JsonNode> each(JsonNode array) {
        return StreamSupport.stream(array.spliterator(), false);
    }

    private static Lab lab(JsonNode json) {
        JsonNode lab = json.get("lab");
        return new Lab(lab.get(0).asDouble(), lab.get(1).asDouble(), lab.get(2).asDouble());
    }

    private void edit(UnaryOperator<Study> edit) throws IOException {
        StudyFile.write(edit.apply(StudyFile.read(file)), file);
    }

    @Test
    void knownPatchesFindTheirSticks() throws IOException {
        JsonNode json = json(file);
        assertThat(Calls.keys(json)).containsExactly("study", "thumbnail", "trust", "zones", "gaps");
        assertThat(each(json.get("zones")).map(zone -> zone.get("name").asText()))
                .containsExactly("sky", "bank");
        List<JsonNode> colors = each(json.get("zones"))
                .flatMap(zone -> each(zone.get("colors")))
                .toList();
        assertThat(colors).hasSize(4);
        List<String> names = List.of("Low cloud", "Snow light", "Peat", "Moss");
        for (int i = 0; i < 4; i++) {
            JsonNode color = colors.get(i);
            assertThat(Calls.keys(color)).containsExactly("share", "lab", "value", "withinValue", "sticks");
            assertThat(color.get("share").asDouble()).isCloseTo(i % 2 == 0 ? 0.75 : 0.25, within(0.003));
            assertThat(color.get("value").asDouble()).isCloseTo(patch(i).value(), within(0.02));
            JsonNode best = color.get("sticks").get(0);
            assertThat(Calls.keys(best))
                    .containsExactly("id", "name", "slot", "lab", "value", "rank", "difference", "words");
            assertThat(best.get("name").asText()).isEqualTo(names.get(i));
            assertThat(best.at("/difference/ciede2000").asDouble()).isLessThan(0.5);
            assertThat(best.get("words").asText()).isEqualTo("much the same");
        }
    }

    @Test
    void aTableIsForPeople() {
        Calls.Result result = Calls.run("match", file);
        assertThat(result.err()).isEmpty();
        assertThat(result.outLines().get(0)).isEqualTo("Patches: first");
        assertThat(result.outLines().get(1))
                .matches("sky   75 % light gray, value 7\\.\\d +E1 Low cloud +0\\.\\d +much the same");
        assertThat(result.outLines().get(2)).matches(" {10,}E\\d .*");
        assertThat(Calls.run("match", file, "--values", "0-10", "--light-first").out())
                .contains("light gray, value 2.");
    }

    @Test
    void kilnHillIsMatchedValueFirst() throws IOException {
        JsonNode json = json(KILN_HILL);
        assertThat(each(json.get("zones")).map(zone -> zone.get("name").asText()))
                .containsExactly("sky", "far ridge", "snow slope", "kiln", "tree line", "alders", "pond", "near bank");
        for (JsonNode zone : json.get("zones")) {
            assertThat(zone.get("colors")).hasSizeBetween(2, 4);
            assertThat(each(zone.get("colors"))
                            .mapToDouble(color -> color.get("share").asDouble())
                            .sum())
                    .isCloseTo(1, within(1e-9));
            for (JsonNode color : zone.get("colors")) {
                assertRanked(color);
            }
        }
        assertThat(json(KILN_HILL)).isEqualTo(json);
    }

    /** Each stick is within half a step, or none of the box is; the figures are those of the formula. */
    private static void assertRanked(JsonNode color) {
        boolean any = Samples.kilnYard().box().sticks().stream()
                .anyMatch(stick -> Math.abs(stick.color().value() - lab(color).value()) <= 0.5);
        assertThat(color.get("withinValue").asBoolean()).isEqualTo(any);
        double before = 0;
        for (JsonNode stick : color.get("sticks")) {
            JsonNode difference = stick.get("difference");
            assertThat(Math.abs(difference.get("value").asDouble()) <= 0.5).isEqualTo(any);
            assertThat(difference.get("ciede2000").asDouble())
                    .isCloseTo(Ciede2000.difference(lab(color), lab(stick)), within(1e-9));
            assertThat(!any || stick.get("rank").asDouble() >= before).isTrue();
            before = stick.get("rank").asDouble();
        }
    }

    @Test
    void withoutTrustTheWholeDifferenceRanks() throws IOException {
        for (JsonNode zone : json(KILN_HILL, "--trust", "0").get("zones")) {
            for (JsonNode color : zone.get("colors")) {
                double least = Samples.kilnYard().box().sticks().stream()
                        .mapToDouble(stick -> Ciede2000.difference(lab(color), stick.color()))
                        .min()
                        .orElseThrow();
                assertThat(color.at("/sticks/0/difference/ciede2000").asDouble())
                        .isCloseTo(least, within(1e-9));
            }
        }
    }

    @Test
    void aSuggestionSaysWhatEachStickIsFor() throws IOException {
        Calls.Result result = Calls.run("match", file, "--suggest", "8");
        assertThat(result.outLines().get(1)).isEqualTo("6 sticks cover every zone, and no fewer would.");
        assertThat(result.out())
                .contains("the warm dark", "the cool dark", "the accent")
                .containsPattern("E1 Low cloud +covers the light of sky")
                .doesNotContain("nothing near enough");
        JsonNode suggestion = json(file, "--suggest", "12").get("suggestion");
        assertThat(Calls.keys(suggestion)).containsExactly("summary", "proven", "sticks", "missed", "lacks");
        assertThat(suggestion.get("proven").asBoolean()).isTrue();
        assertThat(suggestion.get("sticks")).hasSize(6);
    }

    @Test
    void kilnHillsSuggestionFitsTheTray() throws IOException {
        JsonNode suggestion = json(KILN_HILL, "--suggest", "12").get("suggestion");
        assertThat(suggestion.get("sticks")).hasSizeBetween(8, 12);
        assertThat(suggestion.get("proven").asBoolean()).isTrue();
        assertThat(each(suggestion.get("sticks"))
                        .map(stick -> stick.get("reason").asText()))
                .anyMatch(reason -> reason.startsWith("the warm dark"))
                .anyMatch(reason -> reason.startsWith("the cool dark"))
                .anyMatch(reason -> reason.startsWith("the accent"));
        assertThat(each(suggestion.get("missed")))
                .allSatisfy(
                        missed -> assertThat(missed.get("sentence").asText()).contains("nothing near enough"));
    }

    @Test
    void theSticksSetOutAndWhatTheyLack() throws IOException {
        List<Stick> box = Samples.kilnYard().box().sticks();
        edit(study -> study.withSetOut(List.of(box.get(9), box.get(24))));
        JsonNode json = json(file, "--set-out");
        assertThat(json.at("/zones/0/colors/1/withinValue").asBoolean()).isFalse();
        assertThat(each(json.get("gaps")).map(gap -> gap.get("sentence").asText()))
                .contains("nothing between 3.1 and 7.1", "nothing lighter than 7.1", "no dark cool", "no light warm");
        assertThat(Calls.run("match", file, "--set-out").out()).contains("The sticks set out have", "  no dark cool");
    }

    @Test
    void onlySticksAtHandUnlessAskedForAny() throws IOException {
        edit(study -> study.withBox(study.box()
                .map(box -> box.withSticks(box.sticks().stream()
                        .map(stick -> stick.title().equals("Low cloud") ? stick.withState(Stick.State.WORN_OUT) : stick)
                        .toList()))));
        assertThat(json(file).at("/zones/0/colors/0/sticks/0/name").asText()).isNotEqualTo("Low cloud");
        assertThat(json(file, "--any-state")
                        .at("/zones/0/colors/0/sticks/0/name")
                        .asText())
                .isEqualTo("Low cloud");
    }

    @Test
    void aBoxFileCanBeNamed() throws IOException {
        edit(study -> study.withBox(Optional.empty()));
        assertThat(json(file, "--box", "samples/kiln-yard-36.json")
                        .at("/zones/1/colors/0/sticks/0/name")
                        .asText())
                .isEqualTo("Peat");
    }

    @Test
    void aThumbnailsOwnFrameGoesBeforeTheReferences() throws IOException {
        edit(study -> study.withThumbnails(study.thumbnails().stream()
                .map(one -> one.withFrame(Optional.of(new Frame(new Point(0.25, 0.25), 0.3, 0, false))))
                .toList()));
        assertThat(json(file).at("/zones/0/colors")).hasSize(1);
    }

    @Test
    void whatIsMissingIsSaidWithItsRemedy() throws IOException {
        edit(study -> study.withBox(Optional.empty()));
        assertTrouble("has no box of sticks", "--box");
        assertTrouble("has no sticks set out", "--set-out", "--set-out");
        Stick wish = new Stick("s1", "wish", new Stick.Slot(1, 1), patch(0)).withState(Stick.State.NOT_OWNED);
        edit(study -> study.withBox(Optional.of(Samples.kilnYard().box().withSticks(List.of(wish)))));
        assertTrouble("none at hand", "--any-state");
        edit(study -> study.withThumbnails(List.of(Thumbnail.empty("t1", "first"))));
        assertTrouble("has no zones laid out", "--thumbnail");
        edit(study -> study.withReference(Optional.empty()));
        assertTrouble("has no photograph to take colors from", "start");
    }

    private void assertTrouble(String said, String remedy, Object... more) {
        List<Object> call = new ArrayList<>(List.of("match", file));
        call.addAll(List.of(more));
        Calls.Result result = Calls.run(call.toArray());
        assertThat(result.code()).isEqualTo(1);
        assertThat(result.out()).isEmpty();
        assertThat(result.errLines())
                .singleElement()
                .asString()
                .contains(said, remedy, file.toString())
                .endsWith(".");
    }
}
