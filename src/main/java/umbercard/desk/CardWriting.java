package umbercard.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.swing.ButtonGroup;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import net.miginfocom.swing.MigLayout;
import umbercard.cards.CardSizes;
import umbercard.cards.Cards;
import umbercard.cards.Faces;
import umbercard.desk.ledger.PaintersWishes;
import umbercard.desk.session.Session;
import umbercard.desk.work.Background;
import umbercard.door.Edit;
import umbercard.door.Finding;
import umbercard.door.Plan;
import umbercard.door.Reading;
import umbercard.kernel.Plugins;
import umbercard.model.CardSettings;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.notan.Design;
import umbercard.notan.Fold;
import umbercard.readings.Evaluation;
import umbercard.readings.Wishes;
import umbercard.store.FolderShelf;
import umbercard.words.Message;
import umbercard.words.Trouble;
import umbercard.words.Words;

/** Writes the study's cards: asks for size, way and faces, then for a folder, and writes in the background. */
final class CardWriting {
    private final Session session;
    private final Background background;
    private final Telling telling;
    private final Choosing choosing;
    private final Plugins<Reading> readings;
    private final Cards cards = new Cards();
    private final Set<String> told = new HashSet<>();

    CardWriting(Session session, Background background, Telling telling, Choosing choosing, Plugins<Reading> readings) {
        this.session = session;
        this.background = background;
        this.telling = telling;
        this.choosing = choosing;
        this.readings = readings;
    }

    void ask() {
        if (session.study().chosenThumbnail().isEmpty()) {
            telling.say(Words.say("desk.cards.no-thumbnail"));
            return;
        }
        Form form = new Form(session.study(), cards.faces());
        Asking asking = new Asking(choosing.window(), "desk.cards", form.panel(), form.size);
        while (asking.confirmed()) {
            try {
                CardSettings settings = form.applied(session.study().cards());
                session.edit(new Edit(Message.of("desk.cards.done"), study -> study.withCards(settings)));
                choosing.folder("desk.choose.cards").ifPresent(this::write);
                return;
            } catch (Trouble size) {
                asking.remark(Words.say(size.said()));
            }
        }
    }

    private void write(Path folder) {
        Study study = session.study();
        Wishes wishes = PaintersWishes.now();
        background.run(
                Message.of("desk.work.cards"),
                task -> {
                    FolderShelf shelf = new FolderShelf(folder);
                    Thumbnail chosen = study.chosenThumbnail().orElseThrow();
                    Design design = Fold.of(chosen, study.ratio());
                    Plan plan = new Plan(study, chosen, design, Optional.empty(), task::stopped);
                    Map<String, Finding> findings = Evaluation.of(readings, plan, wishes);
                    return cards.write(
                            cards.lay(
                                    study,
                                    chosen,
                                    design,
                                    findings,
                                    study.cards().faces()),
                            List.of("svg"),
                            shelf,
                            task::stopped);
                },
                files -> {
                    telling.say(Words.say("desk.cards.written", files.size(), folder));
                    cards.switchedOff().stream()
                            .map(Plugins.SwitchedOff::name)
                            .filter(told::add)
                            .forEach(name -> telling.say(Words.say("desk.switched-off", name)));
                },
                telling::failed);
    }

    /** The few things to choose. */
    private static final class Form {
        private final JComboBox<String> size = new JComboBox<>(sizes());
        private final JRadioButton landscape = new JRadioButton(Words.say("desk.cards.landscape"));
        private final JRadioButton portrait = new JRadioButton(Words.say("desk.cards.portrait"));
        private final List<JCheckBox> faces = new ArrayList<>();

        Form(Study study, List<String> all) {
            size.setName("card-size");
            size.setEditable(true);
            size.setSelectedItem(CardSizes.label(study.cards().card()));
            landscape.setName("landscape");
            portrait.setName("portrait");
            ButtonGroup way = new ButtonGroup();
            way.add(landscape);
            way.add(portrait);
            (study.cards().landscape() ? landscape : portrait).setSelected(true);
            for (String face : all) {
                JCheckBox box =
                        new JCheckBox(Faces.name(face), study.cards().faces().contains(face));
                box.setName("face-" + face);
                faces.add(box);
            }
        }

        JPanel panel() {
            JPanel form = new JPanel(new MigLayout("insets 0, wrap 2", "[right]12[grow, fill]", "[]8[]12[]"));
            form.add(new JLabel(Words.say("desk.cards.size")));
            form.add(size, "growx 0, wmin 140");
            form.add(new JLabel(Words.say("desk.cards.way")));
            form.add(landscape, "split 2, growx 0");
            form.add(portrait, "growx 0");
            form.add(new JLabel(Words.say("desk.cards.faces")), "aligny top");
            JPanel boxes = new JPanel(new MigLayout("insets 0, wrap 1"));
            faces.forEach(boxes::add);
            form.add(boxes);
            return form;
        }

        private static String[] sizes() {
            return CardSizes.usual().stream().map(CardSizes::label).toArray(String[]::new);
        }

        CardSettings applied(CardSettings cards) throws Trouble {
            List<String> chosen = faces.stream()
                    .filter(JCheckBox::isSelected)
                    .map(box -> box.getName().substring("face-".length()))
                    .toList();
            return cards.withCard(CardSizes.parse(String.valueOf(size.getSelectedItem())))
                    .withLandscape(landscape.isSelected())
                    .withFaces(chosen);
        }
    }
}
