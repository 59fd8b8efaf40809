package umbercard.desk;

import java.awt.Component;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import umbercard.words.Words;

/** A small window that asks for a few things: a form, a remark line, and two words to go on or to leave it. */
final class Asking {
    private final JDialog dialog;
    private final JLabel remark = new JLabel();
    private boolean confirmed;

    /** Its title, and the words on its two buttons, are said by {@code key}, {@code key.yes} and {@code desk.cancel}. */
    Asking(JFrame window, String key, JPanel form, Component first) {
        dialog = new JDialog(window, Words.say(key), true);
        dialog.setName(key.substring(key.indexOf('.') + 1));
        JButton yes = new JButton(Words.say(key + ".yes"));
        yes.setName("yes");
        yes.addActionListener(event -> {
            confirmed = true;
            dialog.setVisible(false);
        });
        JButton no = new JButton(Words.say("desk.cancel"));
        no.setName("no");
        no.addActionListener(event -> dialog.setVisible(false));
        remark.setName("remark");
        remark.setVisible(false);
        JPanel all = new JPanel(new MigLayout("insets 20 24 16 24, wrap 1, hidemode 3", "[grow, fill]", "[]10[]12[]"));
        all.add(form);
        all.add(remark);
        all.add(no, "split 2, gapleft push, growx 0, sizegroup answers");
        all.add(yes, "growx 0, sizegroup answers");
        dialog.setContentPane(all);
        dialog.getRootPane().setDefaultButton(yes);
        dialog.getRootPane()
                .registerKeyboardAction(
                        event -> dialog.setVisible(false),
                        KeyStroke.getKeyStroke("ESCAPE"),
                        JComponent.WHEN_IN_FOCUSED_WINDOW);
        dialog.addWindowListener(new WindowAdapter() {
            @Override
            public void windowActivated(WindowEvent event) {
                first.requestFocusInWindow();
            }
        });
        dialog.pack();
        dialog.setResizable(false);
        dialog.setLocationRelativeTo(window);
    }

    /** Lets it stand over a part of the window, so that the rest stays in sight. */
    void over(Component part) {
        dialog.setLocationRelativeTo(part);
    }

    /** Shows it until it is answered; true for yes. A remark made before stays in sight. */
    boolean confirmed() {
        confirmed = false;
        dialog.setVisible(true);
        dialog.dispose();
        return confirmed;
    }

    /** What is wrong with the answers, for the next showing. */
    void remark(String sentence) {
        remark.setText(sentence);
        remark.setVisible(true);
        dialog.pack();
    }
}
