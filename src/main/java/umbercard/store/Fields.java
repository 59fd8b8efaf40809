package umbercard.store;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import umbercard.model.Keyed;
import umbercard.words.Message;

/**
 * The fields of one object of a file, asked for by name. What was not asked for is what this version does not know. A
 * field that holds {@code null} counts as absent. Every method throws {@link Wrong}, which names the field, where it does
 * not hold what it should.
 */
final class Fields {
    private final JsonNode object;
    private final String place;
    private final Set<String> asked = new HashSet<>();

    /** The object at {@code place}; empty for the file's outermost. */
    Fields(JsonNode object, String place) {
        if (!object.isObject()) {
            throw new Wrong(place, Message.of("store.wanted.object"));
        }
        this.object = object;
        this.place = place;
    }

    Optional<JsonNode> find(String name) {
        asked.add(name);
        return Optional.ofNullable(object.get(name)).filter(node -> !node.isNull());
    }

    /** Where a field stands, in words. */
    String place(String name) {
        return place.isEmpty() ? name : place + ", " + name;
    }

    Wrong wrong(String name, String problem, Object... arguments) {
        return new Wrong(place(name), Message.of(problem, arguments));
    }

    private <T> T present(String name, Optional<T> found) {
        return found.orElseThrow(() -> wrong(name, "store.wanted.present"));
    }

    Optional<String> text(String name) {
        return find(name).map(node -> {
            if (!node.isTextual()) {
                throw wrong(name, "store.wanted.text");
            }
            return node.textValue();
        });
    }

    String textOf(String name) {
        return present(name, text(name));
    }

    boolean truth(String name, boolean otherwise) {
        return find(name)
                .map(node -> {
                    if (!node.isBoolean()) {
                        throw wrong(name, "store.wanted.truth");
                    }
                    return node.booleanValue();
                })
                .orElse(otherwise);
    }

    OptionalDouble number(String name, Range range) {
        Optional<JsonNode> found = find(name);
        return found.isPresent() ? OptionalDouble.of(number(found.get(), name, range)) : OptionalDouble.empty();
    }

    double numberOf(String name, Range range) {
        return number(present(name, find(name)), name, range);
    }

    private double number(JsonNode node, String name, Range range) {
        if (!node.isNumber() || !range.has(node.doubleValue())) {
            throw new Wrong(place(name), range.wanted());
        }
        return node.doubleValue();
    }

    /** A whole number of 1 or more. */
    int count(String name, int otherwise) {
        return find(name).map(node -> count(node, name)).orElse(otherwise);
    }

    private int count(JsonNode node, String name) {
        if (!node.isIntegralNumber() || !node.canConvertToInt() || node.intValue() < 1) {
            throw wrong(name, "store.wanted.count");
        }
        return node.intValue();
    }

    <E extends Enum<E> & Keyed> Optional<E> choice(String name, Class<E> list) {
        return text(name)
                .map(key ->
                        Keyed.find(list, key).orElseThrow(() -> wrong(name, "store.wanted.choice", keys(list), key)));
    }

    /** The keys of a list, with commas. */
    static <E extends Enum<E> & Keyed> String keys(Class<E> list) {
        return Stream.of(list.getEnumConstants()).map(Keyed::key).collect(Collectors.joining(", "));
    }

    <E extends Enum<E> & Keyed> E choiceOf(String name, Class<E> list) {
        return present(name, choice(name, list));
    }

    /** A list of as many numbers as {@code wanted} names, all in the range. */
    Optional<double[]> numbers(String name, Range range, String... wanted) {
        return find(name).map(node -> {
            double[] numbers = new double[wanted.length];
            if (!node.isArray() || node.size() != wanted.length) {
                throw wrong(name, "store.wanted.numbers", String.join(", ", wanted));
            }
            for (int i = 0; i < numbers.length; i++) {
                numbers[i] = number(node.get(i), name, range);
            }
            return numbers;
        });
    }

    /** Two whole numbers of 1 or more. */
    Optional<int[]> counts(String name, String first, String second) {
        return find(name).map(node -> {
            if (!node.isArray() || node.size() != 2) {
                throw wrong(name, "store.wanted.numbers", first + ", " + second);
            }
            return new int[] {count(node.get(0), name), count(node.get(1), name)};
        });
    }

    Optional<List<String>> texts(String name) {
        return find(name).map(node -> texts(node, name));
    }

    private List<String> texts(JsonNode node, String name) {
        List<String> texts = new ArrayList<>();
        for (JsonNode item : items(node, name)) {
            if (!item.isTextual()) {
                throw wrong(name, "store.wanted.texts");
            }
            texts.add(item.textValue());
        }
        return texts;
    }

    <T> Optional<T> object(String name, Function<Fields, T> read) {
        return find(name).map(node -> read.apply(new Fields(node, place(name))));
    }

    <T> T objectOf(String name, Function<Fields, T> read) {
        return present(name, object(name, read));
    }

    /** A list of objects; an absent one is empty. */
    <T> List<T> list(String name, Function<Fields, T> read) {
        List<T> list = new ArrayList<>();
        find(name).ifPresent(node -> {
            for (JsonNode item : items(node, name)) {
                list.add(read.apply(new Fields(item, place(name) + " " + (list.size() + 1))));
            }
        });
        return list;
    }

    /** The entries of a list, whatever they are. */
    JsonNode itemsOf(String name) {
        return items(present(name, find(name)), name);
    }

    private JsonNode items(JsonNode node, String name) {
        if (!node.isArray()) {
            throw wrong(name, "store.wanted.list");
        }
        return node;
    }

    /** A list of lists of texts; an absent one is empty. */
    List<List<String>> textLists(String name) {
        List<List<String>> lists = new ArrayList<>();
        find(name).ifPresent(node -> {
            for (JsonNode item : items(node, name)) {
                lists.add(texts(item, name));
            }
        });
        return lists;
    }

    /** Hands over every field of an object whose names are not ours to know; an absent object has none. */
    void each(String name, BiConsumer<String, Fields> take) {
        object(name, Function.identity()).ifPresent(inner -> inner.names().forEach(key -> take.accept(key, inner)));
    }

    private List<String> names() {
        List<String> names = new ArrayList<>();
        object.fieldNames().forEachRemaining(names::add);
        return names;
    }

    /** What {@code make} makes; where the record refuses because its fields do not fit together, this object is named. */
    <T> T fitting(Supplier<T> make) {
        try {
            return make.get();
        } catch (IllegalArgumentException unfit) {
            throw new Wrong(place, Message.of("store.wanted.fitting"));
        }
    }

    /** Every field that was not asked for, as plain values. */
    Map<String, Object> rest() {
        Map<String, Object> rest = new TreeMap<>();
        for (String name : names()) {
            if (!asked.contains(name)) {
                rest.put(name, Json.plain(object.get(name)));
            }
        }
        return rest;
    }
}
