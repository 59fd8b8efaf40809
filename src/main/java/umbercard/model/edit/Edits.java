package umbercard.model.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.model.Mark;
import umbercard.model.Study;
import umbercard.model.Thumbnail;

/** Changes of a study, each a pure function. One that names something the study does not have changes nothing. */
public final class Edits {
    /** The grid, in frame units, that coordinates snap to when an edit is made. */
    private static final double GRID = 1e7;

    private Edits() {}

    /** The outline with every coordinate on the grid of 1e-7. */
    public static Outline snapped(Outline outline) {
        return outline.mapped(p -> new Point(snapped(p.x()), snapped(p.y())));
    }

    /** Adding 0 makes of a negative zero, which a file does not keep, a plain one. */
    private static double snapped(double coordinate) {
        return Math.rint(coordinate * GRID) / GRID + 0.0;
    }

    public static UnaryOperator<Study> thumbnail(String id, UnaryOperator<Thumbnail> change) {
        return study -> study.withThumbnails(replaced(study.thumbnails(), t -> t.id().equals(id), change));
    }

    /** Adds a mark on top of the thumbnail's others. */
    public static UnaryOperator<Study> addMark(String thumbnail, Mark mark) {
        return thumbnail(thumbnail, t -> t.withMarks(added(t.marks(), mark.withOutline(snapped(mark.outline())))));
    }

    /** Adds a thumbnail after the others; the first one of a study is chosen. */
    public static UnaryOperator<Study> addThumbnail(Thumbnail thumbnail) {
        return study -> study.withThumbnails(added(study.thumbnails(), thumbnail))
                .withChosen(study.chosen().or(() -> Optional.of(thumbnail.id())));
    }

    /**
     * A copy of a thumbnail, with ids for itself and its marks that the study does not have; to be added.
     *
     * @param name that no other thumbnail has
     */
    public static Thumbnail copyOf(Study study, Thumbnail original, String name) {
        List<String> ids = study.newIds("m", original.marks().size());
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < ids.size(); i++) {
            marks.add(original.marks().get(i).withId(ids.get(i)));
        }
        return original.withId(study.newId("t")).withName(name).withMarks(marks);
    }

    public static UnaryOperator<Study> choose(String thumbnail) {
        return study -> study.thumbnail(thumbnail).isPresent() ? study.withChosen(Optional.of(thumbnail)) : study;
    }

    private static <T> List<T> added(List<T> list, T item) {
        List<T> longer = new ArrayList<>(list);
        longer.add(item);
        return longer;
    }

    private static <T> List<T> replaced(List<T> list, Predicate<T> which, UnaryOperator<T> change) {
        return list.stream()
                .map(item -> which.test(item) ? change.apply(item) : item)
                .toList();
    }
}
