package umbercard.door;

import java.util.List;
import java.util.function.Consumer;

/**
 * What a writer writes.
 *
 * @param name what its files are called, without an ending; safe as a file name
 * @param width of a page in millimeters
 * @param height of a page in millimeters
 * @param dpi for writers that make pixels
 */
public record Pages(
        String name,
        String title,
        String concept,
        double width,
        double height,
        List<Consumer<Drawing>> sides,
        Type type,
        double dpi) {
    public Pages {
        sides = List.copyOf(sides);
    }
}
