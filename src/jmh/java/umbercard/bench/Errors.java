package umbercard.bench;

import java.util.ArrayList;
import java.util.List;
import umbercard.bench.Scenes.Dragged;
import umbercard.model.Thumbnail;
import umbercard.notan.ByRows;

/** How far each method's dark share is from that of the drawn curves. */
final class Errors {
    private static final int ROWS = 32_768;
    private static final int EVENTS = 4;

    private Errors() {}

    /**
     * The largest error of the events of a drag.
     *
     * @param error as a share of the frame
     */
    record Worst(Method method, int marks, int nodes, double error) {}

    static List<Worst> measure() {
        List<Worst> worst = new ArrayList<>();
        for (int marks : new int[] {10, 50, 200}) {
            for (int nodes : marks > 50 ? new int[] {50} : new int[] {50, 300}) {
                worst.addAll(of(marks, nodes));
            }
        }
        return worst;
    }

    private static List<Worst> of(int marks, int nodes) {
        Thumbnail still = Scenes.thumbnail(marks, nodes, Dragged.ORDINARY);
        double[] share = new double[EVENTS];
        for (int i = 0; i < EVENTS; i++) {
            share[i] = ByRows.darkShare(Scenes.dragged(still, i), Scenes.RATIO, ROWS);
        }
        List<Worst> worst = new ArrayList<>();
        for (Method method : Method.values()) {
            if (!method.isBearable(marks, nodes)) {
                continue;
            }
            Method.Folds folds = method.begin();
            double error = 0;
            for (int i = 0; i < EVENTS; i++) {
                double found = folds.of(Scenes.dragged(still, i), Scenes.RATIO).share();
                error = Math.max(error, Math.abs(found - share[i]));
            }
            worst.add(new Worst(method, marks, nodes, error));
        }
        return worst;
    }
}
