package umbercard.model.edit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import umbercard.model.ColorNote;
import umbercard.model.Study;

/**
 * Changes of the color notes, each a pure function. One that names notes the study does not have leaves those out.
 *
 * <p>For moving, the card is a row of <em>items</em>: the notes, and each break as an item of its own over the note that
 * begins the new sitting. A break stays where it is while notes are moved past it; one that comes to stand first, last or
 * beside another is gone.
 */
public final class Notes {
    private Notes() {}

    /** An item of the card: a note, or a break where empty. */
    private static final Optional<ColorNote> BREAK = Optional.empty();

    /** Adds notes after the others. */
    public static UnaryOperator<Study> add(List<ColorNote> added) {
        return study -> {
            List<ColorNote> all = new ArrayList<>(study.notes());
            all.addAll(added);
            return study.withNotes(all);
        };
    }

    /** Changes the notes of those ids. */
    public static UnaryOperator<Study> change(Collection<String> ids, UnaryOperator<ColorNote> change) {
        return study -> study.withNotes(study.notes().stream()
                .map(note -> ids.contains(note.id()) ? change.apply(note) : note)
                .toList());
    }

    /** Takes notes off the card; the breaks stay. */
    public static UnaryOperator<Study> remove(Collection<String> ids) {
        return study -> withItems(
                study,
                items(study).stream()
                        .filter(item ->
                                item.filter(note -> ids.contains(note.id())).isEmpty())
                        .toList());
    }

    /**
     * Puts notes together, in their order, into a gap of the card.
     *
     * @param gap how many items stand before it, 0 to the number of items; beyond either end means that end
     */
    public static UnaryOperator<Study> move(Collection<String> ids, int gap) {
        return study -> {
            List<Optional<ColorNote>> before = new ArrayList<>();
            List<Optional<ColorNote>> moved = new ArrayList<>();
            List<Optional<ColorNote>> after = new ArrayList<>();
            int place = 0;
            for (Optional<ColorNote> item : items(study)) {
                boolean moves = item.filter(note -> ids.contains(note.id())).isPresent();
                (moves ? moved : place < gap ? before : after).add(item);
                place++;
            }
            before.addAll(moved);
            before.addAll(after);
            return moved.isEmpty() ? study : withItems(study, before);
        };
    }

    /** Moves notes past the item before the first of them, which may be a break; at the top of the card nothing changes. */
    public static UnaryOperator<Study> earlier(Collection<String> ids) {
        return study -> {
            List<Integer> places = places(study, ids);
            return places.isEmpty()
                    ? study
                    : move(ids, Math.max(0, places.get(0) - 1)).apply(study);
        };
    }

    /** Moves notes past the item after the last of them, which may be a break; at the foot of the card nothing changes. */
    public static UnaryOperator<Study> later(Collection<String> ids) {
        return study -> {
            List<Integer> places = places(study, ids);
            return places.isEmpty()
                    ? study
                    : move(ids, places.get(places.size() - 1) + 2).apply(study);
        };
    }

    /** Copies notes, not pinned and with ids of their own, to stand after the last of them. */
    public static UnaryOperator<Study> duplicate(Collection<String> ids) {
        return study -> {
            List<ColorNote> all = new ArrayList<>(study.notes());
            List<ColorNote> chosen =
                    all.stream().filter(note -> ids.contains(note.id())).toList();
            if (chosen.isEmpty()) {
                return study;
            }
            List<String> fresh = study.newIds("n", chosen.size());
            List<ColorNote> copies = new ArrayList<>();
            for (int i = 0; i < chosen.size(); i++) {
                copies.add(chosen.get(i).withId(fresh.get(i)).withPinned(false).withBreakBefore(false));
            }
            all.addAll(all.indexOf(chosen.get(chosen.size() - 1)) + 1, copies);
            return study.withNotes(all);
        };
    }

    /** Sets or takes away the break over a note; the first note has none. */
    public static UnaryOperator<Study> breakBefore(String id, boolean there) {
        UnaryOperator<Study> change = change(List.of(id), note -> note.withBreakBefore(there));
        return study -> {
            boolean first =
                    study.notes().stream().findFirst().map(ColorNote::id).equals(Optional.of(id));
            return first ? study : change.apply(study);
        };
    }

    /** Where the notes stand among the items, counted from 0, in their order. */
    private static List<Integer> places(Study study, Collection<String> ids) {
        List<Optional<ColorNote>> items = items(study);
        List<Integer> places = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            if (items.get(i).filter(note -> ids.contains(note.id())).isPresent()) {
                places.add(i);
            }
        }
        return places;
    }

    private static List<Optional<ColorNote>> items(Study study) {
        List<Optional<ColorNote>> items = new ArrayList<>();
        for (ColorNote note : study.notes()) {
            if (note.breakBefore() && !items.isEmpty()) {
                items.add(BREAK);
            }
            items.add(Optional.of(note));
        }
        return items;
    }

    private static Study withItems(Study study, List<Optional<ColorNote>> items) {
        List<ColorNote> notes = new ArrayList<>();
        boolean pending = false;
        for (Optional<ColorNote> item : items) {
            if (item.isPresent()) {
                notes.add(item.get().withBreakBefore(pending && !notes.isEmpty()));
            }
            pending = item.isEmpty();
        }
        return study.withNotes(notes);
    }
}
