package umbercard.store;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.io.NumberOutput;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.DecimalNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import umbercard.words.Message;
import umbercard.words.Trouble;

/**
 * Files of JSON, read strictly: no field twice, nothing after the end. Numbers keep every digit, so that fields that this
 * version does not know are written back as they were.
 */
final class Json {
    /** A photograph carried in a study is one long string. */
    private static final int LONGEST_STRING = 400_000_000;

    private static final long LONGEST_FILE = 500_000_000;

    /** Beyond as many digits a number is written with its power of ten. */
    private static final int DIGITS_AT_MOST = 25;

    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private static final JsonMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxStringLength(LONGEST_STRING)
                            .build())
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .build())
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
            .build();

    private Json() {}

    /**
     * The text of a file.
     *
     * @throws Trouble if it is missing, a folder, too long, or no text
     */
    static String text(Path file) throws Trouble {
        return text(bytes(file), file.toString());
    }

    /**
     * The bytes of a file.
     *
     * @throws Trouble if it is missing, a folder, unreadable, or too long
     */
    static byte[] bytes(Path file) throws Trouble {
        String name = file.toString();
        if (Files.isDirectory(file)) {
            throw new Trouble(Message.of("store.folder-read", name));
        }
        try {
            if (Files.size(file) > LONGEST_FILE) {
                throw new Trouble(Message.of("store.not-text", name));
            }
            return Files.readAllBytes(file);
        } catch (Trouble told) {
            throw told;
        } catch (NoSuchFileException missing) {
            throw new Trouble(Message.of("store.missing", name), missing);
        } catch (IOException unreadable) {
            throw new Trouble(Message.of("store.unreadable", name), unreadable);
        }
    }

    /**
     * The text of a file's bytes, in UTF-8.
     *
     * @throws Trouble if they are no text
     */
    static String text(byte[] bytes, String fileName) throws Trouble {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException binary) {
            throw new Trouble(Message.of("store.not-text", fileName), binary);
        }
    }

    /**
     * The tree of a text.
     *
     * @throws Trouble if it is empty or no JSON; says the line and the column
     */
    static JsonNode tree(String text, String fileName) throws Trouble {
        String json = text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
        if (json.isBlank()) {
            throw new Trouble(Message.of("store.empty", fileName));
        }
        try {
            return MAPPER.readTree(json);
        } catch (JsonProcessingException malformed) {
            JsonLocation at = malformed.getLocation();
            String line = Integer.toString(at == null ? 1 : Math.max(1, at.getLineNr()));
            String column = Integer.toString(at == null ? 1 : Math.max(1, at.getColumnNr()));
            throw new Trouble(Message.of("store.malformed", fileName, line, column), malformed);
        }
    }

    /** A tree as plain maps, lists, strings, numbers and truth values. */
    static Object plain(JsonNode tree) {
        return MAPPER.convertValue(tree, Object.class);
    }

    /** Plain maps, lists, strings, numbers and truth values as a tree. */
    static JsonNode tree(Object plain) {
        return MAPPER.valueToTree(plain);
    }

    /** A number in the fewest digits that are read back as the same number. */
    static JsonNode number(double number) {
        BigDecimal exact = new BigDecimal(NumberOutput.toString(number, true)).stripTrailingZeros();
        return DecimalNode.valueOf(exact.scale() < 0 && exact.scale() > -DIGITS_AT_MOST ? exact.setScale(0) : exact);
    }

    /** A decimal number as it is written, without a power of ten unless it is very long. */
    static String written(BigDecimal number) {
        return number.scale() >= 0 && number.scale() < DIGITS_AT_MOST ? number.toPlainString() : number.toString();
    }
}
