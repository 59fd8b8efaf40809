package umbercard.desk.instruments;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static umbercard.door.Gesture.With.SECOND_BUTTON;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import umbercard.door.Gesture.Act;
import umbercard.door.Place;
import umbercard.door.Step;
import umbercard.geometry.Node;
import umbercard.geometry.Point;
import umbercard.model.Mark;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.model.edit.Edits;
import umbercard.notan.Fold;
import umbercard.words.Words;

class OutlineHandTest {
    /** A hand's width of curve: half a pixel all along an outline two frames long. */
    private static final Offset<Double> FITTED = within(2 * 0.5 * Script.PIXEL / Script.RATIO);

    private static final Offset<Double> EXACT = within(1e-6);

    private static Script laying() {
        return Script.with(new LayDark());
    }

    private static double dark(Thumbnail thumbnail) {
        return Fold.of(thumbnail, Script.RATIO).darkShare();
    }

    private static double dark(Script script) {
        return dark(script.thumbnail());
    }

    private static Mark onlyMark(Script script) {
        assertThat(script.thumbnail().marks()).hasSize(1);
        return script.thumbnail().marks().get(0);
    }

    private static List<Point> corners(Script script) {
        return onlyMark(script).outline().nodes().stream().map(Node::at).toList();
    }

    private static Script square() {
        return laying().click(0.3, 0.2).click(0.9, 0.2).click(0.9, 0.8).click(0.3, 0.8);
    }

    @Nested
    class ByClicks {
        @Test
        void aTapOnTheStartClosesTheCorners() {
            Script script = square().click(0.3 + 6 * Script.PIXEL, 0.2 - 4 * Script.PIXEL);
            assertThat(corners(script))
                    .containsExactly(
                            new Point(0.3, 0.2), new Point(0.9, 0.2), new Point(0.9, 0.8), new Point(0.3, 0.8));
            assertThat(onlyMark(script).kind()).isEqualTo(Mark.Kind.LAY);
            assertThat(dark(script)).isCloseTo(0.24, EXACT);
            assertThat(script.last().held()).isFalse();
        }

        @Test
        void enterClosesThem() {
            assertThat(dark(square().key("enter"))).isCloseTo(0.24, EXACT);
        }

        @Test
        void aDoubleClickSetsTheLastCornerAndClosesThem() {
            Script script =
                    laying().click(0.3, 0.2).click(0.9, 0.2).click(0.9, 0.8).doubleClick(0.3, 0.8);
            assertThat(corners(script)).hasSize(4);
            assertThat(dark(script)).isCloseTo(0.24, EXACT);
            assertThat(script.click(0.1, 0.1).last().held()).isTrue();
        }

        @Test
        void quickClicksInDifferentPlacesAreCorners() {
            Script script = square();
            script.feel(Act.PRESS, 0.2, 0.5, "", 2);
            script.feel(Act.RELEASE, 0.2, 0.5, "", 2);
            assertThat(corners(script.key("enter"))).hasSize(5);
        }

        @Test
        void aTripleClickLeavesNoCornerBehind() {
            Script script = square().doubleClick(0.25, 0.5);
            script.feel(Act.PRESS, 0.25, 0.5, "", 3);
            script.feel(Act.RELEASE, 0.25, 0.5, "", 3);
            assertThat(script.last().held()).isFalse();
            assertThat(script.edits()).hasSize(1);
        }

        @Test
        void aSlowSecondClickOnACornerSetsNoOther() {
            assertThat(corners(square().click(0.3 + 0.6 * Script.PIXEL, 0.8).key("enter")))
                    .hasSize(4);
        }

        @Test
        void keysWaitUntilTheButtonIsUp() {
            Script script = square().press(0.1, 0.5).key("enter").key("backspace");
            assertThat(script.edits()).isEmpty();
            assertThat(corners(script.release().key("enter"))).hasSize(5);
        }

        @Test
        void aTremblingPenStillClicksWhereItWentDown() {
            double tremor = 5 * Script.PIXEL;
            Script script = laying();
            for (double[] at : new double[][] {{0.3, 0.2}, {0.9, 0.2}, {0.9, 0.8}, {0.3, 0.8}}) {
                script.press(at[0], at[1])
                        .drag(at[0] + tremor, at[1])
                        .drag(at[0], at[1] - tremor)
                        .release();
            }
            assertThat(dark(script.key("enter"))).isCloseTo(0.24, EXACT);
        }

        @Test
        void backspaceTakesTheLastCornerBackAndInTheEndTheOutline() {
            Script script = square().click(1.4, 0.9).key("backspace");
            assertThat(script.last().held()).isTrue();
            assertThat(dark(script.key("enter"))).isCloseTo(0.24, EXACT);
            script = laying().click(0.3, 0.2).key("backspace");
            assertThat(script.last().held()).isFalse();
            assertThat(script.key("enter").edits()).isEmpty();
        }

        @Test
        void escapeDropsTheOutline() {
            Script script = square().escape();
            assertThat(script.last().held()).isFalse();
            assertThat(script.key("enter").edits()).isEmpty();
        }

        @Test
        void anOutlineThatEnclosesNothingStaysHalfMade() {
            Script script = laying().click(0.3, 0.2).click(0.9, 0.2).key("enter");
            assertThat(script.edits()).isEmpty();
            assertThat(script.last().held()).isTrue();
            script.click(0.6, 0.2).key("enter");
            assertThat(script.edits()).isEmpty();
            script.click(0.6, 0.8).key("enter");
            assertThat(script.edits()).hasSize(1);
        }

        @Test
        void oneThatLiesOutsideTheFrameMakesNoMark() {
            Script script =
                    laying().click(1.6, 0.2).click(1.9, 0.2).click(1.9, 0.8).click(1.6, 0.3);
            assertThat(script.key("enter").edits()).isEmpty();
        }

        @Test
        void oneMayRunOutsideTheFrame() {
            Script script =
                    laying().click(1.2, 0.2).click(1.9, 0.2).click(1.9, 0.8).click(1.2, 0.8);
            script.click(1.2, 0.2);
            assertThat(corners(script)).contains(new Point(1.9, 0.2));
            assertThat(dark(script)).isCloseTo(0.3 * 0.6 / Script.RATIO, EXACT);
        }

        @Test
        void twoPlacesOnTheBorderAreEnoughForALandMass() {
            Script below = laying().click(0.002, 0.6).click(1.499, 0.6).key("enter");
            assertThat(dark(below)).isCloseTo(0.4, EXACT);
            Script above = laying().click(0.002, 0.6).click(1.499, 0.6).key("o").key("enter");
            assertThat(dark(above)).isCloseTo(0.6, EXACT);
        }

        @Test
        void aTapOnTheStartClosesStraightEvenAtTheBorder() {
            Script script = laying().click(0, 0.6).click(0.5, 0.5).click(0, 0.4).click(0, 0.6);
            assertThat(dark(script)).isCloseTo(0.5 * 0.2 * 0.5 / Script.RATIO, EXACT);
        }
    }

    @Nested
    class Freehand {
        @Test
        void aCircleIsDarkByItsArea() {
            Script script = laying().circle(0.7, 0.5, 0.3).release();
            assertThat(dark(script)).isCloseTo(Math.PI * 0.09 / Script.RATIO, FITTED);
            assertThat(onlyMark(script).outline().nodes().size())
                    .as("a smooth curve needs few points")
                    .isLessThan(40);
        }

        @Test
        void aLineLeftOpenInsideTheFrameClosesStraight() {
            Script script =
                    laying().stroke(0.3, 0.2, 0.9, 0.2, 0.9, 0.8, 0.3, 0.8).release();
            assertThat(dark(script)).isCloseTo(0.24, FITTED);
        }

        @Test
        void aRidgeFromBorderToBorderClosesBelowUnlessTheOtherSideIsChosen() {
            double[] ridge = {-0.05, 0.5, 0.5, 0.3, 1.0, 0.6, 1.55, 0.5};
            Script below = laying().stroke(ridge).release();
            Script above = laying().stroke(ridge).key("o").release();
            assertThat(dark(below) + dark(above)).isCloseTo(1, FITTED);
            assertThat(dark(below)).isBetween(0.5, 0.6);
            assertThat(dark(laying().stroke(ridge).key("o").key("o").release())).isEqualTo(dark(below));
        }

        @Test
        void theShareFollowsTheHandWhileItDraws() {
            Script script = laying().circle(0.7, 0.5, 0.3);
            assertThat(script.edits()).isEmpty();
            assertThat(dark(script.asIf()))
                    .as("the preview takes a coarser line")
                    .isCloseTo(Math.PI * 0.09 / Script.RATIO, within(2e-3));
            script.drag(0.7, 0.5);
            assertThat(script.asIf().marks()).hasSize(1);
            assertThat(script.thumbnail().marks()).isEmpty();
        }

        @Test
        void thePreviewStaysSmallHoweverLongTheLine() {
            Script script = laying().press(0.1, 0.1);
            for (int i = 0; i < 4_000; i++) {
                script.drag(0.7 + 0.5 * Math.cos(i * 0.37), 0.5 + 0.4 * Math.sin(i * 0.2));
            }
            assertThat(script.asIf().marks().get(0).outline().nodes().size()).isLessThan(330);
        }

        @Test
        void aShortTravelIsNoLine() {
            Script script =
                    laying().press(0.5, 0.5).drag(0.5 + 7.9 * Script.PIXEL, 0.5).release();
            assertThat(script.last().held()).isTrue();
            assertThat(script.edits()).isEmpty();
        }

        @Test
        void aLineThatEnclosesNothingLeavesNothingBehind() {
            Script script = laying().stroke(0.3, 0.5, 0.9, 0.5).release();
            assertThat(script.edits()).isEmpty();
            assertThat(script.last().held()).isFalse();
        }

        @Test
        void escapeDropsItAndTheRestOfTheMovement() {
            Script script = laying().stroke(0.3, 0.2, 0.9, 0.2, 0.9, 0.8).escape();
            assertThat(script.last().held()).isFalse();
            script.drag(0.3, 0.8).release();
            assertThat(script.edits()).isEmpty();
        }

        @Test
        void aLineDrawnBetweenCornersJoinsThem() {
            Script script = laying().click(0.3, 0.2)
                    .click(0.9, 0.2)
                    .stroke(0.9, 0.2, 1.0, 0.5, 0.9, 0.8)
                    .release();
            assertThat(script.last().held()).isTrue();
            script.click(0.3, 0.8).key("enter");
            double bulge = 0.6 * 0.1 / 2;
            assertThat(dark(script)).isCloseTo((0.36 + bulge) / Script.RATIO, FITTED);
        }

        @Test
        void aLineBegunNearTheLastCornerBeginsAtIt() {
            Script script = laying().click(0.3, 0.2)
                    .click(0.9, 0.2)
                    .stroke(0.904, 0.203, 1.0, 0.5, 0.9, 0.8)
                    .release()
                    .key("enter");
            assertThat(corners(script)).contains(new Point(0.9, 0.2)).doesNotContain(new Point(0.904, 0.203));
            assertThat(corners(script)).doesNotHaveDuplicates();
        }

        @Test
        void aLineDrawnBackToTheStartClosesTheCorners() {
            Script script = laying().click(0.3, 0.2)
                    .click(0.9, 0.2)
                    .stroke(0.9, 0.8, 0.3, 0.8, 0.3, 0.203)
                    .release();
            assertThat(dark(script)).isCloseTo(0.24, FITTED);
            assertThat(script.last().held()).isFalse();
        }

        @Test
        void theLineEndsWhereTheHandLetsGo() {
            Script script = laying().stroke(0.3, 0.2, 0.9, 0.2, 0.9, 0.8);
            script.feel(Act.RELEASE, 0.3, 0.8, "", 1);
            assertThat(dark(script)).isCloseTo(0.24, FITTED);
        }

        @Test
        void backAtItsStartItClosesThereEvenAtTheBorder() {
            Script script = laying().stroke(0.003, 0.4, 0.5, 0.4, 0.5, 0.6, 0.004, 0.404);
            assertThat(script.last().preview().pointer().map(Words::say)).contains("Let go to close it");
        }

        @Test
        void backspaceTakesTheWholeLineBack() {
            Script script =
                    square().stroke(0.3, 0.8, 0.1, 0.5, 0.2, 0.3).release().key("backspace");
            assertThat(dark(script.key("enter"))).isCloseTo(0.24, EXACT);
        }
    }

    @Test
    void liftingTakesDarkAway() {
        Script script = Script.with(new LiftLight(), square().key("enter").study());
        script.click(0.3, 0.2).click(0.6, 0.2).click(0.6, 0.8).click(0.3, 0.8).key("enter");
        assertThat(dark(script)).isCloseTo(0.12, EXACT);
        assertThat(script.undoable().map(Words::say)).contains("lift light");
    }

    @Test
    void theSecondButtonSwapsLayAndLiftForThatOutlineOnly() {
        Script script = square().key("enter").holding(SECOND_BUTTON);
        script.click(0.3, 0.2)
                .holding()
                .click(0.6, 0.2)
                .click(0.6, 0.8)
                .click(0.3, 0.8)
                .key("enter");
        assertThat(dark(script)).isCloseTo(0.12, EXACT);
        assertThat(script.undoable().map(Words::say)).contains("lift light");
        script.click(0.3, 0.2).click(0.6, 0.2).click(0.6, 0.8).key("enter");
        assertThat(script.undoable().map(Words::say)).contains("lay dark");
    }

    @Test
    void theOtherButtonPressedWithinAStrokeLeavesTheStrokeAlone() {
        Script plain = laying().stroke(0.3, 0.2, 0.9, 0.2, 0.9, 0.8, 0.3, 0.8, 0.3, 0.2);
        Script pinched = laying().stroke(0.3, 0.2, 0.9, 0.2, 0.9, 0.8);
        pinched.holding(SECOND_BUTTON).press(0.9, 0.8).drag(0.9, 0.8).release();
        assertThat(pinched.edits()).isEmpty();
        assertThat(pinched.last().held()).isTrue();
        pinched.holding().drag(0.3, 0.8).drag(0.3, 0.2).release();
        assertThat(dark(pinched)).isCloseTo(dark(plain.release()), FITTED);
        assertThat(onlyMark(pinched).kind()).isEqualTo(Mark.Kind.LAY);
    }

    @Test
    void aStrokeBegunWithTheSecondButtonEndsWithIt() {
        Script script = laying().holding(SECOND_BUTTON).stroke(0.3, 0.2, 0.9, 0.2, 0.9, 0.8);
        script.holding().press(0.9, 0.8).release();
        assertThat(script.edits()).isEmpty();
        script.holding(SECOND_BUTTON).drag(0.3, 0.2).release();
        assertThat(onlyMark(script).kind()).isEqualTo(Mark.Kind.LIFT);
    }

    @Test
    void theCornerUnderThePointerIsShownBeforeItIsSet() {
        Script script = laying().click(0.3, 0.2).click(0.9, 0.2).hover(0.9, 0.8);
        assertThat(script.last().preview().places())
                .containsExactly(
                        new Place.Along(List.of(new Point(0.3, 0.2), new Point(0.9, 0.2), new Point(0.9, 0.8))),
                        new Place.At(new Point(0.3, 0.2)));
        assertThat(dark(script.asIf())).isCloseTo(0.12, EXACT);
    }

    @Test
    void overTheStartItShowsWhatATapWouldMake() {
        Script script = square().hover(0.302, 0.201);
        assertThat(dark(script.asIf())).isCloseTo(0.24, EXACT);
        assertThat(script.last().preview().pointer().map(Words::say)).contains("Click to close it");
    }

    @Test
    void aSingleCornerCannotBeClosed() {
        Script script = laying().click(0.3, 0.2).hover(0.301, 0.2);
        assertThat(script.last().preview().pointer().map(Words::say))
                .hasValueSatisfying(said -> assertThat(said).startsWith("Click or draw on"));
    }

    @Test
    void whatClosesAlongTheBorderSaysHowToChooseTheSide() {
        Script script = laying().click(0.3, 0.2).click(0, 0.4).hover(0.6, 0.5);
        assertThat(script.last().preview().pointer().map(Words::say))
                .hasValueSatisfying(said -> assertThat(said).startsWith("Click or draw on"));
        script = laying().click(0, 0.4).hover(1.5, 0.4);
        assertThat(script.last().preview().pointer().map(Words::say))
                .hasValueSatisfying(said -> assertThat(said).contains("O: the other side"));
        script = laying().stroke(0.3, 0.4, 0.8, 0.4, 0.5, 0.6);
        assertThat(script.last().preview().pointer().map(Words::say)).contains("Let go to close it");
    }

    @Test
    void aLineDrawnOnFromACornerSaysThatItClosesOnlyAtTheStart() {
        Script script = square().stroke(0.3, 0.8, 0.1, 0.5, 0.2, 0.3);
        assertThat(script.last().preview().pointer().map(Words::say)).contains("Click or draw on · Enter closes it");
        script.drag(0.3, 0.2);
        assertThat(script.last().preview().pointer().map(Words::say)).contains("Let go to close it");
    }

    @Test
    void hoveringWithNothingHalfMadeShowsNothing() {
        assertThat(laying().hover(0.5, 0.5).last()).isEqualTo(Step.idle());
    }

    @Test
    void anEditGivesItsMarkAFreeIdAndSnappedPlaces() {
        Script script = square().key("enter");
        script.click(0.1, 0.1).click(1 / 3.0, 0.1).click(0.2, 0.3).key("enter");
        assertThat(script.thumbnail().marks()).extracting(Mark::id).containsExactly("m1", "m2");
        Study study = script.study();
        Mark second = script.thumbnail().marks().get(1);
        assertThat(second.outline()).isEqualTo(Edits.snapped(second.outline()));
        assertThat(study.thumbnail("t2").orElseThrow().marks()).isEmpty();
    }

    @Test
    void aHalfMadeOutlineIsDroppedWhenAnotherThumbnailIsShown() {
        Script script = square().show("t2").key("enter");
        assertThat(script.edits()).isEmpty();
        assertThat(script.last().held()).isFalse();
        assertThat(script.show("none").click(0.5, 0.5).last().held()).isFalse();
    }

    @Test
    void undoWhileAnOutlineIsHalfMadeDoesNotTouchIt() {
        Script script = square().key("enter").click(0.1, 0.1).click(0.4, 0.1).undo();
        assertThat(script.click(0.4, 0.4).key("enter").thumbnail().marks()).hasSize(1);
        assertThat(dark(script)).isCloseTo(0.045 / Script.RATIO, EXACT);
    }
}
