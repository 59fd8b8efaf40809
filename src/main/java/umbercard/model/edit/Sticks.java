package umbercard.model.edit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import umbercard.color.Lab;
import umbercard.model.Box;
import umbercard.model.ColorNote;
import umbercard.model.Stick;
import umbercard.model.Study;

/**
 * Changes of a study's own box and of the sticks set out from it, each a pure function. One that names a stick the study does
 * not have changes nothing.
 */
public final class Sticks {
    private Sticks() {}

    /** Sets a stick out, if it is not out yet. Those set out lie in the order of the box, others after them. */
    public static UnaryOperator<Study> setOut(Stick stick) {
        return study -> isSetOut(study, stick.id())
                ? study
                : study.withSetOut(inBoxOrder(study, Stream.concat(study.setOut().stream(), Stream.of(stick))));
    }

    /** Sets out these and no others, in the order of the box. */
    public static UnaryOperator<Study> setOutOnly(List<Stick> sticks) {
        return study -> study.withSetOut(inBoxOrder(study, sticks.stream()));
    }

    /** Sets out all of these that are not out yet. */
    public static UnaryOperator<Study> setOut(List<Stick> sticks) {
        return study -> {
            Study more = study;
            for (Stick stick : sticks) {
                more = setOut(stick).apply(more);
            }
            return more;
        };
    }

    /**
     * Gives the study a box in place of the one it has. Sticks of another box, by its name, stay set out and on the card; one
     * whose id a stick of the new box has as well gets another, so that it is not taken for that.
     */
    public static UnaryOperator<Study> take(Box box) {
        return study -> {
            Study taken = study.withBox(Optional.of(box));
            if (study.box().map(Box::name).equals(Optional.of(box.name()))) {
                return taken;
            }
            UnaryOperator<Stick> apart = apart(study, box);
            return taken.withSetOut(mapped(study.setOut(), apart))
                    .withNotes(mapped(study.notes(), note -> note.withStick(apart.apply(note.stick()))));
        };
    }

    private static UnaryOperator<Stick> apart(Study study, Box box) {
        Set<String> used = Stream.of(
                        box.sticks().stream(),
                        study.setOut().stream(),
                        study.notes().stream().map(ColorNote::stick))
                .flatMap(sticks -> sticks)
                .map(Stick::id)
                .collect(Collectors.toSet());
        Map<String, String> renamed = new HashMap<>();
        for (Stick stick : box.sticks()) {
            int number = 2;
            while (used.contains(stick.id() + "-" + number)) {
                number++;
            }
            renamed.put(stick.id(), stick.id() + "-" + number);
        }
        return stick -> stick.withId(renamed.getOrDefault(stick.id(), stick.id()));
    }

    /** Puts a stick back into the box. */
    public static UnaryOperator<Study> putBack(String id) {
        return study -> study.withSetOut(without(study.setOut(), id));
    }

    /** Puts a stick right wherever the study has it: in the box, among those set out, on the color card. */
    public static UnaryOperator<Study> change(Stick stick) {
        UnaryOperator<Stick> put = s -> s.id().equals(stick.id()) ? stick : s;
        return study -> everywhere(study, put);
    }

    private static Study everywhere(Study study, UnaryOperator<Stick> put) {
        return study.withBox(study.box().map(box -> box.withSticks(mapped(box.sticks(), put))))
                .withSetOut(mapped(study.setOut(), put))
                .withNotes(mapped(study.notes(), note -> note.withStick(put.apply(note.stick()))));
    }

    /** Gives the stick of that id another color wherever the study has it, and changes nothing else of it. */
    public static UnaryOperator<Study> recolor(String id, Lab color) {
        UnaryOperator<Stick> put = s -> s.id().equals(id) ? s.withColor(color) : s;
        return study -> everywhere(study, put);
    }

    /** Adds a stick to the box, after the others; a study without a box stays as it is. */
    public static UnaryOperator<Study> add(Stick stick) {
        return study -> study.withBox(study.box().map(box -> {
            List<Stick> longer = new ArrayList<>(box.sticks());
            longer.add(stick);
            return box.withSticks(longer);
        }));
    }

    /** Takes a stick out of the box, and from those set out; color notes keep their copy of it. */
    public static UnaryOperator<Study> remove(String id) {
        return study -> study.withBox(study.box().map(box -> box.withSticks(without(box.sticks(), id))))
                .withSetOut(without(study.setOut(), id));
    }

    /** Whether the stick of that id is set out. */
    public static boolean isSetOut(Study study, String id) {
        return study.setOut().stream().anyMatch(stick -> stick.id().equals(id));
    }

    private static List<Stick> inBoxOrder(Study study, Stream<Stick> sticks) {
        List<String> order = study.box().map(Box::sticks).orElse(List.of()).stream()
                .map(Stick::id)
                .toList();
        return sticks.sorted(Comparator.comparingInt(stick -> Optional.of(order.indexOf(stick.id()))
                        .filter(place -> place >= 0)
                        .orElse(Integer.MAX_VALUE)))
                .toList();
    }

    private static List<Stick> without(List<Stick> sticks, String id) {
        return sticks.stream().filter(stick -> !stick.id().equals(id)).toList();
    }

    private static <T> List<T> mapped(List<T> list, UnaryOperator<T> change) {
        return list.stream().map(change).toList();
    }
}
