package umbercard.notan;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import umbercard.geometry.Strokes;
import umbercard.model.Mark;
import umbercard.model.Thumbnail;

/**
 * Prints what one drag event costs: milliseconds of processor time of this thread for the design and its dark share, while
 * a mark wanders among others. To be run by hand; the numbers of marks may be given.
 */
final class DragCost {
    private static final double RATIO = 1.25;
    private static final int NODES = 50;
    private static final int EVENTS = 150;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private DragCost() {}

    public static void main(String[] args) {
        int[] sizes = args.length == 0
                ? new int[] {10, 50, 200}
                : Arrays.stream(args).mapToInt(Integer::parseInt).toArray();
        System.out.println("marks  radius     press    median       p99");
        for (int round = 0; round < 2; round++) {
            for (int n : sizes) {
                for (double radius : new double[] {.06, .15, .45}) {
                    run(n, radius);
                }
            }
        }
    }

    /** Ordinary marks, and among them one of the given radius that is dragged. */
    private static void run(int n, double radius) {
        Random random = new Random(n);
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            marks.add(mark(random, .04 + .12 * random.nextDouble()));
        }
        int dragged = n / 2;
        marks.set(dragged, mark(random, radius));
        FoldCache cache = new FoldCache();
        cache.of(Drawings.thumbnail(Thumbnail.Ground.LIGHT, marks), RATIO);
        double[] costs = new double[EVENTS + 1];
        for (int i = 0; i <= EVENTS; i++) {
            double angle = i / 10.0;
            Mark before = marks.get(dragged);
            marks.set(
                    dragged,
                    before.withOutline(
                            before.outline().mapped(p -> p.plus(.01 * Math.cos(angle), .01 * Math.sin(angle)))));
            long start = THREADS.getCurrentThreadCpuTime();
            cache.of(Drawings.thumbnail(Thumbnail.Ground.LIGHT, marks), RATIO).darkShare();
            costs[i] = (THREADS.getCurrentThreadCpuTime() - start) / 1e6;
        }
        double press = costs[0];
        double[] drags = Arrays.copyOfRange(costs, 1, costs.length);
        Arrays.sort(drags);
        System.out.printf(
                "%5d %7.2f %9.2f %9.2f %9.2f%n", n, radius, press, drags[EVENTS / 2], drags[EVENTS * 99 / 100]);
    }

    private static Mark mark(Random random, double radius) {
        Mark.Kind kind = random.nextInt(3) > 0 ? Mark.Kind.LAY : Mark.Kind.LIFT;
        return Drawings.mark(kind, Strokes.blob(random, NODES, radius));
    }
}
