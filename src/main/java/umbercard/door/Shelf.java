package umbercard.door;

import java.io.IOException;
import java.io.OutputStream;

/** Where files are put. */
public interface Shelf {
    /** A stream for a file of that name; the file appears when the stream is closed, whole or not at all. */
    OutputStream open(String name) throws IOException;
}
