package umbercard.store;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import umbercard.door.BoxReader;
import umbercard.door.Ranked;
import umbercard.door.Reads;
import umbercard.kernel.EventThread;
import umbercard.kernel.Plugins;
import umbercard.kernel.Plugins.SwitchedOff;
import umbercard.model.Box;
import umbercard.words.Message;
import umbercard.words.Trouble;

/**
 * Reads boxes of sticks from files of every kind that a reader knows. Readers are plug-ins: one that fails is switched off
 * and reported, and the next is asked.
 */
public final class Boxes {
    /** How many of a file's first bytes a reader sees to tell its kind. */
    private static final int HEAD = 8192;

    private final Plugins<BoxReader> readers;

    /** With the readers that are found. */
    public Boxes() {
        this(Plugins.find(BoxReader.class, Ranked.ORDER));
    }

    /** With these readers, asked in their order. */
    public Boxes(Plugins<BoxReader> readers) {
        this.readers = readers;
    }

    /**
     * Reads a box with the first reader that knows the file by its name and its first bytes. What that reader finds wrong
     * with single sticks is among the faults, and the other sticks are kept. Names and places that several sticks have,
     * and colors that a screen cannot show, are among the remarks.
     *
     * @throws Trouble if the file is missing, empty or unreadable, no reader knows it, or the one that does finds it damaged
     */
    public Reads read(Path file) throws Trouble {
        EventThread.refuse("reading a box");
        String name = file.toString();
        byte[] bytes = Json.bytes(file);
        if (bytes.length == 0) {
            throw new Trouble(Message.of("store.empty", name));
        }
        byte[] head = Arrays.copyOf(bytes, Math.min(bytes.length, HEAD));
        for (BoxReader reader : readers.on()) {
            if (readers.ask(reader, r -> r.reads(name, head.clone())).orElse(false)) {
                Optional<Attempt> attempt = readers.ask(reader, r -> attempt(r, name, bytes));
                if (attempt.isPresent()) {
                    Reads reads = attempt.get().outcome(name);
                    return reads.with(BoxRemarks.of(reads.box()));
                }
            }
        }
        throw new Trouble(Message.of("store.no-reader", name, String.join(", ", endings())));
    }

    /**
     * Writes a box, whole or not at all, as the kind of file that its name ends with: {@code .json} keeps everything,
     * {@code .csv} the sticks.
     *
     * @return what the kind of file has no room for, in sentences
     * @throws Trouble if the name ends otherwise, or the file cannot be written; it is then as it was
     */
    public static List<Message> write(Box box, Path file) throws Trouble {
        String name = file.toString();
        String lower = name.toLowerCase(Locale.ROOT);
        if (lower.endsWith(".json")) {
            BoxFile.write(box, file);
            return List.of();
        }
        if (!lower.endsWith(".csv")) {
            throw new Trouble(Message.of("store.box-ending", name));
        }
        EventThread.refuse("saving a box");
        AtomicFile.write(file, CsvBoxText.text(box).getBytes(StandardCharsets.UTF_8));
        return CsvBoxText.left(box, name).stream().toList();
    }

    /** What names of files that can be read usually end with, without the dot. */
    public List<String> endings() {
        return readers.on().stream()
                .flatMap(reader -> readers.ask(reader, BoxReader::endings).stream())
                .flatMap(List::stream)
                .distinct()
                .toList();
    }

    /** The readers that failed in this session, and why. */
    public List<SwitchedOff> switchedOff() {
        return readers.switchedOff();
    }

    private static Attempt attempt(BoxReader reader, String name, byte[] bytes) {
        try {
            return new Attempt(Optional.of(reader.read(name, new ByteArrayInputStream(bytes))), Optional.empty());
        } catch (IOException failure) {
            return new Attempt(Optional.empty(), Optional.of(failure));
        }
    }

    /** What a reader gave: the box, or what it found wrong with the file. */
    private record Attempt(Optional<Reads> reads, Optional<IOException> failure) {
        Reads outcome(String name) throws Trouble {
            if (failure.isPresent()) {
                throw failure.get() instanceof Trouble told
                        ? told
                        : new Trouble(Message.of("store.unreadable", name), failure.get());
            }
            return reads.orElseThrow();
        }
    }
}
