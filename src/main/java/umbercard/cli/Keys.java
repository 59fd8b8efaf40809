package umbercard.cli;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import umbercard.model.Keyed;

/** Lists the keys of a fixed list of choices. */
final class Keys {
    private Keys() {}

    /** All of them, with commas. */
    static <E extends Enum<E> & Keyed> String of(Class<E> list) {
        return Stream.of(list.getEnumConstants()).map(Keyed::key).collect(Collectors.joining(", "));
    }
}
