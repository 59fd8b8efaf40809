package umbercard.desk;

import umbercard.desk.work.Background;
import umbercard.desk.work.Task;

/** Background work that nobody looks at. */
record Unwatched() implements Background.Watch {
    @Override
    public void started(Task task) {}

    @Override
    public void progressed(Task task) {}

    @Override
    public void ended(Task task) {}
}
