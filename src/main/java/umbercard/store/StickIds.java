package umbercard.store;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import umbercard.model.Stick;

/**
 * Ids for sticks whose file gives none: made of the name, else of the place in the tray, else of the color, so that the same
 * stick has the same id when its file is read again, wherever it then stands in it. Of sticks with the same name the later
 * ones take their place along, or a number.
 */
final class StickIds {
    private final Set<String> taken = new HashSet<>();
    private final Map<String, Integer> numbers = new HashMap<>();

    private StickIds() {}

    /** The sticks in their order, each with an id of its own; those that are not empty stay, and are all different. */
    static List<Stick> complete(List<Stick> sticks) {
        StickIds ids = new StickIds();
        sticks.stream().map(Stick::id).filter(id -> !id.isEmpty()).forEach(ids.taken::add);
        List<Stick> complete = new ArrayList<>(sticks.size());
        sticks.forEach(stick -> complete.add(stick.id().isEmpty() ? stick.withId(ids.next(stick)) : stick));
        return complete;
    }

    private String next(Stick stick) {
        String name = stick.name().map(StickIds::plain).orElse("");
        String place = stick.slot().map(Stick.Slot::label).map(StickIds::plain).orElse("");
        String color = stick.color().hex().substring(1);
        List<String> wishes =
                Stream.of(name, place, color).filter(wish -> !wish.isEmpty()).toList();
        String first = wishes.get(0);
        if (taken.add(first)) {
            return first;
        }
        String longer = first + "-" + place;
        return first.equals(name) && !place.isEmpty() && taken.add(longer) ? longer : numbered(first);
    }

    private String numbered(String wish) {
        while (true) {
            String id = wish + "-" + numbers.compute(wish, (same, last) -> last == null ? 2 : last + 1);
            if (taken.add(id)) {
                return id;
            }
        }
    }

    /** In lower case, its letters and digits with hyphens between them; empty if it has none. */
    static String plain(String words) {
        return words.toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{M}\\p{N}]+", "-")
                .replaceAll("^-|-$", "");
    }
}
