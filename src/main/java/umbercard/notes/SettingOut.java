package umbercard.notes;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import umbercard.color.Ciede2000;

/**
 * Suggests what to set out: the fewest sticks at hand of which one is near enough to every main color of every zone, with a
 * warm dark, a cool dark and an accent among them. Near enough means within value by {@link Trust} and within a CIEDE2000
 * difference, once the colors are clamped to the values that the sticks can reach.
 *
 * <p>Of equally few, those are taken that match the largest share of the picture best, then the next largest, and so on; equally
 * good ones in the order of the box. Where the fewest are too many, as many as may be are taken that cover the largest
 * share. What no stick at hand can cover is left out and told. The search is bounded; where it ends before it is through,
 * what was found by then is given, and that it is not proven to be the best.
 */
public final class SettingOut {
    private static final long NODES = 20_000;
    private static final double PARTS_OF_SHARE = 1e6;

    /** A part that must be played outweighs all that can be covered. */
    private static final long PART = 1_000_000_000L;

    private final AtHand atHand;
    private final Wish wish;
    private final List<Goal> goals;

    /** For each goal, then each part: the places of the sticks that serve, the best first. */
    private final List<List<Integer>> serving;

    private final List<BitSet> rowsOfStick;

    /**
     * What is asked for.
     *
     * @param most how many sticks at most, {@value #LEAST_MOST} to {@value #MOST_MOST}
     * @param within the CIEDE2000 difference that counts as covered, over 0
     * @param darkBelow the Munsell value that a dark is under
     */
    public record Wish(int most, double within, Trust trust, double darkBelow) {
        public static final int LEAST_MOST = 8;
        public static final int MOST_MOST = 16;

        /** A dozen within 10, value first, darks under the dark band's end: common practice, no source. */
        public static final Wish USUAL = new Wish(12, 10, Trust.VALUE_FIRST, Band.DARK.to());

        public Wish {
            if (most < LEAST_MOST || most > MOST_MOST || !(within > 0)) {
                throw new IllegalArgumentException(most + " sticks within " + within);
            }
        }

        public Wish withMost(int number) {
            return new Wish(number, within, trust, darkBelow);
        }

        public Wish withTrust(Trust other) {
            return new Wish(most, within, other, darkBelow);
        }
    }

    private SettingOut(List<ColoredZone> zones, AtHand atHand, Wish wish) {
        this.atHand = atHand;
        this.wish = wish;
        goals = Goal.of(zones, atHand);
        Matching matching = new Matching(atHand, wish.trust);
        serving = Stream.concat(
                        goals.stream().map(goal -> covering(goal, matching)),
                        Stream.of(Part.values()).map(part -> part.candidates(atHand, goals, wish.darkBelow)))
                .toList();
        rowsOfStick = IntStream.range(0, atHand.sticks().size())
                .mapToObj(this::rowsOf)
                .toList();
    }

    /**
     * What to set out for the zones' colors.
     *
     * @throws IllegalArgumentException if no stick is at hand
     */
    public static Suggestion of(List<ColoredZone> zones, AtHand atHand, Wish wish) {
        if (atHand.isEmpty()) {
            throw new IllegalArgumentException("no stick is at hand");
        }
        return of(zones, atHand, wish, NODES);
    }

    /** The same, looking at so many nodes of each search at most. */
    static Suggestion of(List<ColoredZone> zones, AtHand atHand, Wish wish, long nodes) {
        return new SettingOut(zones, atHand, wish).suggest(nodes);
    }

    private List<Integer> covering(Goal goal, Matching matching) {
        return matching.within(goal.reached(), goal.value()).stream()
                .map(Matching.Ranked::place)
                .filter(place -> Ciede2000.difference(
                                goal.reached(), atHand.sticks().get(place).color())
                        <= wish.within)
                .toList();
    }

    private BitSet rowsOf(int stick) {
        BitSet rows = new BitSet();
        for (int row = 0; row < serving.size(); row++) {
            rows.set(row, serving.get(row).contains(stick));
        }
        return rows;
    }

    private Suggestion suggest(long nodes) {
        BitSet rows = new BitSet();
        for (int row = 0; row < serving.size(); row++) {
            rows.set(row, !serving.get(row).isEmpty());
        }
        SetCover search = new SetCover(rowsOfStick, nodes);
        Optional<List<Integer>> fewest = search.fewest(rows, wish.most);
        if (fewest.isPresent()) {
            return told(bestOf(fewest.get(), rows, search), true, true);
        }
        boolean tooMany = !search.gaveUp();
        SetCover again = new SetCover(rowsOfStick, nodes);
        List<Integer> heaviest = again.heaviest(rows, wish.most, weights());
        return told(heaviest, covers(heaviest, rows), tooMany && !again.gaveUp());
    }

    /** Of the covers of that size, the one whose best sticks serve the first row best, then the second, and so on. */
    private List<Integer> bestOf(List<Integer> cover, BitSet rows, SetCover search) {
        List<Integer> best = cover;
        List<Integer> fixed = new ArrayList<>();
        BitSet open = (BitSet) rows.clone();
        for (List<Integer> candidates : serving) {
            for (int stick : candidates) {
                if (fixed.contains(stick) || fixed.size() == cover.size()) {
                    break;
                }
                BitSet rest = (BitSet) open.clone();
                rest.andNot(rowsOfStick.get(stick));
                Optional<List<Integer>> others = search.cover(rest, cover.size() - fixed.size() - 1);
                if (others.isPresent()) {
                    fixed.add(stick);
                    open = rest;
                    best = Stream.concat(fixed.stream(), others.get().stream()).toList();
                    break;
                }
            }
        }
        return best;
    }

    private long[] weights() {
        return IntStream.range(0, serving.size())
                .mapToLong(row -> row < goals.size()
                        ? 1 + Math.round(PARTS_OF_SHARE * goals.get(row).share())
                        : PART)
                .toArray();
    }

    private boolean covers(List<Integer> sticks, BitSet rows) {
        BitSet covered = new BitSet();
        sticks.forEach(stick -> covered.or(rowsOfStick.get(stick)));
        BitSet open = (BitSet) rows.clone();
        open.andNot(covered);
        return open.isEmpty();
    }

    private Suggestion told(List<Integer> chosen, boolean complete, boolean proven) {
        return new Explaining(atHand, goals, serving, wish.trust).of(chosen, complete, proven);
    }
}
