package umbercard.store;

import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.io.ByteOrderMark;
import org.apache.commons.io.input.BOMInputStream;
import umbercard.words.Message;
import umbercard.words.Trouble;

/**
 * The lines of a table (RFC 4180), one after the other, in UTF-8 or what a byte-order mark says. Besides commas, semicolons
 * and tabs may stand between the cells: the one by which the first line has the most columns that are known.
 */
final class CsvText implements Closeable {
    /** As many characters of the beginning as are looked at to tell what stands between the cells. */
    private static final int HEAD = 65_536;

    private static final char[] SEPARATORS = {',', ';', '\t'};

    /**
     * A line of the table, which a quoted line break may spread over several of the file's.
     *
     * @param number of the file's line that it begins in, from 1
     */
    record Line(long number, List<String> cells) {
        boolean isBlank() {
            return cells.stream().allMatch(String::isBlank);
        }
    }

    /** The table breaks off here, because of a quote that is out of place. */
    static final class Broken extends Exception {
        private static final long serialVersionUID = 1;

        private final long line;

        private Broken(long line, Throwable cause) {
            super(cause);
            this.line = line;
        }

        long line() {
            return line;
        }
    }

    private final String fileName;
    private final char separator;
    private final CSVParser parser;
    private final Iterator<CSVRecord> records;

    private CsvText(Reader text, char separator, String fileName) throws IOException {
        this.fileName = fileName;
        this.separator = separator;
        parser =
                CSVParser.builder().setReader(text).setFormat(format(separator)).get();
        records = parser.iterator();
    }

    /**
     * Opens a table. Closing it closes the stream.
     *
     * @throws Trouble if the beginning is no text
     */
    static CsvText open(InputStream in, String fileName) throws IOException {
        BufferedReader text = new BufferedReader(reader(in, CodingErrorAction.REPORT), HEAD);
        try {
            String head = head(text);
            char separator = separator(head);
            if (firstLine(head, separator).stream().anyMatch(title -> title.indexOf('\0') >= 0)) {
                throw notUtf8(fileName, new CharacterCodingException());
            }
            return new CsvText(text, separator, fileName);
        } catch (CharacterCodingException binary) {
            throw notUtf8(fileName, binary);
        }
    }

    /** The first line of a table that begins so; empty if there is none. */
    static List<String> firstLine(byte[] head) throws IOException {
        try (BufferedReader text =
                new BufferedReader(reader(new ByteArrayInputStream(head), CodingErrorAction.REPLACE), HEAD)) {
            String beginning = head(text);
            return firstLine(beginning, separator(beginning));
        }
    }

    private static Reader reader(InputStream in, CodingErrorAction action) throws IOException {
        BOMInputStream marked = BOMInputStream.builder()
                .setInputStream(in)
                .setByteOrderMarks(ByteOrderMark.UTF_8, ByteOrderMark.UTF_16LE, ByteOrderMark.UTF_16BE)
                .get();
        Charset charset = marked.hasBOM() ? Charset.forName(marked.getBOMCharsetName()) : StandardCharsets.UTF_8;
        return new InputStreamReader(
                marked, charset.newDecoder().onMalformedInput(action).onUnmappableCharacter(action));
    }

    private static String head(BufferedReader text) throws IOException {
        text.mark(HEAD);
        char[] head = new char[HEAD];
        int length = 0;
        for (int read = 0; read >= 0 && length < HEAD; length += Math.max(0, read)) {
            read = text.read(head, length, HEAD - length);
        }
        text.reset();
        return new String(head, 0, length);
    }

    private static char separator(String head) {
        char best = SEPARATORS[0];
        long most = 0;
        for (char separator : SEPARATORS) {
            long known = firstLine(head, separator).stream()
                    .filter(cell -> CsvColumn.named(cell).isPresent())
                    .count();
            if (known > most) {
                best = separator;
                most = known;
            }
        }
        return best;
    }

    private static List<String> firstLine(String head, char separator) {
        try (CsvText text = new CsvText(new StringReader(head), separator, "")) {
            return text.next().map(Line::cells).orElse(List.of());
        } catch (IOException | Broken none) {
            return List.of();
        }
    }

    private static CSVFormat format(char separator) {
        return CSVFormat.RFC4180
                .builder()
                .setDelimiter(separator)
                .setIgnoreSurroundingSpaces(true)
                .get();
    }

    char separator() {
        return separator;
    }

    /**
     * The next line that is not blank.
     *
     * @throws Broken if a quote is out of place: nothing after it can be told apart
     * @throws Trouble if it is no text
     */
    Optional<Line> next() throws IOException, Broken {
        while (true) {
            long number = parser.getCurrentLineNumber() + 1;
            try {
                if (!records.hasNext()) {
                    return Optional.empty();
                }
                Line line = new Line(number, records.next().toList());
                if (!line.isBlank()) {
                    return Optional.of(line);
                }
            } catch (UncheckedIOException failure) {
                if (failure.getCause() instanceof CharacterCodingException binary) {
                    throw notUtf8(fileName, binary);
                }
                throw new Broken(number, failure);
            }
        }
    }

    private static Trouble notUtf8(String fileName, Throwable cause) {
        return new Trouble(Message.of("store.csv.not-utf8", fileName), cause);
    }

    @Override
    public void close() throws IOException {
        parser.close();
    }
}
