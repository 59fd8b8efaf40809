package umbercard.remedies;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import umbercard.door.Reading;
import umbercard.door.Remedied;
import umbercard.door.Remedy;
import umbercard.door.Trial;
import umbercard.geometry.Region;
import umbercard.readings.shapes.BigMasses;
import umbercard.readings.shapes.JoinedMasses;
import umbercard.readings.shapes.SmallPieces;
import umbercard.words.Message;

/**
 * Fills the gaps between masses of one value that are narrower than a width: the least of some widths that mends what is to be
 * looked at again; else the least that joins anything. A width at which dark and light come to more masses than before is left out.
 */
abstract class JoinMasses implements Remedy {
    /** As shares of the diagonal; common practice, no source. */
    private static final List<Double> WIDTHS = List.of(0.006, 0.01, 0.015, 0.02, 0.03, 0.04, 0.06);

    private final Value value;

    JoinMasses(Value value) {
        this.value = value;
    }

    @Override
    public Set<String> mends() {
        return Set.of("joined-masses", "big-masses", "small-pieces");
    }

    @Override
    public Optional<Remedied> tried(Trial trial) {
        Draft draft = Draft.of(trial);
        List<Reading> again = List.<Reading>of(new JoinedMasses(), new BigMasses(), new SmallPieces()).stream()
                .filter(reading -> trial.isAgain(Set.of(reading.id())))
                .toList();
        Optional<Remedied> least = Optional.empty();
        for (double width : WIDTHS) {
            if (trial.plan().stopped().getAsBoolean()) {
                break;
            }
            Optional<Draft> joined = joined(draft, width);
            if (joined.isPresent() && again.stream().noneMatch(joined.get()::isAgain)) {
                return joined.map(mended -> remedied(mended, width));
            }
            least = least.or(() -> joined.map(some -> remedied(some, width)));
        }
        return least;
    }

    private Optional<Draft> joined(Draft draft, double width) {
        List<Region> bridges =
                Bridges.of(draft.plan(), value, width * draft.plan().diagonal(), draft.hair());
        return Optional.of(bridges)
                .filter(some -> !some.isEmpty())
                .map(some -> draft.with(value, some))
                .filter(after -> value.masses(after.plan()).size()
                        < value.masses(draft.plan()).size())
                .filter(after -> after.masses() <= draft.masses());
    }

    private Remedied remedied(Draft joined, double width) {
        return new Remedied(
                Message.of("remedies.join-masses", value.words(), 100 * width),
                Message.of("remedies.join-masses.called"),
                joined.plan().thumbnail(),
                List.of());
    }
}
