package umbercard.notes;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import umbercard.model.ColorNote;
import umbercard.model.Study;
import umbercard.model.Zone;

/**
 * The notes of one zone, in the order of application.
 *
 * @param counting those that count in its value: all but accents, lights and sky holes
 */
public record ZoneNotes(Zone zone, List<ColorNote> all, List<ColorNote> counting) {
    public ZoneNotes {
        all = List.copyOf(all);
        counting = List.copyOf(counting);
    }

    /** Those of the zones that have any, in the order of the study's zones. */
    public static List<ZoneNotes> of(Study study) {
        return study.zones().stream()
                .map(zone -> of(study, zone))
                .filter(notes -> !notes.all.isEmpty())
                .toList();
    }

    /** Those of one zone, perhaps none. */
    public static ZoneNotes of(Study study, Zone zone) {
        List<ColorNote> all = study.notes().stream()
                .filter(note -> note.zone().equals(Optional.of(zone.id())))
                .toList();
        return new ZoneNotes(
                zone,
                all,
                all.stream().filter(note -> Purposes.counts(note.purpose())).toList());
    }

    /** The mean Munsell value of the notes that count; empty where none does. */
    public OptionalDouble mean() {
        return values().average();
    }

    /** The median Munsell value of the notes that count, of two middle ones their mean; empty where none does. */
    public OptionalDouble median() {
        double[] rising = values().sorted().toArray();
        return rising.length == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of((rising[(rising.length - 1) / 2] + rising[rising.length / 2]) / 2);
    }

    private DoubleStream values() {
        return counting.stream().mapToDouble(note -> note.stick().color().value());
    }
}
