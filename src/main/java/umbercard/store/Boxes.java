package umbercard.store;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import umbercard.door.BoxReader;
import umbercard.door.Ranked;
import umbercard.door.Reads;
import umbercard.kernel.EventThread;
import umbercard.kernel.Plugins;
import umbercard.kernel.Plugins.SwitchedOff;
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
     * with single sticks is among the faults, and the other sticks are kept.
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
                    return attempt.get().outcome(name);
                }
            }
        }
        throw new Trouble(Message.of("store.no-reader", name, String.join(", ", kinds())));
    }

    private List<String> kinds() {
        return readers.on().stream()
                .flatMap(reader -> readers.ask(reader, BoxReader::id).stream())
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
