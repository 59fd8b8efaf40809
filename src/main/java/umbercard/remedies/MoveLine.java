package umbercard.remedies;

import java.util.Comparator;
import java.util.Optional;
import java.util.Set;
import umbercard.door.Remedied;
import umbercard.door.Remedy;
import umbercard.door.Trial;
import umbercard.model.Level;
import umbercard.model.Thumbnail;
import umbercard.readings.Fraction;
import umbercard.readings.placement.HorizonHeight;

/** Moves a line one way to the nearest named fraction that the reading of its height lets stand. */
abstract class MoveLine implements Remedy {
    private static final String HEIGHT = "horizon-height";
    private static final String SHARE = "dark-share";

    /** Whether it raises the line or lowers it. */
    private final boolean up;

    MoveLine(boolean up) {
        this.up = up;
    }

    @Override
    public Set<String> mends() {
        return Set.of(HEIGHT, SHARE);
    }

    @Override
    public Optional<Remedied> tried(Trial trial) {
        Thumbnail thumbnail = trial.plan().thumbnail();
        return line(trial, thumbnail)
                .flatMap(line -> line.on(thumbnail)
                        .flatMap(level -> goal(level, trial))
                        .flatMap(goal -> LineMove.to(
                                goal.share(), line, trial.plan().study(), thumbnail, trial.photographRatio())));
    }

    /** Of a height that one should look at again the line that was measured; of a dark share the land edge rather. */
    private static Optional<CardLine> line(Trial trial, Thumbnail thumbnail) {
        boolean edge = !trial.isAgain(Set.of(HEIGHT)) && thumbnail.landEdge().isPresent();
        return edge ? Optional.of(CardLine.LAND_EDGE) : CardLine.leading(thumbnail);
    }

    private Optional<Fraction> goal(Level level, Trial trial) {
        double height = LineMove.height(level);
        double middle = trial.limits().apply(new HorizonHeight().rule()).get("middle");
        return LineMove.FRACTIONS.stream()
                .filter(fraction -> fraction.share() > height == up && !LineMove.isThere(level, fraction.share()))
                .filter(fraction -> Math.abs(fraction.share() - 0.5) > middle)
                .min(Comparator.comparingDouble(fraction -> Math.abs(fraction.share() - height)));
    }
}
