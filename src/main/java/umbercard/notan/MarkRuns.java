package umbercard.notan;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import umbercard.geometry.Region;
import umbercard.model.Mark;

/**
 * The effects of runs of marks whose lengths are powers of two and which start at multiples of their lengths: joined when
 * first asked for, then kept until one of their marks changes. Any run is at most two of them for each doubling.
 */
final class MarkRuns {
    private record Run(int level, int index) {}

    private final Function<Mark, Region> shape;
    private final Map<Run, Effect> known = new HashMap<>();

    MarkRuns(Function<Mark, Region> shape) {
        this.shape = shape;
    }

    /** Forgets the runs that hold any of the places {@code from} to {@code to}, {@code to} not included. */
    void forget(int from, int to) {
        for (int level = 0; from < to && level < Integer.SIZE - 1; level++) {
            for (int index = from >> level; index <= (to - 1) >> level; index++) {
                known.remove(new Run(level, index));
            }
        }
    }

    /** Forgets the runs that reach beyond the place. */
    void forgetFrom(int from) {
        known.keySet().removeIf(run -> (run.index + 1L) << run.level > from);
    }

    /** What the marks at the places {@code from} to {@code to}, {@code to} not included, leave of a dark region. */
    Region on(Region start, List<Mark> marks, int from, int to) {
        Region dark = start;
        for (int at = from; at < to; at += 1 << level(at, to)) {
            dark = run(marks, level(at, to), at >> level(at, to)).on(dark);
        }
        return dark;
    }

    /** The effect of the marks at the places {@code from} to {@code to}, {@code to} not included. */
    Effect effect(List<Mark> marks, int from, int to) {
        Effect effect = Effect.NONE;
        for (int at = from; at < to; at += 1 << level(at, to)) {
            effect = effect.then(run(marks, level(at, to), at >> level(at, to)));
        }
        return effect;
    }

    /** The longest run that starts at a place and does not reach beyond another. */
    private static int level(int at, int to) {
        int longest = Integer.SIZE - 1 - Integer.numberOfLeadingZeros(to - at);
        return at == 0 ? longest : Math.min(Integer.numberOfTrailingZeros(at), longest);
    }

    private Effect run(List<Mark> marks, int level, int index) {
        Run run = new Run(level, index);
        Effect effect = known.get(run);
        if (effect == null) {
            if (level == 0) {
                Mark mark = marks.get(index);
                effect = Effect.of(mark.kind(), shape.apply(mark));
            } else {
                effect = run(marks, level - 1, 2 * index).then(run(marks, level - 1, 2 * index + 1));
            }
            known.put(run, effect);
        }
        return effect;
    }
}
