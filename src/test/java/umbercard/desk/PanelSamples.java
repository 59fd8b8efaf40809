package umbercard.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import umbercard.model.Box;
import umbercard.model.ColorNote;
import umbercard.model.Study;

/** Larger studies than a painter usually has. */
final class PanelSamples {
    private PanelSamples() {}

    /** The study with 200 sticks and 14 color notes. */
    static Study many(Study study) {
        Box box = KilnHill.box(200, 20);
        List<ColorNote> notes = new ArrayList<>(study.notes());
        for (int i = 5; i <= 14; i++) {
            notes.add(study.notes()
                    .get(i % 4)
                    .withId("n" + i)
                    .withStick(box.sticks().get(i * 9)));
        }
        return study.withBox(Optional.of(box)).withNotes(notes);
    }
}
