package umbercard.desk;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Point;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import javax.swing.JFrame;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.finder.JFileChooserFinder;
import org.assertj.swing.finder.JOptionPaneFinder;
import org.assertj.swing.fixture.JFileChooserFixture;
import org.assertj.swing.fixture.JOptionPaneFixture;
import org.assertj.swing.fixture.JTextComponentFixture;
import umbercard.desk.canvas.FrameOnCard;
import umbercard.desk.canvas.NotanCard;
import umbercard.desk.theme.Theme;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.notan.Fold;
import umbercard.words.Words;

/** A painter's hands at the desk: what they do to it goes through pointer and keyboard alone. */
@SuppressWarnings("deprecation") // the robot knows only the old masks of InputEvent
abstract class AtDesk extends OnDesk {
    private DeskWindow desk;

    @Override
    protected JFrame makeWindow() {
        Theme.install(false);
        desk = Desk.window();
        return desk;
    }

    @Override
    protected Dimension windowSize() {
        return new Dimension(1280, 740);
    }

    final DeskWindow desk() {
        return desk;
    }

    final Study study() {
        return ask(() -> desk.session().study());
    }

    final Thumbnail thumbnail() {
        return ask(() -> desk.session().thumbnail().orElseThrow());
    }

    final void settled() {
        until("work is done and the picture is up to date", desk::isSettled);
    }

    final NotanCard card() {
        return robot().finder().findByName(desk, "notan-card", NotanCard.class);
    }

    /** The pixel of the card at a place in frame units. */
    final Point at(double x, double y) {
        NotanCard card = card();
        return ask(() -> FrameOnCard.pixel(card, x, y));
    }

    /** Clicks places of the frame, given as x, y, x, y and so on. */
    final void clickCorners(double... places) {
        for (int i = 0; i < places.length; i += 2) {
            robot().click(card(), at(places[i], places[i + 1]));
        }
    }

    final void strike(int key) {
        robot().pressAndReleaseKey(key);
        robot().waitForIdle();
    }

    final void strike(int key, int oldMask) {
        robot().pressAndReleaseKey(key, oldMask);
        robot().waitForIdle();
    }

    final void pressOn(Component component, Point place) {
        robot().moveMouse(component, place);
        robot().pressMouse(MouseButton.LEFT_BUTTON);
    }

    final void letGo() {
        robot().releaseMouse(MouseButton.LEFT_BUTTON);
        robot().waitForIdle();
    }

    final void choose(String... path) {
        window().menuItemWithPath(path).click();
    }

    /** Types over what a field holds. */
    static void type(JTextComponentFixture field, String words) {
        field.click();
        field.pressAndReleaseKey(
                org.assertj.swing.core.KeyPressInfo.keyCode(KeyEvent.VK_A).modifiers(InputEvent.CTRL_MASK));
        field.enterText(words);
    }

    /** Answers the question for a file or a folder by typing its whole path. */
    final void give(Path path) {
        JFileChooserFixture chooser =
                JFileChooserFinder.findFileChooser("chooser").using(robot());
        type(chooser.fileNameTextBox(), path.toAbsolutePath().toString());
        chooser.approve();
    }

    /** The sentence or the question that lies over the desk. */
    final JOptionPaneFixture told() {
        return JOptionPaneFinder.findOptionPane().using(robot());
    }

    static String sentence(JOptionPaneFixture told) {
        return told.textBox("sentence").text();
    }

    /** What the ledger says of the dark share. */
    final String darkSaid() {
        Component rule = robot().finder().findByName(desk, "ledger.share");
        return ask(() -> String.valueOf(rule.getAccessibleContext().getAccessibleDescription()));
    }

    /** The dark share of the thumbnail as it is seen while the hand draws. */
    final double darkShare() {
        return ask(() -> Fold.of(
                        desk.session().thumbnail().orElseThrow(),
                        desk.session().study().ratio())
                .darkShare());
    }

    /** What the ledger ought to say of the dark share. */
    final String darkToSay() {
        long dark = Math.round(100 * darkShare());
        return Words.say("ledger.share.figure", Long.toString(dark), Long.toString(100 - dark));
    }

    /** Presses on the card and moves through the places without letting go. */
    final void dragThrough(Point... places) {
        List<Point> all = Arrays.asList(places);
        pressOn(card(), all.get(0));
        for (int i = 1; i < all.size(); i++) {
            moveOn(all.get(i - 1), all.get(i));
        }
        robot().waitForIdle();
    }

    /** Moves as a hand does, which a pointer reports every few pixels. */
    final void moveOn(Point from, Point to) {
        int steps = (int) Math.ceil(from.distance(to) / 8);
        for (int i = 1; i <= steps; i++) {
            robot().moveMouse(
                            card(),
                            new Point(from.x + (to.x - from.x) * i / steps, from.y + (to.y - from.y) * i / steps));
        }
    }
}
