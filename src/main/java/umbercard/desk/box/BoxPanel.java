package umbercard.desk.box;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.CardLayout;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BiConsumer;
import javax.swing.ButtonGroup;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;
import umbercard.desk.session.Session;
import umbercard.desk.theme.Controls;
import umbercard.desk.theme.Keys;
import umbercard.desk.theme.WordButton;
import umbercard.door.Edit;
import umbercard.model.Box;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.model.Zone;
import umbercard.notes.Gaps;
import umbercard.photo.FramedZones;
import umbercard.words.Words;

/**
 * The box, open over the color card. Pressing a stick puts it on the card as the next strip, sets it out for this painting, or
 * opens it to be put right, as the painter chooses. Stays open, so that several can be picked. Event thread only.
 */
public final class BoxPanel extends JPanel {
    private static final String STICKS = "sticks";
    private static final String MISSING = "missing";
    private static final String FORM = "form";
    private static final String ZONE = "zone";
    private static final String SUGGESTION = "suggestion";

    private final transient Session session;
    private final transient BiConsumer<Stick, Optional<String>> ontoCard;
    private final transient ZoneQuestions questions = new ZoneQuestions(this::told);
    private final CardLayout pages = new CardLayout();
    private final JPanel middle = new JPanel(pages);
    private final Tray tray;
    private final StickForm form;
    private final ZoneView zone;
    private final SuggestionView suggestion;
    private final SetOutView setOut = new SetOutView();
    private final JLabel title = Controls.onPaper(new JLabel());
    private final JLabel hint = Controls.onPaper(new JLabel());
    private final JTextField find = Controls.onPaper(new JTextField());
    private final Map<Laid, JToggleButton> toggles = new EnumMap<>(Laid.class);
    private final JPanel head = clear("[grow,fill][][][][]");
    private final JPanel press = clear("[grow,fill][][][]");
    private final WordButton openFile;
    private final WordButton add;
    private final WordButton suggest;
    private Laid laid = Laid.BY_VALUE;
    private Pressing pressing = Pressing.ON_CARD;

    /** What lies in place of the sticks for the moment, if anything does: {@link #FORM} or {@link #SUGGESTION}. */
    private String over = "";

    /** Which opening of a study it was laid there in: what it holds belongs to no other. */
    private long overOf;

    /**
     * The box of the session's study.
     *
     * @param ontoCard puts a stick on the color card, in the zone of that id where there is one
     * @param openBoxFile asks for a box, for a study that has none
     */
    public BoxPanel(
            Session session, BiConsumer<Stick, Optional<String>> ontoCard, Runnable close, Runnable openBoxFile) {
        super(new MigLayout(
                "insets 10 16 10 16, gap 0, wrap 1, hidemode 3", "[grow,fill]", "[][][grow,fill,0::][][][][]"));
        this.session = session;
        this.ontoCard = ontoCard;
        setOpaque(false);
        setName("box");
        getAccessibleContext().setAccessibleName(Words.say("box.name"));
        getAccessibleContext().setAccessibleDescription(Words.say("box.description"));
        tray = new Tray(this::press, this::look);
        form = new StickForm(this::keep, this::remove, this::backToSticks);
        openFile = word("file", openBoxFile);
        add = word("add", this::addStick);
        suggest = word("suggest", this::turnToSuggestion);
        zone = new ZoneView(this::press, this::look, this::ask);
        suggestion = new SuggestionView(
                this::ask,
                sticks -> accept(BoxEdits.setOutOnly(sticks)),
                sticks -> accept(BoxEdits.setOutAlso(sticks)),
                this::backToSticks);
        middle.setOpaque(false);
        middle.add(Controls.scroller(tray, true), STICKS);
        middle.add(missing(), MISSING);
        middle.add(form, FORM);
        middle.add(zone, ZONE);
        middle.add(suggestion, SUGGESTION);
        arrange(close);
        listen();
        Keys.bind(this, WHEN_ANCESTOR_OF_FOCUSED_COMPONENT, "ESCAPE", "close", close);
    }

    private void arrange(Runnable close) {
        title.putClientProperty(FlatClientProperties.STYLE, "font: $semibold.font");
        hint.setName("box.hint");
        head.add(title, "wmin 0");
        ButtonGroup ways = new ButtonGroup();
        for (Laid way : Laid.values()) {
            JToggleButton toggle = toggle(way.key(), way == laid, () -> lay(way));
            toggles.put(way, toggle);
            ways.add(toggle);
            head.add(toggle);
        }
        find.setName("box.find");
        find.putClientProperty(FlatClientProperties.PLACEHOLDER_TEXT, Words.say("box.find"));
        find.putClientProperty(FlatClientProperties.TEXT_FIELD_SHOW_CLEAR_BUTTON, true);
        find.getAccessibleContext().setAccessibleName(Words.say("box.find"));
        find.setToolTipText(Words.say("box.find.description"));
        press.add(Controls.onPaper(new JLabel(Words.say("box.pressing"))));
        ButtonGroup acts = new ButtonGroup();
        for (Pressing act : Pressing.values()) {
            JToggleButton toggle = toggle("pressing." + act.key(), act == pressing, () -> pressFor(act));
            acts.add(toggle);
            press.add(toggle);
        }
        add(head, "cell 0 0, h 28!");
        add(find, "cell 0 1, gaptop 4, wmin 0");
        add(middle, "cell 0 2, wmin 0, hmin 0, gaptop 6");
        add(hint, "cell 0 3, h 22!, gaptop 4, wmin 0");
        add(press, "cell 0 4, gaptop 2");
        add(setOut, "cell 0 5, gaptop 8, wmin 0");
        JPanel foot = clear("[grow,left][][]");
        foot.add(word("close", close), "pad 0 -6 0 -6");
        foot.add(suggest, "pad 0 6 0 6");
        foot.add(add, "pad 0 6 0 6");
        add(foot, "cell 0 6, gaptop 4");
    }

    private static JPanel clear(String columns) {
        JPanel panel = new JPanel(new MigLayout("insets 0, gap 4, hidemode 3", columns));
        panel.setOpaque(false);
        return panel;
    }

    private void listen() {
        Controls.onTyping(find, this::stand);
        find.addActionListener(event -> tray.firstSought().ifPresent(tray::go));
    }

    private static WordButton word(String key, Runnable action) {
        return WordButton.onPaper(
                "box." + key, Words.say("box." + key), Words.say("box." + key + ".description"), action);
    }

    private JToggleButton toggle(String key, boolean on, Runnable action) {
        JToggleButton toggle = Controls.onPaper(new JToggleButton(Words.say("box." + key), on));
        dress(toggle, key);
        toggle.addActionListener(event -> action.run());
        return toggle;
    }

    private static void dress(JToggleButton toggle, String key) {
        String description = Words.say("box." + key + ".description");
        toggle.setName("box." + key);
        toggle.setToolTipText(description);
        toggle.getAccessibleContext().setAccessibleDescription(description);
        toggle.putClientProperty(FlatClientProperties.BUTTON_TYPE, FlatClientProperties.BUTTON_TYPE_BORDERLESS);
    }

    private JPanel missing() {
        JPanel page = new JPanel(new MigLayout("insets 0, wrap 1, align center center"));
        page.setOpaque(false);
        page.add(Controls.onPaper(new JLabel(Words.say("box.missing"))), "center");
        page.add(openFile, "center, gaptop 4");
        return page;
    }

    private List<Stick> sticks() {
        return session.study().box().map(Box::sticks).orElse(List.of());
    }

    /** Shows the study's box, which of its sticks are set out, and which are on the card. */
    public void refresh() {
        List<Stick> sticks = sticks();
        boolean some = !sticks.isEmpty();
        title.setText(session.study().box().map(Box::name).orElse(" "));
        title.setToolTipText(title.getText());
        tray.lay(laid);
        tray.show(laid == Laid.SET_OUT ? session.study().setOut() : sticks, this::standing);
        zone.stand(this::standing);
        setOut.show(session.study().setOut(), List.of());
        if (overOf != session.opening()) {
            over = "";
        }
        turnTo(!over.isEmpty() ? over : some ? sticksPage() : MISSING);
        ask();
        look(Optional.empty());
    }

    private String sticksPage() {
        return laid == Laid.ZONE ? ZONE : STICKS;
    }

    private void turnTo(String page) {
        boolean sticks = page.equals(STICKS);
        boolean some = sticks || page.equals(ZONE);
        find.setVisible(sticks);
        List.of(hint, press).forEach(part -> part.setVisible(some));
        for (int i = 1; i < head.getComponentCount(); i++) {
            head.getComponent(i).setVisible(some);
        }
        head.setVisible(!page.equals(SUGGESTION));
        setOut.setVisible(sticks && laid == Laid.SET_OUT);
        add.setVisible(session.study().box().isPresent() && (some || page.equals(MISSING)));
        suggest.setVisible(some && (laid == Laid.SET_OUT || laid == Laid.ZONE));
        pages.show(middle, page);
    }

    /** Asks what the page that is open has to show of the zones, if anything; a closed box asks nothing. */
    private void ask() {
        Study study = session.study();
        boolean suggests = over.equals(SUGGESTION);
        if (!isShowing() || (!suggests && laid != Laid.ZONE && laid != Laid.SET_OUT)) {
            return;
        }
        boolean fromBox = suggests || (laid == Laid.ZONE && !zone.isFromSetOut());
        Map<Zone, FramedZones.Asked> areas = session.photograph()
                .flatMap(photograph ->
                        study.thumbnail(session.shown()).map(thumbnail -> FramedZones.in(thumbnail, study, photograph)))
                .orElse(Map.of());
        questions.ask(new ZoneQuestions.Question(
                areas,
                fromBox ? sticks() : laid == Laid.ZONE ? study.setOut() : List.of(),
                zone.trust(),
                suggests ? OptionalInt.of(suggestion.most()) : OptionalInt.empty()));
    }

    private void told(ZoneQuestions.Answer answer) {
        if (over.equals(SUGGESTION)) {
            suggestion.show(answer);
        } else if (laid == Laid.ZONE) {
            zone.show(answer, this::standing);
        } else {
            Study study = session.study();
            setOut.show(study.setOut(), Gaps.needed(study.zones(), answer.zones()));
        }
    }

    private void turnToSuggestion() {
        turnOver(SUGGESTION);
        suggestion.begin();
        ask();
    }

    private void accept(Edit edit) {
        over = "";
        laid = Laid.SET_OUT;
        Optional.ofNullable(toggles.get(laid)).ifPresent(toggle -> toggle.setSelected(true));
        session.edit(edit);
        begin();
    }

    private void lay(Laid way) {
        laid = way;
        refresh();
    }

    private void stand() {
        tray.stand(this::standing);
    }

    private Standing standing(Stick stick) {
        boolean sought = laid == Laid.ZONE || StickWords.isSought(stick, find.getText());
        return Standing.of(stick, session.study(), sought);
    }

    /** Opens the box; where sticks are sought for a zone, for the one of that id. */
    public void open(Optional<String> ofZone) {
        over = "";
        zone.turnTo(ofZone);
        refresh();
        begin();
    }

    /** Puts the keyboard on a stick, or on what opens a box. */
    private void begin() {
        if (sticks().isEmpty()) {
            openFile.requestFocusInWindow();
        } else if (laid == Laid.ZONE) {
            if (!zone.begin()) {
                Optional.ofNullable(toggles.get(laid)).ifPresent(JToggleButton::requestFocusInWindow);
            }
        } else {
            tray.begin();
        }
    }

    private void pressFor(Pressing act) {
        pressing = act;
        look(Optional.empty());
    }

    private void press(Stick stick) {
        switch (pressing) {
            case ON_CARD -> ontoCard.accept(stick, laid == Laid.ZONE ? zone.zone() : Optional.empty());
            case SET_OUT -> session.edit(BoxEdits.turn(session.study(), stick));
            case CHANGE -> {
                turnOver(FORM);
                form.change(stick);
            }
        }
        look(Optional.of(stick));
    }

    private void turnOver(String page) {
        over = page;
        overOf = session.opening();
        turnTo(page);
    }

    private void addStick() {
        turnOver(FORM);
        form.add(session.study().newId("s"));
    }

    private void keep(Stick stick) {
        boolean known = sticks().stream().anyMatch(other -> other.id().equals(stick.id()));
        Edit edit = known ? BoxEdits.change(stick) : BoxEdits.add(stick);
        backToSticks();
        session.edit(edit);
        tray.go(stick);
    }

    private void remove(Stick stick) {
        backToSticks();
        session.edit(BoxEdits.remove(stick));
        begin();
    }

    private void backToSticks() {
        over = "";
        turnTo(sticks().isEmpty() ? MISSING : sticksPage());
        ask();
        begin();
    }

    private void look(Optional<Stick> stick) {
        hint.setText(stick.map(one -> standing(one).words()).orElseGet(() -> Words.say("box.hint." + pressing.key())));
    }
}
