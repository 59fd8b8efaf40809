package umbercard.spectra;

import java.util.List;
import umbercard.geometry.Point;
import umbercard.geometry.Size;

/**
 * A printed card on a table, with upright rectangles of color on it. Millimeters from the card's upper left corner.
 *
 * @param areas later ones lie over earlier ones
 */
public record CardScene(Size card, List<Area> areas, Falloff falloff) {
    /** What the bare card throws back of all light. */
    public static final double PAPER = 0.88;

    private static final Spectrum TABLE = Spectrum.neutral(0.15);

    /**
     * A rectangle of one color.
     *
     * @param grainy whether it is rubbed, so that its light varies with the tooth of the card; print is even
     */
    public record Area(Point corner, Size size, Spectrum surface, boolean grainy) {
        boolean has(double x, double y) {
            return x >= corner.x()
                    && y >= corner.y()
                    && x < corner.x() + size.width()
                    && y < corner.y() + size.height();
        }
    }

    /** A hand-held view of it, tilted and turned. */
    public Pinhole view(double tilt, double turn) {
        Point middle = new Point(card.width() / 2, card.height() / 2);
        return new Pinhole(1800, 1300, middle, tilt, turn, 500, 1300 / Math.max(card.width(), card.height()));
    }

    /** The photograph's file. */
    public byte[] shoot(Camera camera, Pinhole view) {
        List<double[]> colors =
                areas.stream().map(area -> camera.linear(area.surface())).toList();
        double[] paper = camera.linear(Spectrum.neutral(PAPER));
        double[] table = camera.linear(TABLE);
        double[] place = new double[2];
        return camera.shoot(view.width(), view.height(), (x, y, rgb) -> {
            view.place(x, y, place);
            boolean on = place[0] >= 0 && place[1] >= 0 && place[0] < card.width() && place[1] < card.height();
            double[] color = on ? paper : table;
            double light = falloff.at(x, y, view.width(), view.height());
            for (int i = areas.size() - 1; i >= 0 && on; i--) {
                if (areas.get(i).has(place[0], place[1])) {
                    color = colors.get(i);
                    light *= areas.get(i).grainy() ? 1 + 0.08 * Grain.at(4 * place[0], 4 * place[1]) : 1;
                    break;
                }
            }
            for (int k = 0; k < 3; k++) {
                rgb[k] = light * color[k];
            }
        });
    }
}
