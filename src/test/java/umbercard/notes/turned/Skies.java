package umbercard.notes.turned;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import umbercard.color.Lab;
import umbercard.color.MunsellValue;
import umbercard.geometry.Outline;
import umbercard.model.ColorNote;
import umbercard.model.Level;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.model.Surface;
import umbercard.model.Surface.Unit;
import umbercard.model.Thumbnail;
import umbercard.model.Zone;
import umbercard.model.Zone.Distance;
import umbercard.model.Zone.Plane;
import umbercard.notes.Purposes;
import umbercard.zones.ZoneMap;

/** A sky over water in a frame 4/3 wide: the sky above .4, the water below the waterline at .6, the horizon at .5. */
public final class Skies {
    static final double RATIO = 4.0 / 3;

    private Skies() {}

    /** A stick of a Munsell value, a* and b*. */
    public static Stick stick(String id, double value, double a, double b) {
        return new Stick(id, id, new Stick.Slot(1, 1), new Lab(Lab.lightness(MunsellValue.luminance(value)), a, b));
    }

    public static ColorNote note(String id, Stick stick, String zone, String purpose) {
        return ColorNote.of(id, stick).withZone(Optional.of(zone)).withPurpose(purpose);
    }

    public static Thumbnail thumbnail() {
        return Thumbnail.empty("t1", "first")
                .withHorizon(Optional.of(Level.at(0.5)))
                .withWaterline(Optional.of(Level.at(0.6)))
                .withZoneAreas(Map.of("sky", rectangle(0, 0, RATIO, 0.4), "pond", rectangle(0, 0.6, RATIO, 1)));
    }

    public static List<Outline> rectangle(double left, double top, double right, double foot) {
        return List.of(Outline.rectangle(left, top, right, foot));
    }

    /** The study of that sky, a note for each stick from overhead to the horizon; its sticks are set out. */
    public static Study study(Stick... sky) {
        List<ColorNote> notes = IntStream.range(0, sky.length)
                .mapToObj(i -> note("k" + i, sky[i], "sky", Purposes.SKY))
                .toList();
        return Study.begin("Mill pond", new Surface(12, 9, Unit.IN, 0, Optional.empty(), false))
                .withThumbnails(List.of(thumbnail()))
                .withZones(List.of(
                        new Zone("sky", "sky", Plane.SKY, Distance.FAR),
                        new Zone("pond", "pond", Plane.WATER, Distance.MIDDLE)))
                .withSetOut(Arrays.asList(sky))
                .withNotes(notes);
    }

    /** The same with one more zone, drawn on the thumbnail. */
    static Study with(Study study, Zone zone, List<Outline> area) {
        List<Zone> zones = new ArrayList<>(study.zones());
        zones.add(zone);
        return study.withZones(zones)
                .withThumbnails(study.thumbnails().stream()
                        .map(thumbnail -> {
                            Map<String, List<Outline>> areas = new TreeMap<>(thumbnail.zoneAreas());
                            areas.put(zone.id(), area);
                            return thumbnail.withZoneAreas(areas);
                        })
                        .toList());
    }

    static Offers turned(Study study) {
        Thumbnail thumbnail = study.thumbnails().get(0);
        return TurnedSky.of(study, thumbnail, ZoneMap.of(study, thumbnail));
    }
}
