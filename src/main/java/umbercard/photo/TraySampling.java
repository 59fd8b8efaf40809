package umbercard.photo;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import umbercard.color.Ciede2000;
import umbercard.color.Lab;
import umbercard.geometry.Perspective;
import umbercard.geometry.Point;
import umbercard.geometry.Size;
import umbercard.kernel.EventThread;
import umbercard.model.Box;
import umbercard.model.Stick;
import umbercard.model.Stick.Slot;
import umbercard.model.Stick.State;
import umbercard.picture.Picture;
import umbercard.words.Message;
import umbercard.words.Trouble;

/**
 * The colors of the sticks in an open tray, from a photograph. Each is the median of its cell's middle, coordinate by
 * coordinate in Lab, in linear light until then, after adaptation to the white or gray that the painter points at. The photograph is
 * taken to be honest sRGB: what the camera's tone curve did to it stays. All limits are ours, tried on rendered trays.
 */
public final class TraySampling {
    /** How much of a cell counts, each way: what lies farther out is the stick's rounding, the gap, the tray. */
    private static final double MIDDLE = 0.5;

    /** From so much shine on, a cell's color is not to be trusted. */
    private static final double MOST_SHINE = 0.25;

    /** From so much spread on, a cell has no color of its own. */
    private static final double MOST_SPREAD = 6;

    private static final double LINING_CHROMA = 5;
    private static final double LINING_LIGHTNESS = 12;
    private static final double LINING_ALIKE = 5;
    private static final double LINING_SHARE = 0.7;
    private static final double LINING_PIECE = 0.08;

    /** The fewest pixels across a cell's middle. */
    private static final double LEAST_PIXELS = 6;

    /** What a cell shows. */
    public enum Look {
        /** A stick. */
        STICK,
        /** A stick, most likely, but a quarter of the cell's middle or more is clipped or a highlight. */
        GLARE,
        /** The lining: as colored and nearly as light. A stick of the lining's color looks the same. */
        EMPTY,
        /** No one color: half of the cell's middle is 6 or more from the median by CIEDE2000. */
        UNCERTAIN
    }

    /**
     * One cell.
     *
     * @param color under D65; where it glares, of what does not
     * @param spread the median CIEDE2000 from the color
     * @param shine the share of the middle, 0..1, that is clipped or a highlight
     */
    public record Cell(Slot slot, Lab color, double spread, double shine, Look look) {
        /** The stick of that color in that place, named after the place. */
        public Stick stick() {
            return new Stick(
                    slot.label(),
                    Optional.empty(),
                    Optional.of(slot),
                    color,
                    Optional.empty(),
                    State.OWNED,
                    "",
                    Map.of());
        }
    }

    private final String photo;
    private final Picture picture;
    private final Tray tray;
    private final Perspective view;
    private final WhiteField white;

    private TraySampling(String photo, Picture picture, Tray tray) throws Trouble {
        this.photo = photo;
        this.picture = picture;
        this.tray = tray;
        Size flat = new Size(tray.columns(), tray.rows());
        view = Perspective.of(flat, tray.corners())
                .orElseThrow(() -> new Trouble(Message.of("photo.tray.corners", photo)));
        requireEnoughPixels();
        List<WhiteField.Known> known = new ArrayList<>();
        for (Gray gray : tray.grays()) {
            known.add(new Grays(photo, picture).known(gray, view.place(gray.middle())));
        }
        white = WhiteField.of(flat, known);
    }

    /**
     * Looks into every cell, row by row; off the event thread.
     *
     * @param photo what to call the photograph where something is wrong
     * @throws Trouble if the corners are none of a tray, the tray reaches out of the picture or is too small in it, or a white
     *     is clipped, too dark, uneven or outside the picture
     * @throws IllegalStateException on the event thread
     */
    public static List<Cell> cells(String photo, Picture picture, Tray tray) throws Trouble {
        EventThread.refuse("looking into a tray");
        return new TraySampling(photo, picture, tray).cells();
    }

    /** The sticks of the cells that have one color, glaring ones among them: their colors are doubtful, but there they are. */
    public static List<Stick> sticks(List<Cell> cells) {
        return cells.stream()
                .filter(cell -> cell.look() == Look.STICK || cell.look() == Look.GLARE)
                .map(Cell::stick)
                .toList();
    }

    /** A box of those sticks. */
    public static Box box(String name, List<Cell> cells) {
        return new Box("box", name, sticks(cells), Map.of());
    }

    /** What is to be said of the cells that show no stick, or none to be trusted: a sentence for each kind there is. */
    public static List<Message> remarks(List<Cell> cells) {
        List<Message> remarks = new ArrayList<>();
        for (Look look : List.of(Look.GLARE, Look.EMPTY, Look.UNCERTAIN)) {
            List<String> slots = cells.stream()
                    .filter(cell -> cell.look() == look)
                    .map(cell -> cell.slot().label())
                    .toList();
            if (!slots.isEmpty()) {
                String key = "photo.tray." + look.name().toLowerCase(Locale.ROOT);
                remarks.add(Message.of(key, slots.size(), String.join(", ", slots)));
            }
        }
        return remarks;
    }

    private void requireEnoughPixels() throws Trouble {
        for (int row = 0; row < tray.rows(); row++) {
            for (int column = 0; column < tray.columns(); column++) {
                Point corner = view.seen(new Point(column, row));
                double least = Math.min(
                        corner.distance(view.seen(new Point(column + 1, row))),
                        corner.distance(view.seen(new Point(column, row + 1))));
                if (MIDDLE * least < LEAST_PIXELS) {
                    throw new Trouble(Message.of("photo.tray.small", photo, Math.round(least)));
                }
            }
        }
    }

    private List<Cell> cells() throws Trouble {
        Optional<Lab> lining =
                tray.lining().isPresent() ? Optional.of(pointedAt(tray.lining().get())) : lining();
        List<Cell> cells = new ArrayList<>();
        for (int row = 0; row < tray.rows(); row++) {
            for (int column = 0; column < tray.columns(); column++) {
                BodyColor body = body(new Point(column + 0.5, row + 0.5), MIDDLE);
                Slot slot = new Slot(row + 1, column + 1);
                cells.add(new Cell(slot, body.color(), body.spread(), body.shine(), look(body, lining)));
            }
        }
        return cells;
    }

    private static Look look(BodyColor body, Optional<Lab> lining) {
        if (lining.isPresent() && isLining(body.color(), lining.get())) {
            return Look.EMPTY;
        }
        if (body.shine() >= MOST_SHINE) {
            return Look.GLARE;
        }
        return body.spread() >= MOST_SPREAD ? Look.UNCERTAIN : Look.STICK;
    }

    /** Shadow and light change the lining's lightness, hardly its hue. */
    private static boolean isLining(Lab color, Lab lining) {
        return Math.hypot(color.a() - lining.a(), color.b() - lining.b()) < LINING_CHROMA
                && Math.abs(color.l() - lining.l()) < LINING_LIGHTNESS;
    }

    private Lab pointedAt(Point pixel) throws Trouble {
        Point place = view.place(pixel);
        LitPixels pixels = LitPixels.disk(picture, pixel, 1).orElseThrow(this::outside);
        return white.color(place, pixels.median());
    }

    /** The color where four cells meet, if most of those places look alike. */
    private Optional<Lab> lining() throws Trouble {
        List<Lab> crossings = new ArrayList<>();
        for (int row = 1; row < tray.rows(); row++) {
            for (int column = 1; column < tray.columns(); column++) {
                crossings.add(body(new Point(column, row), LINING_PIECE).color());
            }
        }
        if (crossings.isEmpty()) {
            return Optional.empty();
        }
        Lab middle = Medians.of(crossings);
        long alike = crossings.stream()
                .filter(color -> Ciede2000.difference(color, middle) < LINING_ALIKE)
                .count();
        return alike >= LINING_SHARE * crossings.size() ? Optional.of(middle) : Optional.empty();
    }

    private BodyColor body(Point middle, double part) throws Trouble {
        LitPixels pixels = LitPixels.under(picture, view, middle.plus(-part / 2, -part / 2), new Size(part, part))
                .orElseThrow(this::outside);
        return BodyColor.of(pixels, ToneCurve.NONE, white.correctionAt(middle));
    }

    private Trouble outside() {
        return new Trouble(Message.of("photo.tray.outside", photo));
    }
}
