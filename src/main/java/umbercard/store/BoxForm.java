package umbercard.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.Optional;
import umbercard.color.Lab;
import umbercard.model.Box;
import umbercard.model.Stick;

/** Sticks and boxes as they stand in a study's file and in a box's own. */
final class BoxForm {
    private BoxForm() {}

    /** The box's fields after those that a file begins with. */
    static Tree write(Tree tree, Box box) {
        return tree.put("id", box.id())
                .put("name", box.name())
                .putList("sticks", box.sticks(), BoxForm::stick)
                .rest(box.more());
    }

    static Box read(Fields fields) {
        return new Box(
                fields.text("id").orElse("box"),
                fields.textOf("name"),
                StudyForm.distinct(fields, "sticks", fields.list("sticks", BoxForm::stick), Stick::id),
                fields.rest());
    }

    static JsonNode stick(Stick stick) {
        return new Tree()
                .put("id", stick.id())
                .put("name", stick.name(), TextNode::valueOf)
                .put("slot", stick.slot(), BoxForm::slot)
                .put("lab", lab(stick.color()))
                .put("hardness", stick.hardness(), hardness -> TextNode.valueOf(hardness.key()))
                .put("state", Optional.of(stick.state()).filter(s -> s != Stick.State.OWNED), BoxForm::state)
                .putUnlessEmpty("note", stick.note())
                .rest(stick.more())
                .node();
    }

    /** A stick; its color stands as {@code lab} or, if that is not there, as {@code hex} in sRGB. */
    static Stick stick(Fields fields) {
        return new Stick(
                fields.textOf("id"),
                fields.text("name"),
                fields.counts("slot", "row", "column").map(place -> new Stick.Slot(place[0], place[1])),
                color(fields),
                fields.choice("hardness", Stick.Hardness.class),
                fields.choice("state", Stick.State.class).orElse(Stick.State.OWNED),
                fields.text("note").orElse(""),
                fields.rest());
    }

    private static JsonNode slot(Stick.Slot slot) {
        return Tree.numbers(slot.row(), slot.column());
    }

    private static JsonNode state(Stick.State state) {
        return TextNode.valueOf(state.key());
    }

    private static Lab color(Fields fields) {
        Optional<Lab> hex = fields.text("hex")
                .map(text -> Lab.ofHex(text).orElseThrow(() -> fields.wrong("hex", "store.wanted.hex")));
        return lab(fields, "lab").or(() -> hex).orElseThrow(() -> fields.wrong("lab", "store.wanted.present"));
    }

    static JsonNode lab(Lab color) {
        return Tree.numbers(color.l(), color.a(), color.b());
    }

    static Optional<Lab> lab(Fields fields, String name) {
        return fields.numbers(name, Range.LAB, "L", "a", "b").map(lab -> {
            if (lab[0] < 0 || lab[0] > 100) {
                throw fields.wrong(name, "store.wanted.lightness");
            }
            return new Lab(lab[0], lab[1], lab[2]);
        });
    }
}
