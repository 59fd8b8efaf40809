package umbercard.notan;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.stream.Stream;
import umbercard.geometry.Point;
import umbercard.model.Mark;
import umbercard.model.Thumbnail;

/** A reference that no overlay and no flattening takes part in: rows through the drawn curves. */
public final class ByRows {
    private ByRows() {}

    /** The dark share by that many rows, each midway through its strip; with n rows off by about n^-1.5. */
    public static double darkShare(Thumbnail thumbnail, double ratio, int rows) {
        List<Reach> all = thumbnail.marks().stream().map(Reach::of).toList();
        double sum = 0;
        for (int i = 0; i < rows; i++) {
            double y = (i + .5) / rows;
            List<Mark> met = all.stream()
                    .filter(reach -> reach.meets(y))
                    .map(Reach::mark)
                    .toList();
            sum += Drawings.row(thumbnail.withMarks(met), ratio, y);
        }
        return sum / rows / ratio;
    }

    /** A mark and the rows that its points and pulls lie between. */
    private record Reach(Mark mark, double top, double bottom) {
        static Reach of(Mark mark) {
            DoubleSummaryStatistics heights = mark.outline().nodes().stream()
                    .flatMap(node -> Stream.of(node.in(), node.at(), node.out()))
                    .mapToDouble(Point::y)
                    .summaryStatistics();
            return new Reach(mark, heights.getMin(), heights.getMax());
        }

        boolean meets(double y) {
            return top <= y && y <= bottom;
        }
    }
}
