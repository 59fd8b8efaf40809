package umbercard.remedies;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import umbercard.door.Finding;
import umbercard.door.Limits;
import umbercard.door.Plan;
import umbercard.door.Reading;
import umbercard.door.Rule;
import umbercard.door.Trial;
import umbercard.geometry.Eye;
import umbercard.geometry.Outline;
import umbercard.geometry.Region;
import umbercard.geometry.Swelling;
import umbercard.model.Mark;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.model.edit.Edits;
import umbercard.notan.Fold;

/** A thumbnail to which marks are added one upon another, and what it then comes to. */
record Draft(Plan plan, Function<Rule, Limits> limits) {

    static Draft of(Trial trial) {
        return new Draft(trial.plan(), trial.limits());
    }

    Study study() {
        return plan.study();
    }

    double ratio() {
        return plan.design().ratio();
    }

    /** The least width that an eye makes out. */
    double hair() {
        return Eye.DEFAULT.widthIn(ratio());
    }

    /** Gives regions a value by marks on top of all others. */
    Draft with(Value value, List<Region> regions) {
        List<Outline> outlines = regions.stream()
                .flatMap(region -> region.outlinesOfPieces().stream())
                .map(Edits::snapped)
                .toList();
        List<Mark> marks = new ArrayList<>(plan.thumbnail().marks());
        List<String> ids = seen().newIds("m", outlines.size());
        for (int i = 0; i < outlines.size(); i++) {
            marks.add(new Mark(ids.get(i), value.kind(), outlines.get(i)));
        }
        Thumbnail changed = plan.thumbnail().withMarks(marks);
        Plan then = new Plan(study(), changed, Fold.of(changed, ratio()), Optional.empty(), plan.stopped());
        return new Draft(then, limits);
    }

    /** The study with the marks added so far, whose ids are taken. */
    private Study seen() {
        return Edits.thumbnail(plan.thumbnail().id(), old -> plan.thumbnail()).apply(study());
    }

    /** What a mark has to cover so that a part of one value goes: the part and a hair round it, but nothing else of its value. */
    Region without(Region part, Value value) {
        return Swelling.of(part, hair())
                .orElse(part)
                .minus(value.of(plan.design()).minus(part));
    }

    Finding read(Reading reading) {
        return reading.read(plan, limits.apply(reading.rule()));
    }

    boolean isAgain(Reading reading) {
        return read(reading).verdict() == Finding.Verdict.LOOK_AGAIN;
    }

    int masses() {
        return plan.masses().dark().size() + plan.masses().light().size();
    }
}
