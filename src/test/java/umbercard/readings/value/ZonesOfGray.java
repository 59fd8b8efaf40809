package umbercard.readings.value;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import umbercard.color.Lab;
import umbercard.color.MunsellValue;
import umbercard.geometry.Outline;
import umbercard.model.ColorNote;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.model.Zone;
import umbercard.model.Zone.Distance;
import umbercard.model.Zone.Plane;
import umbercard.readings.Plans;

/** Studies of level zones, each with gray notes of given values; by ASTM D1535 a value's luminance, by CIE 15 its L*. */
final class ZonesOfGray {
    private final List<Zone> zones = new ArrayList<>();
    private final Map<String, List<Outline>> areas = new LinkedHashMap<>();
    private final List<ColorNote> notes = new ArrayList<>();

    static Lab gray(double value) {
        return Lab.gray(Lab.lightness(MunsellValue.luminance(value)));
    }

    /** A zone from one height to another with a note for each value. */
    ZonesOfGray zone(String name, Plane plane, Distance distance, double top, double foot, double... values) {
        zones.add(new Zone(name, name, plane, distance));
        areas.put(name, List.of(Outline.rectangle(0, top, Plans.RATIO, foot)));
        for (double value : values) {
            note(name, "ground", value);
        }
        return this;
    }

    ZonesOfGray note(String zone, String purpose, double value) {
        String id = "n" + notes.size();
        notes.add(ColorNote.of(id, new Stick("s" + id, "stick " + value, new Stick.Slot(1, 1), gray(value)))
                .withZone(Optional.of(zone))
                .withPurpose(purpose));
        return this;
    }

    Study study() {
        return Plans.study().withZones(zones).withNotes(notes);
    }

    /** With the lower part of the frame dark. */
    Thumbnail dark(double share) {
        return Plans.dark(share).withZoneAreas(areas);
    }
}
