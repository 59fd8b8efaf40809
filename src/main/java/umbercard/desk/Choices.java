package umbercard.desk;

import java.awt.Component;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComboBox;
import javax.swing.JList;
import umbercard.model.Keyed;
import umbercard.words.Words;

/** Combo boxes over the trade's lists, shown in words. */
final class Choices {
    private Choices() {}

    /** A box whose choices are said by the key that the prefix and the choice's own key make. */
    static <K extends Enum<K> & Keyed> JComboBox<K> of(String prefix, Class<K> kind) {
        JComboBox<K> box = new JComboBox<>(kind.getEnumConstants());
        box.setRenderer(new DefaultListCellRenderer() {
            @Override
            public Component getListCellRendererComponent(
                    JList<?> list, Object value, int index, boolean selected, boolean focused) {
                String words = value instanceof Keyed keyed ? Words.say(prefix + keyed.key()) : "";
                return super.getListCellRendererComponent(list, words, index, selected, focused);
            }
        });
        return box;
    }

    static <K> K chosen(JComboBox<K> box, Class<K> kind) {
        return kind.cast(box.getSelectedItem());
    }
}
