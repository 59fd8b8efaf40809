package umbercard.model;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** A choice from a fixed list, written in files, commands and bundles as a lower-case key with hyphens. */
public interface Keyed {
    String name();

    /** The key, for example {@code low-sun}. */
    default String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The choice of that key, if the list has it. */
    static <E extends Enum<E> & Keyed> Optional<E> find(Class<E> list, String key) {
        return Stream.of(list.getEnumConstants())
                .filter(choice -> choice.key().equals(key))
                .findFirst();
    }
}
