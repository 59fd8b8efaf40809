package umbercard.desk.notes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import umbercard.door.Edit;
import umbercard.model.ColorNote;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.model.Zone;
import umbercard.model.edit.Edits;
import umbercard.model.edit.Sticks;
import umbercard.words.Message;

/** Edits of the color card, by name. */
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
        UnaryOperator<Study> out = Sticks.setOut(stick);
        return new Edit(
                Message.of("notes.edit.add", stick.title()),
                study -> Edits.addNote(note).apply(out.apply(study)));
    }

    static Edit remove(ColorNote note) {
        return new Edit(Message.of("notes.edit.remove", note.stick().title()), Edits.removeNote(note.id()));
    }

    /** Moves a strip to a place counted from 0. */
    static Edit move(ColorNote note, int place) {
        return new Edit(Message.of("notes.edit.move", note.stick().title()), Edits.moveNote(note.id(), place));
    }

    /** Changes one of a strip's choices: {@code zone}, {@code purpose}, {@code direction} or {@code touch}. */
    static Edit change(ColorNote note, String choice, UnaryOperator<ColorNote> change) {
        return new Edit(Message.of("notes.edit." + choice, note.stick().title()), Edits.note(note.id(), change));
    }

    /** Adds a zone after the others and puts the strip into it. */
    static Edit newZone(ColorNote note, Zone zone) {
        UnaryOperator<Study> into = Edits.note(note.id(), n -> n.withZone(Optional.of(zone.id())));
        return new Edit(Message.of("notes.edit.new-zone", zone.name()), study -> {
            List<Zone> zones = new ArrayList<>(study.zones());
            zones.add(zone);
            return into.apply(study.withZones(zones));
        });
    }
}
