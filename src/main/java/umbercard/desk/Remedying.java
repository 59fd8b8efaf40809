package umbercard.desk;

import java.awt.Component;
import java.awt.EventQueue;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import javax.swing.DefaultListCellRenderer;
import javax.swing.DefaultListModel;
import javax.swing.JFrame;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;
import umbercard.desk.ledger.PaintersWishes;
import umbercard.desk.session.Session;
import umbercard.door.Edit;
import umbercard.door.Reading;
import umbercard.door.Remedy;
import umbercard.kernel.Latest;
import umbercard.kernel.Plugins;
import umbercard.model.Thumbnail;
import umbercard.model.edit.Edits;
import umbercard.picture.Picture;
import umbercard.remedies.Outcome;
import umbercard.remedies.WhatIf;
import umbercard.words.Message;
import umbercard.words.Words;

/**
 * What could be tried on the thumbnail on the card: lists the remedies, shows on the card what the selected one does and says
 * what the readings become, and adds a copy as one edit. All measuring is done in the background.
 */
final class Remedying {
    private static final int ROWS = 6;
    private static final int LINES = 12;

    private final Session session;
    private final Plugins<Reading> readings;
    private final Plugins<Remedy> remedies = WhatIf.find();
    private final Telling telling;
    private final JFrame window;
    private final Component beside;

    /** @param beside what the question covers, so that the card stays in sight */
    Remedying(Session session, Plugins<Reading> readings, Telling telling, JFrame window, Component beside) {
        this.session = session;
        this.readings = readings;
        this.telling = telling;
        this.window = window;
        this.beside = beside;
    }

    /** Asks what to try; adds the copy if the painter takes one. */
    void ask() {
        Optional<Thumbnail> shown = session.study().thumbnail(session.shown());
        if (shown.isEmpty()) {
            telling.say(Words.say("remedies.no-thumbnail"));
            return;
        }
        OptionalDouble ratio =
                session.photograph().map(Picture::ratio).map(OptionalDouble::of).orElse(OptionalDouble.empty());
        WhatIf whatIf = new WhatIf(session.study(), shown.get(), Optional.empty(), ratio, PaintersWishes.now());
        Choice choice = new Choice(whatIf);
        Asking asking = new Asking(window, "remedies.what-if", choice.panel(), choice.list);
        asking.over(beside);
        choice.look();
        boolean taken = asking.confirmed();
        choice.ended = true;
        if (taken) {
            Optional.ofNullable(choice.list.getSelectedValue()).ifPresent(outcome -> add(whatIf, outcome));
        }
        session.preview(Optional.empty());
    }

    private void add(WhatIf whatIf, Outcome outcome) {
        Thumbnail copy = whatIf.copy(outcome.remedied());
        session.edit(new Edit(Message.of("remedies.edit", outcome.remedied().called()), Edits.addThumbnail(copy)));
        session.show(copy.id());
    }

    /** The list and what is said of the selected remedy. */
    private final class Choice {
        private final WhatIf whatIf;
        private final DefaultListModel<Outcome> found = new DefaultListModel<>();
        private final JList<Outcome> list = new JList<>(found);
        private final JTextArea becomes = Wrapped.words(Words.say("remedies.looking"));
        private volatile boolean ended;

        Choice(WhatIf whatIf) {
            this.whatIf = whatIf;
            list.setName("remedies");
            list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
            list.setVisibleRowCount(ROWS);
            list.setCellRenderer(new Names());
            list.addListSelectionListener(event -> {
                if (!event.getValueIsAdjusting()) {
                    tell();
                }
            });
            becomes.setName("becomes");
            becomes.setRows(LINES);
        }

        JPanel panel() {
            JPanel panel = new JPanel(new MigLayout("insets 0, wrap 1", "[grow, fill]", "[]10[]"));
            panel.add(new JScrollPane(list));
            panel.add(new JScrollPane(becomes));
            return panel;
        }

        void look() {
            new Latest<WhatIf, List<Outcome>>(
                            "umbercard-what-if",
                            (asked, stopped) ->
                                    asked.outcomes(remedies, readings, () -> ended || stopped.getAsBoolean()),
                            this::show,
                            EventQueue::invokeLater)
                    .ask(whatIf);
        }

        private void show(List<Outcome> outcomes) {
            if (ended) {
                return;
            }
            found.addAll(outcomes);
            if (outcomes.isEmpty()) {
                becomes.setText(Words.say("remedies.none"));
            } else {
                list.setSelectedIndex(0);
            }
        }

        private void tell() {
            Optional<Outcome> selected = Optional.ofNullable(list.getSelectedValue());
            selected.ifPresent(outcome -> becomes.setText(said(outcome)));
            becomes.setCaretPosition(0);
            session.preview(selected.map(outcome -> whatIf.asIf(outcome.remedied())));
        }
    }

    /** What the readings become, one a line; then what else the painter should know. */
    private static String said(Outcome outcome) {
        String readings = outcome.becomes().stream()
                .map(becomes -> Words.say(becomes.words()))
                .collect(Collectors.joining("\n"));
        String remarks = outcome.remedied().remarks().stream().map(Words::say).collect(Collectors.joining("\n"));
        return (readings.isEmpty() ? Words.say("remedies.no-change") : readings)
                + (remarks.isEmpty() ? "" : "\n" + remarks);
    }

    private static final class Names extends DefaultListCellRenderer {
        @Override
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean selected, boolean focused) {
            String said = value instanceof Outcome outcome
                    ? Words.say(outcome.remedied().name())
                    : "";
            return super.getListCellRendererComponent(list, said, index, selected, focused);
        }
    }
}
