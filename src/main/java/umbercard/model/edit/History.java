package umbercard.model.edit;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.function.UnaryOperator;
import umbercard.model.Study;

/**
 * A study and every state it had since it was opened: undo and redo without limit. A new edit empties redo. Edits that
 * join with the one before them, by an equal key, become one step. Not safe for use by several threads.
 *
 * @param <N> what names a step
 */
public final class History<N> {
    private record Step<N>(Study before, N name) {}

    private final Deque<Step<N>> done = new ArrayDeque<>();
    private final Deque<Step<N>> undone = new ArrayDeque<>();
    private Study study;
    private Study saved;
    private Optional<String> joining = Optional.empty();

    public History(Study opened) {
        study = opened;
        saved = opened;
    }

    public Study study() {
        return study;
    }

    /** Whether the study differs from the one last saved or opened. */
    public boolean isChanged() {
        return !study.equals(saved);
    }

    /** Tells that {@code written} now stands in the file. The next edit begins a new step. */
    public void saved(Study written) {
        saved = written;
        joining = Optional.empty();
    }

    /** Puts another state in the place of the present one, without a step: for what is none of the painter's doing. */
    public void replace(Study present) {
        study = present;
    }

    /**
     * Takes an edit. One that changes nothing leaves no step and keeps redo.
     *
     * @param joinsWith if equal to that of the edit just before, both are one step
     */
    public void edit(N name, UnaryOperator<Study> change, Optional<String> joinsWith) {
        Study after = change.apply(study);
        if (after.equals(study)) {
            return;
        }
        boolean joins = joinsWith.isPresent() && joinsWith.equals(joining) && !done.isEmpty();
        if (!joins) {
            done.push(new Step<>(study, name));
        }
        undone.clear();
        study = after;
        joining = joinsWith;
    }

    /** The name of the step that {@link #undo()} takes back. */
    public Optional<N> undoable() {
        return Optional.ofNullable(done.peek()).map(Step::name);
    }

    /** The name of the step that {@link #redo()} makes again. */
    public Optional<N> redoable() {
        return Optional.ofNullable(undone.peek()).map(Step::name);
    }

    /** Takes the last step back; nothing happens if there is none. */
    public void undo() {
        move(done, undone);
    }

    /** Makes the step last taken back again; nothing happens if there is none. */
    public void redo() {
        move(undone, done);
    }

    private void move(Deque<Step<N>> from, Deque<Step<N>> to) {
        if (from.isEmpty()) {
            return;
        }
        Step<N> step = from.pop();
        to.push(new Step<>(study, step.name()));
        study = step.before();
        joining = Optional.empty();
    }
}
