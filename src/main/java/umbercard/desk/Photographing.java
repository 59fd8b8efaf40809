package umbercard.desk;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.KeyStroke;
import umbercard.desk.photographed.RubbedPanel;
import umbercard.desk.photographed.TrayPanel;
import umbercard.desk.session.Session;
import umbercard.door.Edit;
import umbercard.model.Study;
import umbercard.model.edit.Sticks;
import umbercard.rubbed.Learned;
import umbercard.rubbed.RubbedNotes;
import umbercard.words.Message;
import umbercard.words.Trouble;
import umbercard.words.Words;

/** Asks for a photograph of a tray or of a rubbed card, has it marked, and takes into the study what it says. */
final class Photographing {
    private static final Dimension LEAST = new Dimension(760, 560);

    private final Session session;
    private final Photographs photographs;
    private final Telling telling;
    private final Choosing choosing;

    Photographing(Session session, Photographs photographs, Telling telling, Choosing choosing) {
        this.session = session;
        this.photographs = photographs;
        this.telling = telling;
        this.choosing = choosing;
    }

    /** Takes a box from a photograph of its open tray. */
    void tray() {
        choosing.photograph()
                .ifPresent(file -> photographs.read(file, picture -> {
                    String photo = name(file);
                    Shown shown = new Shown("photographed.tray.title");
                    TrayPanel panel = new TrayPanel(
                            photo,
                            picture,
                            photo.replaceFirst("(?<=.)\\.[^.]*$", ""),
                            box -> {
                                shown.close();
                                session.edit(new Edit(Message.of("photographed.tray.edit"), Sticks.take(box)));
                            },
                            shown::close);
                    shown.show(panel, panel.first());
                }));
    }

    /** Puts the colors of the study's sticks right from a photograph of a color card they were rubbed on. */
    void rubbed() {
        Study study = session.study();
        if (study.notes().isEmpty()) {
            telling.say(Words.say("photographed.rubbed.no-notes"));
            return;
        }
        try {
            List<RubbedNotes> cards = RubbedNotes.cardsOf(study);
            choosing.photograph()
                    .ifPresent(file -> photographs.read(file, picture -> {
                        Shown shown = new Shown("photographed.rubbed.title");
                        RubbedPanel panel = new RubbedPanel(
                                name(file),
                                picture,
                                cards,
                                sticks -> {
                                    shown.close();
                                    session.edit(new Edit(
                                            Message.of("photographed.rubbed.edit", sticks.size()), putRight(sticks)));
                                },
                                shown::close);
                        shown.show(panel, panel.first());
                    }));
        } catch (Trouble tooSmall) {
            telling.failed(tooSmall);
        }
    }

    private static String name(Path file) {
        return String.valueOf(file.getFileName());
    }

    private static UnaryOperator<Study> putRight(List<Learned.OfStick> sticks) {
        return sticks.stream()
                .map(stick -> Sticks.recolor(stick.stick().id(), stick.color()))
                .map(change -> (Function<Study, Study>) change)
                .reduce(Function.identity(), Function::andThen)::apply;
    }

    /** A window over the desk that is open until something is taken or left. */
    private final class Shown {
        private final JDialog dialog;

        Shown(String title) {
            dialog = new JDialog(choosing.window(), Words.say(title), true);
            dialog.setName("photographed");
            dialog.setDefaultCloseOperation(JDialog.DISPOSE_ON_CLOSE);
        }

        void show(JComponent panel, JComponent first) {
            dialog.setContentPane((Container) panel);
            dialog.getRootPane()
                    .registerKeyboardAction(
                            event -> close(), KeyStroke.getKeyStroke("ESCAPE"), JComponent.WHEN_IN_FOCUSED_WINDOW);
            dialog.addWindowListener(new WindowAdapter() {
                @Override
                public void windowOpened(WindowEvent event) {
                    first.requestFocusInWindow();
                }
            });
            dialog.pack();
            dialog.setMinimumSize(UIScale.scale(LEAST));
            dialog.setLocationRelativeTo(choosing.window());
            dialog.setVisible(true);
        }

        void close() {
            dialog.dispose();
        }
    }
}
