package umbercard;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import umbercard.color.Lab;
import umbercard.geometry.Node;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.geometry.Size;
import umbercard.model.Box;
import umbercard.model.CardSettings;
import umbercard.model.ColorNote;
import umbercard.model.ColorNote.Direction;
import umbercard.model.ColorNote.Touch;
import umbercard.model.Level;
import umbercard.model.Light;
import umbercard.model.Mark;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.model.Surface;
import umbercard.model.Surface.Unit;
import umbercard.model.Thumbnail;
import umbercard.model.Thumbnail.Ground;
import umbercard.model.Zone;
import umbercard.model.Zone.Distance;
import umbercard.model.Zone.Plane;

/** Studies to test with: an invented winter landscape with marks of every kind, a box, zones and color notes. */
public final class Studies {
    /** The sticks' names and colors, tray row after tray row of six. */
    private static final Object[][] STICKS = {
        {"Chalk", 0xf4f2ea},
        {"Snow shadow", 0xc9d3df},
        {"Winter sky", 0xb4bfc8},
        {"Far slate", 0x8f9aa8},
        {"Mill water", 0x66737f},
        {"Kiln black", 0x23211f},
        {"Bone", 0xe6dcc6},
        {"Straw", 0xcdb98a},
        {"Dry sedge", 0xa98f5c},
        {"Alder bark", 0x6e5c4a},
        {"Wet bark", 0x473b31},
        {"Peat", 0x2f2823},
        {"Low sun", 0xf0d9a2},
        {"Rust", 0x9a5a36},
        {"Brick", 0x7d4334},
        {"Plum shade", 0x57414f},
        {"Deep plum", 0x382c3a},
        {"Night blue", 0x262f40},
        {"Ice", 0xdfe7ea},
        {"Pale lichen", 0xc4c8a4},
        {"Lichen", 0x98a07a},
        {"Moss", 0x66704c},
        {"Spruce", 0x3c4a3c},
        {"Deep spruce", 0x27322b},
    };

    private Studies() {}

    /** The whole of it: a chosen thumbnail with curved marks and a light hole, six zones, nine notes, 4 × 6 in cards. */
    public static Study kilnHill() {
        return new Study(
                "Kiln Hill, first snow",
                "The kiln holds its dark against the first snow, and the pond gives it back.",
                Light.SNOW,
                new Surface(12, 9, Unit.IN, 0.25, Optional.empty(), true),
                Optional.empty(),
                List.of(thumbnail()),
                Optional.of("t1"),
                zones(),
                Set.of(),
                Optional.of(new Box("b1", "Kiln Yard 36", sticks(), Map.of())),
                List.of(),
                notes(9),
                Set.of(),
                CardSettings.usual(),
                Map.of(),
                Set.of(),
                List.of(),
                Map.of());
    }

    /** Kiln Hill with so many notes. */
    public static Study withNotes(int count) {
        return kilnHill().withNotes(notes(count));
    }

    /** Kiln Hill on cards of that size in millimeters. */
    public static Study onCard(Study study, Size card, boolean landscape) {
        return study.withCards(study.cards().withCard(card).withLandscape(landscape));
    }

    /** A thumbnail of straight and curved marks: far ridge, kiln with its door, alders, pond with a lifted reflection. */
    public static Thumbnail thumbnail() {
        return new Thumbnail(
                "t1",
                "first",
                Ground.LIGHT,
                List.of(
                        new Mark("m1", Mark.Kind.LAY, ridge()),
                        new Mark("m2", Mark.Kind.LAY, kiln()),
                        new Mark("m3", Mark.Kind.LIFT, circle(0.955, 0.47, 0.035)),
                        new Mark("m4", Mark.Kind.LAY, alder(0.22)),
                        new Mark("m5", Mark.Kind.LAY, alder(0.31)),
                        new Mark("m6", Mark.Kind.LAY, pond()),
                        new Mark("m7", Mark.Kind.LIFT, circle(0.4, 0.84, 0.06))),
                Optional.empty(),
                Optional.of(Level.at(0.36)),
                Optional.of(Level.at(0.72)),
                Optional.of(new Point(0.955, 0.45)),
                Optional.empty(),
                Optional.empty(),
                Map.of(),
                Map.of());
    }

    private static Outline ridge() {
        return new Outline(List.of(
                Node.sharp(-0.1, 0.36),
                curved(0.35, 0.25, 0.2, 0.02),
                curved(0.8, 0.33, 0.18, 0.03),
                Node.sharp(1.5, 0.2),
                Node.sharp(1.5, 0.38),
                curved(0.7, 0.43, -0.3, 0.02),
                Node.sharp(-0.1, 0.4)));
    }

    private static Outline kiln() {
        return new Outline(List.of(
                Node.sharp(0.8, 0.62),
                Node.sharp(0.84, 0.3),
                curved(0.955, 0.22, 0.06, 0),
                Node.sharp(1.07, 0.3),
                Node.sharp(1.12, 0.64),
                curved(0.95, 0.66, -0.08, 0)));
    }

    private static Outline alder(double x) {
        return Outline.polygon(List.of(
                new Point(x, 0.1), new Point(x + 0.012, 0.1), new Point(x + 0.03, 0.66), new Point(x - 0.005, 0.67)));
    }

    private static Outline pond() {
        return new Outline(List.of(
                Node.sharp(-0.1, 0.74),
                curved(0.6, 0.71, 0.3, -0.01),
                Node.sharp(1.5, 0.76),
                Node.sharp(1.5, 1.1),
                Node.sharp(-0.1, 1.1)));
    }

    /** A circle of four cubic segments. */
    public static Outline circle(double x, double y, double radius) {
        double pull = radius * 0.5522847;
        return new Outline(List.of(
                curved(x, y - radius, pull, 0),
                curved(x + radius, y, 0, pull),
                curved(x, y + radius, -pull, 0),
                curved(x - radius, y, 0, -pull)));
    }

    private static Node curved(double x, double y, double dx, double dy) {
        Point at = new Point(x, y);
        return new Node(at, at.plus(-dx, -dy), at.plus(dx, dy), true);
    }

    public static List<Zone> zones() {
        return List.of(
                new Zone("z1", "sky", Plane.SKY, Distance.FAR),
                new Zone("z2", "far ridge", Plane.SLOPE, Distance.FAR),
                new Zone("z3", "snow slope", Plane.SLOPE, Distance.MIDDLE),
                new Zone("z4", "kiln", Plane.UPRIGHT, Distance.MIDDLE),
                new Zone("z5", "alders", Plane.UPRIGHT, Distance.NEAR),
                new Zone("z6", "mill pond", Plane.WATER, Distance.NEAR));
    }

    /** Two dozen sticks in a tray of six columns. */
    public static List<Stick> sticks() {
        List<Stick> sticks = new ArrayList<>();
        for (int i = 0; i < STICKS.length; i++) {
            Stick.Slot slot = new Stick.Slot(1 + i / 6, 1 + i % 6);
            sticks.add(new Stick("s" + (i + 1), (String) STICKS[i][0], slot, Lab.ofSrgb((Integer) STICKS[i][1])));
        }
        return sticks;
    }

    /** So many notes, each with a stick, a zone, a purpose, a direction and a touch of its own; more than 24 repeat. */
    public static List<ColorNote> notes(int count) {
        int[] picked = {5, 15, 22, 3, 2, 12, 1, 9, 0, 17, 4, 10, 23, 8, 7, 13, 6, 18, 16, 21, 20, 14, 11, 19};
        String[] purposes = {"darks", "block-in", "land-edge", "sky", "ground", "growth", "restated-growth", "accents"};
        List<Stick> sticks = sticks();
        List<ColorNote> notes = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            notes.add(ColorNote.of("n" + (i + 1), sticks.get(picked[i % picked.length]))
                    .withZone(Optional.of("z" + (1 + (i * 5 + 3) % 6)))
                    .withPurpose(purposes[i % purposes.length])
                    .withDirection(Direction.values()[i % 5])
                    .withTouch(Touch.values()[(i / 2) % 2]));
        }
        return notes;
    }
}
