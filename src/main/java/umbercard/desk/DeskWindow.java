package umbercard.desk;

import java.awt.Dimension;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import umbercard.desk.canvas.NotanCard;
import umbercard.desk.ledger.LedgerPanel;
import umbercard.desk.notes.ColorCard;
import umbercard.desk.session.Session;
import umbercard.desk.session.Session.Change;
import umbercard.desk.stack.StackPanel;
import umbercard.desk.work.Background;
import umbercard.door.Instrument;
import umbercard.door.Reading;
import umbercard.kernel.Plugins;
import umbercard.words.Words;

/** The desk: the notan card and the color card side by side, the stack at the left, the ledger below, the concept on top. */
public final class DeskWindow extends JFrame {
    private final transient Session session;
    private final NotanCard notanCard;
    private final transient StudyFiles files;
    private final transient Background background;

    DeskWindow(Session session, Plugins<Instrument> instruments, Plugins<Reading> readings) {
        this.session = session;
        WorkStrip work = new WorkStrip();
        background = new Background(work);
        notanCard = new NotanCard(session);
        Telling telling = new Telling(this);
        Choosing choosing = new Choosing(this);
        files = new StudyFiles(session, background, telling, choosing, new Photographs(session, background, telling));
        BoxChoosing boxes = new BoxChoosing(session, background, telling, choosing);
        setName("desk");
        setDefaultCloseOperation(DO_NOTHING_ON_CLOSE);
        addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosing(WindowEvent event) {
                files.close();
            }
        });
        InstrumentBar bar = new InstrumentBar(notanCard, instruments);
        setContentPane(content(bar, work, boxes, readings));
        setJMenuBar(new DeskMenu(
                session,
                new DeskMenu.Actions(
                        files,
                        new CardWriting(session, background, telling, choosing, readings),
                        new FirstPassing(session, background, telling),
                        boxes::ask)));
        bar.bindKeys(getRootPane());
        session.listen(change -> {
            if (change == Change.FILE || change == Change.STUDY) {
                entitle();
            }
        });
        entitle();
        setMinimumSize(new Dimension(1020, 620));
        setSize(1280, 740);
        setLocationByPlatform(true);
    }

    private JPanel content(InstrumentBar instruments, WorkStrip work, BoxChoosing boxes, Plugins<Reading> readings) {
        JPanel desk = new JPanel(new MigLayout(
                "insets 10 14 14 14, fill, hidemode 3",
                "[132!]16[grow, fill]20[392:432:432, fill]",
                "[]10[grow, fill]8[]4[]12[118!, fill]"));
        desk.setName("desk-content");
        JPanel top = new JPanel(new MigLayout("insets 0, fillx", "[grow, fill]24[]", "[]"));
        top.setOpaque(false);
        top.add(new ConceptField(session), "growx, wmin 200");
        top.add(facts(), "aligny top, gaptop 8");
        desk.add(top, "span, growx, wrap");
        desk.add(new StackPanel(session), "spany 3, growy");
        desk.add(notanCard, "grow");
        desk.add(new ColorCard(session, boxes::ask), "spany 3, growy, wrap");
        desk.add(instruments, "skip 1, split 2, growx 0");
        desk.add(work, "gapleft push, wrap");
        desk.add(new ReferenceRules(session, notanCard), "skip 1, growx 0, wrap");
        desk.add(new LedgerPanel(session, readings, notanCard::look), "span, growx");
        return desk;
    }

    private JLabel facts() {
        JLabel facts = new JLabel();
        facts.setName("facts");
        Runnable fill = () -> facts.setText(Words.say(
                "desk.facts",
                session.study().title(),
                session.study().surface().width(),
                session.study().surface().height(),
                Words.say("trade.unit." + session.study().surface().unit().key())));
        session.listen(change -> {
            if (change == Change.STUDY) {
                fill.run();
            }
        });
        fill.run();
        return facts;
    }

    private void entitle() {
        String name = session.file()
                .map(Path::getFileName)
                .map(Path::toString)
                .orElseGet(() -> Words.say("desk.untitled", session.study().title()));
        setTitle(Words.say("desk.title", name, session.isChanged() ? 1 : 0));
    }

    /** What is on the desk. */
    public Session session() {
        return session;
    }

    /** Opens, saves and writes. */
    StudyFiles files() {
        return files;
    }

    /** Whether no work is under way and the picture shown is up to date: for tests and screenshots. */
    public boolean isSettled() {
        return background.isIdle() && notanCard.isSettled();
    }
}
