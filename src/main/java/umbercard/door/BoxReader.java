package umbercard.door;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;

/** Reads a box of sticks from a kind of file. A plug-in. */
public interface BoxReader extends Ranked {
    /** What names of such files usually end with, without the dot, in lower case; the id where nothing else is said. */
    default List<String> endings() {
        return List.of(id());
    }

    /** Whether the file is of this kind, by its name and its first bytes. */
    boolean reads(String fileName, byte[] head);

    /** Reads what can be read; bad entries are named, good ones kept. */
    Reads read(String fileName, InputStream in) throws IOException;
}
