package umbercard.door;

import java.io.IOException;
import java.io.InputStream;

/** Reads a box of sticks from a kind of file. A plug-in. */
public interface BoxReader extends Ranked {
    /** Whether the file is of this kind, by its name and its first bytes. */
    boolean reads(String fileName, byte[] head);

    /** Reads what can be read; bad entries are named, good ones kept. */
    Reads read(String fileName, InputStream in) throws IOException;
}
