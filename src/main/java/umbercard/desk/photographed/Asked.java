package umbercard.desk.photographed;

import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.swing.SwingUtilities;
import umbercard.kernel.Latest;
import umbercard.words.Message;
import umbercard.words.Trouble;

/**
 * Asks again and again what a photograph says by the marks of the moment; answered in the background, the newest question
 * only. Event thread only.
 *
 * @param <Q> what is asked, told apart by equality
 * @param <A> what is answered
 */
final class Asked<Q, A> {
    private static final Logger LOG = Logger.getLogger(Asked.class.getName());

    /** Looks into the photograph. */
    interface Look<Q, A> {
        A at(Q question) throws Trouble;
    }

    private record Said<Q, A>(Q question, Optional<A> answer, Optional<Message> wrong) {}

    private final Latest<Q, Said<Q, A>> latest;
    private final BiConsumer<Q, A> told;
    private final Consumer<Message> failed;
    private Optional<Q> asked = Optional.empty();
    private Optional<Said<Q, A>> last = Optional.empty();

    /**
     * @param told what was found
     * @param failed what is wrong with the marks or the photograph
     */
    Asked(String thread, Look<Q, A> look, BiConsumer<Q, A> told, Consumer<Message> failed) {
        this.told = told;
        this.failed = failed;
        latest = new Latest<>(
                thread, (question, stopped) -> said(look, question), this::tell, SwingUtilities::invokeLater);
    }

    private static <Q, A> Said<Q, A> said(Look<Q, A> look, Q question) {
        try {
            return new Said<>(question, Optional.of(look.at(question)), Optional.empty());
        } catch (Trouble trouble) {
            return new Said<>(question, Optional.empty(), Optional.of(trouble.said()));
        } catch (RuntimeException | OutOfMemoryError unforeseen) {
            LOG.log(Level.WARNING, "the photograph could not be looked into", unforeseen);
            return new Said<>(question, Optional.empty(), Optional.of(Message.of("photographed.failed")));
        }
    }

    /** Asks; what was answered last is told at once where it is asked again. */
    void ask(Q question) {
        boolean waits = asked.equals(Optional.of(question)) && !isAnswered(question);
        asked = Optional.of(question);
        if (isAnswered(question)) {
            last.ifPresent(this::tell);
        } else if (!waits) {
            latest.ask(question);
        }
    }

    private boolean isAnswered(Q question) {
        return last.filter(said -> said.question().equals(question)).isPresent();
    }

    /** Wants no answer any more. */
    void drop() {
        asked = Optional.empty();
    }

    private void tell(Said<Q, A> said) {
        last = Optional.of(said);
        if (asked.equals(Optional.of(said.question()))) {
            said.answer().ifPresent(answer -> told.accept(said.question(), answer));
            said.wrong().ifPresent(failed);
        }
    }
}
