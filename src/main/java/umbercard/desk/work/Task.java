package umbercard.desk.work;

import java.util.function.Consumer;
import umbercard.words.Message;

/** A piece of work under way: its name, how far it is, and whether it is to stop. Safe for use by several threads. */
public final class Task {
    private final Message name;
    private final Consumer<Task> changed;
    private volatile double share = -1;
    private volatile boolean stopped;

    Task(Message name, Consumer<Task> changed) {
        this.name = name;
        this.changed = changed;
    }

    public Message name() {
        return name;
    }

    /** How much of it is done, 0..1; negative while nobody knows. */
    public double share() {
        return share;
    }

    /** Tells how much is done, 0..1. Steps under one hundredth are not shown. */
    public void at(double done) {
        if (Math.abs(done - share) >= 0.01 || done >= 1) {
            share = done;
            changed.accept(this);
        }
    }

    /** Whether it was asked to stop. */
    public boolean stopped() {
        return stopped;
    }

    /** Asks the work to stop; it may still finish. */
    public void stop() {
        stopped = true;
    }
}
