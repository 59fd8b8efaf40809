package umbercard.door;

import java.util.List;
import umbercard.model.Box;
import umbercard.words.Message;

/** A box as read, and what could not be. */
public record Reads(Box box, List<Fault> faults) {
    public Reads {
        faults = List.copyOf(faults);
    }

    /**
     * An entry that could not be read.
     *
     * @param line counted from 1; 0 where the kind of file has no lines
     */
    public record Fault(long line, Message reason) {}
}
