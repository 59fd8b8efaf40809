package umbercard.notes.layers;

import umbercard.color.Lab;
import umbercard.color.Xyz;
import umbercard.model.ColorNote.Touch;

/**
 * How pastel laid over a color mixes with it. A stroke covers some of the grain and leaves the rest open; the eye adds the light
 * of both, each by its area: tristimulus values mix linearly (Grassmann's laws of additive mixing; CIE 15). How much a touch
 * covers is a rough guide: common practice, no source.
 */
public final class Coverage {
    private static final double LIGHT = 0.45;
    private static final double FIRM = 0.85;

    private Coverage() {}

    /** The share of the ground that a touch covers, 0..1. */
    public static double of(Touch touch) {
        return touch == Touch.LIGHT ? LIGHT : FIRM;
    }

    /** The color of {@code over} on that share of {@code under}, 0..1. */
    public static Lab mixed(Lab over, double share, Lab under) {
        Xyz top = over.xyz();
        Xyz ground = under.xyz();
        return Lab.ofXyz(new Xyz(
                mixed(top.x(), share, ground.x()),
                mixed(top.y(), share, ground.y()),
                mixed(top.z(), share, ground.z())));
    }

    private static double mixed(double over, double share, double under) {
        return share * over + (1 - share) * under;
    }
}
