package umbercard.notan;

import java.util.IdentityHashMap;
import java.util.List;
import org.jspecify.annotations.Nullable;
import umbercard.geometry.Outline;
import umbercard.geometry.Region;
import umbercard.model.Mark;
import umbercard.model.Thumbnail;

/**
 * Folds thumbnails one after the other, quickly where each differs from the one before in few marks: what the marks before
 * and after the changed ones come to is kept, so a mark that is dragged costs two overlays near its border, however many
 * there are. Gives what {@link Fold#of} gives. Not for several threads at once.
 */
public final class FoldCache {
    /** So many marks may lie between what is kept of those before and after before it is worked out anew. */
    private static final int FEW = 4;

    /**
     * What is kept of the first {@code before} and the last {@code after} marks: the dark region that they give by
     * themselves, and what the last ones cover, where no mark between them can change anything.
     */
    private record Kept(int before, int after, Region dark, Region covered) {
        Region with(Effect between) {
            return new Effect(between.lifted().minus(covered), between.laid().minus(covered)).on(dark);
        }
    }

    private final IdentityHashMap<Outline, Region> shapes = new IdentityHashMap<>();
    private MarkRuns runs = new MarkRuns(this::shape);
    private Region frame = Region.empty();
    private double ratio;
    private Thumbnail.Ground ground = Thumbnail.Ground.LIGHT;
    private List<Mark> marks = List.of();

    @Nullable
    private Kept kept;

    @Nullable
    private Design last;

    /**
     * The design of a thumbnail in a frame {@code ratio} wide and 1 high. Hidden marks count nothing; what lies outside the
     * frame is cut off.
     */
    public Design of(Thumbnail thumbnail, double ratio) {
        List<Mark> visible =
                thumbnail.marks().stream().filter(mark -> !mark.hidden()).toList();
        if (last == null || ratio != this.ratio || thumbnail.ground() != ground) {
            begin(thumbnail.ground(), ratio);
        }
        Changes changes = Changes.between(marks, visible);
        if (last != null && changes.before() == visible.size() && changes.before() == marks.size()) {
            return last;
        }
        Kept usable = kept(visible, changes.before(), changes.after());
        Effect between = runs.effect(visible, usable.before, visible.size() - usable.after);
        Design design = new Design(ratio, usable.with(between));
        kept = usable;
        last = design;
        return design;
    }

    private void begin(Thumbnail.Ground newGround, double newRatio) {
        shapes.clear();
        runs = new MarkRuns(this::shape);
        frame = Region.rectangle(0, 0, newRatio, 1);
        ratio = newRatio;
        ground = newGround;
        marks = List.of();
        kept = null;
        last = null;
    }

    /** A mark's shape within the frame: repaired once, then known for as long as its outline is. */
    private Region shape(Mark mark) {
        return shapes.computeIfAbsent(
                mark.outline(), outline -> Region.of(outline).intersect(frame));
    }

    /** Takes over the new marks and forgets what held the changed ones. */
    private void forget(List<Mark> now, int before, int after) {
        if (now.size() == marks.size()) {
            runs.forget(before, now.size() - after);
        } else {
            runs.forgetFrom(before);
        }
        marks = now;
        if (shapes.size() > 2 * now.size() + 64) {
            IdentityHashMap<Outline, Boolean> drawn = new IdentityHashMap<>();
            now.forEach(mark -> drawn.put(mark.outline(), true));
            shapes.keySet().removeIf(outline -> !drawn.containsKey(outline));
        }
    }

    /** What is kept if the changes leave it whole and few marks lie between; else worked out anew. */
    private Kept kept(List<Mark> now, int before, int after) {
        Kept old = kept;
        boolean grown = before == marks.size();
        forget(now, before, after);
        if (old != null && old.before <= before && old.after <= after && now.size() - old.before - old.after <= FEW) {
            return old;
        }
        if (last != null && grown) {
            return new Kept(before, 0, last.dark(), Region.empty());
        }
        Region start = ground == Thumbnail.Ground.DARK ? frame : Region.empty();
        Effect effect = runs.effect(now, now.size() - after, now.size());
        Region dark = effect.on(runs.on(start, now, 0, before));
        return new Kept(before, after, dark, effect.lifted().union(effect.laid()));
    }
}
