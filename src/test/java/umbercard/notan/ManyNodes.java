package umbercard.notan;

import static umbercard.model.Mark.Kind.LAY;
import static umbercard.model.Mark.Kind.LIFT;
import static umbercard.notan.Drawings.mark;

import org.junit.jupiter.api.Test;

/** Marks of very many nodes that cross themselves and each other very often; run by the profile {@code tries}. */
class ManyNodes {
    private static final int NODES = 100_000;

    @Test
    void straightMarksOfAHundredThousandNodesAreFolded() {
        LargeMarks.check(
                1e-6,
                mark(LAY, LargeMarks.scribble(NODES, 2000, .6, .5, .4, .02)),
                mark(LIFT, LargeMarks.scribble(NODES, 900, .8, .5, .3, .04)),
                mark(LAY, LargeMarks.wavy(NODES, .6, .5, .3)));
    }

    /** Rows of a curve and its polygon differ by up to twice the tolerance of flattening at every border they cross. */
    @Test
    void curvedMarksOfAHundredThousandNodesAreFolded() {
        LargeMarks.check(
                2e-3,
                mark(LAY, LargeMarks.curvedScribble(NODES, 1500, .6, .5, .4, .02)),
                mark(LIFT, LargeMarks.curvedScribble(NODES, 700, .8, .5, .3, .04)));
    }
}
