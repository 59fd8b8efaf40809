package umbercard.store;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import umbercard.door.Reads;
import umbercard.kernel.EventThread;
import umbercard.model.Box;
import umbercard.model.Stick;
import umbercard.words.Message;
import umbercard.words.Trouble;

/** Boxes of sticks in files of the program's own kind: JSON (RFC 8259) that a person can read and write, format {@code umbercard-box}. */
public final class BoxFile {
    private static final String STICKS = "sticks";

    private BoxFile() {}

    /**
     * Writes a box, whole or not at all.
     *
     * @throws Trouble if the file cannot be written; it is then as it was
     */
    public static void write(Box box, Path file) throws Trouble {
        EventThread.refuse("saving a box");
        AtomicFile.write(file, text(box).getBytes(StandardCharsets.UTF_8));
    }

    /** The text of a box's file; the same for equal boxes. */
    public static String text(Box box) {
        return Printed.text(BoxForm.write(Head.BOX.begin(), box).node());
    }

    /**
     * The box of a file's text. A stick that cannot be read, or whose id another has already, is named among the faults, and
     * the others are kept.
     *
     * @param fileName what to call the file where something is wrong
     * @throws Trouble if it is no box, is damaged, or is of a newer major version
     */
    public static Reads parse(String text, String fileName) throws Trouble {
        Fields fields = Head.BOX.open(Json.tree(text, fileName), fileName);
        List<Reads.Fault> faults = new ArrayList<>();
        try {
            String id = fields.text("id").orElse("box");
            String name = fields.textOf("name");
            List<Stick> sticks = sticks(fields, faults);
            return new Reads(new Box(id, name, sticks, fields.rest()), faults);
        } catch (Wrong wrong) {
            throw Head.BOX.trouble(fileName, wrong);
        }
    }

    private static List<Stick> sticks(Fields fields, List<Reads.Fault> faults) {
        List<Stick> sticks = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        int place = 0;
        for (JsonNode entry : fields.itemsOf(STICKS)) {
            place++;
            try {
                Stick stick = BoxForm.stick(new Fields(entry, fields.place(STICKS) + " " + place));
                if (!ids.add(stick.id())) {
                    throw new Wrong(fields.place(STICKS) + " " + place, Message.of("store.wanted.own-id", stick.id()));
                }
                sticks.add(stick);
            } catch (Wrong wrong) {
                faults.add(new Reads.Fault(0, wrong.reason()));
            }
        }
        return sticks;
    }
}
