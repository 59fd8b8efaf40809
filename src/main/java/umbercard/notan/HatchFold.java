package umbercard.notan;

import java.util.List;
import org.jspecify.annotations.Nullable;
import umbercard.geometry.Eye;
import umbercard.model.Mark;
import umbercard.model.Thumbnail;

/**
 * Folds thumbnails one after the other on hatch lines, for figures that follow the hand: the dark share within 3e-6, and
 * in a small part of a frame's time where each thumbnail differs from the one before in few marks, however many there are.
 * Shares no overlay with {@link Fold}, so either checks the other. Not for several threads at once.
 */
public final class HatchFold {
    private final Eye eye;

    @Nullable
    private HatchedDesign last;

    /** @param eye what counts as a mass, and as a neck or a gap; here give or take half of its width */
    public HatchFold(Eye eye) {
        this.eye = eye;
    }

    /**
     * The figures of a thumbnail in a frame {@code ratio} wide and 1 high. Hidden marks count nothing; what lies outside the
     * frame is cut off.
     */
    public Glance of(Thumbnail thumbnail, double ratio) {
        HatchedDesign design = last;
        if (design == null || !design.isOn(thumbnail.ground(), ratio)) {
            design = new HatchedDesign(thumbnail.ground(), ratio, eye);
            last = design;
        }
        List<Mark> visible =
                thumbnail.marks().stream().filter(mark -> !mark.hidden()).toList();
        return design.follow(visible);
    }
}
