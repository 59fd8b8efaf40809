package umbercard.notes.order;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import umbercard.model.ColorNote;
import umbercard.model.Study;
import umbercard.notes.Purposes;
import umbercard.words.Message;
import umbercard.zones.ZoneMap;
import umbercard.zones.ZonePair;
import umbercard.zones.ZonePlace;

/**
 * Puts a study's color notes in an order of application by the rules of the trade ({@link OrderRule}). The order is partial:
 * where no rule speaks, the painter's own stays. Arranging what is arranged changes nothing.
 */
public final class Arranging {
    private final List<Laid> notes;
    private final Constraints constraints;
    private final List<Integer> row;

    private Arranging(List<Laid> notes, Set<String> off) {
        this.notes = notes;
        constraints = Constraints.of(notes, off);
        row = Sequence.of(notes, constraints.reach());
    }

    /** Arranges by all rules but those that the study passes over. */
    public static Arranged of(Study study, ZoneMap map) {
        return of(study, map, study.rulesOff());
    }

    /**
     * Arranges by all rules but some.
     *
     * @param map where the zones lie on the thumbnail that is to be painted
     * @param off ids of rules; others are passed over
     */
    public static Arranged of(Study study, ZoneMap map, Set<String> off) {
        boolean holes = study.notes().stream().anyMatch(note -> note.purpose().equals(Purposes.SKY_HOLES));
        Map<String, List<String>> meeting = holes ? meeting(map) : Map.of();
        List<Laid> notes = IntStream.range(0, study.notes().size())
                .mapToObj(index -> Laid.of(study, map, index, meeting))
                .toList();
        return new Arranging(notes, off).arranged();
    }

    private static Map<String, List<String>> meeting(ZoneMap map) {
        Map<String, List<String>> meeting = new LinkedHashMap<>();
        for (ZonePair pair : map.touching()) {
            put(meeting, pair.farther(), pair.nearer());
        }
        for (ZonePlace one : map.places()) {
            for (ZonePlace other : map.places()) {
                if (!one.equals(other) && !one.drawn().intersect(other.drawn()).isEmpty()) {
                    put(meeting, one, other);
                }
            }
        }
        return meeting;
    }

    private static void put(Map<String, List<String>> meeting, ZonePlace one, ZonePlace other) {
        meeting.computeIfAbsent(one.zone().id(), id -> new ArrayList<>())
                .add(other.zone().id());
        meeting.computeIfAbsent(other.zone().id(), id -> new ArrayList<>())
                .add(one.zone().id());
    }

    private Arranged arranged() {
        List<Integer> present = IntStream.range(0, notes.size()).boxed().toList();
        Map<String, List<Message>> because = new LinkedHashMap<>();
        for (int i : row) {
            because.put(note(i).id(), reasons(i));
        }
        return new Arranged(
                inNewOrder(),
                because,
                constraints.circles().stream()
                        .map(circle -> new Arranged.Circle(
                                circle.places().stream().map(this::note).toList(), circle.gaveWay()))
                        .toList(),
                broken(constraints.rules(), row),
                broken(constraints.rules(), present),
                broken(constraints.dust(), present).size());
    }

    private ColorNote note(int index) {
        return notes.get(index).note();
    }

    /** A break is a place in the row, not a part of the note after it. */
    private List<ColorNote> inNewOrder() {
        List<ColorNote> ordered = new ArrayList<>();
        for (int place = 0; place < row.size(); place++) {
            ordered.add(note(row.get(place)).withBreakBefore(note(place).breakBefore()));
        }
        return ordered;
    }

    private List<Arranged.Broken> broken(List<Edge> edges, List<Integer> order) {
        return edges.stream()
                .filter(edge -> order.indexOf(edge.before()) > order.indexOf(edge.after()))
                .map(edge -> new Arranged.Broken(note(edge.after()), note(edge.before()), edge.rule()))
                .toList();
    }

    /** The nearest note that it must follow; without one, the nearest that must follow it; without either, that no rule speaks. */
    private List<Message> reasons(int index) {
        if (note(index).pinned()) {
            return List.of(Message.of("order.pinned"));
        }
        int place = row.indexOf(index);
        Optional<Edge> follows = constraints.all().stream()
                .filter(edge -> edge.after() == index && row.indexOf(edge.before()) < place)
                .max(Comparator.comparingInt((Edge edge) -> row.indexOf(edge.before()))
                        .thenComparing(Edge::rule, Comparator.reverseOrder()));
        Optional<Edge> leads = constraints.all().stream()
                .filter(edge -> edge.before() == index && row.indexOf(edge.after()) > place)
                .min(Comparator.comparingInt((Edge edge) -> row.indexOf(edge.after()))
                        .thenComparing(Edge::rule));
        Message reason = follows.map(edge -> reason("order.after", edge.before(), edge))
                .or(() -> leads.map(edge -> reason("order.before", edge.after(), edge)))
                .orElse(Message.of("order.free"));
        return List.of(reason);
    }

    private Message reason(String key, int other, Edge edge) {
        return Message.of(key, note(other).stick().title(), edge.rule().words());
    }
}
