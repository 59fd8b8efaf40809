package umbercard.door;

/** One measurement of a thumbnail with a verdict. A plug-in; pure, callable on any thread. */
public interface Reading extends Ranked {
    Rule rule();

    /** Measures; polls {@code plan.stopped()} if it takes long, and may then return anything. */
    Finding read(Plan plan, Limits limits);

    @Override
    default String id() {
        return rule().id();
    }

    @Override
    default int rank() {
        return rule().rank();
    }
}
