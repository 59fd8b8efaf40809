package umbercard.desk;

import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import javax.swing.JTextField;
import javax.swing.SpinnerNumberModel;
import net.miginfocom.swing.MigLayout;
import umbercard.model.Frame;
import umbercard.model.Light;
import umbercard.model.Reference;
import umbercard.model.Study;
import umbercard.model.Surface;
import umbercard.model.Surface.Unit;
import umbercard.model.Thumbnail;
import umbercard.model.edit.Edits;
import umbercard.picture.Picture;
import umbercard.words.Words;

/** Asks what a new study needs to begin: title, surface, tape, light. */
final class NewStudy {
    private final JTextField title = new JTextField(24);
    private final JTextField concept = new JTextField(24);
    private final JSpinner width = sizes(12);
    private final JSpinner height = sizes(9);
    private final JSpinner tape = new JSpinner(new SpinnerNumberModel(0.25, 0, 20, 0.05));
    private final JComboBox<Unit> unit = Choices.of("trade.unit.", Unit.class);
    private final JComboBox<Light> light = Choices.of("trade.light.", Light.class);

    private NewStudy(String suggestedTitle, boolean portrait) {
        title.setText(suggestedTitle);
        title.setName("title");
        concept.setName("concept-field");
        width.setName("width");
        height.setName("height");
        tape.setName("tape");
        unit.setName("unit");
        light.setName("light");
        if (portrait) {
            width.setValue(9.0);
            height.setValue(12.0);
        }
    }

    private static JSpinner sizes(double value) {
        return new JSpinner(new SpinnerNumberModel(value, 0.5, 400, 0.5));
    }

    /** The study the painter wants, or nothing. */
    static Optional<Study> ask(JFrame window, Path photograph, Picture picture) {
        String name = String.valueOf(photograph.getFileName()).replaceFirst("\\.[^.]*$", "");
        NewStudy asked = new NewStudy(name, picture.height() > picture.width());
        Asking asking = new Asking(window, "desk.new", asked.form(), asked.title);
        while (asking.confirmed()) {
            try {
                return Optional.of(asked.study(photograph, picture));
            } catch (IllegalArgumentException tooMuchTape) {
                asking.remark(Words.say("desk.new.too-much-tape"));
            }
        }
        return Optional.empty();
    }

    private JPanel form() {
        JPanel form = new JPanel(new MigLayout("insets 0, wrap 2", "[right]12[grow, fill]", "[]8[]16[]8[]8[]"));
        form.add(new JLabel(Words.say("desk.new.title")));
        form.add(title);
        form.add(new JLabel(Words.say("desk.new.concept")));
        form.add(concept);
        form.add(new JLabel(Words.say("desk.new.surface")));
        form.add(width, "split 4, w 80!, growx 0");
        form.add(new JLabel("×"));
        form.add(height, "w 80!, growx 0");
        form.add(unit, "w 70!, growx 0");
        form.add(new JLabel(Words.say("desk.new.tape")));
        form.add(tape, "w 80!, growx 0");
        form.add(new JLabel(Words.say("desk.new.light")));
        form.add(light, "growx 0");
        return form;
    }

    private Study study(Path photograph, Picture picture) {
        Surface surface = new Surface(
                number(width), number(height), Choices.chosen(unit, Unit.class), number(tape), Optional.empty(), false);
        String name = title.getText().isBlank()
                ? String.valueOf(photograph.getFileName())
                : title.getText().strip();
        Study study = Study.begin(name, surface)
                .withConcept(concept.getText().strip())
                .withLight(Choices.chosen(light, Light.class))
                .withReference(Optional.of(Reference.to(
                        String.valueOf(photograph.getFileName()),
                        "",
                        Frame.largest(picture.ratio(), surface.ratio()))));
        return Edits.addThumbnail(Thumbnail.empty(study.newId("t"), Words.say("desk.new.thumbnail")))
                .apply(study);
    }

    private static double number(JSpinner spinner) {
        return ((Number) spinner.getValue()).doubleValue();
    }
}
