package umbercard.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import umbercard.door.Reads;
import umbercard.store.Boxes;
import umbercard.words.Trouble;
import umbercard.words.Words;

/** Reads a box for a call, and tells what was wrong with it and how it was understood. */
final class BoxOpening {
    private BoxOpening() {}

    static Reads read(Path file, PrintWriter err) throws Trouble {
        Boxes boxes = new Boxes();
        try {
            return boxes.read(file);
        } finally {
            SwitchedOffWords.tell(boxes.switchedOff(), err);
        }
    }

    /** Sticks that could not be read are no reason to do without the others. */
    static void tell(Reads reads, String name, PrintWriter err) {
        tellFaults(reads, name, err);
        reads.remarks().forEach(remark -> err.println(Words.say("cli.box.remark", name, remark)));
    }

    static void tellFaults(Reads reads, String name, PrintWriter err) {
        reads.faults()
                .forEach(fault -> err.println(
                        Words.say("cli.box.left-out", name, fault.line() > 0 ? 1 : 0, fault.line(), fault.reason())));
    }
}
