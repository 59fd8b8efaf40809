package umbercard.desk.box;

import java.awt.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JFrame;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import umbercard.desk.OnDesk;
import umbercard.desk.session.Session;
import umbercard.desk.theme.PaperCard;
import umbercard.desk.theme.Theme;
import umbercard.model.Stick;

/** The box of a study, open on a card of its own. */
abstract class OnOpenBox extends OnDesk {
    /** What was put on the card: the stick's id, and the zone's where there is one; and that the box was closed. */
    final List<String> onCard = new ArrayList<>();

    private Session session;

    abstract Session makeSession();

    @Override
    protected Dimension windowSize() {
        return new Dimension(464, 532);
    }

    @Override
    protected JFrame makeWindow() {
        Theme.install(false);
        session = makeSession();
        BoxPanel box = new BoxPanel(session, this::put, () -> onCard.add("closed"), () -> {});
        session.listen(change -> box.refresh());
        box.refresh();
        JFrame frame = new JFrame("box");
        JPanel desk = new JPanel(new MigLayout("insets 16", "[grow,fill]", "[grow,fill]"));
        PaperCard paper = new PaperCard(new MigLayout("insets 0", "[grow,fill]", "[grow,fill]"));
        paper.add(box);
        desk.add(paper);
        frame.setContentPane(desk);
        return frame;
    }

    private void put(Stick stick, Optional<String> zone) {
        onCard.add(stick.id() + zone.map(id -> " in " + id).orElse(""));
    }

    final Session session() {
        return session;
    }

    final List<String> setOut() {
        return ask(() -> session.study().setOut().stream().map(Stick::id).toList());
    }

    final void choose(String toggle) {
        window().toggleButton("box." + toggle).click();
    }
}
