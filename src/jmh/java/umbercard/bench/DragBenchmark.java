package umbercard.bench;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import umbercard.model.Thumbnail;

/** What one event of a drag costs: the figures of a drawing in which one mark lies elsewhere than the last time. */
@State(Scope.Thread)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class DragBenchmark {
    /** The way to fold. */
    @Param({"AREA", "OVERLAY", "EXACT", "HATCH"})
    public Method method = Method.EXACT;

    /** How many marks there are. */
    @Param({"10", "50", "200", "1000"})
    public int marks;

    /** How many nodes each has. */
    @Param({"50", "300"})
    public int nodes;

    /** Which of them is dragged. */
    @Param({"ORDINARY", "MASS"})
    public Scenes.Dragged dragged = Scenes.Dragged.ORDINARY;

    private Method.Folds folds = Method.EXACT.begin();
    private Thumbnail still = Thumbnail.empty("", "");
    private Thumbnail next = still;
    private int step;

    /** A drag under way. */
    @Setup(Level.Trial)
    public void drawing() {
        still = Scenes.thumbnail(marks, nodes, dragged);
        folds = method.begin();
        folds.of(still, Scenes.RATIO);
    }

    /** The hand moves on; an outline that was seen before does not come again. */
    @Setup(Level.Invocation)
    public void move() {
        next = Scenes.dragged(still, ++step);
    }

    /** One event. */
    @Benchmark
    @BenchmarkMode(Mode.SampleTime)
    public Figures event() {
        return folds.of(next, Scenes.RATIO);
    }

    /** The drawing known from another drag, whose mark has just been let go. */
    @State(Scope.Thread)
    public static class LetGo {
        private int press;

        /** Drags another mark and lets it go where it was. */
        @Setup(Level.Invocation)
        public void another(DragBenchmark drag) {
            press++;
            int place = Scenes.place(drag.marks);
            int other = (place + 1 + press % (drag.marks - 1)) % drag.marks;
            drag.folds.of(Scenes.dragged(drag.still, other, press), Scenes.RATIO);
            drag.folds.of(drag.still, Scenes.RATIO);
        }
    }

    /** The first event of a drag. */
    @Benchmark
    @BenchmarkMode(Mode.SingleShotTime)
    public Figures press(LetGo letGo) {
        return folds.of(next, Scenes.RATIO);
    }
}
