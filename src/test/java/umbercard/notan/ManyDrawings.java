package umbercard.notan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import umbercard.model.Thumbnail;

/**
 * Folds a great many random drawings and holds each to the laws; run by the profile {@code tries}, not by {@code verify}.
 * System properties: {@code tries} (how many), {@code seed} (of the first; random if left out, and printed). Most drawings are
 * small, one in {@value #LARGER_EVERY} is larger. It does not stop at a drawing that breaks a law but writes it down and goes
 * on, and fails at the end.
 */
class ManyDrawings {
    private static final int LARGER_EVERY = 4000;
    private static final int MOST_KEPT = 50;
    private static final long TOLD_EVERY = 60_000_000_000L;

    private final long tries = Long.getLong("tries", 1_000_000);
    private final long seed = Long.getLong("seed", new SplittableRandom().nextLong());
    private final List<String> broken = new ArrayList<>();

    @Test
    void noDrawingBreaksALaw() {
        System.out.println(tries + " drawings from seed " + seed);
        long start = System.nanoTime();
        long told = start;
        for (long i = 0; i < tries && broken.size() < MOST_KEPT; i++) {
            check(i);
            long now = System.nanoTime();
            if (now - told > TOLD_EVERY || i + 1 == tries) {
                told = now;
                System.out.printf(
                        "%d drawings in %d s, %d broken%n", i + 1, (now - start) / 1_000_000_000, broken.size());
            }
        }
        assertThat(broken).isEmpty();
    }

    private void check(long i) {
        Drawing drawing = drawing(i);
        Optional<Laws.Broken> found =
                i % LARGER_EVERY == 0 ? Laws.broken(drawing) : Laws.broken(drawing, Math.floorMod(i, 1 << 20));
        found.ifPresent(law -> {
            String kept = FailingDrawings.kept(drawing, law);
            System.out.println(kept);
            broken.add(kept);
        });
    }

    /** Consecutive seeds of the library's generator start alike, so they are scrambled first. */
    private Drawing drawing(long i) {
        Random random = new Random(new SplittableRandom(seed + i).nextLong());
        Drawing drawing;
        if (i % LARGER_EVERY == 0) {
            Thumbnail.Ground ground = random.nextBoolean() ? Thumbnail.Ground.DARK : Thumbnail.Ground.LIGHT;
            drawing = Drawing.of(
                    "larger", 1.25, Drawings.thumbnail(ground, Drawings.marks(random, 2 + random.nextInt(12))));
        } else {
            drawing = Drawings.small(random);
        }
        return drawing.from(drawing.name(), List.of("Drawing " + i + " of a run of many from seed " + seed + "."));
    }
}
