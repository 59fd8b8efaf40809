package umbercard.notan;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.IdentityHashMap;
import java.util.List;
import org.jspecify.annotations.Nullable;
import umbercard.geometry.Hatching;
import umbercard.geometry.Lines;
import umbercard.geometry.Outline;
import umbercard.geometry.Spans;
import umbercard.model.Mark;
import umbercard.model.Thumbnail.Ground;

/**
 * The dark stretches of some lines, folded from marks, and folded again where marks have changed. What the marks before and
 * after the changed ones give is kept line by line, as far as a changed one has passed.
 */
final class LineFold {
    /** So many marks may lie between those kept before and after until these are chosen anew. */
    private static final int FEW = 4;

    private static final Spans NONE = new Spans();

    private final Lines lines;
    private final Ground ground;
    private final IdentityHashMap<Outline, Hatching> shapes = new IdentityHashMap<>();
    private final Spans[] dark;
    private final Spans[] whole;
    private final Spans laid = new Spans();
    private final Spans seen = new Spans();
    private Kept kept;

    /** The folded first and last marks on the lines that were asked for. */
    private static final class Kept {
        private final int before;
        private final int after;

        /** Without the marks between. */
        private final @Nullable Spans[] dark;

        /** What the last marks cover: nothing before them is seen there. */
        private final @Nullable Spans[] covered;

        Kept(int before, int after, int lines) {
            this.before = before;
            this.after = after;
            dark = new Spans[lines];
            covered = new Spans[lines];
        }

        boolean serves(Changes changes, int marks) {
            return before <= changes.before() && after <= changes.after() && marks - before - after <= FEW;
        }
    }

    LineFold(Lines lines, Ground ground) {
        this.lines = lines;
        this.ground = ground;
        dark = new Spans[lines.size()];
        whole = new Spans[dark.length];
        for (int line = 0; line < dark.length; line++) {
            whole[line] = lines.whole(line);
            dark[line] = new Spans();
            dark[line].set(bare(line));
        }
        kept = new Kept(0, 0, dark.length);
    }

    private Spans bare(int line) {
        return ground == Ground.DARK ? whole[line] : NONE;
    }

    /** What is dark of a line; to be read only, until the next marks are followed. */
    Spans dark(int line) {
        return dark[line];
    }

    /**
     * Folds again where marks have changed.
     *
     * @return the lines whose dark may be another
     */
    BitSet follow(List<Mark> old, List<Mark> now, Changes changes) {
        BitSet touched = new BitSet();
        changes.of(old).forEach(mark -> touch(mark, touched));
        changes.of(now).forEach(mark -> touch(mark, touched));
        if (!kept.serves(changes, now.size())) {
            kept = new Kept(changes.before(), changes.after(), dark.length);
        }
        keep(touched, now);
        List<Mark> between = now.subList(kept.before, now.size() - kept.after);
        for (int line = touched.nextSetBit(0); line >= 0; line = touched.nextSetBit(line + 1)) {
            dark[line].set(at(kept.dark, line));
        }
        between.forEach(mark -> apply(mark, touched));
        forget(now);
        return touched;
    }

    private Hatching shape(Mark mark) {
        return shapes.computeIfAbsent(mark.outline(), lines::of);
    }

    private void touch(Mark mark, BitSet touched) {
        Hatching shape = shape(mark);
        touched.set(shape.first(), shape.end());
    }

    /** A changed mark, where the marks after it let it be seen. */
    private void apply(Mark mark, BitSet touched) {
        Hatching shape = shape(mark);
        for (int line = touched.nextSetBit(shape.first());
                line >= 0 && line < shape.end();
                line = touched.nextSetBit(line + 1)) {
            laid.clear();
            shape.addTo(laid, line);
            laid.remove(at(kept.covered, line));
            if (mark.kind() == Mark.Kind.LAY) {
                dark[line].add(laid);
            } else {
                dark[line].remove(laid);
            }
        }
    }

    private static Spans at(@Nullable Spans[] kept, int line) {
        Spans spans = kept[line];
        if (spans == null) {
            throw new IllegalStateException("line " + line + " was not asked for");
        }
        return spans;
    }

    /** Folds the marks that stay on those of the lines where it was not yet done. */
    private void keep(BitSet touched, List<Mark> now) {
        BitSet fresh = new BitSet();
        for (int line = touched.nextSetBit(0); line >= 0; line = touched.nextSetBit(line + 1)) {
            if (kept.dark[line] == null) {
                fresh.set(line);
                kept.dark[line] = new Spans();
                kept.covered[line] = new Spans();
            }
        }
        if (fresh.isEmpty()) {
            return;
        }
        BitSet open = (BitSet) fresh.clone();
        keep(now.subList(now.size() - kept.after, now.size()), open, kept.covered);
        Spans[] covered = new Spans[lines.size()];
        for (int line = fresh.nextSetBit(0); line >= 0; line = fresh.nextSetBit(line + 1)) {
            covered[line] = new Spans();
            covered[line].set(at(kept.covered, line));
        }
        keep(now.subList(0, kept.before), open, covered);
        if (ground == Ground.DARK) {
            for (int line = fresh.nextSetBit(0); line >= 0; line = fresh.nextSetBit(line + 1)) {
                laid.set(bare(line));
                laid.remove(at(covered, line));
                at(kept.dark, line).add(laid);
            }
        }
    }

    /**
     * Takes marks from the last to the first, each where none after it covers it. Lines that are wholly covered are open no
     * longer: earlier marks are not seen there.
     */
    private void keep(List<Mark> marks, BitSet open, @Nullable Spans[] covered) {
        for (int i = marks.size() - 1; i >= 0 && !open.isEmpty(); i--) {
            Mark mark = marks.get(i);
            Hatching shape = shape(mark);
            for (int line = open.nextSetBit(shape.first());
                    line >= 0 && line < shape.end();
                    line = open.nextSetBit(line + 1)) {
                Spans hidden = at(covered, line);
                if (shape.liesIn(hidden, line)) {
                    continue;
                }
                laid.clear();
                shape.addTo(laid, line);
                if (mark.kind() == Mark.Kind.LAY) {
                    seen.set(laid);
                    seen.remove(hidden);
                    at(kept.dark, line).add(seen);
                }
                hidden.add(laid);
                open.set(line, !hidden.equals(whole[line]));
            }
        }
    }

    /** Forgets the shapes of marks that are gone, now and then. */
    private void forget(List<Mark> now) {
        if (shapes.size() > 2 * now.size() + 64) {
            IdentityHashMap<Outline, Boolean> drawn = new IdentityHashMap<>();
            now.forEach(mark -> drawn.put(mark.outline(), true));
            new ArrayList<>(shapes.keySet())
                    .stream().filter(outline -> !drawn.containsKey(outline)).forEach(shapes::remove);
        }
    }
}
