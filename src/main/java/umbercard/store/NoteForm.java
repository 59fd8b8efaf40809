package umbercard.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import umbercard.model.ColorNote;

/** A color note as it stands in a study's file; its stick comes last, because it is the longest. */
final class NoteForm {
    private NoteForm() {}

    static JsonNode write(ColorNote note) {
        return new Tree()
                .put("id", note.id())
                .put("zone", note.zone(), TextNode::valueOf)
                .putUnlessEmpty("purpose", note.purpose())
                .put("direction", note.direction())
                .put("touch", note.touch())
                .put("layer", note.layer())
                .putUnlessEmpty("words", note.words())
                .putIfTrue("pinned", note.pinned())
                .putIfTrue("breakBefore", note.breakBefore())
                .put("stick", BoxForm.stick(note.stick()))
                .rest(note.more())
                .node();
    }

    static ColorNote read(Fields fields) {
        ColorNote usual = ColorNote.of(fields.textOf("id"), fields.objectOf("stick", BoxForm::stick));
        return new ColorNote(
                usual.id(),
                usual.stick(),
                fields.text("zone"),
                fields.text("purpose").orElse(usual.purpose()),
                fields.choice("direction", ColorNote.Direction.class).orElse(usual.direction()),
                fields.choice("touch", ColorNote.Touch.class).orElse(usual.touch()),
                fields.count("layer", usual.layer()),
                fields.text("words").orElse(usual.words()),
                fields.truth("pinned", usual.pinned()),
                fields.truth("breakBefore", usual.breakBefore()),
                fields.rest());
    }
}
