package umbercard.door;

import java.io.IOException;
import java.util.function.BooleanSupplier;

/** Writes pages to a kind of file. A plug-in. */
public interface Writer extends Ranked {
    /** What the file's name ends with, without the dot; also its id. */
    @Override
    String id();

    /** Writes one file or several to the shelf; polls {@code stopped} between sides and then leaves off. */
    void write(Pages pages, Shelf shelf, BooleanSupplier stopped) throws IOException;
}
