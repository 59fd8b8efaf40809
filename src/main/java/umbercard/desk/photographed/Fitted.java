package umbercard.desk.photographed;

import java.awt.image.BufferedImage;
import java.util.Optional;
import java.util.OptionalInt;
import javax.swing.SwingUtilities;
import umbercard.geometry.Point;
import umbercard.kernel.Latest;
import umbercard.model.Frame;
import umbercard.photo.FramedView;
import umbercard.picture.Picture;

/** A picture at the height it is shown at, reduced in the background. Event thread only. */
final class Fitted {
    private static final Frame WHOLE = new Frame(new Point(0.5, 0.5), 1, 0, false);

    private record Made(int rows, BufferedImage image) {}

    private final Latest<Integer, Made> latest;
    private final Runnable changed;
    private OptionalInt asked = OptionalInt.empty();
    private Optional<Made> made = Optional.empty();

    Fitted(Picture picture, Runnable changed) {
        this.changed = changed;
        latest = new Latest<>(
                "umbercard-fitted",
                (rows, stopped) -> new Made(rows, image(FramedView.of(picture, WHOLE, picture.ratio(), rows))),
                this::show,
                SwingUtilities::invokeLater);
    }

    private void show(Made now) {
        made = Optional.of(now);
        changed.run();
    }

    /** The picture, of that many rows or of those asked for before; empty until there is any. */
    Optional<BufferedImage> image(int rows) {
        if (asked.isEmpty() || asked.getAsInt() != rows) {
            asked = OptionalInt.of(rows);
            latest.ask(rows);
        }
        return made.map(Made::image);
    }

    /** A copy of a picture that can be drawn. */
    static BufferedImage image(Picture picture) {
        BufferedImage image = new BufferedImage(picture.width(), picture.height(), BufferedImage.TYPE_INT_RGB);
        image.setRGB(0, 0, picture.width(), picture.height(), picture.pixels(), 0, picture.width());
        return image;
    }
}
