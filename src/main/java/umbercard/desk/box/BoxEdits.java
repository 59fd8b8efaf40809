package umbercard.desk.box;

import java.util.List;
import umbercard.door.Edit;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.model.edit.Sticks;
import umbercard.words.Message;

/** Edits of the box and of the sticks set out, by name. */
final class BoxEdits {
    private BoxEdits() {}

    /** Sets the stick out, or puts it back where it is out. */
    static Edit turn(Study study, Stick stick) {
        return Sticks.isSetOut(study, stick.id())
                ? new Edit(Message.of("box.edit.put-back", stick.title()), Sticks.putBack(stick.id()))
                : new Edit(Message.of("box.edit.set-out", stick.title()), Sticks.setOut(stick));
    }

    /** Sets these out, and puts all others back. */
    static Edit setOutOnly(List<Stick> sticks) {
        return new Edit(Message.of("box.edit.set-out-only", sticks.size()), Sticks.setOutOnly(sticks));
    }

    /** Sets these out as well. */
    static Edit setOutAlso(List<Stick> sticks) {
        return new Edit(Message.of("box.edit.set-out-also", sticks.size()), Sticks.setOut(sticks));
    }

    static Edit change(Stick stick) {
        return new Edit(Message.of("box.edit.change", stick.title()), Sticks.change(stick));
    }

    static Edit add(Stick stick) {
        return new Edit(Message.of("box.edit.add", stick.title()), Sticks.add(stick));
    }

    static Edit remove(Stick stick) {
        return new Edit(Message.of("box.edit.remove", stick.title()), Sticks.remove(stick.id()));
    }
}
