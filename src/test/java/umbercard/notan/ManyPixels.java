package umbercard.notan;

import java.util.Random;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import umbercard.model.Thumbnail;

/** Holds many drawings to the raster of an independent library; run by the profile {@code tries}, one for 10 000 of its tries. */
class ManyPixels {
    private static final long TRIES_EACH = 10_000;

    @Test
    void everyFoldAgreesWithItsRaster() {
        long seed = Long.getLong("seed", new SplittableRandom().nextLong());
        long rasters = 1 + Long.getLong("tries", 1_000_000) / TRIES_EACH;
        System.out.println(rasters + " rasters from seed " + seed);
        for (long i = 0; i < rasters; i++) {
            Random random = new Random(new SplittableRandom(seed + i).nextLong());
            Thumbnail.Ground ground = random.nextBoolean() ? Thumbnail.Ground.LIGHT : Thumbnail.Ground.DARK;
            FoldOnPixelsTest.check(Drawing.of(
                    "raster " + i + " from seed " + seed,
                    .7 + random.nextDouble(),
                    Drawings.thumbnail(ground, Drawings.marks(random, 1 + random.nextInt(40)))));
        }
    }
}
