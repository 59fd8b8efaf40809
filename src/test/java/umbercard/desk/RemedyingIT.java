package umbercard.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.EventQueue;
import java.util.List;
import java.util.Optional;
import javax.swing.JFrame;
import javax.swing.JLabel;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.DialogFixture;
import org.junit.jupiter.api.Test;
import umbercard.desk.session.Session;
import umbercard.model.Level;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.readings.Evaluation;
import umbercard.readings.Plans;

class RemedyingIT extends OnDesk {
    private Session session;
    private Remedying remedying;

    @Override
    protected JFrame makeWindow() {
        Thumbnail even = Plans.dark(0.5).withLandEdge(Optional.of(Level.at(0.5)));
        session = new Session(Plans.study().withThumbnails(List.of(even)), Optional.empty());
        JFrame window = new JFrame("what if");
        JLabel beside = new JLabel("beside");
        window.add(beside);
        remedying = new Remedying(session, Evaluation.find(), new Telling(window), window, beside);
        return window;
    }

    private DialogFixture asked() {
        EventQueue.invokeLater(remedying::ask);
        DialogFixture dialog = WindowFinder.findDialog("what-if").using(robot());
        until(
                "remedies are found",
                () -> dialog.list("remedies").target().getModel().getSize() == 2);
        return dialog;
    }

    private double heightSeen() {
        return 1 - session.thumbnail().orElseThrow().landEdge().orElseThrow().y();
    }

    @Test
    void theSelectedRemedyIsSeenOnTheCardAndLeavingItChangesNothing() {
        Study before = ask(session::study);
        DialogFixture dialog = asked();
        until("the first one is shown", () -> heightSeen() > 0.6);
        assertThat(dialog.textBox("becomes").text()).contains("Horizon height: look again becomes holds.");
        dialog.list("remedies").selectItem(1);
        until("the second one is shown", () -> heightSeen() < 0.4);
        assertThat(ask(session::study)).isEqualTo(before);
        dialog.button("no").click();
        until("the card is as it was", () -> session.seen().equals(before));
        assertThat(ask(session::undoable)).isEmpty();
    }

    @Test
    void itIsTriedOnACopyInOneEdit() {
        Study before = ask(session::study);
        DialogFixture dialog = asked();
        dialog.list("remedies").selectItem(1);
        dialog.button("yes").click();
        until("a copy is there", () -> session.study().thumbnails().size() == 2);
        assertThat(ask(() -> session.thumbnail().orElseThrow().name())).isEqualTo("first, lowered");
        assertThat(ask(() -> session.study().thumbnails().get(0)))
                .isEqualTo(before.thumbnails().get(0));
        act(session::undo);
        assertThat(ask(session::study)).isEqualTo(before);
    }
}
