package umbercard.desk;

import umbercard.desk.session.Session;
import umbercard.desk.work.Background;
import umbercard.door.Edit;
import umbercard.model.Frame;
import umbercard.model.Study;
import umbercard.photo.FirstPass;
import umbercard.photo.FramedView;
import umbercard.photo.Values;
import umbercard.picture.Picture;
import umbercard.picture.ValueField;
import umbercard.words.Message;
import umbercard.words.Words;

/** Traces the squinted reference into a new thumbnail, in the background. */
final class FirstPassing {
    private final Session session;
    private final Background background;
    private final Telling telling;

    FirstPassing(Session session, Background background, Telling telling) {
        this.session = session;
        this.background = background;
        this.telling = telling;
    }

    void run() {
        Study study = session.study();
        if (session.photograph().isEmpty() || study.reference().isEmpty()) {
            telling.say(Words.say("desk.first-pass.no-photograph"));
            return;
        }
        Picture photograph = session.photograph().get();
        Frame frame = study.reference().get().frame();
        FirstPass.Wish wish = FirstPass.Wish.following(study.reference().get());
        long opening = session.opening();
        background.run(
                Message.of("desk.work.first-pass"),
                task -> {
                    ValueField field = Values.of(FramedView.of(photograph, frame, study.ratio(), FirstPass.HEIGHT));
                    return FirstPass.trace(field, study.ratio(), wish, task::stopped);
                },
                traced -> {
                    if (session.opening() == opening) {
                        add(traced);
                    }
                },
                telling::failed);
    }

    private void add(FirstPass.Traced traced) {
        String id = session.study().newId("t");
        session.edit(new Edit(
                Message.of("desk.first-pass.done"),
                study -> traced.addedTo(study, id, study.freeName(Words.say("desk.first-pass.name")))));
        session.show(id);
    }
}
