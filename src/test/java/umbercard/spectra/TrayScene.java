package umbercard.spectra;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import umbercard.geometry.Point;

/**
 * An open tray of round sticks, each lying across its cell, on a white sheet on a table. Millimeters from the tray's upper
 * left corner. A stick is a cylinder: lit from above and a little from below its edge, with some light from all round; beside
 * it the lining lies in shadow.
 *
 * @param sticks row after row, as many as cells
 * @param empty the cells, counted from 0, in which no stick lies
 * @param glaring the cells whose sticks throw the lamp back in a broad band
 * @param glinting the cells whose sticks have a hair of a glint
 */
public record TrayScene(
        int rows,
        int columns,
        List<Spectrum> sticks,
        Spectrum lining,
        Set<Integer> empty,
        Set<Integer> glaring,
        Set<Integer> glinting,
        Falloff falloff) {
    public static final double CELL_WIDTH = 30;
    public static final double CELL_HEIGHT = 18;

    /** The sheet throws back 0.88 of all light: Munsell value 9.4 or so. */
    public static final double PAPER = 0.88;

    private static final Spectrum TABLE = Spectrum.of(nm -> 0.12 + 0.25 / (1 + Math.exp((590 - nm) / 30)));
    private static final double SHEET = 22;
    private static final double RADIUS = 7.4;
    private static final double HALF_LENGTH = 13.4;
    private static final double AROUND = 0.4;
    private static final double LEAN = Math.tan(Math.toRadians(15));

    public double width() {
        return columns * CELL_WIDTH;
    }

    public double height() {
        return rows * CELL_HEIGHT;
    }

    /** A hand-held view of it, tilted and turned. */
    public Pinhole view(double tilt, double turn) {
        return new Pinhole(
                1800, 1300, new Point(width() / 2, height() / 2), tilt, turn, 700, 1260 / (width() + 2 * SHEET));
    }

    /** Eight places on the sheet round the tray, as they are seen: upper left first, then clockwise. */
    public List<Point> whites(Pinhole view) {
        double off = SHEET / 2;
        List<Point> all = new ArrayList<>();
        for (double[] place : new double[][] {
            {-off, -off}, {width() / 2, -off}, {width() + off, -off}, {width() + off, height() / 2},
            {width() + off, height() + off}, {width() / 2, height() + off}, {-off, height() + off}, {-off, height() / 2}
        }) {
            all.add(view.seen(new Point(place[0], place[1])));
        }
        return all;
    }

    /** The photograph's file. */
    public byte[] shoot(Camera camera, Pinhole view) {
        List<double[]> colors = sticks.stream().map(camera::linear).toList();
        double[] lamp = camera.linear(Spectrum.neutral(1));
        double[] bare = camera.linear(lining);
        double[] paper = camera.linear(Spectrum.neutral(PAPER));
        double[] table = camera.linear(TABLE);
        double[] place = new double[2];
        return camera.shoot(view.width(), view.height(), (x, y, rgb) -> {
            view.place(x, y, place);
            double light = falloff.at(x, y, view.width(), view.height());
            if (inside(place[0], place[1], 0)) {
                int cell = (int) (place[1] / CELL_HEIGHT) * columns + (int) (place[0] / CELL_WIDTH);
                double across = place[0] % CELL_WIDTH - CELL_WIDTH / 2;
                double down = place[1] % CELL_HEIGHT - CELL_HEIGHT / 2;
                cell(cell, across, down, colors.get(cell), bare, lamp, rgb);
            } else {
                System.arraycopy(inside(place[0], place[1], SHEET) ? paper : table, 0, rgb, 0, 3);
            }
            for (int k = 0; k < 3; k++) {
                rgb[k] *= light;
            }
        });
    }

    private boolean inside(double x, double y, double more) {
        return x >= -more && y >= -more && x < width() + more && y < height() + more;
    }

    private void cell(
            int cell, double across, double down, double[] color, double[] bare, double[] lamp, double[] rgb) {
        double turned = down / RADIUS;
        boolean stick = Math.abs(turned) < 1 && Math.abs(across) < HALF_LENGTH && !empty.contains(cell);
        double light = stick
                ? AROUND + (1 - AROUND) * Math.max(0, Math.sqrt(1 - turned * turned) + turned * LEAN)
                : shadow(cell, down);
        light *= 1 + 0.05 * Grain.at(2.5 * across + 97 * cell, 2.5 * down);
        double shine = stick ? shine(cell, turned, across) : 0;
        for (int k = 0; k < 3; k++) {
            rgb[k] = light * (stick ? color : bare)[k] + shine * lamp[k];
        }
    }

    /** In an empty slot the wall's shadow falls on the upper third; beside sticks the lining lies in their shadow. */
    private double shadow(int cell, double down) {
        if (!empty.contains(cell)) {
            return 0.7;
        }
        return down < -CELL_HEIGHT / 6 ? 0.65 : 0.95;
    }

    private double shine(int cell, double turned, double across) {
        double width = glaring.contains(cell) ? 0.3 : glinting.contains(cell) ? 0.04 : 0;
        if (width == 0 || Math.abs(across) > 0.8 * HALF_LENGTH) {
            return 0;
        }
        double off = (turned + 0.1) / width;
        return 0.9 * Math.exp(-off * off);
    }
}
