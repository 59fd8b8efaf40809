package umbercard.desk.stack;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Rectangle;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractListModel;
import javax.swing.JList;
import javax.swing.JTextField;
import javax.swing.ListSelectionModel;
import javax.swing.text.Position;
import umbercard.desk.session.Session;
import umbercard.desk.theme.Keys;
import umbercard.model.Thumbnail;
import umbercard.words.Words;

/** The thumbnails as a column of tabbed cards. The selected one is the one on the card. */
final class StackList extends JList<Thumbnail> {
    private final transient Session session;
    private final Cards cards;
    private final TabCardRenderer renderer;
    private final JTextField rename = new JTextField();
    private transient Optional<Thumbnail> renamed = Optional.empty();
    private transient Optional<Look> shown = Optional.empty();
    private boolean following;

    /** What the stack shows besides the thumbnails themselves. */
    private record Look(List<String> ids, String onCard, Optional<String> chosen, double ratio) {
        static Look of(Session session) {
            return new Look(
                    session.seen().thumbnails().stream().map(Thumbnail::id).toList(),
                    session.shown(),
                    session.seen().chosen(),
                    session.seen().ratio());
        }
    }

    /** The thumbnails as a list model. */
    private static final class Cards extends AbstractListModel<Thumbnail> {
        private transient List<Thumbnail> thumbnails = List.of();

        void set(List<Thumbnail> now) {
            int before = thumbnails.size();
            thumbnails = now;
            if (before > now.size()) {
                fireIntervalRemoved(this, now.size(), before - 1);
            } else if (before < now.size()) {
                fireIntervalAdded(this, before, now.size() - 1);
            }
        }

        @Override
        public int getSize() {
            return thumbnails.size();
        }

        @Override
        public Thumbnail getElementAt(int index) {
            return thumbnails.get(index);
        }
    }

    StackList(Session session, Shares shares) {
        this(session, new TabCardRenderer(session, shares), new Cards());
    }

    private StackList(Session session, TabCardRenderer renderer, Cards cards) {
        super(cards);
        this.session = session;
        this.renderer = renderer;
        this.cards = cards;
        setName("stack.thumbnails");
        getAccessibleContext().setAccessibleName(Words.say("stack.name"));
        getAccessibleContext().setAccessibleDescription(Words.say("stack.description"));
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setOpaque(false);
        setCellRenderer(renderer);
        addListSelectionListener(event -> showSelected());
        bind("F2", "rename", this::beginRename);
        bind("ENTER", "choose", this::choose);
        bind("DELETE", "remove", this::removeSelected);
        bind("BACK_SPACE", "remove", this::removeSelected);
        addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                if (event.getClickCount() == 2 && onTab(event)) {
                    beginRename();
                }
            }
        });
        prepareRename();
        follow();
    }

    private void bind(String stroke, String name, Runnable action) {
        Keys.bind(this, WHEN_FOCUSED, stroke, name, action);
    }

    private void prepareRename() {
        rename.setName("stack.rename");
        rename.getAccessibleContext().setAccessibleName(Words.say("stack.rename.name"));
        rename.setVisible(false);
        rename.addActionListener(event -> endRename(true));
        Keys.bind(rename, WHEN_FOCUSED, "ESCAPE", "cancel", () -> endRename(false));
        rename.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent event) {
                endRename(true);
            }
        });
        add(rename);
    }

    /** Shows the stack as it is seen now. */
    void follow() {
        following = true;
        List<Thumbnail> before = cards.thumbnails;
        Look look = Look.of(session);
        cards.set(session.seen().thumbnails());
        setFixedCellHeight(UIScale.scale(TabCard.of(session.seen().ratio()).height()));
        setFixedCellWidth(UIScale.scale(TabCard.WIDTH));
        int place = placeOf(session.shown());
        if (place < 0) {
            clearSelection();
        } else if (place != getSelectedIndex()) {
            setSelectedIndex(place);
            ensureIndexIsVisible(place);
        }
        following = false;
        if (shown.equals(Optional.of(look))) {
            repaintChanged(before);
        } else {
            renderer.keep(cards.thumbnails);
            shown = Optional.of(look);
            repaint();
        }
    }

    /** Paints what has changed anew: only the little notan where that is the marks alone. */
    private void repaintChanged(List<Thumbnail> before) {
        for (int i = 0; i < before.size(); i++) {
            Thumbnail now = cards.getElementAt(i);
            if (!before.get(i).equals(now)) {
                boolean marksAlone = before.get(i).withMarks(now.marks()).equals(now);
                Rectangle cell = getCellBounds(i, i);
                Rectangle notan = renderer.notanOf(i == getSelectedIndex());
                notan.translate(cell.x, cell.y);
                repaint(marksAlone ? notan : cell);
            }
        }
    }

    private int placeOf(String id) {
        List<Thumbnail> all = session.seen().thumbnails();
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).id().equals(id)) {
                return i;
            }
        }
        return -1;
    }

    private void showSelected() {
        if (!following && getSelectedIndex() >= 0) {
            session.show(getSelectedValue().id());
        }
    }

    /** Chooses the thumbnail on the card. */
    void choose() {
        session.thumbnail().ifPresent(t -> session.edit(StackEdits.choose(t)));
    }

    private void removeSelected() {
        session.thumbnail().ifPresent(t -> session.edit(StackEdits.remove(t)));
    }

    private boolean onTab(MouseEvent event) {
        int index = getSelectedIndex();
        return index >= 0 && tab(index).contains(event.getPoint());
    }

    private Rectangle tab(int index) {
        Thumbnail thumbnail = cards.getElementAt(index);
        renderer.getListCellRendererComponent(this, thumbnail, index, true, false);
        Rectangle tab = renderer.tabOf(thumbnail, true);
        Rectangle cell = getCellBounds(index, index);
        tab.translate(cell.x, cell.y);
        return tab;
    }

    private void beginRename() {
        int index = getSelectedIndex();
        if (index < 0) {
            return;
        }
        renamed = session.thumbnail();
        ensureIndexIsVisible(index);
        Rectangle tab = tab(index);
        rename.setText(cards.getElementAt(index).name());
        rename.setBounds(tab.x, tab.y, UIScale.scale(TabCard.WIDTH) - tab.x - UIScale.scale(4), UIScale.scale(24));
        rename.setVisible(true);
        rename.selectAll();
        rename.requestFocusInWindow();
    }

    /** Takes the name that is being typed, as far as it is. */
    void settle() {
        if (rename.isVisible()) {
            takeName(renamed);
        }
    }

    private void takeName(Optional<Thumbnail> thumbnail) {
        String name = rename.getText().strip();
        if (!name.isEmpty()) {
            thumbnail.ifPresent(t -> session.edit(StackEdits.rename(t, name)));
        }
    }

    private void endRename(boolean keep) {
        if (!rename.isVisible()) {
            return;
        }
        Optional<Thumbnail> thumbnail = renamed;
        renamed = Optional.empty();
        boolean hadFocus = rename.isFocusOwner();
        rename.setVisible(false);
        if (hadFocus) {
            requestFocusInWindow();
        }
        if (keep) {
            takeName(thumbnail);
        }
        repaint();
    }

    @Override
    public int getNextMatch(String prefix, int startIndex, Position.Bias bias) {
        return -1;
    }
}
