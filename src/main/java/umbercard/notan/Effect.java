package umbercard.notan;

import umbercard.geometry.Region;
import umbercard.model.Mark;

/**
 * What a run of marks does to any dark region: {@code D ↦ (D ∖ lifted) ∪ laid}. Runs join to one such pair, so however many
 * marks follow the one that is dragged, they cost two overlays.
 */
record Effect(Region lifted, Region laid) {
    static final Effect NONE = new Effect(Region.empty(), Region.empty());

    static Effect of(Mark.Kind kind, Region shape) {
        return switch (kind) {
            case LAY -> new Effect(Region.empty(), shape);
            case LIFT -> new Effect(shape, Region.empty());
        };
    }

    Region on(Region dark) {
        return dark.minus(lifted).union(laid);
    }

    /** This effect, and another after it. */
    Effect then(Effect later) {
        return new Effect(lifted.union(later.lifted), laid.minus(later.lifted).union(later.laid));
    }
}
