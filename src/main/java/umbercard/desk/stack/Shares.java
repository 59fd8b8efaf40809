package umbercard.desk.stack;

import java.awt.EventQueue;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import umbercard.geometry.Eye;
import umbercard.kernel.Latest;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.notan.HatchFold;

/** The dark shares of the stack, measured in the background and remembered until a thumbnail changes. Event thread only. */
final class Shares {
    private record Measured(Thumbnail thumbnail, double ratio, double share) {}

    private record Stale(List<Thumbnail> thumbnails, double ratio) {}

    private final Map<String, Measured> known = new HashMap<>();

    /** Used on the worker's thread only; quick where the same thumbnail is measured again after a mark moved. */
    private final HatchFold folds = new HatchFold(Eye.DEFAULT);

    private final Latest<Stale, List<Measured>> worker;

    /** Calls {@code changed} when shares have been measured. */
    Shares(Runnable changed) {
        worker = new Latest<>(
                "dark shares",
                (stale, stopped) -> measure(stale),
                measured -> {
                    measured.forEach(m -> known.put(m.thumbnail().id(), m));
                    changed.run();
                },
                EventQueue::invokeLater);
    }

    private List<Measured> measure(Stale stale) {
        return stale.thumbnails().stream()
                .map(t -> new Measured(
                        t, stale.ratio(), folds.of(t, stale.ratio()).darkShare()))
                .toList();
    }

    /** Measures what is not known yet. */
    void follow(Study study) {
        known.keySet().retainAll(study.thumbnails().stream().map(Thumbnail::id).collect(Collectors.toSet()));
        List<Thumbnail> stale = study.thumbnails().stream()
                .filter(t -> !isKnown(t, study.ratio()))
                .toList();
        if (!stale.isEmpty()) {
            worker.ask(new Stale(stale, study.ratio()));
        }
    }

    private boolean isKnown(Thumbnail thumbnail, double ratio) {
        Measured measured = known.get(thumbnail.id());
        return measured != null
                && measured.ratio() == ratio
                && measured.thumbnail().ground() == thumbnail.ground()
                && measured.thumbnail().marks().equals(thumbnail.marks());
    }

    /** The share as last measured; empty before the first time. */
    OptionalDouble of(Thumbnail thumbnail) {
        Measured measured = known.get(thumbnail.id());
        return measured == null ? OptionalDouble.empty() : OptionalDouble.of(measured.share());
    }
}
