package umbercard.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.io.UncheckedIOException;

/** What a script reads: one JSON value. */
final class JsonText {
    private static final ObjectMapper MAPPER = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

    private JsonText() {}

    /** The text of plain maps, lists, strings, numbers and truth values. */
    static String of(Object object) {
        try {
            return MAPPER.writeValueAsString(object);
        } catch (JsonProcessingException defect) {
            throw new UncheckedIOException(defect);
        }
    }
}
