package umbercard.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Gathers the parts of a line that are covered, each with how often, and makes out what they cover together. */
final class Stretches {
    private record Turn(double at, int by) {}

    private final List<Turn> turns = new ArrayList<>();

    /** @param times may be under zero, to take away what others cover */
    void add(double from, double to, int times) {
        turns.add(new Turn(Math.min(from, to), times));
        turns.add(new Turn(Math.max(from, to), -times));
    }

    /**
     * What is covered once or more of a line {@code length} long, in order. Gaps and stretches of {@code slack} or less are
     * passed over, and an end so near to an end of the line lies on it.
     */
    List<Stretch> covered(double length, double slack) {
        turns.sort(Comparator.comparingDouble(Turn::at));
        List<Stretch> raw = new ArrayList<>();
        int times = 0;
        double from = 0;
        for (Turn turn : turns) {
            int before = times;
            times += turn.by;
            if (before < 1 && times >= 1) {
                from = turn.at;
            } else if (before >= 1 && times < 1 && turn.at > from) {
                raw.add(new Stretch(from, turn.at));
            }
        }
        return tidied(raw, length, slack);
    }

    /** The same stretches without gaps and stretches of {@code slack} or less, held within the line. */
    static List<Stretch> tidied(List<Stretch> raw, double length, double slack) {
        List<Stretch> joined = new ArrayList<>();
        for (Stretch next : raw) {
            int last = joined.size() - 1;
            if (last >= 0 && next.from() - joined.get(last).to() <= slack) {
                joined.set(last, new Stretch(joined.get(last).from(), next.to()));
            } else {
                joined.add(next);
            }
        }
        return joined.stream()
                .filter(stretch -> stretch.from() < length - slack && stretch.to() > slack)
                .map(stretch -> new Stretch(
                        stretch.from() <= slack ? 0 : stretch.from(),
                        stretch.to() >= length - slack ? length : stretch.to()))
                .filter(stretch -> stretch.length() > slack)
                .toList();
    }
}
