package umbercard.geometry;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * SVG path data (SVG 1.1, chapter 8.3) of outlines and paths: absolute {@code M L C Z}, numbers rounded half to even to a
 * given number of decimals, without trailing zeros, a leading zero or an exponent. The same curves give the same text on
 * every machine. Coordinates that lie on a decimal grid come back from the text exactly if it has that many decimals.
 */
public final class PathData {
    private final StringBuilder text = new StringBuilder();
    private final int decimals;

    private PathData(int decimals) {
        if (decimals < 0) {
            throw new IllegalArgumentException("decimals are 0 or more: " + decimals);
        }
        this.decimals = decimals;
    }

    /** A closed subpath; empty for an outline without nodes. */
    public static String of(Outline outline, int decimals) {
        return of(List.of(outline), decimals);
    }

    /** A closed subpath for each outline, in order, without anything between them. */
    public static String of(List<Outline> outlines, int decimals) {
        PathData data = new PathData(decimals);
        outlines.forEach(data::closed);
        return data.text.toString();
    }

    /** An open subpath; empty for a path without nodes. What the first node pulls in and the last pulls out is not drawn. */
    public static String of(Path path, int decimals) {
        PathData data = new PathData(decimals);
        if (!path.nodes().isEmpty()) {
            data.command('M', path.nodes().get(0).at());
            path.segments().forEach(data::segment);
        }
        return data.text.toString();
    }

    private void closed(Outline outline) {
        if (outline.nodes().isEmpty()) {
            return;
        }
        command('M', outline.nodes().get(0).at());
        List<Cubic> segments = outline.segments();
        for (int i = 0; i < segments.size(); i++) {
            boolean closing = i == segments.size() - 1;
            if (!closing || !segments.get(i).isLine()) {
                segment(segments.get(i));
            }
        }
        text.append('Z');
    }

    private void segment(Cubic segment) {
        if (segment.isLine()) {
            command('L', segment.end());
        } else {
            command('C', segment.pullStart(), segment.pullEnd(), segment.end());
        }
    }

    private void command(char letter, Point... points) {
        char before = letter;
        for (Point point : points) {
            text.append(before).append(number(point.x())).append(' ').append(number(point.y()));
            before = ' ';
        }
    }

    private String number(double value) {
        String plain = new BigDecimal(value)
                .setScale(decimals, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString();
        return plain.startsWith("0.") ? plain.substring(1) : plain.startsWith("-0.") ? "-" + plain.substring(2) : plain;
    }
}
