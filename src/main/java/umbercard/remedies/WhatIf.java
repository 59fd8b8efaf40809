package umbercard.remedies;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;
import umbercard.door.Finding;
import umbercard.door.Plan;
import umbercard.door.Ranked;
import umbercard.door.Reading;
import umbercard.door.Remedied;
import umbercard.door.Remedy;
import umbercard.door.Trial;
import umbercard.kernel.Plugins;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.model.edit.Edits;
import umbercard.notan.Design;
import umbercard.notan.Fold;
import umbercard.picture.Picture;
import umbercard.readings.Evaluation;
import umbercard.readings.Wishes;
import umbercard.words.Words;

/**
 * What could be tried on a thumbnail, and what the readings would become. The desk and the command line share it.
 *
 * @param reference the framed photograph, if it is at hand
 * @param photographRatio width divided by height of the upright photograph, if it is known
 * @param wishes what the painter wishes of the readings
 */
public record WhatIf(
        Study study, Thumbnail thumbnail, Optional<Picture> reference, OptionalDouble photographRatio, Wishes wishes) {

    /** The remedies that the program comes with and those beside it, in the order they are shown. */
    public static Plugins<Remedy> find() {
        return Plugins.find(Remedy.class, Ranked.ORDER);
    }

    /**
     * What comes of each remedy that can help where a reading says to look again. Those that fail are switched off. Once
     * nobody waits any more, what was found so far is returned.
     */
    public List<Outcome> outcomes(Plugins<Remedy> remedies, Plugins<Reading> readings, BooleanSupplier stopped) {
        Design design = Fold.of(thumbnail, study.ratio());
        Plan plan = new Plan(study, thumbnail, design, reference, stopped);
        Map<String, Finding> before = Evaluation.of(readings, plan, wishes);
        Trial trial = new Trial(plan, before, rule -> Evaluation.limits(rule, study, wishes), photographRatio);
        List<Outcome> outcomes = new ArrayList<>();
        for (Remedy remedy : remedies.on()) {
            if (stopped.getAsBoolean()) {
                break;
            }
            remedies.ask(
                            remedy,
                            tried -> trial.isAgain(tried.mends()) ? tried.tried(trial) : Optional.<Remedied>empty())
                    .flatMap(helps -> helps)
                    .map(remedied -> outcome(remedy.id(), remedied, before, readings, stopped))
                    .ifPresent(outcomes::add);
        }
        return List.copyOf(outcomes);
    }

    /** What the readings find without and with what a remedy does. */
    public Outcome outcome(String remedy, Remedied remedied, Plugins<Reading> readings) {
        Plan plan = new Plan(study, thumbnail, Fold.of(thumbnail, study.ratio()), reference, () -> false);
        Map<String, Finding> before = Evaluation.of(readings, plan, wishes);
        return outcome(remedy, remedied, before, readings, () -> false);
    }

    private Outcome outcome(
            String remedy,
            Remedied remedied,
            Map<String, Finding> before,
            Plugins<Reading> readings,
            BooleanSupplier stopped) {
        Thumbnail changed = remedied.thumbnail();
        Optional<Picture> seen = reference.filter(framed -> changed.frame().equals(thumbnail.frame()));
        Design design = Fold.of(changed, study.ratio());
        Plan then = new Plan(asIf(remedied), changed, design, seen, stopped);
        return new Outcome(remedy, remedied, before, Evaluation.of(readings, then, wishes));
    }

    /** The study with the changed thumbnail in place of the one it was made from: to be looked at. */
    public Study asIf(Remedied remedied) {
        return Edits.thumbnail(thumbnail.id(), old -> remedied.thumbnail()).apply(study);
    }

    /** The changed thumbnail as a copy with ids of its own and a name that no other has: to be added to the study. */
    public Thumbnail copy(Remedied remedied) {
        String name = Words.say("remedies.copy-name", thumbnail.name(), remedied.called());
        return Edits.copyOf(study, remedied.thumbnail(), study.freeName(name));
    }
}
