package umbercard.store;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.batik.parser.DefaultPathHandler;
import org.apache.batik.parser.ParseException;
import org.apache.batik.parser.PathParser;
import org.apache.batik.util.io.NormalizingReader;
import umbercard.geometry.Cubic;
import umbercard.geometry.Point;

/**
 * Reads one subpath of moves, lines, cubics and a close, absolute or relative. The library's parser knows the grammar but
 * hands on numbers in single precision, too coarse for a grid of 1e-7; so the characters that it takes for a number are
 * kept and read once more in double precision.
 */
final class PathReader extends PathParser {
    /** Smooth and quadratic curves and arcs: the handler below would pass them over in silence. */
    private static final Pattern OTHER_COMMANDS = Pattern.compile("[sStTqQaA]");

    private final List<Point> ends = new ArrayList<>();
    private final List<Cubic> segments = new ArrayList<>();
    private final Deque<Double> numbers = new ArrayDeque<>();
    private final StringBuilder taken = new StringBuilder();
    private boolean closed;

    PathReader() {
        setPathHandler(new Handler());
    }

    /** The points in order: the start and the end of each segment. */
    List<Point> ends() {
        return ends;
    }

    /** The segment of that place, counted from 0, if it is there. */
    Optional<Cubic> segment(int place) {
        return place >= 0 && place < segments.size() ? Optional.of(segments.get(place)) : Optional.empty();
    }

    boolean closes() {
        return closed;
    }

    @Override
    public void parse(String data) throws ParseException {
        if (OTHER_COMMANDS.matcher(data).find()) {
            throw new ParseException("only moves, lines, cubics and a close are read", -1, -1);
        }
        super.parse(data);
    }

    @Override
    protected void doParse() throws ParseException, IOException {
        reader = new Recorder(reader);
        super.doParse();
    }

    @Override
    protected float parseFloat() throws ParseException, IOException {
        int start = taken.length() - 1;
        float coarse = super.parseFloat();
        int end = current == -1 ? taken.length() : taken.length() - 1;
        numbers.add(Double.parseDouble(taken.substring(start, end)));
        return coarse;
    }

    /** Keeps every character that the parser takes. */
    private final class Recorder extends NormalizingReader {
        private final NormalizingReader in;

        Recorder(NormalizingReader in) {
            this.in = in;
        }

        @Override
        public int read() throws IOException {
            int character = in.read();
            if (character != -1) {
                taken.append((char) character);
            }
            return character;
        }

        @Override
        public int getLine() {
            return in.getLine();
        }

        @Override
        public int getColumn() {
            return in.getColumn();
        }

        @Override
        public void close() throws IOException {
            in.close();
        }
    }

    private final class Handler extends DefaultPathHandler {
        private Point next(boolean relative) {
            double x = numbers.remove();
            double y = numbers.remove();
            return relative ? last().plus(x, y) : new Point(x, y);
        }

        private Point last() {
            if (ends.isEmpty() || closed) {
                throw new ParseException("one outline begins with a move and ends where it closes", -1, -1);
            }
            return ends.get(ends.size() - 1);
        }

        private void move() {
            if (!ends.isEmpty()) {
                throw new ParseException("more than one outline", -1, -1);
            }
            double x = numbers.remove();
            double y = numbers.remove();
            ends.add(new Point(x, y));
        }

        private void line(Point to) {
            add(new Cubic(last(), last(), to, to));
        }

        private void cubic(boolean relative) {
            add(new Cubic(last(), next(relative), next(relative), next(relative)));
        }

        private void add(Cubic segment) {
            segments.add(segment);
            ends.add(segment.end());
        }

        @Override
        public void movetoAbs(float x, float y) {
            move();
        }

        @Override
        public void movetoRel(float x, float y) {
            move();
        }

        @Override
        public void linetoAbs(float x, float y) {
            line(next(false));
        }

        @Override
        public void linetoRel(float x, float y) {
            line(next(true));
        }

        @Override
        public void linetoHorizontalAbs(float x) {
            line(new Point(numbers.remove(), last().y()));
        }

        @Override
        public void linetoHorizontalRel(float x) {
            line(last().plus(numbers.remove(), 0));
        }

        @Override
        public void linetoVerticalAbs(float y) {
            line(new Point(last().x(), numbers.remove()));
        }

        @Override
        public void linetoVerticalRel(float y) {
            line(last().plus(0, numbers.remove()));
        }

        @Override
        public void curvetoCubicAbs(float x1, float y1, float x2, float y2, float x, float y) {
            cubic(false);
        }

        @Override
        public void curvetoCubicRel(float x1, float y1, float x2, float y2, float x, float y) {
            cubic(true);
        }

        @Override
        public void closePath() {
            last();
            closed = true;
        }
    }
}
