package umbercard.desk.ledger;

import com.formdev.flatlaf.FlatClientProperties;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import umbercard.desk.theme.Keys;
import umbercard.desk.theme.WordButton;
import umbercard.door.Finding;
import umbercard.door.Finding.Verdict;
import umbercard.door.Place;
import umbercard.words.Words;

/**
 * The three most telling readings as sentences: what is to be looked at again before what holds and bare figures, these before
 * what does not apply or is not set, and each of them by the ranks of the readings. The rest, and what finds no room, is
 * counted in a last line, which opens them all when it is pressed.
 */
final class ReadingList extends JPanel {
    private static final int MOST = 3;

    private final transient Consumer<List<Place>> looked;
    private final transient Runnable whatIf;
    private final WordButton more;
    private transient List<ReadingLine> lines = List.of();
    private transient Map<String, Finding> shown = Map.of();
    private transient Set<String> old = Set.of();

    /**
     * An empty list.
     *
     * @param looked told the places of the reading under the pointer or the focus, or none
     * @param openAll opens all readings
     * @param whatIf shows what could be tried; run when a reading that says to look again is pressed
     */
    ReadingList(Consumer<List<Place>> looked, Runnable openAll, Runnable whatIf) {
        super(null);
        this.looked = looked;
        this.whatIf = whatIf;
        setOpaque(false);
        setName("ledger.readings");
        more = WordButton.onDesk("ledger.more", "", Words.say("ledger.all.description"), openAll);
        more.putClientProperty(
                FlatClientProperties.STYLE,
                "foreground: $Umbercard.onSheetSoft; font: -1; margin: 0,4,0,4; horizontalAlignment: 10");
        add(more);
    }

    /** Shows the findings, by the id of their reading, in the order of their ranks. */
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
                .sorted(Comparator.comparingInt(line -> turn(line.finding().verdict())))
                .toList();
        lines.forEach(this::add);
        add(more);
        old(old);
        revalidate();
        repaint();
        lines.stream().filter(line -> line.getName().equals(focused)).forEach(ReadingLine::requestFocusInWindow);
    }

    private static int turn(Verdict verdict) {
        return switch (verdict) {
            case LOOK_AGAIN -> 0;
            case HOLDS, FIGURE_ONLY -> 1;
            case DOES_NOT_APPLY, NOT_SET -> 2;
        };
    }

    private ReadingLine line(String id, Finding finding) {
        ReadingLine line = new ReadingLine(id, finding);
        if (finding.verdict() == Verdict.LOOK_AGAIN) {
            offer(line);
        }
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

    private void offer(ReadingLine line) {
        line.setToolTipText(Words.say("ledger.what-if"));
        line.getAccessibleContext().setAccessibleDescription(line.getToolTipText());
        line.setCursor(Cursor.getPredefinedCursor(Cursor.HAND_CURSOR));
        Keys.bind(line, WHEN_FOCUSED, "ENTER", "what-if", whatIf);
        Keys.bind(line, WHEN_FOCUSED, "SPACE", "what-if", whatIf);
        line.addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                if (SwingUtilities.isLeftMouseButton(event)) {
                    whatIf.run();
                }
            }
        });
    }

    /** Dims the readings of these ids, and no others. */
    void old(Set<String> ids) {
        old = ids;
        lines.forEach(line -> line.old(ids.contains(line.id())));
    }

    /** Dims no longer what is dimmed but not among these. */
    void keepOld(Set<String> ids) {
        old(old.stream().filter(ids::contains).collect(Collectors.toSet()));
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(UIScale.scale(420), UIScale.scale(82));
    }

    @Override
    public void doLayout() {
        int lastLine = more.getPreferredSize().height;
        int y = 0;
        int count = 0;
        for (ReadingLine line : lines.subList(0, Math.min(MOST, lines.size()))) {
            int height = line.heightFor(getWidth());
            if (y + height + lastLine > getHeight()) {
                break;
            }
            line.setBounds(0, y, getWidth(), height);
            y += height;
            count++;
        }
        List<ReadingLine> rest = lines.subList(count, lines.size());
        lines.subList(0, count).forEach(line -> line.setVisible(true));
        rest.forEach(line -> line.setVisible(false));
        more.setText(
                Stream.concat(Stream.of(Words.say("ledger.all")), counted(rest)).collect(Collectors.joining(" · ")));
        int indent = UIScale.scale(18);
        more.setBounds(indent, y, Math.min(getWidth() - indent, more.getPreferredSize().width), lastLine);
    }

    private static Stream<String> counted(List<ReadingLine> rest) {
        Map<Verdict, Long> counts = rest.stream()
                .collect(Collectors.groupingBy(
                        line -> line.finding().verdict(), () -> new EnumMap<>(Verdict.class), Collectors.counting()));
        return counts.entrySet().stream()
                .map(entry -> Words.say("ledger.more." + entry.getKey().key(), entry.getValue()));
    }
}
