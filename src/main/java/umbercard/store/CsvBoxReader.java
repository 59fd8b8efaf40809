package umbercard.store;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Locale;
import umbercard.door.BoxReader;
import umbercard.door.Reads;
import umbercard.kernel.EventThread;
import umbercard.words.Message;
import umbercard.words.Trouble;

/**
 * Reads a box from a table: CSV (RFC 4180) with a first line that names the columns. Semicolons or tabs may stand in the
 * commas' place, and decimal commas in that of points. UTF-8, or UTF-16 with a byte-order mark.
 *
 * <p>One of {@code L,a,b} (CIE 1976, under D50), {@code x,y,Y} (CIE 1931, Y in percent, under illuminant C) and {@code hex}
 * (sRGB) gives the color; a column {@code white} names another white. There may be {@code name}; {@code place} in the tray
 * ({@code B3} or {@code 2-3}), or {@code row} and {@code column}; {@code hardness} (hard, medium, soft); {@code owned} (yes,
 * no, worn out); {@code note}; {@code id}. Other columns are kept as they are. The file's name is the box's.
 */
public final class CsvBoxReader implements BoxReader {
    @Override
    public String id() {
        return "csv";
    }

    /** After the program's own. */
    @Override
    public int rank() {
        return 200;
    }

    @Override
    public List<String> endings() {
        return List.of("csv", "tsv", "txt");
    }

    /** Told by the name's ending, else by a first line that names the columns of a color. */
    @Override
    public boolean reads(String fileName, byte[] head) {
        String name = fileName.toLowerCase(Locale.ROOT);
        if (name.endsWith(".csv") || name.endsWith(".tsv")) {
            return true;
        }
        try {
            new CsvHeader(CsvText.firstLine(head), fileName);
            return true;
        } catch (IOException noTable) {
            return false;
        }
    }

    /**
     * The box of a table. A line that cannot be read is named among the faults, and the others are kept; so is what stands
     * before a quote that is out of place, and nothing after it.
     *
     * @throws Trouble if it is no text, or its first line names no color's columns
     */
    @Override
    public Reads read(String fileName, InputStream in) throws IOException {
        EventThread.refuse("reading a box");
        try (CsvText text = CsvText.open(in, fileName)) {
            CsvText.Line first = text.next().orElseThrow(() -> new Trouble(Message.of("store.empty", fileName)));
            return new CsvTable(new CsvHeader(first.cells(), fileName)).read(text, fileName);
        } catch (CsvText.Broken broken) {
            throw new Trouble(Message.of("store.csv.broken-first", fileName, broken.line()), broken);
        }
    }
}
