package umbercard.store;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import umbercard.door.Reads;
import umbercard.model.Box;
import umbercard.model.Stick;
import umbercard.words.Message;

/** Gathers the sticks of a table whose first line is read. To be used once. */
final class CsvTable {
    private final CsvHeader header;
    private final CsvRow.Decimals decimals = new CsvRow.Decimals();
    private final CsvColors colors = new CsvColors();
    private final List<Stick> sticks = new ArrayList<>();
    private final Set<String> ids = new HashSet<>();
    private final List<Reads.Fault> faults = new ArrayList<>();

    CsvTable(CsvHeader header) {
        this.header = header;
    }

    Reads read(CsvText text, String fileName) throws IOException {
        try {
            for (Optional<CsvText.Line> line = text.next(); line.isPresent(); line = text.next()) {
                take(line.get());
            }
        } catch (CsvText.Broken broken) {
            faults.add(new Reads.Fault(broken.line(), Message.of("store.csv.broken")));
        }
        String name = name(fileName);
        return new Reads(
                new Box(id(name), name, StickIds.complete(sticks), Map.of()), faults, remarks(text.separator()));
    }

    private void take(CsvText.Line line) {
        try {
            CsvRow row = new CsvRow(header, line.cells(), decimals);
            Stick stick = CsvStick.of(row, colors.of(row));
            if (!stick.id().isEmpty() && !ids.add(stick.id())) {
                throw CsvRow.wrong(CsvColumn.ID, "store.wanted.own-id", stick.id());
            }
            sticks.add(stick);
        } catch (Wrong wrong) {
            faults.add(new Reads.Fault(line.number(), wrong.reason()));
        }
    }

    /** How the table was understood, and what was passed over. */
    private List<Message> remarks(char separator) {
        List<Message> remarks = new ArrayList<>();
        if (!sticks.isEmpty()) {
            remarks.add(Message.of(
                    "store.csv.understood", ",;\t".indexOf(separator), decimals.kind(), colors.understood()));
        }
        remarks.addAll(header.remarks());
        remarks.addAll(colors.remarks());
        return remarks;
    }

    /** The name of a box whose file is called so: without folders and ending. */
    static String name(String fileName) {
        String last = String.valueOf(Path.of(fileName).getFileName());
        return last.replaceFirst("(?<=.)\\.[^.]*$", "");
    }

    /** The id of a box of that name. */
    static String id(String name) {
        String plain = StickIds.plain(name);
        return plain.isEmpty() ? "box" : plain;
    }
}
