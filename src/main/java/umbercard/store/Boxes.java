package umbercard.store;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import umbercard.door.BoxReader;
import umbercard.door.Ranked;
import umbercard.door.Reads;
import umbercard.kernel.EventThread;
import umbercard.kernel.Plugins;
import umbercard.words.Trouble;

/** Boxes of sticks in any kind of file that a reader is found for. */
public final class Boxes {
    /** As much of a file as a reader needs to know its kind by. */
    private static final int HEAD = 4096;

    private final Plugins<BoxReader> readers;

    /** With the readers that are found. */
    public Boxes() {
        this(Plugins.find(BoxReader.class, Ranked.ORDER));
    }

    /** With these readers. */
    public Boxes(Plugins<BoxReader> readers) {
        this.readers = readers;
    }

    /** What a reader made of a file: a box, or a failure that is the file's and not the reader's. */
    private record Outcome(Optional<Reads> reads, Optional<IOException> failure) {}

    /**
     * Reads a box with the first reader that takes files of its kind; one that fails is switched off and the next is asked.
     * A file that no reader takes is read as the program's own kind, which says what is wrong with it.
     *
     * @throws Trouble if the file is missing or no box
     */
    public Reads read(Path file) throws Trouble {
        EventThread.refuse("reading a box");
        byte[] bytes;
        try {
            bytes = Files.readAllBytes(file);
        } catch (IOException unreadable) {
            return BoxFile.read(file);
        }
        byte[] head = Arrays.copyOf(bytes, Math.min(HEAD, bytes.length));
        for (BoxReader reader : readers.on()) {
            if (readers.ask(reader, r -> r.reads(file.toString(), head)).orElse(false)) {
                Optional<Outcome> outcome = readers.ask(reader, r -> outcome(r, file, bytes));
                if (outcome.isPresent()) {
                    return settled(outcome.get(), file);
                }
            }
        }
        return BoxFile.read(file);
    }

    private static Outcome outcome(BoxReader reader, Path file, byte[] bytes) {
        try {
            Reads reads = reader.read(file.toString(), new ByteArrayInputStream(bytes));
            return new Outcome(Optional.of(reads), Optional.empty());
        } catch (IOException failure) {
            return new Outcome(Optional.empty(), Optional.of(failure));
        }
    }

    private static Reads settled(Outcome outcome, Path file) throws Trouble {
        if (outcome.failure().isPresent()) {
            throw AtomicFile.trouble(file, outcome.failure().get());
        }
        return outcome.reads().orElseThrow();
    }
}
