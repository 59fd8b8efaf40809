package umbercard.desk.canvas;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import umbercard.desk.session.Session;
import umbercard.model.Mark;
import umbercard.model.Study;
import umbercard.model.Thumbnail;

/**
 * What of a study the notan card shows, to tell whether more than marks changed.
 *
 * @param study without its thumbnails
 * @param thumbnail the one on the card without its marks
 * @param marks those that are drawn
 */
record CardState(Study study, Optional<Thumbnail> thumbnail, List<Mark> marks) {
    static CardState of(Session session) {
        Optional<Thumbnail> thumbnail = session.thumbnail();
        return new CardState(
                session.seen().withThumbnails(List.of()),
                thumbnail.map(t -> t.withMarks(List.of())),
                thumbnail.map(Windows::visible).orElse(List.of()));
    }

    /** Where the card looks different from before, in frame units; empty where it may do so anywhere. */
    Optional<Rectangle2D> changedSince(CardState before) {
        boolean marksAlone = study.equals(before.study) && thumbnail.equals(before.thumbnail);
        return marksAlone ? Optional.of(Windows.between(before.marks, marks)) : Optional.empty();
    }
}
