package umbercard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import umbercard.Studies;
import umbercard.color.MunsellValue;
import umbercard.color.ValueScale;
import umbercard.door.Finding;
import umbercard.door.Finding.Verdict;
import umbercard.door.Place;
import umbercard.door.Rule;
import umbercard.geometry.Point;
import umbercard.geometry.Region;
import umbercard.model.Study;
import umbercard.readings.Wishes;
import umbercard.words.Message;
import umbercard.words.Words;

class ReadingsJsonTest {

    /** A reading of somebody else's, whose words are not in our bundles: its id stands in. */
    private static final Rule FOREIGN = new Rule("tree-count", 900, Map.of(), "a neighbor");

    private static ReadingsReport report(Place... places) {
        return report(Message.of("readings.dark-share.not-set"), places);
    }

    private static ReadingsReport report(Message sentence, Place... places) {
        Study study = Studies.kilnHill();
        Finding finding = new Finding(Verdict.FIGURE_ONLY, List.of(), sentence, List.of(places));
        return new ReadingsReport(
                study, Wishes.NONE, study.thumbnails().get(0), List.of(new ReadingsReport.Line(FOREIGN, finding)));
    }

    private static JsonNode place(Place place) throws IOException {
        return new ObjectMapper().readTree(ReadingsJson.of(report(place))).at("/readings/0/places/0");
    }

    @Test
    void placesOfEveryKindAreWritten() throws IOException {
        Point one = new Point(0.25, 0.5);
        Point two = new Point(1, 0.75);
        assertThat(place(new Place.At(one)).toString()).isEqualTo("{\"at\":[0.25,0.5]}");
        assertThat(place(new Place.Between(one, two)).toString()).isEqualTo("{\"between\":[[0.25,0.5],[1.0,0.75]]}");
        assertThat(place(new Place.Along(List.of(one, two, one))).toString())
                .isEqualTo("{\"along\":[[0.25,0.5],[1.0,0.75],[0.25,0.5]]}");
        assertThat(place(new Place.Of(List.of("z1"), List.of("n1", "n2"))).toString())
                .isEqualTo("{\"of\":{\"zones\":[\"z1\"],\"notes\":[\"n1\",\"n2\"]}}");
        JsonNode over = place(new Place.Over(Region.rectangle(0, 0, 0.5, 0.25))).get("over");
        assertThat(over).hasSize(1);
        assertThat(over.get(0)).hasSize(4);
        assertThat(over.get(0).toString()).contains("[0.0,0.0]", "[0.5,0.0]", "[0.5,0.25]", "[0.0,0.25]");
    }

    @Test
    void valuesAreMunsellsHoweverThePainterNumbersThem() throws IOException {
        Words.useValues(ValueScale.NINE_TO_ONE);
        try {
            ReadingsReport report = report(Message.of("desk.curve.parts", new MunsellValue(7.5)));
            JsonNode json = new ObjectMapper().readTree(ReadingsJson.of(report));
            assertThat(json.at("/readings/0/sentence").asText()).endsWith("value 7.5.");
            assertThat(report.table()).endsWith("value 3.0.");
        } finally {
            Words.useValues(ValueScale.MUNSELL);
        }
    }

    @Test
    void aForeignReadingIsCalledByItsId() throws IOException {
        JsonNode reading =
                new ObjectMapper().readTree(ReadingsJson.of(report())).at("/readings/0");
        assertThat(reading.get("rule").asText()).isEqualTo("tree-count");
        assertThat(reading.get("source").asText()).isEqualTo("a neighbor");
        assertThat(report().table()).contains("tree-count  a figure  ");
    }
}
