package umbercard.photo;

import java.util.List;
import java.util.Optional;
import umbercard.geometry.Point;

/**
 * An open tray in a photograph, as the painter marks it; all places in pixels of the picture.
 *
 * @param corners of the grid of sticks: upper left, upper right, lower right, lower left
 * @param rows 1 or more
 * @param columns 1 or more
 * @param grays one or more; with several round the tray, uneven light is evened out
 * @param lining where the bare tray shows; if empty it is looked for where cells meet
 */
public record Tray(List<Point> corners, int rows, int columns, List<Gray> grays, Optional<Point> lining) {
    public Tray {
        corners = List.copyOf(corners);
        grays = List.copyOf(grays);
        if (corners.size() != 4 || rows < 1 || columns < 1 || grays.isEmpty()) {
            throw new IllegalArgumentException("a tray has four corners, rows, columns and a white");
        }
    }
}
