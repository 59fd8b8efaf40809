package umbercard.desk.ledger;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import umbercard.desk.session.Session;
import umbercard.door.Edit;
import umbercard.door.Limits;
import umbercard.door.Rule;
import umbercard.model.Study;
import umbercard.model.edit.Thresholds;
import umbercard.readings.Evaluation;
import umbercard.readings.RuleWords;
import umbercard.readings.Wishes;
import umbercard.words.Message;

/** Changes what is asked of the readings: for the study by edits, which can be undone, or for every study by what is kept. */
final class LimitChanges {
    private final Session session;
    private final Runnable kept;

    /** @param kept run after what is kept for every study has changed */
    LimitChanges(Session session, Runnable kept) {
        this.session = session;
        this.kept = kept;
    }

    /** The limits in force that far. */
    Limits limits(Scope scope, Rule rule) {
        Wishes wishes = PaintersWishes.now();
        return scope == Scope.STUDY
                ? Evaluation.limits(rule, session.study(), wishes)
                : Evaluation.limits(rule, session.study().withLimits(Map.of()), wishes);
    }

    boolean isSilenced(Scope scope, Rule rule) {
        return silenced(scope).contains(rule.id());
    }

    /** Whether a reading is not as it came, by a change that reaches that far. */
    boolean isChanged(Scope scope, Rule rule) {
        return isSilenced(scope, rule) || changed(scope).containsKey(rule.id());
    }

    /** Whether any reading is not as it came. */
    boolean isAnyChanged(Scope scope) {
        return !silenced(scope).isEmpty() || !changed(scope).isEmpty();
    }

    private Map<String, Map<String, Double>> changed(Scope scope) {
        return scope == Scope.STUDY
                ? session.study().limits()
                : PaintersWishes.now().limits();
    }

    private Set<String> silenced(Scope scope) {
        return scope == Scope.STUDY
                ? session.study().silenced()
                : PaintersWishes.now().silenced();
    }

    /** Gives a limit a value; the steps of one limit in a row are one edit. */
    void limit(Scope scope, Rule rule, String name, double value) {
        Edit edit = new Edit(
                Message.of("ledger.edit.limit", RuleWords.name(rule)),
                Thresholds.limit(rule.id(), name, value),
                Optional.of("limit " + rule.id() + " " + name));
        change(scope, edit, was -> new Wishes(Thresholds.with(was.limits(), rule.id(), name, value), was.silenced()));
    }

    void silence(Scope scope, Rule rule, boolean silent) {
        change(
                scope,
                edit(silent ? "silence" : "hear", RuleWords.name(rule), Thresholds.silence(rule.id(), silent)),
                was -> new Wishes(was.limits(), Thresholds.with(was.silenced(), rule.id(), silent)));
    }

    /** Puts one reading back as it was before any change that reaches that far. */
    void reset(Scope scope, Rule rule) {
        change(
                scope,
                edit("reset", RuleWords.name(rule), Thresholds.reset(rule.id())),
                was -> new Wishes(
                        Thresholds.without(was.limits(), rule.id()),
                        Thresholds.with(was.silenced(), rule.id(), false)));
    }

    void resetAll(Scope scope) {
        change(scope, edit("reset-all", "", Thresholds.resetAll()), was -> Wishes.NONE);
    }

    private static Edit edit(String key, String name, UnaryOperator<Study> change) {
        return new Edit(Message.of("ledger.edit." + key, name), change);
    }

    private void change(Scope scope, Edit edit, UnaryOperator<Wishes> wish) {
        if (scope == Scope.STUDY) {
            session.edit(edit);
        } else {
            PaintersWishes.keep(wish.apply(PaintersWishes.now()));
            kept.run();
        }
    }
}
