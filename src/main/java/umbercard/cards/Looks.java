package umbercard.cards;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import umbercard.door.Face;
import umbercard.door.Look;
import umbercard.words.Message;
import umbercard.words.Trouble;

/**
 * The faces' looks, each a file {@code umbercard/cards/<face>.json}: an object of named entries. A number is written as
 * {@code {"value": 5, "unit": "mm", "least": 3, "most": 15}}, so that its unit and its range stand beside it; a switch is
 * {@code true} or {@code false}; a word is a string. Type sizes (unit {@code pt}) are never under nine points.
 */
public final class Looks {
    private static final double SMALLEST_TYPE = 9;

    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    private Looks() {}

    /**
     * The look of a face.
     *
     * @throws Trouble naming the file and the entry, if something is wrong with it
     */
    public static Look of(Face face) throws Trouble {
        String file = face.id() + ".json";
        // Beside the face first, because a painter's own face comes in a jar of its own.
        try (InputStream in = face.getClass().getResourceAsStream("/umbercard/cards/" + file)) {
            if (in == null) {
                if (face.look().isEmpty()) {
                    return new Look(Map.of());
                }
                throw new Trouble(Message.of("cards.look.missing", file));
            }
            return read(file, in, face.look());
        } catch (Trouble said) {
            throw said;
        } catch (IOException failure) {
            throw new Trouble(Message.of("cards.look.missing", file), failure);
        }
    }

    /**
     * Reads and checks a look.
     *
     * @param needed what must be there, and nothing else: see {@link Face#look()}
     */
    static Look read(String file, InputStream in, Map<String, Class<?>> needed) throws IOException {
        JsonNode root = parse(file, in);
        Map<String, Object> values = new HashMap<>();
        for (Map.Entry<String, JsonNode> entry : root.properties()) {
            String name = entry.getKey();
            Class<?> kind = needed.get(name);
            if (kind == null) {
                throw new Trouble(Message.of(
                        "cards.look.unknown", file, name, String.join(", ", new TreeSet<>(needed.keySet()))));
            }
            values.put(name, value(file, name, entry.getValue(), kind));
        }
        for (String name : new TreeSet<>(needed.keySet())) {
            if (!values.containsKey(name)) {
                throw new Trouble(Message.of("cards.look.lacks", file, name));
            }
        }
        return new Look(values);
    }

    private static JsonNode parse(String file, InputStream in) throws IOException {
        try {
            JsonNode root = JSON.readTree(in);
            if (root.isObject()) {
                return root;
            }
            throw new Trouble(Message.of("cards.look.shape", file));
        } catch (JsonProcessingException malformed) {
            int line = Optional.ofNullable(malformed.getLocation())
                    .map(place -> place.getLineNr())
                    .orElse(1);
            throw new Trouble(Message.of("cards.look.json", file, line), malformed);
        }
    }

    private static Object value(String file, String name, JsonNode node, Class<?> kind) throws Trouble {
        if (kind == Double.class && node.isObject()) {
            return number(file, name, node);
        }
        if (kind == Boolean.class && node.isBoolean()) {
            return node.booleanValue();
        }
        if (kind == String.class && node.isTextual()) {
            return node.textValue();
        }
        throw new Trouble(
                Message.of("cards.look.kind", file, name, Message.of("cards.look.kind." + kind.getSimpleName())));
    }

    private static double number(String file, String name, JsonNode node) throws Trouble {
        for (String part : new String[] {"value", "least", "most"}) {
            if (!node.path(part).isNumber()) {
                throw new Trouble(Message.of("cards.look.kind", file, name, Message.of("cards.look.kind.Double")));
            }
        }
        boolean type = node.path("unit").asText().equals("pt");
        double least = Math.max(type ? SMALLEST_TYPE : 0, node.path("least").doubleValue());
        double most = node.path("most").doubleValue();
        double value = node.path("value").doubleValue();
        if (!(value >= least && value <= most)) {
            throw new Trouble(Message.of("cards.look.range", file, name, value, least, most));
        }
        return value;
    }
}
