package umbercard.desk.theme;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Component;
import java.awt.Insets;
import java.util.function.Function;
import javax.swing.BorderFactory;
import javax.swing.DefaultListCellRenderer;
import javax.swing.InputMap;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListCellRenderer;
import javax.swing.ScrollPaneConstants;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.text.DefaultCaret;

/** Plain components in the colors of paper. */
public final class Controls {
    private Controls() {}

    /** The component, dressed for a card. */
    public static <C extends JComponent> C onPaper(C component) {
        component.putClientProperty(FlatClientProperties.STYLE_CLASS, "paper");
        return component;
    }

    /** Sentences that wrap; they are read, not written in. */
    public static JTextArea sentence() {
        JTextArea words = new JTextArea();
        words.setEditable(false);
        words.setFocusable(false);
        words.setOpaque(false);
        words.setMargin(new Insets(0, 0, 0, 0));
        words.setLineWrap(true);
        words.setWrapStyleWord(true);
        // Without this, setting the text scrolls to it.
        if (words.getCaret() instanceof DefaultCaret caret) {
            caret.setUpdatePolicy(DefaultCaret.NEVER_UPDATE);
        }
        return words;
    }

    /** A small label above {@code field}, which it names. */
    public static JLabel caption(String words, JComponent field) {
        JLabel label = new JLabel(words);
        label.putClientProperty(FlatClientProperties.STYLE_CLASS, "paperSoft");
        label.setLabelFor(field);
        field.getAccessibleContext().setAccessibleName(words);
        return label;
    }

    /**
     * A list to choose from, its items said by {@code words}. Arrow keys open it before they walk in it, so that passing an item
     * does not yet take it.
     */
    public static <T> JComboBox<T> choice(String name, T[] items, Function<T, String> words) {
        JComboBox<T> combo = onPaper(new JComboBox<>(items));
        combo.setName(name);
        combo.setRenderer(said(words));
        combo.setMaximumRowCount(14);
        InputMap keys = combo.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT);
        keys.put(KeyStroke.getKeyStroke("DOWN"), "selectNext");
        keys.put(KeyStroke.getKeyStroke("UP"), "selectPrevious");
        return combo;
    }

    /** Paints an item as {@code words} says it. */
    public static <T> ListCellRenderer<T> said(Function<T, String> words) {
        DefaultListCellRenderer plain = new DefaultListCellRenderer();
        return (JList<? extends T> list, T value, int index, boolean selected, boolean focused) -> {
            Component cell = plain.getListCellRendererComponent(list, "", index, selected, focused);
            if (value != null) {
                plain.setText(words.apply(value));
            }
            return cell;
        };
    }

    /** A frameless, see-through scroller; sideways only when {@code sideways}. */
    public static JScrollPane scroller(JComponent view, boolean sideways) {
        JScrollPane scroller = new JScrollPane(
                view,
                ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED,
                sideways
                        ? ScrollPaneConstants.HORIZONTAL_SCROLLBAR_AS_NEEDED
                        : ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroller.setBorder(BorderFactory.createEmptyBorder());
        scroller.setOpaque(false);
        scroller.getViewport().setOpaque(false);
        onPaper(scroller.getVerticalScrollBar());
        onPaper(scroller.getHorizontalScrollBar());
        return scroller;
    }

    /** Runs the action whenever the words in a field change. */
    public static void onTyping(JTextField field, Runnable action) {
        field.getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent event) {
                action.run();
            }

            @Override
            public void removeUpdate(DocumentEvent event) {
                action.run();
            }

            @Override
            public void changedUpdate(DocumentEvent event) {
                action.run();
            }
        });
    }
}
