package umbercard.desk.canvas;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import umbercard.color.Lab;
import umbercard.geometry.Node;
import umbercard.geometry.Point;
import umbercard.model.Mark;
import umbercard.model.Thumbnail;
import umbercard.photo.Sampling;
import umbercard.picture.Picture;

/**
 * What lies under the pointer.
 *
 * @param reference the mean color of the photograph there, not squinted at; empty without one
 * @param dark whether the notan is dark there
 */
public record UnderPointer(Optional<Lab> reference, boolean dark) {

    /**
     * What lies at a place of the frame.
     *
     * @param framed the photograph in the frame, which it spans
     * @param disk the radius that is averaged over, in heights of the frame
     */
    static UnderPointer at(Point place, double disk, Optional<Picture> framed, Optional<Thumbnail> thumbnail) {
        return new UnderPointer(
                framed.flatMap(picture -> Sampling.disk(
                        picture, place.x() * picture.height(), place.y() * picture.height(), disk * picture.height())),
                thumbnail.filter(t -> isDark(t, place)).isPresent());
    }

    /** The last mark over a place says what it is; where none is, the ground does. */
    private static boolean isDark(Thumbnail thumbnail, Point place) {
        List<Mark> last = new ArrayList<>(Windows.visible(thumbnail));
        Collections.reverse(last);
        return last.stream()
                .filter(mark ->
                        mayCover(mark, place) && Shapes.of(mark.outline()).contains(place.x(), place.y()))
                .findFirst()
                .map(mark -> mark.kind() == Mark.Kind.LAY)
                .orElse(thumbnail.ground() == Thumbnail.Ground.DARK);
    }

    /** Whether a mark's points and pulls lie round a place: no curve leaves them. */
    private static boolean mayCover(Mark mark, Point place) {
        double left = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double top = Double.POSITIVE_INFINITY;
        double bottom = Double.NEGATIVE_INFINITY;
        for (Node node : mark.outline().nodes()) {
            for (Point point : List.of(node.at(), node.in(), node.out())) {
                left = Math.min(left, point.x());
                right = Math.max(right, point.x());
                top = Math.min(top, point.y());
                bottom = Math.max(bottom, point.y());
            }
        }
        return left <= place.x() && place.x() <= right && top <= place.y() && place.y() <= bottom;
    }
}
