package umbercard.notan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import umbercard.geometry.Eye;
import umbercard.geometry.Masses;
import umbercard.geometry.Region;
import umbercard.geometry.Strokes;
import umbercard.model.Mark;
import umbercard.model.Thumbnail;

class MassCountTest {
    private static final double RATIO = 1.35;
    private static final Eye EYE = new Eye(.003, .002);

    private static Thumbnail drawing(Random random) {
        List<Mark> marks = new ArrayList<>();
        int count = 1 + random.nextInt(12);
        for (int i = 0; i < count; i++) {
            Mark.Kind kind = random.nextInt(3) > 0 ? Mark.Kind.LAY : Mark.Kind.LIFT;
            marks.add(Drawings.mark(
                    kind,
                    random.nextInt(3) == 0
                            ? Strokes.wandering(random, 3 + random.nextInt(20), .1 + .6 * random.nextDouble())
                            : Strokes.blob(random, 6 + random.nextInt(14), .05 + .25 * random.nextDouble())));
        }
        return Drawings.thumbnail(random.nextBoolean() ? Thumbnail.Ground.DARK : Thumbnail.Ground.LIGHT, marks);
    }

    /** The precise count, if it stays when the eye looks more or less closely, and at smaller or only at larger masses. */
    private static Optional<MassCounts> steadyCount(Region dark) {
        Stream<Eye> eyes = Stream.concat(
                DoubleStream.of(.5, .8, 1, 1.25, 1.8)
                        .mapToObj(factor -> new Eye(factor * EYE.width(), EYE.leastShare())),
                DoubleStream.of(.8, 1.25).mapToObj(factor -> new Eye(EYE.width(), factor * EYE.leastShare())));
        Set<MassCounts> counts = eyes.map(eye -> Masses.of(dark, RATIO, eye))
                .map(masses ->
                        new MassCounts(masses.dark().size(), masses.light().size()))
                .collect(Collectors.toSet());
        return counts.size() == 1 ? Optional.of(counts.iterator().next()) : Optional.empty();
    }

    @Test
    void countsAsThePreciseCountDoesWhereThatIsSteady() {
        int steady = 0;
        int other = 0;
        for (int seed = 0; seed < 60; seed++) {
            Thumbnail drawn = drawing(new Random(seed));
            Optional<MassCounts> precise = steadyCount(Fold.of(drawn, RATIO).dark());
            if (precise.isPresent()) {
                steady++;
                other +=
                        precise.get().equals(new HatchFold(EYE).of(drawn, RATIO).masses()) ? 0 : 1;
            }
        }

        assertThat(steady).isGreaterThan(45);
        assertThat(other).isLessThanOrEqualTo(2);
    }
}
