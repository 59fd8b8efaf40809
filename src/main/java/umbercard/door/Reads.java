package umbercard.door;

import java.util.List;
import java.util.stream.Stream;
import umbercard.model.Box;
import umbercard.words.Message;

/**
 * A box as read, and what could not be.
 *
 * @param faults the entries that were left out, in the order of the file
 * @param remarks what the painter should know of the rest: how the file was understood, and what is odd in the box; each a
 *     sentence
 */
public record Reads(Box box, List<Fault> faults, List<Message> remarks) {
    public Reads {
        faults = List.copyOf(faults);
        remarks = List.copyOf(remarks);
    }

    /** Where there is nothing to remark. */
    public Reads(Box box, List<Fault> faults) {
        this(box, faults, List.of());
    }

    /** The same with more remarks after its own. */
    public Reads with(List<Message> more) {
        return new Reads(
                box, faults, Stream.concat(remarks.stream(), more.stream()).toList());
    }

    /**
     * An entry that could not be read.
     *
     * @param line counted from 1; 0 where the kind of file has no lines
     * @param reason a clause
     */
    public record Fault(long line, Message reason) {}
}
