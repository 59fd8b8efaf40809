package umbercard.desk.ledger;

import com.formdev.flatlaf.FlatClientProperties;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javax.swing.JLabel;
import javax.swing.JPanel;
import umbercard.door.Finding;
import umbercard.door.Finding.Verdict;
import umbercard.door.Place;
import umbercard.words.Words;

/** The readings as sentences, what is to be looked at again first; what finds no room is counted in a last line. */
final class ReadingList extends JPanel {
    private final transient Consumer<List<Place>> looked;
    private final JLabel more = new JLabel();
    private transient List<ReadingLine> lines = List.of();
    private transient Map<String, Finding> shown = Map.of();

    /** An empty list; {@code looked} is told the places of the reading under the pointer or the focus, or none. */
    ReadingList(Consumer<List<Place>> looked) {
        super(null);
        this.looked = looked;
        setOpaque(false);
        setName("ledger.readings");
        more.setName("ledger.more");
        more.putClientProperty(FlatClientProperties.STYLE, "foreground: $Umbercard.onSheetSoft; font: -1");
    }

    /** Shows the findings, by the id of their reading. */
    void show(Map<String, Finding> findings) {
        if (!findings.equals(shown)) {
            put(findings);
        }
    }

    /** Shows what is shown in the words that are used now. */
    void sayAnew() {
        put(shown);
    }

    private void put(Map<String, Finding> findings) {
        String focused = lines.stream()
                .filter(ReadingLine::isFocusOwner)
                .map(ReadingLine::getName)
                .findFirst()
                .orElse("");
        shown = findings;
        removeAll();
        lines = findings.entrySet().stream()
                .map(entry -> line(entry.getKey(), entry.getValue()))
                .sorted(Comparator.comparing(line -> line.finding().verdict() != Verdict.LOOK_AGAIN))
                .toList();
        lines.forEach(this::add);
        add(more);
        revalidate();
        repaint();
        lines.stream().filter(line -> line.getName().equals(focused)).forEach(ReadingLine::requestFocusInWindow);
    }

    private ReadingLine line(String id, Finding finding) {
        ReadingLine line = new ReadingLine(id, finding);
        line.addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent event) {
                looked.accept(finding.places());
                line.repaint();
            }

            @Override
            public void focusLost(FocusEvent event) {
                looked.accept(List.of());
                line.repaint();
            }
        });
        line.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseEntered(MouseEvent event) {
                looked.accept(finding.places());
            }

            @Override
            public void mouseExited(MouseEvent event) {
                looked.accept(List.of());
            }
        });
        return line;
    }

    /** Dims what is said, or not. */
    void old(boolean isOld) {
        lines.forEach(line -> line.old(isOld));
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(UIScale.scale(420), UIScale.scale(82));
    }

    @Override
    public void doLayout() {
        List<ReadingLine> rest = new ArrayList<>(lines);
        int lastLine = more.getFontMetrics(more.getFont()).getHeight();
        int y = 0;
        for (ReadingLine line : lines) {
            int height = line.heightFor(getWidth());
            int kept = rest.size() > 1 ? lastLine : 0;
            if (y + height + kept > getHeight()) {
                break;
            }
            line.setBounds(0, y, getWidth(), height);
            line.setVisible(true);
            y += height;
            rest.remove(line);
        }
        rest.forEach(line -> line.setVisible(false));
        more.setText(counted(rest));
        boolean room = !rest.isEmpty() && y + lastLine <= getHeight();
        more.setVisible(room);
        more.setBounds(UIScale.scale(22), y, getWidth() - UIScale.scale(22), lastLine);
    }

    private static String counted(List<ReadingLine> rest) {
        Map<Verdict, Long> counts = rest.stream()
                .collect(Collectors.groupingBy(
                        line -> line.finding().verdict(), () -> new EnumMap<>(Verdict.class), Collectors.counting()));
        return counts.entrySet().stream()
                .map(entry -> Words.say("ledger.more." + entry.getKey().key(), entry.getValue()))
                .collect(Collectors.joining(" · "));
    }
}
