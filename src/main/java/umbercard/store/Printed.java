package umbercard.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ContainerNode;
import java.util.Iterator;
import java.util.Map;

/**
 * JSON laid out for a person: two spaces of indentation, and whatever is short and simple on one line. Lists of objects
 * always take a line an entry. Lines end in a line feed on every system.
 */
final class Printed {
    private static final int WIDTH = 120;

    /** As many levels as one line may hold: an object of lists. */
    private static final int LEVELS = 2;

    private final StringBuilder out = new StringBuilder();

    private Printed() {}

    static String text(JsonNode root) {
        Printed printed = new Printed();
        printed.spread(root, "");
        return printed.out.append('\n').toString();
    }

    /** Prints a node that begins at {@code used} columns, and continues at {@code indent}. */
    private void print(JsonNode node, String indent, int used) {
        if (!node.isContainerNode() || isSimple(node, LEVELS)) {
            String line = line(node);
            if (!node.isContainerNode() || used + line.length() < WIDTH) {
                out.append(line);
                return;
            }
        }
        spread(node, indent);
    }

    private void spread(JsonNode node, String indent) {
        String inner = indent + "  ";
        String separator = "\n";
        out.append(node.isObject() ? '{' : '[');
        if (node.isObject()) {
            for (Map.Entry<String, JsonNode> field : node.properties()) {
                String name = quoted(field.getKey()) + ": ";
                out.append(separator).append(inner).append(name);
                print(field.getValue(), inner, inner.length() + name.length());
                separator = ",\n";
            }
        } else {
            for (JsonNode item : node) {
                out.append(separator).append(inner);
                print(item, inner, inner.length());
                separator = ",\n";
            }
        }
        out.append('\n').append(indent).append(node.isObject() ? '}' : ']');
    }

    private static boolean isSimple(JsonNode node, int levels) {
        if (!node.isContainerNode()) {
            return true;
        }
        if (levels == 0) {
            return node.isEmpty();
        }
        for (JsonNode item : node) {
            boolean entryOfAList = node.isArray() && item.isObject();
            if (entryOfAList || !isSimple(item, levels - 1)) {
                return false;
            }
        }
        return true;
    }

    private static String line(JsonNode node) {
        if (node.isBigDecimal()) {
            return Json.written(node.decimalValue());
        }
        if (!(node instanceof ContainerNode)) {
            return node.toString();
        }
        StringBuilder line = new StringBuilder();
        line.append(node.isObject() ? '{' : '[');
        Iterator<Map.Entry<String, JsonNode>> fields = node.properties().iterator();
        String separator = "";
        for (JsonNode item : node) {
            line.append(separator);
            if (fields.hasNext()) {
                line.append(quoted(fields.next().getKey())).append(": ");
            }
            line.append(line(item));
            separator = ", ";
        }
        return line.append(node.isObject() ? '}' : ']').toString();
    }

    private static String quoted(String name) {
        return Json.tree((Object) name).toString();
    }
}
