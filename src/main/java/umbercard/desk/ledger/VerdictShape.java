package umbercard.desk.ledger;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.Optional;
import umbercard.door.Finding;

/**
 * A verdict as a shape, so that it does not hang on color: a diamond stands for <i>look again</i>, a dot for <i>holds</i>, a
 * ring for a figure, a dash for the others.
 */
public final class VerdictShape {
    private VerdictShape() {}

    /** Paints it about a point, in the color that is set; a dash where there is no verdict. */
    public static void paint(Graphics2D g, Optional<Finding.Verdict> verdict, float x, float y) {
        float half = UIScale.scale(3.5f);
        switch (verdict.orElse(Finding.Verdict.NOT_SET)) {
            case LOOK_AGAIN -> {
                float wide = UIScale.scale(5f);
                Path2D diamond = new Path2D.Float();
                diamond.moveTo(x, y - wide);
                diamond.lineTo(x + wide, y);
                diamond.lineTo(x, y + wide);
                diamond.lineTo(x - wide, y);
                diamond.closePath();
                g.fill(diamond);
            }
            case HOLDS -> g.fill(new Ellipse2D.Float(x - half, y - half, 2 * half, 2 * half));
            case FIGURE_ONLY -> {
                g.setStroke(new BasicStroke(UIScale.scale(1.5f)));
                g.draw(new Ellipse2D.Float(x - half, y - half, 2 * half, 2 * half));
            }
            case NOT_SET, DOES_NOT_APPLY -> {
                g.setStroke(new BasicStroke(UIScale.scale(1.5f)));
                g.draw(new Line2D.Float(x - half, y, x + half, y));
            }
        }
    }
}
