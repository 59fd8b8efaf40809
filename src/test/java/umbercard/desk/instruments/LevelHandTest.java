package umbercard.desk.instruments;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static umbercard.door.Gesture.With.ALT;
import static umbercard.door.Gesture.With.SECOND_BUTTON;
import static umbercard.door.Gesture.With.SHIFT;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import umbercard.door.Place;
import umbercard.geometry.Point;
import umbercard.model.Level;
import umbercard.model.Study;
import umbercard.model.edit.Edits;
import umbercard.words.Message;
import umbercard.words.Words;

class LevelHandTest {
    private static Study withHorizon(Level level) {
        return Edits.thumbnail(Script.THUMBNAIL, t -> t.withHorizon(Optional.of(level)))
                .apply(Script.card());
    }

    private static Optional<Level> horizon(Script script) {
        return script.thumbnail().horizon();
    }

    @Test
    void hoveringShowsWhereTheLineWouldBeAndChangesNothing() {
        Script script = Script.with(new Horizon()).hover(0.4, 0.3);
        assertThat(script.last().preview().places())
                .containsExactly(new Place.Between(new Point(0, 0.3), new Point(Script.RATIO, 0.3)));
        assertThat(script.last().preview().asIf()).isEmpty();
        assertThat(script.last().held()).isFalse();
        assertThat(script.edits()).isEmpty();
    }

    @Test
    void theLineFollowsTheHandAndStaysWhereItIsLetGo() {
        Script script = Script.with(new Horizon()).press(0.4, 0.3).drag(0.5, 0.35);
        assertThat(script.asIf().horizon()).contains(Level.at(0.35));
        assertThat(script.last().held()).isTrue();
        assertThat(horizon(script)).isEmpty();
        script.release();
        assertThat(horizon(script)).contains(Level.at(0.35));
        assertThat(script.last().held()).isFalse();
    }

    @Test
    void aClickIsEnough() {
        assertThat(horizon(Script.with(new Horizon()).click(1.2, 0.62))).contains(Level.at(0.62));
    }

    @Test
    void eachInstrumentDrawsItsOwnLine() {
        Script script = Script.with(new LandEdge()).click(1.2, 0.62);
        assertThat(script.thumbnail().landEdge()).contains(Level.at(0.62));
        assertThat(horizon(script)).isEmpty();
        assertThat(script.undoable().map(Words::say)).contains("land edge");
    }

    @Test
    void aLineTakenHoldOfNearItKeepsItsDistanceFromThePointer() {
        Script script = Script.with(new Horizon(), withHorizon(Level.at(0.4)))
                .press(0.3, 0.4 + 5 * Script.PIXEL)
                .release();
        assertThat(script.edits()).isEmpty();
        script.press(0.3, 0.4 + 5 * Script.PIXEL)
                .drag(0.3, 0.5 + 5 * Script.PIXEL)
                .release();
        assertThat(horizon(script)).contains(Level.at(0.5));
    }

    @Test
    void aTiltedLineTakenHoldOfKeepsItsTilt() {
        Level tilted = new Level(0.4, 10);
        double right = tilted.yAt(1.2, Script.RATIO);
        Script script = Script.with(new Horizon(), withHorizon(tilted))
                .press(1.2, right)
                .drag(1.2, right + 0.1)
                .release();
        assertThat(horizon(script).orElseThrow().y()).isCloseTo(0.5, within(1e-7));
        assertThat(horizon(script).orElseThrow().tilt()).isEqualTo(10);
    }

    @Test
    void theSecondButtonAndAltTurnTheLineAboutTheMiddleUnderThePointer() {
        for (var held : List.of(SECOND_BUTTON, ALT)) {
            for (double x : new double[] {0.25, 1.25}) {
                Level turned = horizon(Script.with(new Horizon(), withHorizon(Level.at(0.4)))
                                .holding(held)
                                .press(x, 0.4)
                                .drag(x, 0.3)
                                .release())
                        .orElseThrow();
                assertThat(turned.y()).isEqualTo(0.4);
                assertThat(turned.yAt(x, Script.RATIO)).isCloseTo(0.3, within(1e-6));
            }
        }
    }

    @Test
    void turningToTheRightAndUpIsCounterClockwise() {
        Level turned = horizon(Script.with(new Horizon(), withHorizon(Level.at(0.4)))
                        .holding(ALT)
                        .press(1.25, 0.4)
                        .drag(1.25, 0.35)
                        .release())
                .orElseThrow();
        // tan = 0.05 up over 0.5 to the right of the middle
        assertThat(turned.tilt()).isCloseTo(5.7105931, within(1e-6));
    }

    @Test
    void nearTheMiddleAndNearlyLevelTheHandIsTakenAsMeant() {
        Script script =
                Script.with(new Horizon(), withHorizon(new Level(0.4, 3))).holding(ALT);
        assertThat(horizon(script.press(0.752, 0.4).drag(0.754, 0.2).release())).contains(new Level(0.4, 3));
        assertThat(horizon(script.press(1.25, 0.4).drag(1.25, 0.401).release())).contains(Level.at(0.4));
    }

    @Test
    void theLineNeverLeavesTheFrameNorGetsSteep() {
        assertThat(horizon(Script.with(new Horizon()).click(0.3, 1.7))).contains(Level.at(1));
        assertThat(horizon(Script.with(new Horizon()).click(0.3, -0.7))).contains(Level.at(0));
        Script steep = Script.with(new Horizon(), withHorizon(Level.at(0.4)))
                .holding(ALT)
                .press(1.2, 0.4)
                .drag(0.8, -3)
                .release();
        assertThat(horizon(steep)).contains(new Level(0.4, 45));
    }

    @Test
    void escapeLeavesTheLineAsItWas() {
        Script script = Script.with(new Horizon(), withHorizon(Level.at(0.4)))
                .press(0.3, 0.4)
                .drag(0.3, 0.6)
                .escape();
        assertThat(script.last().held()).isFalse();
        assertThat(script.last().preview().asIf()).isEmpty();
        script.drag(0.3, 0.7).release();
        assertThat(horizon(script)).contains(Level.at(0.4));
        assertThat(script.edits()).isEmpty();
    }

    @Test
    void deleteAndBackspaceTakeTheLineAway() {
        for (String key : List.of("delete", "backspace")) {
            Script script =
                    Script.with(new Horizon(), withHorizon(Level.at(0.4))).key(key);
            assertThat(horizon(script)).isEmpty();
            assertThat(script.undoable().map(Words::say)).contains("take the horizon away");
            assertThat(script.key(key).edits()).hasSize(1);
        }
    }

    @Test
    void arrowKeysNudgeByAPixelOrTenInOneStepOfUndo() {
        Script script =
                Script.with(new Horizon(), withHorizon(Level.at(0.4))).key("up").key("up");
        assertThat(horizon(script).orElseThrow().y()).isCloseTo(0.398, within(1e-9));
        script.holding(SHIFT).key("down");
        assertThat(horizon(script).orElseThrow().y()).isCloseTo(0.408, within(1e-9));
        assertThat(horizon(script.undo())).contains(Level.at(0.4));
        assertThat(script.undoable()).isEmpty();
    }

    @Test
    void leftAndRightTurnTheLine() {
        Script script = Script.with(new Horizon(), withHorizon(Level.at(0.4))).key("left");
        assertThat(horizon(script)).contains(new Level(0.4, 0.1));
        assertThat(horizon(script.holding(SHIFT).key("right"))).contains(new Level(0.4, -0.9));
    }

    @Test
    void enterDrawsTheLineWhereThePointerIsUnlessThereIsOne() {
        Script script = Script.with(new Horizon()).hover(0.2, 0.7).key("enter");
        assertThat(horizon(script)).contains(Level.at(0.7));
        assertThat(horizon(script.hover(0.2, 0.3).key("enter"))).contains(Level.at(0.7));
    }

    @Test
    void otherKeysAndKeysWhileTheLineIsHeldDoNothing() {
        Script script = Script.with(new Horizon(), withHorizon(Level.at(0.4)));
        assertThat(script.key("q").last().held()).isFalse();
        script.press(0.3, 0.4).drag(0.3, 0.6).key("delete");
        assertThat(script.edits()).isEmpty();
        assertThat(script.last().held()).isTrue();
    }

    @Test
    void aLineInTheHandIsDroppedWhenAnotherThumbnailIsShown() {
        Script script = Script.with(new Horizon()).press(0.3, 0.4).show("t2").release();
        assertThat(script.edits()).isEmpty();
        assertThat(script.show("none").click(0.3, 0.3).edits()).isEmpty();
    }

    @Test
    void everyHintHasWords() {
        Script script = Script.with(new Horizon()).hover(0.1, 0.1);
        assertThat(said(script)).isEqualTo("Press to draw the line here");
        assertThat(said(script.click(0.1, 0.4).hover(0.1, 0.4))).isEqualTo("Drag to move it · second button tilts it");
        assertThat(said(script.press(0.1, 0.4))).isEqualTo("Let go to leave it here");
        assertThat(said(script.holding(ALT).press(0.1, 0.4))).isEqualTo("Let go to keep this tilt");
    }

    private static String said(Script script) {
        Message hint = script.last().preview().pointer().orElseThrow();
        return Words.say(hint);
    }
}
