package umbercard.notes.layers;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import umbercard.color.Lab;
import umbercard.color.MunsellValue;
import umbercard.model.ColorNote;
import umbercard.model.Study;
import umbercard.model.Zone;
import umbercard.notan.Design;
import umbercard.notes.ZoneNotes;
import umbercard.picture.MainColor;
import umbercard.words.Message;
import umbercard.zones.ZoneMap;

/**
 * What notes come to over the underpainting and over one another, in the order of application. Each covers what is below it by
 * its touch ({@link Coverage}); where a zone is partly dark, the first lies on the mean of dark and light. A rough guide: how a
 * stick covers depends on the grain, the stick and the hand. Accents, lights and sky holes are too few strokes to count.
 */
public final class Layers {
    /** How far off the value wanted is near enough, in steps: common practice, no source. */
    private static final double NEAR = 0.5;

    /** From what difference a layer below is said to show, in steps: common practice, no source. */
    private static final double TOLD = 0.25;

    private Layers() {}

    /**
     * The zones that have notes that count, in the order of the study. A zone without area on the thumbnail is taken to lie on
     * light ground.
     *
     * @param colors the reference's colors by zone id, as {@code door.Plan} has them; may be empty
     */
    public static List<ExpectedZone> of(
            Study study, ZoneMap zones, Design design, Map<String, List<MainColor>> colors) {
        Underpainting ground = Underpainting.of(study);
        return ZoneNotes.of(study).stream()
                .filter(notes -> !notes.counting().isEmpty())
                .map(notes -> {
                    double dark = zones.of(notes.zone().id())
                            .map(place -> place.darkShare(design))
                            .orElse(0.0);
                    return expected(
                            notes.zone(), coats(notes.counting(), ground.mean(dark)), wanted(notes.zone(), colors));
                })
                .toList();
    }

    /** What each note does to what is below it, the first to the ground; all of the notes count. */
    public static List<Coat> coats(List<ColorNote> notes, Lab ground) {
        List<Coat> coats = new ArrayList<>();
        Lab below = ground;
        for (ColorNote note : notes) {
            Lab after = Coverage.mixed(note.stick().color(), Coverage.of(note.touch()), below);
            coats.add(new Coat(note, below, after, words(note, after)));
            below = after;
        }
        return List.copyOf(coats);
    }

    /** The color of a zone's ground under these notes; the ground's own where none is left to count. */
    static Lab color(List<ColorNote> notes, Lab ground) {
        List<Coat> coats = coats(notes, ground);
        return coats.isEmpty() ? ground : coats.get(coats.size() - 1).after();
    }

    private static OptionalDouble wanted(Zone zone, Map<String, List<MainColor>> colors) {
        return zone.targetValue().isPresent()
                ? zone.targetValue()
                : MainColor.meanValue(colors.getOrDefault(zone.id(), List.of()));
    }

    private static ExpectedZone expected(Zone zone, List<Coat> coats, OptionalDouble wanted) {
        Lab color = coats.get(coats.size() - 1).after();
        double value = color.value();
        return new ExpectedZone(zone, coats, color, value, wanted, words(zone, value, wanted));
    }

    private static Message words(Zone zone, double value, OptionalDouble wanted) {
        MunsellValue is = told(value);
        if (wanted.isEmpty()) {
            return Message.of("layers.zone.plain", zone.name(), is);
        }
        double off = value - wanted.getAsDouble();
        String key = Math.abs(off) <= NEAR ? "near" : off > 0 ? "lighter" : "darker";
        return Message.of("layers.zone." + key, zone.name(), is, told(wanted.getAsDouble()));
    }

    private static Message words(ColorNote note, Lab after) {
        MunsellValue stick = MunsellValue.of(note.stick().color());
        double off = after.value() - stick.number();
        String key = Math.abs(off) < TOLD ? "kept" : off > 0 ? "lightened" : "darkened";
        return Message.of("layers.note." + key, note.stick().title(), stick, told(after.value()));
    }

    /** Mixing and back may leave a value a hair outside the scale. */
    private static MunsellValue told(double value) {
        return new MunsellValue(Math.max(0, Math.min(10, value)));
    }
}
