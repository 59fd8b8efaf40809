package umbercard.desk.notes;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Cursor;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.awt.geom.Line2D;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractListModel;
import javax.swing.JList;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import javax.swing.text.Position;
import umbercard.desk.session.Session;
import umbercard.desk.theme.Keys;
import umbercard.desk.theme.Theme;
import umbercard.model.ColorNote;
import umbercard.words.Words;

/** The strips, in the order of application: selected, dragged into order, moved and removed by keys. */
final class StripList extends JList<ColorNote> {
    /** Travel under this many pixels is a click, as a pen never rests quite still. */
    private static final int STILL = 8;

    private final transient Session session;
    private final Strips strips;
    private final transient Runnable openEditor;
    private int pressedAt;

    /** The id of the strip under the button; its place may change under it, by undo or another edit. */
    private transient Optional<String> carried = Optional.empty();

    private boolean dragging;
    private int gap;

    /** The notes as a list model. */
    private static final class Strips extends AbstractListModel<ColorNote> {
        private transient List<ColorNote> notes = List.of();

        void set(List<ColorNote> now) {
            int before = notes.size();
            notes = now;
            if (before > now.size()) {
                fireIntervalRemoved(this, now.size(), before - 1);
            } else if (before < now.size()) {
                fireIntervalAdded(this, before, now.size() - 1);
            }
            if (!now.isEmpty()) {
                fireContentsChanged(this, 0, now.size() - 1);
            }
        }

        @Override
        public int getSize() {
            return notes.size();
        }

        @Override
        public ColorNote getElementAt(int index) {
            return notes.get(index);
        }
    }

    /** A list of the session's notes; {@code openEditor} opens the choices of the selected one. */
    StripList(Session session, Runnable openEditor) {
        this(session, new Strips(), openEditor);
    }

    private StripList(Session session, Strips strips, Runnable openEditor) {
        super(strips);
        this.session = session;
        this.strips = strips;
        this.openEditor = openEditor;
        setName("notes.strips");
        getAccessibleContext().setAccessibleName(Words.say("notes.strips.name"));
        getAccessibleContext().setAccessibleDescription(Words.say("notes.strips.description"));
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setOpaque(false);
        setCellRenderer(new StripRenderer(session::study));
        bindKeys();
        refresh();
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setFixedCellHeight(UIScale.scale(StripRenderer.HEIGHT));
    }

    private void bindKeys() {
        bind("alt UP", "earlier", () -> move(-1));
        bind("alt DOWN", "later", () -> move(1));
        bind("DELETE", "remove", this::removeSelected);
        bind("BACK_SPACE", "remove", this::removeSelected);
        bind("ENTER", "change", openEditor);
    }

    private void bind(String stroke, String name, Runnable action) {
        Keys.bind(this, WHEN_FOCUSED, stroke, name, action);
    }

    /** Shows the study's notes; the same one stays selected where it still exists. */
    void refresh() {
        Optional<String> kept = selected().map(ColorNote::id);
        int place = getSelectedIndex();
        strips.set(session.study().notes());
        int same = kept.map(this::indexOf).orElse(-1);
        int next = same >= 0 ? same : Math.min(place, strips.getSize() - 1);
        if (next < 0) {
            clearSelection();
        } else if (next != getSelectedIndex()) {
            setSelectedIndex(next);
        }
        if (carried.filter(id -> indexOf(id) < 0).isPresent()) {
            stopDragging();
        }
    }

    private int indexOf(String id) {
        for (int i = 0; i < strips.getSize(); i++) {
            if (strips.getElementAt(i).id().equals(id)) {
                return i;
            }
        }
        return -1;
    }

    /** Selects the note of that id and brings it into sight; one that is not there leaves the selection alone. */
    void select(String id) {
        int index = indexOf(id);
        if (index >= 0) {
            setSelectedIndex(index);
            ensureIndexIsVisible(index);
        }
    }

    /** The selected note as it stands in the study. */
    Optional<ColorNote> selected() {
        int index = getSelectedIndex();
        return index >= 0 && index < strips.getSize() ? Optional.of(strips.getElementAt(index)) : Optional.empty();
    }

    private void move(int by) {
        selected().ifPresent(note -> {
            session.edit(NoteEdits.move(note, Math.max(0, getSelectedIndex() + by)));
            ensureIndexIsVisible(getSelectedIndex());
        });
    }

    void removeSelected() {
        selected().ifPresent(note -> session.edit(NoteEdits.remove(note)));
    }

    @Override
    public int getNextMatch(String prefix, int startIndex, Position.Bias bias) {
        return -1;
    }

    @Override
    protected void processMouseEvent(MouseEvent event) {
        switch (event.getID()) {
            case MouseEvent.MOUSE_PRESSED -> press(event);
            case MouseEvent.MOUSE_RELEASED -> release();
            case MouseEvent.MOUSE_CLICKED -> {
                if (event.getClickCount() == 2 && SwingUtilities.isLeftMouseButton(event) && under(event) >= 0) {
                    openEditor.run();
                }
            }
            default -> {}
        }
        super.processMouseEvent(event);
    }

    private int under(MouseEvent event) {
        int index = locationToIndex(event.getPoint());
        Rectangle cell = index < 0 ? null : getCellBounds(index, index);
        return cell != null && cell.contains(event.getPoint()) ? index : -1;
    }

    private void press(MouseEvent event) {
        int index = SwingUtilities.isLeftMouseButton(event) ? under(event) : -1;
        carried = index < 0
                ? Optional.empty()
                : Optional.of(strips.getElementAt(index).id());
        pressedAt = event.getY();
        dragging = false;
    }

    private void release() {
        int from = dragging ? carried.map(this::indexOf).orElse(-1) : -1;
        stopDragging();
        if (from >= 0) {
            ColorNote note = strips.getElementAt(from);
            session.edit(NoteEdits.move(note, Reorder.placeAfter(from, gap)));
            select(note.id());
        }
    }

    private void stopDragging() {
        dragging = false;
        carried = Optional.empty();
        setCursor(Cursor.getDefaultCursor());
        repaint();
    }

    /** A drag carries the strip; the list's own habit, to select whatever the pointer passes, is left out. */
    @Override
    protected void processMouseMotionEvent(MouseEvent event) {
        if (event.getID() != MouseEvent.MOUSE_DRAGGED) {
            super.processMouseMotionEvent(event);
            return;
        }
        if (carried.isPresent() && (dragging || Math.abs(event.getY() - pressedAt) >= UIScale.scale(STILL))) {
            dragging = true;
            setCursor(Cursor.getPredefinedCursor(Cursor.MOVE_CURSOR));
            gap = Reorder.gapAt(event.getY(), getFixedCellHeight(), strips.getSize());
            scrollRectToVisible(new Rectangle(event.getX(), event.getY(), 1, 1));
            repaint();
        }
    }

    @Override
    protected void processKeyEvent(KeyEvent event) {
        if (dragging && event.getKeyCode() == KeyEvent.VK_ESCAPE) {
            stopDragging();
            event.consume();
        }
        super.processKeyEvent(event);
    }

    @Override
    protected void paintComponent(Graphics g) {
        super.paintComponent(g);
        if (dragging) {
            Graphics2D smooth = Theme.smooth(g);
            smooth.setColor(Theme.color("Umbercard.ink"));
            smooth.setStroke(new BasicStroke(UIScale.scale(2f)));
            float y = Math.max(1, Math.min(getHeight() - 1, gap * getFixedCellHeight()));
            smooth.draw(new Line2D.Float(0, y, getWidth(), y));
            smooth.dispose();
        }
    }
}
