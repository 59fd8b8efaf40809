package umbercard.desk;

import java.nio.file.Path;

/** Where the photograph on the desk came from, so that a study can be saved anywhere and still find it. */
sealed interface PhotographSource {
    /** There is none. */
    record None() implements PhotographSource {}

    /** A file of the painter's. */
    record InFile(Path file) implements PhotographSource {}

    /** Carried by the program: written beside a study that is saved. */
    record Carried(String name, Bytes bytes) implements PhotographSource {}

    /** Bytes that are not changed any more. */
    final class Bytes {
        private final byte[] all;

        Bytes(byte[] all) {
            this.all = all;
        }

        byte[] all() {
            return all;
        }
    }
}
