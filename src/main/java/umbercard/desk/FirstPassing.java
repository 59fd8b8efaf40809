package umbercard.desk;

import java.awt.Component;
import java.awt.EventQueue;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import javax.swing.JFrame;
import umbercard.desk.session.Session;
import umbercard.desk.work.Background;
import umbercard.door.Edit;
import umbercard.kernel.Latest;
import umbercard.model.Frame;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.photo.FirstPass;
import umbercard.photo.FramedView;
import umbercard.picture.Picture;
import umbercard.words.Message;
import umbercard.words.Words;

/**
 * Traces the reference, as the card shows it framed, into a new thumbnail: asks how, shows on the card what would come of it
 * while the rules move, and adds it as one edit. All tracing is done in the background.
 */
final class FirstPassing {
    private final Session session;
    private final Background background;
    private final Telling telling;
    private final JFrame window;
    private final Component beside;
    private final Framed framed = new Framed();

    /** @param beside what the question covers, so that the card stays in sight */
    FirstPassing(Session session, Background background, Telling telling, JFrame window, Component beside) {
        this.session = session;
        this.background = background;
        this.telling = telling;
        this.window = window;
        this.beside = beside;
    }

    /** What is traced, and how. */
    private record Question(Picture photograph, Frame frame, double ratio, FirstPass.Wish wish) {}

    private record Answer(Question question, FirstPass.Traced traced) {}

    /** The picture framed last; framing takes longer than tracing. Used by any thread. */
    private static final class Framed {
        private Optional<Question> of = Optional.empty();
        private Optional<Picture> picture = Optional.empty();

        synchronized Picture of(Question question) {
            boolean same = of.filter(last -> last.photograph() == question.photograph()
                            && last.frame().equals(question.frame())
                            && last.ratio() == question.ratio())
                    .isPresent();
            if (!same) {
                picture = Optional.of(
                        FramedView.of(question.photograph(), question.frame(), question.ratio(), FirstPass.HEIGHT));
                of = Optional.of(question);
            }
            return picture.orElseThrow();
        }
    }

    /** Asks how; adds the thumbnail if the painter keeps it. */
    void ask() {
        Study study = session.study();
        if (session.photograph().isEmpty() || study.reference().isEmpty()) {
            telling.say(Words.say("desk.first-pass.no-photograph"));
            return;
        }
        Picture photograph = session.photograph().get();
        Optional<Thumbnail> shown = study.thumbnail(session.shown());
        Frame frame =
                shown.flatMap(Thumbnail::frame).orElse(study.reference().get().frame());
        FirstPassForm form =
                new FirstPassForm(FirstPass.Wish.following(study.reference().get()));
        Live live = new Live(form);
        form.whenChanged(wish -> live.ask(new Question(photograph, frame, study.ratio(), wish)));
        Asking asking = new Asking(window, "desk.first-pass", form.panel(), form.first());
        asking.over(beside);
        boolean kept = asking.confirmed();
        live.end();
        if (kept) {
            keep(new Question(photograph, frame, study.ratio(), form.wish()), live.last, shown);
        }
        session.preview(Optional.empty());
    }

    /** Adds what is on the card by now, or traces it first where the rules were moved a moment ago. */
    private void keep(Question question, Optional<Answer> known, Optional<Thumbnail> like) {
        if (known.filter(answer -> answer.question().equals(question)).isPresent()) {
            add(known.get().traced(), like);
            return;
        }
        long opening = session.opening();
        background.run(
                Message.of("desk.work.first-pass"),
                task -> FirstPass.trace(framed.of(question), question.ratio(), question.wish(), task::stopped),
                traced -> {
                    if (session.opening() == opening) {
                        add(traced, like);
                    }
                },
                telling::failed);
    }

    private void add(FirstPass.Traced traced, Optional<Thumbnail> like) {
        String id = session.study().newId("t");
        session.edit(new Edit(
                Message.of("desk.first-pass.done"),
                study -> traced.addedTo(study, like, id, study.freeName(Words.say("desk.first-pass.name")))));
        session.show(id);
    }

    /** What is shown while the painter chooses. Only the newest question is answered. */
    private final class Live {
        private final FirstPassForm form;
        private final Latest<Question, Optional<Answer>> worker;
        private Optional<Answer> last = Optional.empty();
        private boolean ended;

        Live(FirstPassForm form) {
            this.form = form;
            worker = new Latest<>(
                    "umbercard-first-pass",
                    (question, stopped) -> {
                        try {
                            return Optional.of(new Answer(
                                    question,
                                    FirstPass.trace(framed.of(question), question.ratio(), question.wish(), stopped)));
                        } catch (CancellationException overtaken) {
                            return Optional.empty();
                        }
                    },
                    answer -> answer.ifPresent(this::show),
                    EventQueue::invokeLater);
        }

        void ask(Question question) {
            worker.ask(question);
        }

        void end() {
            ended = true;
        }

        private void show(Answer answer) {
            if (!ended) {
                last = Optional.of(answer);
                form.tell(answer.question().wish(), answer.traced());
                session.preview(Optional.of(asIf(answer.traced())));
            }
        }
    }

    /** The study with the traced marks in place of those on the card, or on a card of their own where there is none. */
    private Study asIf(FirstPass.Traced traced) {
        Study study = session.study();
        String shown = session.shown();
        Study some = study.thumbnail(shown).isPresent()
                ? study
                : study.withThumbnails(List.of(Thumbnail.empty(shown, Words.say("desk.first-pass.name"))));
        return some.withThumbnails(some.thumbnails().stream()
                .map(thumbnail -> thumbnail.id().equals(shown)
                        ? thumbnail.withGround(traced.ground()).withMarks(traced.marks())
                        : thumbnail)
                .toList());
    }
}
