package umbercard.desk;

import java.awt.Toolkit;
import java.awt.event.KeyEvent;
import java.util.Optional;
import javax.swing.ButtonGroup;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.JRadioButtonMenuItem;
import javax.swing.KeyStroke;
import umbercard.color.ValueScale;
import umbercard.desk.notes.ColorCard;
import umbercard.desk.session.Session;
import umbercard.desk.theme.Theme;
import umbercard.store.Preferred;
import umbercard.words.Message;
import umbercard.words.Words;

/** The menu: studies, edits by name, thumbnails, and how the desk looks. */
final class DeskMenu extends JMenuBar {
    private static final int SHORTCUT = shortcut();
    private static final int SHIFT = java.awt.event.InputEvent.SHIFT_DOWN_MASK;

    /** What the menu starts. */
    record Actions(
            StudyFiles files,
            CardWriting cards,
            FirstPassing firstPass,
            Remedying remedying,
            Runnable frame,
            Runnable paste,
            Runnable chooseBox,
            Runnable takeKilnYard,
            Runnable saveBox,
            Photographing photographing,
            ColorCard colorCard,
            Runnable settle) {}

    private final transient Session session;
    private final transient Runnable settle;
    private final JMenuItem undo;
    private final JMenuItem redo;

    DeskMenu(Session session, Actions actions) {
        this.session = session;
        this.settle = actions.settle();
        StudyFiles files = actions.files();
        add(menu(
                "study",
                KeyEvent.VK_S,
                item("begin", KeyEvent.VK_N, 0, files::begin),
                item("open", KeyEvent.VK_O, 0, files::open),
                item("kiln-hill", 0, 0, files::openKilnHill),
                item("save", KeyEvent.VK_S, 0, () -> files.save(() -> {})),
                item("save-as", KeyEvent.VK_S, SHIFT, () -> files.saveAs(() -> {})),
                item("cards", KeyEvent.VK_P, 0, actions.cards()::ask),
                item("close", KeyEvent.VK_Q, 0, files::close)));
        undo = item("undo", KeyEvent.VK_Z, 0, session::undo);
        redo = item("redo", KeyEvent.VK_Z, SHIFT, session::redo);
        add(menu("edit", KeyEvent.VK_E, undo, redo, item("paste", KeyEvent.VK_V, 0, actions.paste())));
        add(menu(
                "plan",
                KeyEvent.VK_P,
                item("frame", KeyEvent.VK_R, 0, actions.frame()),
                item("first-pass", KeyEvent.VK_F, SHIFT, actions.firstPass()::ask),
                item("what-if", KeyEvent.VK_I, 0, actions.remedying()::ask),
                item("box", KeyEvent.VK_B, SHIFT, actions.chooseBox()),
                item("kiln-yard", 0, 0, actions.takeKilnYard()),
                item("box-photograph", 0, 0, actions.photographing()::tray),
                item("rubbed-card", 0, 0, actions.photographing()::rubbed),
                item("save-box", 0, 0, actions.saveBox())));
        add(notes(actions.colorCard()));
        add(view());
        session.listen(change -> nameEdits());
        nameEdits();
    }

    private JMenu notes(ColorCard card) {
        JMenu menu = menu("notes", KeyEvent.VK_C);
        card.offer(menu.getPopupMenu(), settle);
        return menu;
    }

    private JMenu view() {
        JMenu view = menu("view", KeyEvent.VK_V);
        ButtonGroup themes = new ButtonGroup();
        choice(view, themes, "theme-light", !Theme.isDark(), () -> Theme.install(false));
        choice(view, themes, "theme-dark", Theme.isDark(), () -> Theme.install(true));
        view.addSeparator();
        ButtonGroup scales = new ButtonGroup();
        for (ValueScale scale : ValueScale.values()) {
            choice(view, scales, "values." + scale.key(), scale == Words.values(), () -> number(scale));
        }
        return view;
    }

    private static void choice(JMenu menu, ButtonGroup group, String name, boolean chosen, Runnable action) {
        JRadioButtonMenuItem item = new JRadioButtonMenuItem(Words.say("desk.menu." + name), chosen);
        item.setName(name);
        item.addActionListener(event -> action.run());
        group.add(item);
        menu.add(item);
    }

    private void number(ValueScale scale) {
        Words.useValues(scale);
        Preferred.keepValues(scale);
        session.sayAnew();
    }

    private static int shortcut() {
        return Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx();
    }

    private static JMenu menu(String name, int mnemonic, JMenuItem... items) {
        JMenu menu = new JMenu(Words.say("desk.menu." + name));
        menu.setName("menu-" + name);
        menu.setMnemonic(mnemonic);
        for (JMenuItem item : items) {
            menu.add(item);
        }
        return menu;
    }

    /** An item whose action finds what is being typed already kept. */
    private JMenuItem item(String name, int key, int with, Runnable action) {
        JMenuItem item = new JMenuItem(Words.say("desk.menu." + name));
        item.setName(name);
        if (key != 0) {
            item.setAccelerator(KeyStroke.getKeyStroke(key, SHORTCUT | with));
        }
        item.addActionListener(event -> {
            settle.run();
            action.run();
        });
        return item;
    }

    private void nameEdits() {
        name(undo, "undo", session.undoable());
        name(redo, "redo", session.redoable());
    }

    private static void name(JMenuItem item, String key, Optional<Message> edit) {
        item.setEnabled(edit.isPresent());
        item.setText(edit.map(name -> Words.say("desk.menu." + key + "-named", name))
                .orElseGet(() -> Words.say("desk.menu." + key)));
    }
}
