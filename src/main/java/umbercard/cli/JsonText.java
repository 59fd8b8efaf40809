package umbercard.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.io.UncheckedIOException;
import java.util.Map;

/** What a script reads: one JSON object. */
final class JsonText {
    private static final ObjectMapper MAPPER = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

    private JsonText() {}

    /** The text of plain maps, lists, strings, numbers and truth values. */
    static String of(Map<String, Object> object) {
        try {
            return MAPPER.writeValueAsString(object);
        } catch (JsonProcessingException defect) {
            throw new UncheckedIOException(defect);
        }
    }
}
