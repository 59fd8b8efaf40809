package umbercard.color;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.Objects;

/** Published constants of color; the file names the source of each. */
final class Constants {
    private Constants() {}

    static JsonNode read(String group) throws IOException {
        try (InputStream in = Constants.class.getResourceAsStream("color_constants.json")) {
            return new ObjectMapper().readTree(Objects.requireNonNull(in)).get(group);
        }
    }

    static double number(JsonNode list, int... path) {
        JsonNode node = list;
        for (int step : path) {
            node = node.get(step);
        }
        return Double.parseDouble(node.textValue());
    }
}
