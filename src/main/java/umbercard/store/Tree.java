package umbercard.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;
import umbercard.model.Keyed;

/** An object on its way into a file; its fields stand in the order in which they were put. */
final class Tree {
    private final ObjectNode object = JsonNodeFactory.instance.objectNode();

    JsonNode node() {
        return object;
    }

    Tree put(String name, JsonNode value) {
        object.set(name, value);
        return this;
    }

    Tree put(String name, Tree value) {
        return put(name, value.node());
    }

    Tree put(String name, String value) {
        return put(name, TextNode.valueOf(value));
    }

    Tree put(String name, double value) {
        return put(name, Json.number(value));
    }

    Tree put(String name, int value) {
        return put(name, IntNode.valueOf(value));
    }

    Tree put(String name, boolean value) {
        return put(name, BooleanNode.valueOf(value));
    }

    Tree put(String name, Keyed value) {
        return put(name, value.key());
    }

    Tree put(String name, OptionalDouble value) {
        value.ifPresent(number -> put(name, number));
        return this;
    }

    /** Leaves the field out where there is nothing. */
    <T> Tree put(String name, Optional<T> value, Function<T, JsonNode> node) {
        value.ifPresent(present -> put(name, node.apply(present)));
        return this;
    }

    /** Leaves the field out where the text is empty. */
    Tree putUnlessEmpty(String name, String value) {
        return value.isEmpty() ? this : put(name, value);
    }

    /** Leaves the field out where it is not so. */
    Tree putIfTrue(String name, boolean value) {
        return value ? put(name, value) : this;
    }

    <T> Tree putList(String name, Collection<T> items, Function<T, JsonNode> node) {
        return put(name, list(items, node));
    }

    /** Leaves the field out where the list is empty. */
    <T> Tree putListUnlessEmpty(String name, Collection<T> items, Function<T, JsonNode> node) {
        return items.isEmpty() ? this : putList(name, items, node);
    }

    /** The fields that this version does not know, in the order of their names; none replaces one that is there. */
    Tree rest(Map<String, Object> more) {
        new TreeMap<>(more).forEach((name, value) -> {
            if (!object.has(name)) {
                put(name, Json.tree(value));
            }
        });
        return this;
    }

    static <T> JsonNode list(Collection<T> items, Function<T, JsonNode> node) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        items.forEach(item -> list.add(node.apply(item)));
        return list;
    }

    static JsonNode numbers(double... numbers) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        for (double number : numbers) {
            list.add(Json.number(number));
        }
        return list;
    }
}
