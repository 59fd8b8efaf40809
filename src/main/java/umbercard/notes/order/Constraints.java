package umbercard.notes.order;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * What goes before what by all rules that are not switched off, without a circle: where rules contradict one another, the
 * weakest of them gives way. Which do does not depend on the notes' present order.
 *
 * @param rules what the rules ask, dust aside, as far as no circle comes of it
 * @param dust what dust asks where nothing else speaks
 * @param reach of all of it
 * @param circles where rules gave way
 */
record Constraints(List<Edge> rules, List<Edge> dust, Reach reach, List<Circle> circles) {

    /** Notes that rules send round in a circle, by their present places, and the rule that gave way. */
    record Circle(List<Integer> places, OrderRule gaveWay) {}

    static Constraints of(List<Laid> notes, Set<String> off) {
        List<Edge> asked = new ArrayList<>();
        for (OrderRule rule : OrderRule.ALL) {
            if (rule != OrderRule.UPPER_BEFORE_LOWER && !off.contains(rule.id())) {
                asked.addAll(edges(notes, rule, off));
            }
        }
        List<Circle> circles = new ArrayList<>();
        List<Edge> edges = straightened(notes.size(), asked, circles);
        Constraints plain = new Constraints(edges, List.of(), new Reach(notes.size(), edges), circles);
        return off.contains(OrderRule.UPPER_BEFORE_LOWER.id()) ? plain : plain.withDust(notes, off);
    }

    private static List<Edge> edges(List<Laid> notes, OrderRule rule, Set<String> off) {
        List<Edge> edges = new ArrayList<>();
        for (int i = 0; i < notes.size(); i++) {
            for (int k = 0; k < notes.size(); k++) {
                if (i != k && rule.before(notes.get(i), notes.get(k), off)) {
                    edges.add(new Edge(i, k, rule));
                }
            }
        }
        return edges;
    }

    /** Leaves out, on each circle, what the weakest rule on it asks, until no circle is left. */
    private static List<Edge> straightened(int n, List<Edge> asked, List<Circle> circles) {
        List<Edge> edges = new ArrayList<>(asked);
        while (true) {
            Reach reach = new Reach(n, edges);
            Optional<Edge> weakest = edges.stream()
                    .filter(edge -> reach.isCircular(edge.before(), edge.after()))
                    .max(Comparator.comparing(Edge::rule));
            if (weakest.isEmpty()) {
                return edges;
            }
            OrderRule rule = weakest.get().rule();
            for (List<Integer> places : rounds(n, edges, rule, reach)) {
                circles.add(new Circle(places, rule));
            }
            edges.removeIf(edge -> edge.rule() == rule && reach.isCircular(edge.before(), edge.after()));
        }
    }

    /** The notes of each round on which a rule has an edge. */
    private static List<List<Integer>> rounds(int n, List<Edge> edges, OrderRule rule, Reach reach) {
        Set<List<Integer>> rounds = new LinkedHashSet<>();
        for (Edge edge : edges) {
            if (edge.rule() == rule && reach.isCircular(edge.before(), edge.after())) {
                rounds.add(IntStream.range(0, n)
                        .filter(i -> i == edge.before() || reach.isCircular(i, edge.before()))
                        .boxed()
                        .toList());
            }
        }
        return List.copyOf(rounds);
    }

    /**
     * With what dust asks: what lies far over another first, and of pairs as far apart the order of their notes' ids decides.
     * It asks nothing for which pinned notes would leave no room.
     */
    private Constraints withDust(List<Laid> notes, Set<String> off) {
        List<Edge> wished = new ArrayList<>(edges(notes, OrderRule.UPPER_BEFORE_LOWER, off));
        wished.sort(Comparator.comparingInt((Edge edge) -> -fall(notes, edge))
                .thenComparing(edge -> notes.get(edge.before()).note().id())
                .thenComparing(edge -> notes.get(edge.after()).note().id()));
        boolean roomMatters = notes.stream().anyMatch(laid -> laid.note().pinned()) && Sequence.hasRoom(notes, reach);
        List<Edge> taken = new ArrayList<>();
        Reach grown = reach;
        for (Edge edge : wished) {
            if (!grown.isBefore(edge.before(), edge.after()) && !grown.isBefore(edge.after(), edge.before())) {
                Reach more = grown.with(edge.before(), edge.after());
                if (!roomMatters || Sequence.hasRoom(notes, more)) {
                    grown = more;
                    taken.add(edge);
                }
            }
        }
        return new Constraints(rules, taken, grown, circles);
    }

    private static int fall(List<Laid> notes, Edge edge) {
        return notes.get(edge.after()).twentieth().orElseThrow()
                - notes.get(edge.before()).twentieth().orElseThrow();
    }

    /** What the rules and dust ask, the strongest first. */
    List<Edge> all() {
        List<Edge> all = new ArrayList<>(rules);
        all.addAll(dust);
        return all;
    }
}
