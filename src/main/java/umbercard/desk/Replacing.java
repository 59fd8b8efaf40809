package umbercard.desk;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import umbercard.desk.session.Session;
import umbercard.desk.session.Session.Change;
import umbercard.door.Edit;
import umbercard.model.Frame;
import umbercard.model.Reference;
import umbercard.model.Study;
import umbercard.model.edit.Frames;
import umbercard.words.Message;

/** Puts another photograph in the place of the study's as one edit; undo and redo bring the right photograph along. */
final class Replacing {
    /** A photograph as studies refer to it. */
    private record Named(String file, String sha256) {
        static Named of(Study study) {
            return study.reference()
                    .map(reference -> new Named(reference.file(), reference.sha256()))
                    .orElse(new Named("", ""));
        }
    }

    private final Session session;
    private final Photographs photographs;
    private final Map<Named, PhotographSource> known = new HashMap<>();
    private Named shown = new Named("", "");
    private long opening;

    Replacing(Session session, Photographs photographs) {
        this.session = session;
        this.photographs = photographs;
        session.listen(change -> {
            if (change == Change.STUDY) {
                follow();
            }
        });
    }

    /** Gives the study on the desk another photograph, in the largest frame. */
    void replace(Pasting.Arrived photograph) {
        if (opening != session.opening()) {
            forget();
        }
        Reference reference = Reference.to(
                photograph.name().toString(),
                photograph.sha256(),
                Frame.largest(photograph.picture().ratio(), session.study().ratio()));
        known.put(Named.of(session.study()), photographs.source());
        shown = new Named(reference.file(), reference.sha256());
        known.put(shown, photograph.source());
        session.edit(new Edit(Message.of("desk.paste.done"), Frames.anotherPhotograph(reference)));
        photographs.shown(photograph.source(), photograph.picture());
    }

    private void forget() {
        known.clear();
        opening = session.opening();
    }

    private void follow() {
        if (opening != session.opening()) {
            forget();
        }
        Named now = Named.of(session.study());
        if (known.isEmpty() || now.equals(shown)) {
            return;
        }
        shown = now;
        Optional.ofNullable(known.get(now))
                .ifPresentOrElse(
                        photographs::showAgain,
                        // Saving names the same photograph from the study's new place.
                        () -> known.put(now, photographs.source()));
    }
}
