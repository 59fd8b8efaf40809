package umbercard.store;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import umbercard.color.Gamut;
import umbercard.model.Box;
import umbercard.model.Stick;
import umbercard.words.Message;

/** What is odd in a box, whatever kind of file it came from. Nothing of it keeps a stick out. */
final class BoxRemarks {
    /** As many sticks as are named one by one; the rest are counted. */
    private static final int NAMED = 3;

    private BoxRemarks() {}

    static List<Message> of(Box box) {
        List<Message> remarks = new ArrayList<>();
        if (box.sticks().isEmpty()) {
            remarks.add(Message.of("store.box.no-sticks"));
        }
        List<String> outside = box.sticks().stream()
                .filter(stick -> !Gamut.holds(stick.color()))
                .map(Stick::title)
                .toList();
        named("store.box.outside", outside).ifPresent(remarks::add);
        named("store.box.same-name", twice(box, Stick::name)).ifPresent(remarks::add);
        named("store.box.same-place", twice(box, stick -> stick.slot().map(Stick.Slot::label)))
                .ifPresent(remarks::add);
        return remarks;
    }

    /** What more than one stick has, in the order of the box. */
    private static List<String> twice(Box box, Function<Stick, Optional<String>> what) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        box.sticks().forEach(stick -> what.apply(stick).ifPresent(has -> counts.merge(has, 1, Integer::sum)));
        counts.values().removeIf(count -> count == 1);
        return List.copyOf(counts.keySet());
    }

    private static Optional<Message> named(String key, List<String> all) {
        return all.isEmpty()
                ? Optional.empty()
                : Optional.of(Message.of(
                        key,
                        all.size(),
                        String.join(", ", all.subList(0, Math.min(NAMED, all.size()))),
                        Math.max(0, all.size() - NAMED)));
    }
}
