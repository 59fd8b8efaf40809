package umbercard.notan;

import static umbercard.model.Mark.Kind.LAY;
import static umbercard.model.Mark.Kind.LIFT;
import static umbercard.notan.Drawings.mark;

import org.junit.jupiter.api.Test;
import umbercard.geometry.Outline;

class LargeMarksTest {
    private static final int NODES = 100_000;

    @Test
    void aMarkOfAHundredThousandNodesThatCrossesItselfIsFolded() {
        LargeMarks.check(
                1e-6,
                mark(LAY, Outline.rectangle(.11, .11, .91, .91)),
                mark(LIFT, LargeMarks.scribble(NODES, 150, .6, .5, .3, .02)));
    }
}
