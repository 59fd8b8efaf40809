package umbercard.desk.photographed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import umbercard.geometry.Perspective;
import umbercard.geometry.Point;
import umbercard.geometry.Size;
import umbercard.photo.Gray;
import umbercard.photo.Tray;
import umbercard.picture.Picture;

/**
 * A tray as the painter has marked it so far; places in pixels of the picture.
 *
 * @param whites what is white; none yet, perhaps
 * @param value of that white, Munsell's
 */
record TrayMarks(List<Point> corners, int rows, int columns, List<Point> whites, double value, Picture picture) {
    TrayMarks {
        corners = List.copyOf(corners);
        whites = List.copyOf(whites);
    }

    /** The tray, once there is a white to go by. */
    Optional<Tray> tray() {
        return whites.isEmpty()
                ? Optional.empty()
                : Optional.of(new Tray(
                        corners,
                        rows,
                        columns,
                        whites.stream()
                                .map(white -> Gray.at(white, value, picture))
                                .toList(),
                        Optional.empty()));
    }

    /** The lines between its cells and round them, as they are seen; none where no tray looks like that. */
    List<List<Point>> lines() {
        return Perspective.of(new Size(columns, rows), corners)
                .map(view -> {
                    List<List<Point>> lines = new ArrayList<>();
                    for (int row = 0; row <= rows; row++) {
                        lines.add(List.of(view.seen(new Point(0, row)), view.seen(new Point(columns, row))));
                    }
                    for (int column = 0; column <= columns; column++) {
                        lines.add(List.of(view.seen(new Point(column, 0)), view.seen(new Point(column, rows))));
                    }
                    return List.copyOf(lines);
                })
                .orElse(List.of());
    }
}
