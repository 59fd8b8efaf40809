package umbercard.desk.stack;

import java.util.List;
import umbercard.door.Edit;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.model.edit.Edits;
import umbercard.words.Message;
import umbercard.words.Words;

/** Edits of the stack, by name. */
final class StackEdits {
    private StackEdits() {}

    /** An empty thumbnail with a new id and a name that no other has. */
    static Thumbnail another(Study study) {
        String name = study.freeName(
                study.thumbnails().size() + 1, number -> Words.say("stack.new-name", Integer.toString(number)));
        return Thumbnail.empty(study.newId("t"), name);
    }

    /** A copy with ids of its own and a name that no other has. */
    static Thumbnail copy(Study study, Thumbnail original) {
        return Edits.copyOf(study, original, study.freeName(Words.say("stack.copy-name", original.name())));
    }

    static Edit addEmpty(Thumbnail thumbnail) {
        return new Edit(Message.of("stack.edit.another"), Edits.addThumbnail(thumbnail));
    }

    static Edit addCopy(Thumbnail copy, Thumbnail original) {
        return new Edit(Message.of("stack.edit.copy", original.name()), Edits.addThumbnail(copy));
    }

    static Edit choose(Thumbnail thumbnail) {
        return new Edit(Message.of("stack.edit.choose", thumbnail.name()), Edits.choose(thumbnail.id()));
    }

    static Edit rename(Thumbnail thumbnail, String name) {
        return new Edit(
                Message.of("stack.edit.rename", thumbnail.name()),
                Edits.thumbnail(thumbnail.id(), t -> t.withName(name)));
    }

    /** Takes a thumbnail off the stack; if it was the chosen one, none is. The last one stays: the desk is never empty. */
    static Edit remove(Thumbnail thumbnail) {
        return new Edit(Message.of("stack.edit.remove", thumbnail.name()), study -> {
            List<Thumbnail> rest = study.thumbnails().stream()
                    .filter(t -> !t.id().equals(thumbnail.id()))
                    .toList();
            return rest.isEmpty()
                    ? study
                    : study.withThumbnails(rest).withChosen(study.chosen().filter(id -> !id.equals(thumbnail.id())));
        });
    }
}
