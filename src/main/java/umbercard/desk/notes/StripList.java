package umbercard.desk.notes;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Cursor;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.AbstractListModel;
import javax.swing.JList;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import javax.swing.text.Position;
import org.jspecify.annotations.Nullable;
import umbercard.desk.session.Session;
import umbercard.desk.theme.Keys;
import umbercard.desk.theme.Theme;
import umbercard.door.Edit;
import umbercard.model.ColorNote;
import umbercard.words.Words;

/** The strips, in the order of application: one or several selected, dragged into order, moved and removed by keys. */
final class StripList extends JList<ColorNote> {
    /** Travel under this many pixels is a click, as a pen never rests quite still. */
    private static final int STILL = 8;

    private final transient Session session;
    private final Strips strips;
    private final transient Runnable openEditor;
    private int pressedAt;

    /** The ids of the strips under the button; their places may change under it, by undo or another edit. */
    private transient List<String> carried = List.of();

    /** The strip that is selected alone if the button comes up where it went down: one of several that might be dragged. */
    private transient Optional<String> aloneIfStill = Optional.empty();

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

    /** A list of the session's notes; {@code openEditor} opens the choices of the selected ones. */
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
        setSelectionMode(ListSelectionModel.MULTIPLE_INTERVAL_SELECTION);
        setOpaque(false);
        setCellRenderer(new StripRenderer(session::study));
        bindKeys();
        refresh();
    }

    private void bindKeys() {
        bind("alt UP", "earlier", () -> editSelected(NoteEdits::earlier));
        bind("alt DOWN", "later", () -> editSelected(NoteEdits::later));
        bind("BACK_SPACE", "remove", this::removeSelected);
    }

    private void bind(String stroke, String name, Runnable action) {
        Keys.bind(this, WHEN_FOCUSED, stroke, name, action);
    }

    /** Shows the study's notes; the same ones stay selected where they still exist. */
    void refresh() {
        List<String> kept = ids(selected());
        int place = getSelectedIndex();
        strips.set(session.study().notes());
        int[] same = kept.stream().mapToInt(this::indexOf).filter(i -> i >= 0).toArray();
        int next = Math.min(place, strips.getSize() - 1);
        if (same.length == 0 && next < 0) {
            clearSelection();
        } else {
            choose(same.length > 0 ? same : new int[] {next});
        }
        if (carried.stream().anyMatch(id -> indexOf(id) < 0)) {
            stopDragging();
        }
    }

    private void choose(int... indices) {
        if (!Arrays.equals(indices, getSelectedIndices())) {
            setSelectedIndices(indices);
        }
    }

    private static List<String> ids(List<ColorNote> notes) {
        return notes.stream().map(ColorNote::id).toList();
    }

    private int indexOf(String id) {
        return ids(strips.notes).indexOf(id);
    }

    /** Selects the notes of those ids and brings them into sight; where none is there the selection stays as it is. */
    void select(Collection<String> ids) {
        int[] indices = ids.stream()
                .mapToInt(this::indexOf)
                .filter(i -> i >= 0)
                .sorted()
                .toArray();
        if (indices.length > 0) {
            choose(indices);
            ensureIndexIsVisible(indices[indices.length - 1]);
            ensureIndexIsVisible(indices[0]);
        }
    }

    /** The selected notes as they stand in the study, in their order. */
    List<ColorNote> selected() {
        return Arrays.stream(getSelectedIndices())
                .filter(index -> index < strips.getSize())
                .mapToObj(strips::getElementAt)
                .toList();
    }

    /** The first of the selected notes. */
    Optional<ColorNote> first() {
        return selected().stream().findFirst();
    }

    /** Makes an edit of the selected notes, if there are any; they stay selected and in sight. */
    void editSelected(Function<List<ColorNote>, Edit> edit) {
        List<ColorNote> chosen = selected();
        if (!chosen.isEmpty()) {
            session.edit(edit.apply(chosen));
            select(ids(chosen));
        }
    }

    void removeSelected() {
        editSelected(NoteEdits::remove);
    }

    /** Copies the selected notes and selects the copies. */
    void duplicateSelected() {
        List<String> before = ids(session.study().notes());
        editSelected(NoteEdits::duplicate);
        select(ids(session.study().notes()).stream()
                .filter(id -> !before.contains(id))
                .toList());
    }

    /** Sets a break over the first of the selected notes, or takes the one there away. */
    void turnBreak() {
        first().filter(note -> indexOf(note.id()) > 0).ifPresent(note -> session.edit(NoteEdits.turnBreak(note)));
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
        if (event.getID() == MouseEvent.MOUSE_PRESSED && aloneIfStill.isPresent()) {
            requestFocusInWindow();
        } else {
            super.processMouseEvent(event);
        }
    }

    private int under(MouseEvent event) {
        int index = locationToIndex(event.getPoint());
        Rectangle cell = index < 0 ? null : getCellBounds(index, index);
        return cell != null && cell.contains(event.getPoint()) ? index : -1;
    }

    private void press(MouseEvent event) {
        int index = SwingUtilities.isLeftMouseButton(event) ? under(event) : -1;
        boolean plain = !event.isShiftDown() && !event.isControlDown() && !event.isMetaDown();
        boolean oneOfSeveral =
                index >= 0 && plain && isSelectedIndex(index) && selected().size() > 1;
        Optional<String> one = index < 0
                ? Optional.empty()
                : Optional.of(strips.getElementAt(index).id());
        carried = oneOfSeveral
                ? ids(selected())
                : one.filter(id -> plain).stream().toList();
        aloneIfStill = oneOfSeveral ? one : Optional.empty();
        pressedAt = event.getY();
        dragging = false;
    }

    /** The popup is for the strip under the pointer, and for all that are selected if that is one of them. */
    @Override
    public @Nullable Point getPopupLocation(@Nullable MouseEvent event) {
        int index = event == null ? -1 : under(event);
        if (index >= 0 && !isSelectedIndex(index)) {
            setSelectedIndex(index);
        }
        return super.getPopupLocation(event);
    }

    private void release() {
        List<String> moved = dragging ? carried : List.of();
        Optional<String> alone = dragging ? Optional.empty() : aloneIfStill;
        stopDragging();
        alone.ifPresent(id -> select(List.of(id)));
        List<ColorNote> notes =
                strips.notes.stream().filter(note -> moved.contains(note.id())).toList();
        if (!notes.isEmpty()) {
            session.edit(NoteEdits.move(notes, gap));
            select(moved);
        }
    }

    private void stopDragging() {
        dragging = false;
        carried = List.of();
        aloneIfStill = Optional.empty();
        setCursor(Cursor.getDefaultCursor());
        repaint();
    }

    /** A drag carries the strips; the list's own habit, to select whatever the pointer passes, is left out. */
    @Override
    protected void processMouseMotionEvent(MouseEvent event) {
        if (event.getID() != MouseEvent.MOUSE_DRAGGED) {
            super.processMouseMotionEvent(event);
            return;
        }
        if (!carried.isEmpty() && (dragging || Math.abs(event.getY() - pressedAt) >= UIScale.scale(STILL))) {
            dragging = true;
            setCursor(Cursor.getPredefinedCursor(Cursor.MOVE_CURSOR));
            gap = Reorder.gapAt(event.getY(), edges());
            scrollRectToVisible(new Rectangle(event.getX(), event.getY(), 1, 1));
            repaint();
        }
    }

    /** Above each strip and each break, and below the last. */
    private List<Integer> edges() {
        List<Integer> edges = new ArrayList<>(List.of(0));
        for (int i = 0; i < strips.getSize(); i++) {
            Rectangle cell = getCellBounds(i, i);
            if (StripWords.beginsSitting(strips.getElementAt(i), i + 1)) {
                edges.add(cell.y + UIScale.scale(StripRenderer.BREAK));
            }
            edges.add(cell.y + cell.height);
        }
        return edges;
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
            List<Integer> edges = edges();
            float y = Math.max(1, Math.min(getHeight() - 1, edges.get(Math.min(gap, edges.size() - 1))));
            smooth.draw(new Line2D.Float(0, y, getWidth(), y));
            smooth.dispose();
        }
    }
}
