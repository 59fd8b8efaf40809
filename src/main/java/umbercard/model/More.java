package umbercard.model;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/** The fields of a file that this version does not know: kept, in the order of their names, so that a save loses nothing. */
final class More {
    private More() {}

    static Map<String, Object> copyOf(Map<String, Object> fields) {
        return Collections.unmodifiableMap(new TreeMap<>(fields));
    }
}
