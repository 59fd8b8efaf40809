package umbercard.notan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import umbercard.geometry.Cubic;
import umbercard.geometry.Node;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.model.Mark;
import umbercard.model.Thumbnail;

/**
 * Drawings as text, so that one that fails can be kept as a case. One thing a line; {@code #} begins a line that says where
 * the drawing came from:
 *
 * <pre>
 * # two copies, 1e-9 apart
 * ratio 1.25
 * ground light
 * dark-share 0.25 within 1.0E-9
 * pieces 1
 * lay sss M0.1 0.2L0.9 0.2L0.5 0.7Z
 * lift hidden rr M0.1 0.2C...Z
 * </pre>
 *
 * <p>A mark is its kind, {@code hidden} if it is, a letter for each point ({@code r}ound or {@code s}harp), and SVG path data
 * (SVG 1.1, chapter 8.3: absolute {@code M L C Z}). Numbers are written so that the very same doubles come back; studies round
 * theirs, which would lose what near-copies are about.
 */
final class DrawingText {
    private static final Pattern COMMAND = Pattern.compile("([MLCZ])([^MLCZ]*)");

    private DrawingText() {}

    static String written(Drawing drawing) {
        StringBuilder text = new StringBuilder();
        drawing.origin().forEach(line -> text.append("# ").append(line).append('\n'));
        text.append("ratio ").append(drawing.ratio()).append('\n');
        text.append("ground ").append(lower(drawing.thumbnail().ground())).append('\n');
        drawing.share()
                .ifPresent(share -> text.append("dark-share ")
                        .append(share)
                        .append(" within ")
                        .append(drawing.within())
                        .append('\n'));
        drawing.pieces()
                .ifPresent(pieces -> text.append("pieces ").append(pieces).append('\n'));
        for (Mark mark : drawing.marks()) {
            text.append(lower(mark.kind())).append(mark.hidden() ? " hidden " : " ");
            mark.outline().nodes().forEach(node -> text.append(node.round() ? 'r' : 's'));
            text.append(' ').append(path(mark.outline())).append('\n');
        }
        return text.toString();
    }

    private static String lower(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    private static String path(Outline outline) {
        if (outline.nodes().isEmpty()) {
            return "Z";
        }
        StringBuilder path =
                new StringBuilder("M").append(place(outline.nodes().get(0).at()));
        List<Cubic> segments = outline.segments();
        for (int i = 0; i < segments.size(); i++) {
            Cubic segment = segments.get(i);
            if (!segment.isLine()) {
                path.append('C')
                        .append(place(segment.pullStart()))
                        .append(' ')
                        .append(place(segment.pullEnd()))
                        .append(' ')
                        .append(place(segment.end()));
            } else if (i < segments.size() - 1) {
                path.append('L').append(place(segment.end()));
            }
        }
        return path.append('Z').toString();
    }

    private static String place(Point point) {
        return point.x() + " " + point.y();
    }

    /** The drawing that a text describes; refuses what is not of the form above. */
    static Drawing read(String name, String text) {
        List<String> origin = new ArrayList<>();
        List<Mark> marks = new ArrayList<>();
        double ratio = Double.NaN;
        Thumbnail.Ground ground = Thumbnail.Ground.LIGHT;
        OptionalDouble share = OptionalDouble.empty();
        double within = 0;
        OptionalInt pieces = OptionalInt.empty();
        for (String line : text.lines().filter(line -> !line.isBlank()).toList()) {
            String[] words = line.split(" ");
            switch (words[0]) {
                case "#" -> origin.add(line.substring(2));
                case "ratio" -> ratio = Double.parseDouble(words[1]);
                case "ground" -> ground = Thumbnail.Ground.valueOf(words[1].toUpperCase(Locale.ROOT));
                case "dark-share" -> {
                    share = OptionalDouble.of(Double.parseDouble(words[1]));
                    within = Double.parseDouble(words[3]);
                }
                case "pieces" -> pieces = OptionalInt.of(Integer.parseInt(words[1]));
                case "lay", "lift" -> marks.add(mark("m" + marks.size(), words));
                default -> throw new IllegalArgumentException(name + ": what is \"" + line + "\"?");
            }
        }
        if (!(ratio > 0)) {
            throw new IllegalArgumentException(name + ": a drawing needs a ratio");
        }
        Thumbnail thumbnail = Drawings.thumbnail(ground, marks);
        return new Drawing(name, List.copyOf(origin), ratio, thumbnail, share, within, pieces);
    }

    private static Mark mark(String id, String[] words) {
        boolean hidden = words[1].equals("hidden");
        int at = hidden ? 2 : 1;
        String path = String.join(" ", Arrays.asList(words).subList(at + 1, words.length));
        Mark.Kind kind = Mark.Kind.valueOf(words[0].toUpperCase(Locale.ROOT));
        return new Mark(id, kind, outline(words[at], path)).withHidden(hidden);
    }

    /** As many nodes as letters; what the last segment brings beyond them closes the outline. */
    private static Outline outline(String letters, String path) {
        List<Node> nodes = new ArrayList<>();
        Matcher commands = COMMAND.matcher(path);
        while (commands.find() && !commands.group(1).equals("Z")) {
            List<Point> points = points(commands.group(2));
            Point end = points.get(points.size() - 1);
            Point in = end;
            if (points.size() == 3) {
                Node before = nodes.get(nodes.size() - 1);
                nodes.set(nodes.size() - 1, new Node(before.at(), before.in(), points.get(0), before.round()));
                in = points.get(1);
            }
            if (nodes.size() < letters.length()) {
                nodes.add(new Node(end, in, end, letters.charAt(nodes.size()) == 'r'));
            } else {
                Node first = nodes.get(0);
                nodes.set(0, new Node(first.at(), in, first.out(), first.round()));
            }
        }
        if (nodes.size() != letters.length()) {
            throw new IllegalArgumentException(letters.length() + " letters for " + nodes.size() + " points");
        }
        return new Outline(nodes);
    }

    private static List<Point> points(String numbers) {
        double[] all = Arrays.stream(numbers.trim().split(" "))
                .mapToDouble(Double::parseDouble)
                .toArray();
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < all.length; i += 2) {
            points.add(new Point(all[i], all[i + 1]));
        }
        return points;
    }
}
