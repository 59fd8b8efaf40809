package umbercard.notes.turned;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import umbercard.color.Warmth;
import umbercard.model.ColorNote;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.model.Zone;
import umbercard.model.Zone.Plane;
import umbercard.notes.ByHue;
import umbercard.notes.Purposes;
import umbercard.notes.ZoneNotes;

/**
 * Which hues of the sky return in the ground. A stick has a hue from a chroma of {@link Warmth#NEUTRAL} on; below that it is
 * neutral and neither echoes nor is echoed (common practice, no source). The ground is all but sky and water.
 */
public final class EchoedHues {
    /** How far round the circle of h*ab a hue may lie from another and still be its echo, in degrees: common practice, no source. */
    public static final double WITHIN = 30;

    private EchoedHues() {}

    /** Whether a zone is ground: neither sky nor water. */
    public static boolean isGround(Zone zone) {
        return zone.plane() != Plane.SKY && zone.plane() != Plane.WATER;
    }

    /** Whether a stick has a hue that can be told. */
    public static boolean hasHue(Stick stick) {
        return stick.color().chroma() >= Warmth.NEUTRAL;
    }

    /** Whether one stick's hue is an echo of the other's. */
    public static boolean isEcho(Stick one, Stick other, double within) {
        return hasHue(one) && hasHue(other) && ByHue.apart(one.color(), other.color()) <= within;
    }

    /** The sticks of the sky's notes that have a hue, each once, sky holes, lights and accents among them left out. */
    public static List<Stick> ofSky(Study study) {
        Map<String, Stick> sticks = new LinkedHashMap<>();
        study.zones().stream()
                .filter(zone -> zone.plane() == Plane.SKY)
                .flatMap(zone -> ZoneNotes.of(study, zone).counting().stream())
                .map(ColorNote::stick)
                .filter(EchoedHues::hasHue)
                .forEach(stick -> sticks.putIfAbsent(stick.id(), stick));
        return List.copyOf(sticks.values());
    }

    /** The notes of the ground, accents and lights too, since an echo may be one; not the sky holes, which are sky. */
    public static List<ColorNote> ofGround(Study study) {
        return study.zones().stream()
                .filter(EchoedHues::isGround)
                .flatMap(zone -> ZoneNotes.of(study, zone).all().stream())
                .filter(note -> !note.purpose().equals(Purposes.SKY_HOLES))
                .toList();
    }
}
