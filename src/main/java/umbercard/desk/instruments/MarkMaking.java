package umbercard.desk.instruments;

import java.util.Optional;
import java.util.function.UnaryOperator;
import umbercard.door.Edit;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.model.Mark;
import umbercard.model.Study;
import umbercard.model.edit.Edits;
import umbercard.words.Message;

/** Makes marks. */
final class MarkMaking implements Making {
    @Override
    public Edit edit(Draft made, Outline outline) {
        String id = made.kind() == Mark.Kind.LAY ? LayDark.ID : LiftLight.ID;
        return new Edit(Message.of("instrument." + id + ".done"), adding(made, outline));
    }

    @Override
    public Optional<UnaryOperator<Study>> asIf(Draft made, Outline outline) {
        return Optional.of(adding(made, outline));
    }

    @Override
    public Optional<Edit> atOnce(String thumbnail, Point at) {
        return Optional.empty();
    }

    private static UnaryOperator<Study> adding(Draft made, Outline outline) {
        return study -> Edits.addMark(made.thumbnail(), new Mark(study.newId("m"), made.kind(), outline))
                .apply(study);
    }
}
