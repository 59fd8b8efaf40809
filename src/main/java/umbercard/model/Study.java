package umbercard.model;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * One planned painting, from the sentence that says why to the answers at the end. Immutable; an edit makes a new study.
 * Ids are unique within it.
 *
 * @param concept the sentence that says why; empty when the painter has not said it yet
 * @param chosen the id of the thumbnail that will be painted, if one is chosen
 * @param box a copy of the box that the sticks come from, so that a study stands by itself
 * @param setOut the sticks taken from the box for this painting
 * @param notes the color notes, in order of application
 * @param rulesOff ids of the rules that arranging the notes passes over
 * @param limits the painter's own thresholds for this study: reading id, then limit name, to value
 * @param silenced ids of the readings that say nothing in this study
 */
@RecordBuilder
public record Study(
        String title,
        String concept,
        Light light,
        Surface surface,
        Optional<Reference> reference,
        List<Thumbnail> thumbnails,
        Optional<String> chosen,
        List<Zone> zones,
        Set<LostEdge> lostEdges,
        Optional<Box> box,
        List<Stick> setOut,
        List<ColorNote> notes,
        Set<String> rulesOff,
        CardSettings cards,
        Map<String, Map<String, Double>> limits,
        Set<String> silenced,
        List<Answer> finishing,
        Map<String, Object> more)
        implements StudyBuilder.With {
    public Study {
        thumbnails = List.copyOf(thumbnails);
        zones = List.copyOf(zones);
        lostEdges = Set.copyOf(lostEdges);
        setOut = List.copyOf(setOut);
        notes = List.copyOf(notes);
        rulesOff = Collections.unmodifiableSet(new TreeSet<>(rulesOff));
        Map<String, Map<String, Double>> kept = new TreeMap<>();
        limits.forEach((reading, values) -> kept.put(reading, Collections.unmodifiableMap(new TreeMap<>(values))));
        limits = Collections.unmodifiableMap(kept);
        silenced = Collections.unmodifiableSet(new TreeSet<>(silenced));
        finishing = List.copyOf(finishing);
        more = More.copyOf(more);
    }

    /** A study with nothing in it but a surface. */
    public static Study begin(String title, Surface surface) {
        return new Study(
                title,
                "",
                Light.CLEAR,
                surface,
                Optional.empty(),
                List.of(),
                Optional.empty(),
                List.of(),
                Set.of(),
                Optional.empty(),
                List.of(),
                List.of(),
                Set.of(),
                CardSettings.usual(),
                Map.of(),
                Set.of(),
                List.of(),
                Map.of());
    }

    /** The width of every thumbnail, whose height is 1. */
    public double ratio() {
        return surface.ratio();
    }

    public Optional<Thumbnail> thumbnail(String id) {
        return thumbnails.stream().filter(t -> t.id().equals(id)).findFirst();
    }

    /** The thumbnail that will be painted; without a choice the first; empty if there is none. */
    public Optional<Thumbnail> chosenThumbnail() {
        return chosen.flatMap(this::thumbnail).or(() -> thumbnails.stream().findFirst());
    }

    public Optional<Zone> zone(String id) {
        return zones.stream().filter(z -> z.id().equals(id)).findFirst();
    }

    /** An id that nothing in the study has: the prefix and the lowest free number, for example {@code m12}. */
    public String newId(String prefix) {
        return newIds(prefix, 1).get(0);
    }

    /** As many ids that nothing in the study has: the prefix and the lowest free numbers. */
    public List<String> newIds(String prefix, int count) {
        Set<String> taken = new TreeSet<>(ids().toList());
        return IntStream.iterate(1, number -> number + 1)
                .mapToObj(number -> prefix + number)
                .filter(id -> !taken.contains(id))
                .limit(count)
                .toList();
    }

    /** A name that no thumbnail has: the base, or the base and the lowest free number from 2, for example {@code low edge 2}. */
    public String freeName(String base) {
        return freeName(1, number -> number == 1 ? base : base + " " + number);
    }

    /** The first of the names for {@code from}, {@code from} + 1 and so on that no thumbnail has. */
    public String freeName(int from, IntFunction<String> name) {
        Set<String> taken = thumbnails.stream().map(Thumbnail::name).collect(Collectors.toSet());
        return IntStream.iterate(from, number -> number + 1)
                .mapToObj(name)
                .filter(candidate -> !taken.contains(candidate))
                .findFirst()
                .orElseThrow();
    }

    private Stream<String> ids() {
        Stream<String> sticks = Stream.concat(
                setOut.stream().map(Stick::id),
                box.stream().flatMap(b -> b.sticks().stream()).map(Stick::id));
        return Stream.of(
                        thumbnails.stream().map(Thumbnail::id),
                        thumbnails.stream().flatMap(t -> t.marks().stream()).map(Mark::id),
                        zones.stream().map(Zone::id),
                        notes.stream().map(ColorNote::id),
                        sticks)
                .flatMap(ids -> ids);
    }
}
