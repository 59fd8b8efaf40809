package umbercard.desk.box;

import com.formdev.flatlaf.ui.FlatUIUtils;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Rectangle;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import javax.swing.Scrollable;
import javax.swing.SwingConstants;
import umbercard.desk.theme.Keys;
import umbercard.desk.theme.Theme;
import umbercard.model.Stick;

/** The sticks of a box, laid out to be picked. One of them at a time is reached by Tab; arrow keys walk on from it. */
final class Tray extends JPanel implements Scrollable {
    /** Least and greatest distance from stick to stick, in pixels at 100 %: each is a target of 24 or more. */
    private static final int LEAST = 28;

    private static final int GREATEST = 48;

    /** Room for the labels of the rows. */
    private static final int LABELS = 22;

    private final transient Consumer<Stick> picked;
    private final transient Consumer<Optional<Stick>> looked;
    private final transient Map<String, StickButton> buttons = new LinkedHashMap<>();
    private transient List<Stick> sticks = List.of();
    private transient TrayLayout layout = TrayLayout.byValue(List.of(), 2);
    private Laid laid = Laid.BY_VALUE;
    private int laidFor;
    private String current = "";

    /**
     * An empty tray.
     *
     * @param picked told the stick that was pressed
     * @param looked told the stick under the pointer or the focus, or that there is none
     */
    Tray(Consumer<Stick> picked, Consumer<Optional<Stick>> looked) {
        super(null);
        this.picked = picked;
        this.looked = looked;
        setOpaque(false);
        setName("box.sticks");
    }

    /** Shows these sticks, each as it stands. */
    void show(List<Stick> now, Function<Stick, Standing> standing) {
        if (!now.equals(sticks)) {
            String last = current;
            sticks = now;
            buttons.clear();
            removeAll();
            now.forEach(stick -> add(button(stick)));
            current = now.stream()
                    .map(Stick::id)
                    .filter(last::equals)
                    .findFirst()
                    .or(() -> now.stream().map(Stick::id).findFirst())
                    .orElse("");
            buttons.forEach((id, button) -> button.setFocusable(id.equals(current)));
            laidFor = 0;
            revalidate();
            repaint();
        }
        stand(standing);
    }

    /** Shows how the sticks stand now. */
    void stand(Function<Stick, Standing> standing) {
        buttons.values().forEach(button -> button.stand(standing.apply(button.stick())));
    }

    /** The first stick, as they are laid, that is looked for. */
    Optional<Stick> firstSought() {
        return layout.cells().stream()
                .map(TrayLayout.Cell::stick)
                .filter(stick -> Optional.ofNullable(buttons.get(stick.id()))
                        .filter(StickButton::isSought)
                        .isPresent())
                .findFirst();
    }

    /** Lays the sticks that way. */
    void lay(Laid way) {
        laid = way;
        laidFor = 0;
        revalidate();
        repaint();
    }

    /** Puts the keyboard on the stick it was on last. */
    void begin() {
        Optional.ofNullable(buttons.get(current)).ifPresent(StickButton::requestFocusInWindow);
    }

    private StickButton button(Stick stick) {
        StickButton button = new StickButton(stick);
        buttons.put(stick.id(), button);
        button.addActionListener(event -> picked.accept(stick));
        button.addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent event) {
                settleOn(button);
                looked.accept(Optional.of(stick));
                scrollRectToVisible(button.getBounds());
            }
        });
        MouseAdapter pointer = new MouseAdapter() {
            @Override
            public void mouseEntered(MouseEvent event) {
                looked.accept(Optional.of(stick));
            }

            @Override
            public void mouseExited(MouseEvent event) {
                looked.accept(Optional.empty());
            }

            @Override
            public void mousePressed(MouseEvent event) {
                go(stick);
            }
        };
        button.addMouseListener(pointer);
        bind(button, "LEFT", -1, 0);
        bind(button, "RIGHT", 1, 0);
        bind(button, "UP", 0, -1);
        bind(button, "DOWN", 0, 1);
        button.getInputMap().put(KeyStroke.getKeyStroke("ENTER"), "pressed");
        button.getInputMap().put(KeyStroke.getKeyStroke("released ENTER"), "released");
        return button;
    }

    private void bind(StickButton button, String key, int right, int down) {
        Keys.bind(
                button,
                WHEN_FOCUSED,
                key,
                key,
                () -> layout.cells().stream()
                        .filter(cell -> cell.stick().equals(button.stick()))
                        .findFirst()
                        .flatMap(cell -> layout.next(cell, right, down))
                        .ifPresent(cell -> go(cell.stick())));
    }

    /** Puts the keyboard on a stick. */
    void go(Stick stick) {
        Optional.ofNullable(buttons.get(stick.id())).ifPresent(to -> {
            to.setFocusable(true);
            to.requestFocusInWindow();
        });
    }

    /** From now on Tab leads to this stick, and to no other. */
    private void settleOn(StickButton button) {
        Optional.ofNullable(buttons.get(current))
                .filter(before -> before != button)
                .ifPresent(before -> before.setFocusable(false));
        current = button.stick().id();
    }

    private void arrange(int width) {
        if (width == laidFor) {
            return;
        }
        laidFor = width;
        int most = Math.max(2, (width - UIScale.scale(LABELS)) / UIScale.scale(LEAST));
        layout = laid.lay(sticks, most);
        int pitch = pitch();
        for (TrayLayout.Cell cell : layout.cells()) {
            Optional.ofNullable(buttons.get(cell.stick().id()))
                    .ifPresent(button -> button.setBounds(
                            UIScale.scale(LABELS) + cell.column() * pitch, cell.row() * pitch, pitch, pitch));
        }
    }

    private int pitch() {
        int room = (laidFor - UIScale.scale(LABELS)) / layout.columns();
        return Math.max(UIScale.scale(LEAST), Math.min(UIScale.scale(GREATEST), room));
    }

    @Override
    public void doLayout() {
        arrange(getWidth());
    }

    @Override
    public Dimension getPreferredSize() {
        arrange(getParent() == null ? getWidth() : getParent().getWidth());
        return new Dimension(UIScale.scale(LABELS) + layout.columns() * pitch(), layout.rows() * pitch());
    }

    @Override
    protected void paintComponent(Graphics g) {
        super.paintComponent(g);
        g.setColor(Theme.color("Umbercard.inkSoft"));
        g.setFont(Theme.font("medium.font"));
        FontMetrics metrics = g.getFontMetrics();
        int pitch = pitch();
        for (int row = 0; row < layout.rows(); row++) {
            int baseline = row * pitch + (pitch + metrics.getAscent() - metrics.getDescent()) / 2;
            FlatUIUtils.drawString(this, g, layout.labels().get(row), 0, baseline);
        }
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return pitch();
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return orientation == SwingConstants.VERTICAL ? visible.height : visible.width;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return getParent() != null && getParent().getWidth() >= getPreferredSize().width;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return false;
    }
}
