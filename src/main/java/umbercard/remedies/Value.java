package umbercard.remedies;

import java.util.List;
import umbercard.door.Plan;
import umbercard.geometry.Mass;
import umbercard.geometry.Region;
import umbercard.model.Mark;
import umbercard.notan.Design;
import umbercard.words.Message;

/** One of the notan's two values: what has it, and which marks give it. */
enum Value {
    DARK(Mark.Kind.LAY),
    LIGHT(Mark.Kind.LIFT);

    private final Mark.Kind kind;

    Value(Mark.Kind kind) {
        this.kind = kind;
    }

    Value other() {
        return this == DARK ? LIGHT : DARK;
    }

    /** The kind of mark that gives it. */
    Mark.Kind kind() {
        return kind;
    }

    Region of(Design design) {
        return this == DARK ? design.dark() : design.light();
    }

    List<Mass> masses(Plan plan) {
        return this == DARK ? plan.masses().dark() : plan.masses().light();
    }

    Message words() {
        return Message.of("readings.value." + (this == DARK ? "dark" : "light"));
    }
}
