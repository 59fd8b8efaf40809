package umbercard.desk.ledger;

import java.awt.AlphaComposite;
import java.awt.Graphics2D;

/** How figures look that are about to be replaced. */
final class Dim {
    private static final float OLD = 0.45f;

    private Dim() {}

    /** Lets what is painted next look old, if it is. */
    static void apply(Graphics2D g, boolean old) {
        if (old) {
            g.setComposite(AlphaComposite.getInstance(AlphaComposite.SRC_OVER, OLD));
        }
    }
}
