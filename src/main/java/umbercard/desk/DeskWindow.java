package umbercard.desk;

import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.datatransfer.Transferable;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JFrame;
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
    private final ConceptField concept;
    private final StackPanel stack;
    private final NotanCard notanCard;
    private final ColorCard colorCard;
    private final CardColumn column;
    private final transient StudyFiles files;
    private final transient Background background;

    DeskWindow(Session session, Plugins<Instrument> instruments, Plugins<Reading> readings) {
        this.session = session;
        WorkStrip work = new WorkStrip();
        background = new Background(work);
        notanCard = new NotanCard(session, instruments);
        Telling telling = new Telling(this);
        Choosing choosing = new Choosing(this);
        Photographs photographs = new Photographs(session, background, telling);
        files = new StudyFiles(session, background, telling, choosing, photographs);
        BoxChoosing boxes = new BoxChoosing(session, background, telling, choosing);
        concept = new ConceptField(session);
        stack = new StackPanel(session, readings);
        colorCard = new ColorCard(session, boxes::askWhich);
        setName("desk");
        setDefaultCloseOperation(DO_NOTHING_ON_CLOSE);
        addWindowListener(new WindowAdapter() {
            @Override
            public void windowOpened(WindowEvent event) {
                notanCard.requestFocusInWindow();
            }

            @Override
            public void windowClosing(WindowEvent event) {
                settle();
                files.close();
            }
        });
        InstrumentBar bar = new InstrumentBar(
                notanCard,
                instruments,
                name -> EventQueue.invokeLater(() -> telling.say(Words.say("desk.switched-off", name))));
        column = new CardColumn(session, notanCard, bar, work);
        Remedying remedying = new Remedying(session, readings, telling, this, colorCard);
        setContentPane(content(readings, remedying));
        Pasting pasting = pasting(Pasting::systemClipboard);
        getRootPane().setTransferHandler(pasting.drops());
        setJMenuBar(new DeskMenu(
                session,
                new DeskMenu.Actions(
                        files,
                        new CardWriting(session, background, telling, choosing, readings),
                        new FirstPassing(session, background, telling, this, colorCard),
                        remedying,
                        () -> column.frame(true),
                        pasting::paste,
                        boxes::ask,
                        boxes::takeKilnYard,
                        boxes::save,
                        new Photographing(session, photographs, telling, choosing),
                        colorCard,
                        this::settle)));
        colorCard.whenZones(notanCard::showZones);
        bar.bindKeys(getRootPane());
        column.bindKeys(getRootPane());
        session.listen(change -> {
            if (change == Change.FILE || change == Change.STUDY) {
                entitle();
            }
        });
        entitle();
        setMinimumSize(new Dimension(1180, 620));
        setSize(1280, 740);
        setLocationByPlatform(true);
    }

    private JPanel content(Plugins<Reading> readings, Remedying remedying) {
        JPanel desk = new JPanel(
                new MigLayout("insets 10 14 12 14, fill, wrap 1", "[grow, fill]", "[]10[grow, fill]12[116!, fill]"));
        desk.setName("desk-content");
        desk.add(concept, "wmin 0");
        JPanel middle = clear("fill", "[132!, fill]16[grow, fill]20[432!, fill]", "[grow, fill]");
        middle.add(stack);
        middle.add(column);
        middle.add(colorCard);
        desk.add(middle);
        desk.add(new LedgerPanel(session, readings, notanCard::look, remedying::ask), "wmin 0");
        return desk;
    }

    private static JPanel clear(String layout, String columns, String rows) {
        JPanel panel = new JPanel(new MigLayout("insets 0, " + layout, columns, rows));
        panel.setOpaque(false);
        return panel;
    }

    /** Keeps what is being typed anywhere on the desk. */
    private void settle() {
        concept.keep();
        colorCard.settle();
        stack.settle();
    }

    private void entitle() {
        String name = session.file()
                .map(Path::getFileName)
                .map(Path::toString)
                .orElseGet(() -> Words.say("desk.untitled", session.study().title()));
        setTitle(Words.say("desk.title", name, session.isChanged() ? 2 : 0));
    }

    /** What is on the desk. */
    public Session session() {
        return session;
    }

    /** The color card. */
    ColorCard colorCard() {
        return colorCard;
    }

    /** Takes what a clipboard holds. */
    Pasting pasting(Supplier<Optional<Transferable>> clipboard) {
        return new Pasting(background, new Telling(this), files, clipboard);
    }

    /** Opens, saves and writes. */
    StudyFiles files() {
        return files;
    }

    /** Whether no work is under way and the picture shown is up to date: for tests and screenshots. */
    public boolean isSettled() {
        return background.isIdle() && column.isSettled();
    }
}
