package umbercard.desk.compare;

import java.awt.EventQueue;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import umbercard.desk.ledger.PaintersWishes;
import umbercard.door.Finding;
import umbercard.door.Plan;
import umbercard.door.Reading;
import umbercard.kernel.Latest;
import umbercard.kernel.Plugins;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.notan.Design;
import umbercard.notan.Fold;
import umbercard.photo.FramedReference;
import umbercard.photo.FramedZones;
import umbercard.picture.Picture;
import umbercard.readings.Evaluation;
import umbercard.readings.Wishes;

/** What the readings find in the thumbnails, found in the background, one thumbnail after the other. Event thread only. */
final class Measuring {
    private final Study study;
    private final Plugins<Reading> readings;
    private final Optional<Picture> photograph;
    private final Wishes wishes = PaintersWishes.now();
    private final FramedReference framed = new FramedReference();
    private final FramedZones zones = new FramedZones();
    private final Runnable changed;
    private final Map<String, Map<String, Finding>> found = new HashMap<>();
    private final Latest<List<Thumbnail>, Boolean> worker =
            new Latest<>("comparing", this::measure, isDone -> {}, EventQueue::invokeLater);
    private volatile boolean closed;

    /** Calls {@code changed} whenever another thumbnail's findings are there. */
    Measuring(Study study, Optional<Picture> photograph, Plugins<Reading> readings, Runnable changed) {
        this.study = study;
        this.photograph = photograph;
        this.readings = readings;
        this.changed = changed;
    }

    /** Begins, with the first of them first. */
    void begin(List<Thumbnail> thumbnails) {
        worker.ask(thumbnails);
    }

    /** Ends what is under way; nothing more is told. */
    void end() {
        closed = true;
    }

    private boolean measure(List<Thumbnail> thumbnails, BooleanSupplier stopped) {
        for (Thumbnail thumbnail : thumbnails) {
            if (closed) {
                return false;
            }
            Design design = Fold.of(thumbnail, study.ratio());
            Optional<Picture> seen = photograph.flatMap(whole -> framed.of(study, thumbnail, whole));
            Plan plan = new Plan(study, thumbnail, design, seen, () -> closed)
                    .withColors(() -> zones.colors(thumbnail, study, photograph));
            Map<String, Finding> findings = Evaluation.of(readings, plan, wishes);
            EventQueue.invokeLater(() -> keep(thumbnail, findings));
        }
        return true;
    }

    private void keep(Thumbnail thumbnail, Map<String, Finding> findings) {
        if (!closed) {
            found.put(thumbnail.id(), findings);
            changed.run();
        }
    }

    /** The finding of a reading; empty while it is not there yet. */
    Optional<Finding> of(Thumbnail thumbnail, String reading) {
        return Optional.ofNullable(found.getOrDefault(thumbnail.id(), Map.of()).get(reading));
    }

    /** Whether the thumbnail's findings are there. */
    boolean isDone(Thumbnail thumbnail) {
        return found.containsKey(thumbnail.id());
    }

    /** The ids of the readings that are taken, in their order. */
    List<String> readings() {
        return Evaluation.heard(readings, study, wishes).stream()
                .flatMap(reading -> readings.ask(reading, Reading::id).stream())
                .toList();
    }
}
