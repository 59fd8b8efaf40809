package umbercard.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Component;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.util.OptionalDouble;
import org.assertj.swing.core.MouseButton;
import org.junit.jupiter.api.Test;
import umbercard.desk.canvas.SeenAs;
import umbercard.model.Reference;

class ReferenceRulesIT extends AtDesk {
    private Reference reference() {
        return study().reference().orElseThrow();
    }

    private SplitCurve curve() {
        return robot().finder().findByName(desk(), "split", SplitCurve.class);
    }

    private String line() {
        return window().label("pointer-line").text();
    }

    private void photographSeen() {
        act(desk().files()::showKilnHill);
        until("Kiln Hill is there", () -> desk().session().study().thumbnails().size() > 1);
        until("the photograph is seen", () -> card().valueCurve().isPresent());
        settled();
    }

    @Test
    void draggingTheSplitSaysWhatGoesDark() {
        photographSeen();
        window().toggleButton("seen-as-two-values").click();
        settled();
        SplitCurve curve = curve();
        Point start = ask(() -> new Point(curve.getWidth() / 3, curve.getHeight() / 2));
        pressOn(curve, start);
        robot().moveMouse(curve, new Point(start.x + 30, start.y));
        letGo();
        settled();
        double split = reference().split().orElseThrow();
        double across = (start.x + 30.0) / ask(curve::getWidth);
        assertThat(split).isCloseTo(10 * across, within(0.4));
        double share = ask(() -> card().valueCurve().orElseThrow().shareBelow(split));
        // The pointer has left the card.
        assertThat(line())
                .startsWith("Split ")
                .contains(Math.round(100 * share) + " % dark.")
                .contains("everything up to");
        picture("split");
        act(curve::requestFocusInWindow);
        until("the curve has the keys", () -> ask(curve::isFocusOwner));
        strike(KeyEvent.VK_RIGHT);
        assertThat(reference().split().orElseThrow()).isCloseTo(split + 0.05, within(1e-9));
        strike(KeyEvent.VK_HOME);
        assertThat(reference().split()).as("follows the thumbnail again").isEqualTo(OptionalDouble.empty());
    }

    @Test
    void theWayToSquintIsKeptInTheStudy() {
        photographSeen();
        window().toggleButton("squint-keeping-edges").click();
        settled();
        assertThat(reference().squint().way()).isEqualTo("keeping-edges");
        window().slider("squint").slideTo(40);
        settled();
        assertThat(reference().squint().way()).isEqualTo("keeping-edges");
        assertThat(reference().squint().sigma()).isCloseTo(0.016, within(1e-9));
        act(() -> desk().session().undo());
        act(() -> desk().session().undo());
        settled();
        window().toggleButton("squint-gaussian").requireSelected();
        assertThat(reference().squint().way()).isEqualTo("gaussian");
    }

    @Test
    void eachWayToSeeIsOneClick() {
        photographSeen();
        for (SeenAs way : SeenAs.values()) {
            window().toggleButton("seen-as-" + way.key()).click();
            settled();
            assertThat(ask(() -> card().seenAs())).isEqualTo(way);
            assertThat(ask(() -> card().split().isPresent())).isEqualTo(way.splits());
        }
        picture("five-values");
    }

    @Test
    void theLineReadsWhatIsUnderThePointer() {
        photographSeen();
        robot().moveMouse(card(), at(0.7, 0.4));
        robot().waitForIdle();
        assertThat(line()).matches("Here the photograph is [a-z -]+, of value \\d\\.\\d, the notan (dark|light)\\.");
        Component disk = robot().finder().findByName(desk(), "sample-disk");
        robot().click(disk, MouseButton.LEFT_BUTTON);
        assertThat(window().button("sample-disk").text()).isEqualTo("over a broad disk");
        assertThat(line()).doesNotContain("Here");
    }

    private void picture(String name) {
        shots("reference-rules-" + name);
    }
}
