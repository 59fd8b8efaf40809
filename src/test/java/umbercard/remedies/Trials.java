package umbercard.remedies;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import umbercard.door.Finding;
import umbercard.door.Plan;
import umbercard.door.Trial;
import umbercard.geometry.Outline;
import umbercard.model.Mark;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.readings.Evaluation;
import umbercard.readings.Plans;
import umbercard.readings.Wishes;

/** Thumbnails to try remedies on, as the only one of their study. */
final class Trials {
    private Trials() {}

    static Study with(Thumbnail thumbnail) {
        return Plans.study().withThumbnails(List.of(thumbnail));
    }

    static Plan plan(Thumbnail thumbnail) {
        return Plans.plan(with(thumbnail), thumbnail);
    }

    static Trial of(Thumbnail thumbnail) {
        return of(with(thumbnail), thumbnail, OptionalDouble.empty());
    }

    static Trial of(Study study, Thumbnail thumbnail, OptionalDouble photographRatio) {
        Plan plan = Plans.plan(study, thumbnail);
        Map<String, Finding> findings = Evaluation.of(Evaluation.find(), plan, Wishes.NONE);
        return new Trial(plan, findings, rule -> Evaluation.limits(rule, study, Wishes.NONE), photographRatio);
    }

    static Thumbnail drawn(Outline... outlines) {
        Thumbnail blank = Plans.blank();
        for (Outline outline : outlines) {
            blank = laid(blank, Mark.Kind.LAY, outline);
        }
        return blank;
    }

    static Thumbnail laid(Thumbnail thumbnail, Mark.Kind kind, Outline outline) {
        List<Mark> marks = new ArrayList<>(thumbnail.marks());
        marks.add(new Mark("m" + (marks.size() + 1), kind, outline));
        return thumbnail.withMarks(marks);
    }

    /** What is dark in one of two thumbnails alone. */
    static double changed(Thumbnail before, Thumbnail after) {
        var one = plan(before).design().dark();
        var other = plan(after).design().dark();
        return one.minus(other).area() + other.minus(one).area();
    }
}
