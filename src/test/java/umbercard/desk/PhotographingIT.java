package umbercard.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.DialogFixture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import umbercard.color.Ciede2000;
import umbercard.model.Box;
import umbercard.model.Stick;
import umbercard.spectra.Camera;
import umbercard.spectra.Lights;
import umbercard.spectra.Observer;
import umbercard.spectra.Pinhole;
import umbercard.spectra.TrayScene;
import umbercard.spectra.Trays;

/** From the menu to a box in the study, with the pointer alone. */
class PhotographingIT extends AtDesk {
    private static final TrayScene SCENE = Trays.tray(Trays.UNEVEN);
    private static final Pinhole VIEW = Trays.view(SCENE);

    @TempDir
    private static Path folder;

    private Component named(DialogFixture dialog, String name) {
        return robot().finder().findByName(dialog.target(), name);
    }

    /** The middle of a ring, in pixels of what holds it. */
    private Point middle(Component ring) {
        return ask(() -> new Point(ring.getX() + ring.getWidth() / 2, ring.getY() + ring.getHeight() / 2));
    }

    @Test
    void aTrayIsMarkedAndItsBoxTakenAndGivenBack() throws IOException {
        Path photo = Files.write(folder.resolve("my tray.jpg"), SCENE.shoot(Camera.fixed(Lights.D50, 0.85, 8), VIEW));
        act(() -> desk().session().open(KilnHill.study(), Optional.empty()));
        Optional<Box> before = study().box();
        choose("Plan", "A box from a photograph…");
        give(photo);
        DialogFixture dialog = WindowFinder.findDialog("photographed").using(robot());
        Component photograph = named(dialog, "photographed.photograph");
        Point upperLeft = middle(named(dialog, "photographed.corner.1"));
        Point lowerRight = middle(named(dialog, "photographed.corner.3"));
        List<umbercard.geometry.Point> corners = VIEW.corners(SCENE.width(), SCENE.height());
        for (int i = 0; i < 4; i++) {
            Component ring = named(dialog, "photographed.corner." + (i + 1));
            Point from = middle(ring);
            Point to = onScreen(corners.get(i), upperLeft, lowerRight);
            int half = ask(ring::getWidth) / 2;
            drag(
                    ring,
                    MouseButton.LEFT_BUTTON,
                    List.of(new Point(half, half), new Point(half + to.x - from.x, half + to.y - from.y)));
        }
        SCENE.whites(VIEW).forEach(white -> robot().click(photograph, onScreen(white, upperLeft, lowerRight)));
        until(
                "it is looked into",
                () -> dialog.textBox("photographed.told").text().startsWith("33 sticks"));
        dialog.button("photographed.take").click();
        assertThat(study().box().orElseThrow().name()).isEqualTo("my tray");
        List<Stick> sticks = study().box().orElseThrow().sticks();
        double[] errors = sticks.stream()
                .mapToDouble(stick -> {
                    Stick.Slot slot = stick.slot().orElseThrow();
                    int cell = SCENE.columns() * (slot.row() - 1) + slot.column() - 1;
                    return Ciede2000.difference(
                            stick.color(), Observer.trueColor(SCENE.sticks().get(cell)));
                })
                .sorted()
                .toArray();
        assertThat(Trays.quantile(errors, 0.5)).isLessThan(1.2);
        act(() -> desk().session().undo());
        assertThat(study().box()).isEqualTo(before);
    }

    /** The rings stand at 15 % of the picture from its sides before they are moved. */
    private static Point onScreen(umbercard.geometry.Point place, Point upperLeft, Point lowerRight) {
        double x = (place.x() / VIEW.width() - 0.15) / 0.7;
        double y = (place.y() / VIEW.height() - 0.15) / 0.7;
        return new Point((int) Math.round(upperLeft.x + x * (lowerRight.x - upperLeft.x)), (int)
                Math.round(upperLeft.y + y * (lowerRight.y - upperLeft.y)));
    }

    @Test
    void leavingChangesNothingAndAStudyWithoutNotesIsToldSo() throws IOException {
        Path photo = Files.write(folder.resolve("again.jpg"), SCENE.shoot(Camera.fixed(Lights.D50, 0.85, 8), VIEW));
        act(() -> desk().session().open(KilnHill.study(), Optional.empty()));
        choose("Plan", "A box from a photograph…");
        give(photo);
        DialogFixture dialog = WindowFinder.findDialog("photographed").using(robot());
        until("it has the keyboard", () -> dialog.target().isFocused());
        strike(KeyEvent.VK_ESCAPE);
        dialog.requireNotVisible();
        assertThat(study()).isEqualTo(KilnHill.study());
        act(() -> desk().session().open(KilnHill.study().withNotes(List.of()), Optional.empty()));
        choose("Plan", "True colors from a rubbed card…");
        assertThat(sentence(told())).startsWith("There is no color note yet.");
        told().okButton().click();
    }
}
