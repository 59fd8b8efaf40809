package umbercard.desk.notes;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import umbercard.door.Edit;
import umbercard.model.ColorNote;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.model.Zone;
import umbercard.model.edit.Notes;
import umbercard.model.edit.Sticks;
import umbercard.words.Message;

/** Edits of the color card, by name: after the stick of one strip, or after the number of several. */
final class NoteEdits {
    private NoteEdits() {}

    /**
     * Adds a strip of the stick after the others, and sets the stick out. It takes over zone and purpose of {@code like}, if
     * there is such a strip, and if that is in the zone where one is given.
     *
     * @param zone the id of its zone, where that is known
     */
    static Edit add(String id, Stick stick, Optional<ColorNote> like, Optional<String> zone) {
        ColorNote plain = ColorNote.of(id, stick).withZone(zone);
        ColorNote note = like.filter(l -> zone.isEmpty() || l.zone().equals(zone))
                .map(l -> plain.withZone(l.zone()).withPurpose(l.purpose()))
                .orElse(plain);
        return add(List.of(note));
    }

    /** Adds strips after the others, and sets their sticks out. */
    static Edit add(List<ColorNote> notes) {
        UnaryOperator<Study> out =
                Sticks.setOut(notes.stream().map(ColorNote::stick).toList());
        return new Edit(
                Message.of("notes.edit.add", which(notes)),
                study -> Notes.add(notes).apply(out.apply(study)));
    }

    static Edit remove(List<ColorNote> notes) {
        return new Edit(Message.of("notes.edit.remove", which(notes)), Notes.remove(ids(notes)));
    }

    /** Puts strips together into a gap, counted in strips and breaks from 0. */
    static Edit move(List<ColorNote> notes, int gap) {
        return new Edit(Message.of("notes.edit.move", which(notes)), Notes.move(ids(notes), gap));
    }

    /** Moves strips past the strip or break before them. */
    static Edit earlier(List<ColorNote> notes) {
        return new Edit(Message.of("notes.edit.move", which(notes)), Notes.earlier(ids(notes)));
    }

    /** Moves strips past the strip or break after them. */
    static Edit later(List<ColorNote> notes) {
        return new Edit(Message.of("notes.edit.move", which(notes)), Notes.later(ids(notes)));
    }

    static Edit duplicate(List<ColorNote> notes) {
        return new Edit(Message.of("notes.edit.duplicate", which(notes)), Notes.duplicate(ids(notes)));
    }

    /** Sets a break over a strip, or takes away the one that is there. */
    static Edit turnBreak(ColorNote note) {
        boolean there = !note.breakBefore();
        Message name = Message.of(there ? "notes.edit.break" : "notes.edit.no-break", which(List.of(note)));
        return new Edit(name, Notes.breakBefore(note.id(), there));
    }

    /** Keeps strips in their places while the card is arranged; where all are kept already, lets them go. */
    static Edit turnPinned(List<ColorNote> notes) {
        boolean kept = !notes.stream().allMatch(ColorNote::pinned);
        Message name = Message.of(kept ? "notes.edit.keep" : "notes.edit.let-go", which(notes));
        return new Edit(name, Notes.change(ids(notes), note -> note.withPinned(kept)));
    }

    /** Changes one choice of strips: {@code zone}, {@code purpose}, {@code direction}, {@code touch}, {@code layer}, {@code words}. */
    static Edit change(List<ColorNote> notes, String choice, UnaryOperator<ColorNote> change) {
        return new Edit(Message.of("notes.edit." + choice, which(notes)), Notes.change(ids(notes), change));
    }

    /** Adds a zone after the others and puts the strips into it. */
    static Edit newZone(List<ColorNote> notes, Zone zone) {
        UnaryOperator<Study> into = Notes.change(ids(notes), note -> note.withZone(Optional.of(zone.id())));
        return new Edit(Message.of("notes.edit.new-zone", zone.name()), study -> {
            List<Zone> zones = new ArrayList<>(study.zones());
            zones.add(zone);
            return into.apply(study.withZones(zones));
        });
    }

    /** Puts all strips in an order, and keeps which rules it passes over. */
    static Edit arrange(List<ColorNote> order, Set<String> rulesOff) {
        return new Edit(
                Message.of("notes.edit.arrange"),
                study -> study.withNotes(order).withRulesOff(rulesOff));
    }

    private static Object which(List<ColorNote> notes) {
        return notes.size() == 1
                ? notes.get(0).stick().title()
                : Message.of("notes.edit.strips", Integer.toString(notes.size()));
    }

    private static Collection<String> ids(List<ColorNote> notes) {
        return notes.stream().map(ColorNote::id).toList();
    }
}
