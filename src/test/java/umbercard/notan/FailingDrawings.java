package umbercard.notan;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import umbercard.geometry.Node;
import umbercard.geometry.Outline;
import umbercard.model.Mark;

/** Keeps drawings that break a law, made as small as they still break it, so that they can become cases. */
final class FailingDrawings {
    private static final Path FOLDER = Path.of("target", "failing-drawings");

    private FailingDrawings() {}

    /** Checks a drawing against all laws; one that breaks any is written down before the check fails. */
    static void check(Drawing drawing) {
        Laws.broken(drawing).ifPresent(broken -> {
            throw new AssertionError(kept(drawing, broken));
        });
    }

    /** Runs a property's checks of a drawing; one that fails is written down, as it is, before the property fails. */
    static void keeping(Drawing drawing, Runnable checks) {
        try {
            checks.run();
        } catch (AssertionError | RuntimeException failed) {
            String law = "a property of " + drawing.name() + " holds";
            throw new AssertionError(kept(drawing, new Laws.Broken(law, String.valueOf(failed))), failed);
        }
    }

    /**
     * Writes a failing drawing down.
     *
     * @return what was broken and where the drawing lies now
     */
    static String kept(Drawing drawing, Laws.Broken broken) {
        return kept(FOLDER, drawing, broken);
    }

    static String kept(Path folder, Drawing drawing, Laws.Broken broken) {
        Drawing small = shrunk(
                drawing,
                other -> Laws.broken(other)
                        .filter(b -> b.law().equals(broken.law()))
                        .isPresent());
        List<String> origin = new ArrayList<>(drawing.origin());
        origin.add("Breaks the law that " + broken.law() + ":");
        broken.what().lines().filter(line -> !line.isBlank()).limit(6).forEach(line -> origin.add("  " + line.trim()));
        String name = broken.law().replaceAll("[^a-z]+", "-") + "-"
                + Integer.toHexString(DrawingText.written(small).hashCode());
        Path file = folder.resolve(name + ".txt");
        try {
            Files.createDirectories(folder);
            Files.writeString(file, DrawingText.written(small.from(name, origin)));
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        return "Broken: " + broken.law() + ". " + broken.what() + "\nThe drawing is in " + file
                + "; move it to src/test/resources/umbercard/notan/cases to keep it as a case.";
    }

    /** Without the marks and points that it fails without. */
    static Drawing shrunk(Drawing drawing, Predicate<Drawing> fails) {
        Drawing small = drawing;
        for (int i = small.marks().size() - 1; i >= 0; i--) {
            List<Mark> fewer = new ArrayList<>(small.marks());
            fewer.remove(i);
            small = smaller(small, fewer, fails);
        }
        for (int i = 0; i < small.marks().size(); i++) {
            for (int k = small.marks().get(i).outline().nodes().size() - 1; k >= 0; k--) {
                List<Node> nodes =
                        new ArrayList<>(small.marks().get(i).outline().nodes());
                nodes.remove(k);
                List<Mark> marks = new ArrayList<>(small.marks());
                marks.set(i, marks.get(i).withOutline(new Outline(nodes)));
                small = smaller(small, marks, fails);
            }
        }
        return small;
    }

    private static Drawing smaller(Drawing drawing, List<Mark> marks, Predicate<Drawing> fails) {
        Drawing other = drawing.marked(marks);
        return fails.test(other) ? other : drawing;
    }
}
