package umbercard.desk.box;

import com.formdev.flatlaf.FlatClientProperties;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Rectangle;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.swing.ButtonGroup;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;
import umbercard.color.HueFamily;
import umbercard.color.Lab;
import umbercard.color.MunsellValue;
import umbercard.color.ValueScale;
import umbercard.desk.theme.Controls;
import umbercard.desk.theme.Swatch;
import umbercard.model.Stick;
import umbercard.model.Zone;
import umbercard.notes.ColorMatches;
import umbercard.notes.StickMatch;
import umbercard.notes.Trust;
import umbercard.words.Message;
import umbercard.words.Words;

/**
 * The photograph's main colors in one zone, and beside each the sticks that come nearest to it, with what they differ in. From
 * the whole box, or from the sticks set out.
 */
final class ZoneView extends JPanel {
    private final JComboBox<Zone> zones;
    private final JToggleButton fromSetOut = toggle("from-set-out", false);
    private final JPanel matches = new JPanel(new MigLayout("insets 0, gap 8 2, wrap 2", "[30!][grow,fill]", ""));
    private final JLabel told = Controls.onPaper(new JLabel());
    private final JPanel choices = new JPanel(new MigLayout("insets 0, gap 4", "[grow,fill][][]", "[]"));
    private final TrustRule trust;
    private final transient Consumer<Stick> picked;
    private final transient Consumer<Optional<Stick>> looked;
    private final transient List<StickButton> buttons = new ArrayList<>();
    private transient Optional<ZoneQuestions.Answer> answer = Optional.empty();
    private transient Function<Stick, Standing> standing = stick -> Standing.UNKNOWN;
    private Optional<String> wanted = Optional.empty();
    private transient Optional<Told> laid = Optional.empty();
    private boolean filling;

    /** What the rows show, and in which numbering. */
    private record Told(List<ColorMatches> matches, ValueScale values) {}

    /**
     * @param picked told the stick that was pressed
     * @param looked told the stick under the pointer or the focus, or that there is none
     * @param asked run when other sticks are to be found
     */
    ZoneView(Consumer<Stick> picked, Consumer<Optional<Stick>> looked, Runnable asked) {
        super(new MigLayout("insets 0, gap 0 6, wrap 1, hidemode 3", "[grow,fill]", "[][][grow,fill,0::][]"));
        this.picked = picked;
        this.looked = looked;
        setOpaque(false);
        setName("box.zone-view");
        zones = Controls.choice("zones", new Zone[0], Zone::name);
        zones.setName("box.zone.choice");
        zones.getAccessibleContext().setAccessibleName(Words.say("box.zone.choose"));
        zones.addActionListener(event -> chosen());
        trust = new TrustRule(asked);
        JToggleButton fromBox = toggle("from-box", true);
        ButtonGroup from = new ButtonGroup();
        choices.setOpaque(false);
        choices.add(zones, "wmin 0");
        Stream.of(fromBox, fromSetOut).forEach(toggle -> {
            from.add(toggle);
            choices.add(toggle);
            toggle.addActionListener(event -> asked.run());
        });
        told.setName("box.zone.told");
        matches.setOpaque(false);
        add(choices, "cell 0 0");
        add(told, "cell 0 1, wmin 0");
        add(Controls.scroller(matches, false), "cell 0 2, wmin 0, hmin 0");
        add(trust, "cell 0 3, wmin 0");
        tell("box.zone.wait");
    }

    private static JToggleButton toggle(String key, boolean on) {
        JToggleButton toggle = Controls.onPaper(new JToggleButton(Words.say("box.zone." + key), on));
        String description = Words.say("box.zone." + key + ".description");
        toggle.setName("box.zone." + key);
        toggle.setToolTipText(description);
        toggle.getAccessibleContext().setAccessibleDescription(description);
        toggle.putClientProperty(FlatClientProperties.BUTTON_TYPE, FlatClientProperties.BUTTON_TYPE_BORDERLESS);
        return toggle;
    }

    /** Whether only the sticks set out are to be chosen from. */
    boolean isFromSetOut() {
        return fromSetOut.isSelected();
    }

    Trust trust() {
        return trust.trust();
    }

    /** The zone that is looked at, if there is one. */
    Optional<String> zone() {
        return Optional.ofNullable(zones.getItemAt(zones.getSelectedIndex())).map(Zone::id);
    }

    /** Turns to a zone, as soon as the thumbnail has it. */
    void turnTo(Optional<String> zone) {
        wanted = zone.or(() -> wanted);
        answer.ifPresent(now -> show(now, standing));
    }

    private void chosen() {
        if (!filling) {
            wanted = zone();
            answer.ifPresent(now -> show(now, standing));
        }
    }

    /** Puts the keyboard on the choice of the zone, if there is one. */
    boolean begin() {
        return zones.isShowing() && zones.requestFocusInWindow();
    }

    /** Shows what was found. */
    void show(ZoneQuestions.Answer found, Function<Stick, Standing> as) {
        answer = Optional.of(found);
        standing = as;
        list(found.zones().stream().map(zone -> zone.zone()).toList());
        choices.setVisible(!found.zones().isEmpty());
        trust.setVisible(!found.zones().isEmpty());
        List<ColorMatches> now = found.matches().stream()
                .filter(match -> zone().equals(Optional.of(match.zone())))
                .toList();
        Optional<Told> laying = Optional.of(new Told(now, Words.values()));
        if (!laying.equals(laid)) {
            laid = laying;
            lay(now);
        }
        if (found.zones().isEmpty()) {
            tell("box.zone.none");
        } else if (now.isEmpty()) {
            tell(isFromSetOut() ? "box.zone.nothing-out" : "box.zone.nothing-owned");
        } else {
            told.setVisible(false);
        }
        stand(as);
    }

    private void tell(String key) {
        told.setText("<html>" + Words.say(key));
        told.setVisible(true);
    }

    /** Shows how the sticks stand now. */
    void stand(Function<Stick, Standing> as) {
        standing = as;
        buttons.forEach(button -> button.stand(as.apply(button.stick())));
    }

    private void list(List<Zone> now) {
        filling = true;
        DefaultComboBoxModel<Zone> model = new DefaultComboBoxModel<>(now.toArray(Zone[]::new));
        now.stream()
                .filter(zone -> wanted.equals(Optional.of(zone.id())))
                .findFirst()
                .ifPresent(model::setSelectedItem);
        zones.setModel(model);
        filling = false;
    }

    private void lay(List<ColorMatches> now) {
        Optional<String> focused =
                buttons.stream().filter(Component::isFocusOwner).findFirst().map(Component::getName);
        buttons.clear();
        matches.removeAll();
        for (int color = 0; color < now.size(); color++) {
            lay(now.get(color), color);
        }
        matches.revalidate();
        matches.repaint();
        focused.ifPresent(name -> buttons.stream()
                .filter(button -> name.equals(button.getName()))
                .findFirst()
                .ifPresent(Component::requestFocusInWindow));
    }

    private void lay(ColorMatches match, int color) {
        matches.add(color(match), "span, wmin 0, gapbottom 2, gaptop " + (color == 0 ? 2 : 10));
        if (!match.withinValue()) {
            JLabel none = new JLabel(Words.say("box.zone.none-within"));
            none.putClientProperty(FlatClientProperties.STYLE_CLASS, "paperSoft");
            matches.add(none, "skip, wmin 0");
        }
        for (int rank = 0; rank < match.sticks().size(); rank++) {
            StickMatch stick = match.sticks().get(rank);
            matches.add(button(stick, color + 1, rank + 1), "w 30!, h 34!");
            matches.add(words(stick), "wmin 0");
        }
    }

    private static JLabel color(ColorMatches match) {
        Lab color = match.color().color();
        Message family = Message.of("trade.hue-family." + HueFamily.of(color).key());
        JLabel label = Controls.onPaper(new JLabel(
                Words.say("box.zone.color", 100 * match.color().share(), family, MunsellValue.of(color)),
                new Swatch(color, 20),
                JLabel.LEADING));
        label.setIconTextGap(UIScale.scale(10));
        return label;
    }

    private static JPanel words(StickMatch match) {
        JPanel panel = new JPanel(new MigLayout("insets 0, gap 0, wrap 1", "[grow,fill]", "push[]0[]push"));
        panel.setOpaque(false);
        panel.add(Controls.onPaper(new JLabel(StickWords.stick(match.stick()))), "wmin 0");
        JLabel differs = new JLabel(Words.say(match.likeness().words()));
        differs.setToolTipText(differs.getText());
        differs.putClientProperty(FlatClientProperties.STYLE_CLASS, "paperSoft");
        panel.add(differs, "wmin 0");
        return panel;
    }

    private StickButton button(StickMatch match, int color, int rank) {
        Stick stick = match.stick();
        StickButton button = new StickButton(stick);
        button.setName("box.match." + color + "." + rank);
        button.getAccessibleContext()
                .setAccessibleDescription(Words.say(match.likeness().words()));
        button.addActionListener(event -> picked.accept(stick));
        button.addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent event) {
                looked.accept(Optional.of(stick));
                button.scrollRectToVisible(new Rectangle(button.getSize()));
            }
        });
        button.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseEntered(MouseEvent event) {
                looked.accept(Optional.of(stick));
            }

            @Override
            public void mouseExited(MouseEvent event) {
                looked.accept(Optional.empty());
            }
        });
        buttons.add(button);
        return button;
    }
}
