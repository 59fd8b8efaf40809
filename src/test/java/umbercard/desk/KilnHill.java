package umbercard.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import umbercard.color.Lab;
import umbercard.geometry.Node;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.model.Box;
import umbercard.model.ColorNote;
import umbercard.model.Frame;
import umbercard.model.Level;
import umbercard.model.Light;
import umbercard.model.Mark;
import umbercard.model.Reference;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.model.Surface;
import umbercard.model.Thumbnail;
import umbercard.model.Zone;
import umbercard.picture.Picture;

/** A small study for tests of the desk's panels: three thumbnails, three zones, a box, four color notes. */
public final class KilnHill {
    private static final String[] NAMES = {
        "Sloe", "Peat", "Far slate", "Rime", "Lime dust", "Wet flint", "Alder bark", "Old brick", "Ember", "Frost",
        "Pond", "Reed", "Ash", "Smoke", "Hoar", "Thaw", "Clay", "Moss", "Heath", "Dusk",
        "Plum skin", "Straw", "Bone", "Rust", "Iron", "Fog", "Ice", "Lichen", "Loam", "Soot",
        "Willow", "Dawn", "Quartz", "Kiln mouth", "Snow shade", "Low sun"
    };

    private KilnHill() {}

    /** The whole of it. */
    public static Study study() {
        Box box = box(36, 6);
        return Study.begin("Kiln Hill, first snow", new Surface(12, 9, Surface.Unit.IN, 0.25, Optional.empty(), true))
                .withConcept("The kiln's dark shoulder holds the snow in the picture.")
                .withLight(Light.SNOW)
                .withThumbnails(List.of(first(), even(), low()))
                .withChosen(Optional.of("t1"))
                .withZones(List.of(
                        new Zone("z1", "kiln", Zone.Plane.UPRIGHT, Zone.Distance.MIDDLE),
                        new Zone("z2", "slope shadow", Zone.Plane.SLOPE, Zone.Distance.NEAR),
                        new Zone("z3", "ridge", Zone.Plane.SLOPE, Zone.Distance.FAR)))
                .withBox(Optional.of(box))
                .withNotes(notes(box));
    }

    /**
     * The same before {@link #photograph()}: on the first thumbnail the kiln's zone lies in its dark, the slope's in both, the
     * ridge's nowhere.
     */
    public static Study beforePhotograph() {
        Study study = study();
        double middle = study.ratio() / 2;
        List<Thumbnail> thumbnails = new ArrayList<>(study.thumbnails());
        thumbnails.set(
                0,
                thumbnails
                        .get(0)
                        .withZoneAreas(Map.of(
                                "z1", List.of(Outline.rectangle(0, 0, middle / 2, 1)),
                                "z2", List.of(Outline.rectangle(middle - 0.65, 0.2, middle + 0.1605, 0.8)))));
        return study.withThumbnails(thumbnails)
                .withReference(Optional.of(Reference.to("hill.jpg", "", Frame.largest(4.0 / 3, study.ratio()))));
    }

    /** Dark at the left, light at the right: Munsell values 2.0 and 8.3. */
    public static Picture photograph() {
        int[] pixels = new int[960 * 720];
        for (int i = 0; i < pixels.length; i++) {
            pixels[i] = i % 960 < 480 ? 0x303030 : 0xd0d0d0;
        }
        return new Picture(960, 720, pixels);
    }

    private static List<ColorNote> notes(Box box) {
        return List.of(
                note("n1", box.sticks().get(0), "z1", "darks", ColorNote.Direction.UPRIGHT, ColorNote.Touch.FIRM),
                note("n2", box.sticks().get(1), "z2", "darks", ColorNote.Direction.SLANT_LEFT, ColorNote.Touch.FIRM),
                note("n3", box.sticks().get(2), "z3", "land-edge", ColorNote.Direction.FLAT, ColorNote.Touch.FIRM),
                ColorNote.of("n4", box.sticks().get(3)).withPurpose("sky, top").withTouch(ColorNote.Touch.LIGHT));
    }

    private static ColorNote note(
            String id, Stick stick, String zone, String purpose, ColorNote.Direction direction, ColorNote.Touch touch) {
        return ColorNote.of(id, stick)
                .withZone(Optional.of(zone))
                .withPurpose(purpose)
                .withDirection(direction)
                .withTouch(touch);
    }

    /** A box of invented sticks, spread over value and hue, many of them near gray; the first four are always the same. */
    public static Box box(int count, int columns) {
        Random random = new Random(7);
        List<Lab> colors = new ArrayList<>(
                List.of(new Lab(18, -1, -6), new Lab(21, 7, 5), new Lab(61, -1, -10), new Lab(83, 0, -6)));
        while (colors.size() < count) {
            double hue = Math.toRadians(random.nextInt(360));
            double chroma = random.nextInt(3) == 0 ? 4 : 8 + random.nextInt(40);
            colors.add(new Lab(16 + random.nextInt(80), chroma * Math.cos(hue), chroma * Math.sin(hue)));
        }
        List<Stick> sticks = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Stick.Slot slot = new Stick.Slot(1 + i / columns, 1 + i % columns);
            sticks.add(new Stick("s" + (i + 1), NAMES[i % NAMES.length], slot, colors.get(i)));
        }
        return new Box("b1", "Kiln Yard 36", sticks, Map.of());
    }

    private static Thumbnail first() {
        Outline hill = new Outline(List.of(
                Node.sharp(0, .47),
                new Node(new Point(.31, .38), new Point(.2, .36), new Point(.42, .4), true),
                Node.sharp(.7, .41),
                new Node(new Point(.86, .24), new Point(.78, .24), new Point(.94, .24), true),
                Node.sharp(1.0, .42),
                Node.sharp(1.353, .43),
                Node.sharp(1.353, 1.01),
                Node.sharp(0, 1.01)));
        Outline pond = Outline.polygon(
                List.of(new Point(0, .92), new Point(.4, .9), new Point(.68, 1.01), new Point(0, 1.01)));
        return Thumbnail.empty("t1", "first")
                .withMarks(List.of(new Mark("m1", Mark.Kind.LAY, hill), new Mark("m2", Mark.Kind.LIFT, pond)))
                .withLandEdge(Optional.of(Level.at(.39)));
    }

    private static Thumbnail even() {
        return Thumbnail.empty("t2", "50 : 50")
                .withMarks(List.of(new Mark("m3", Mark.Kind.LAY, Outline.rectangle(0, .5, 1.353, 1))))
                .withHorizon(Optional.of(Level.at(.5)));
    }

    private static Thumbnail low() {
        return Thumbnail.empty("t3", "a low edge, joined")
                .withMarks(List.of(new Mark("m4", Mark.Kind.LAY, Outline.rectangle(0, .78, 1.353, 1))));
    }
}
