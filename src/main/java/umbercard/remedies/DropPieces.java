package umbercard.remedies;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import umbercard.door.Remedied;
import umbercard.door.Remedy;
import umbercard.door.Trial;
import umbercard.geometry.Region;
import umbercard.readings.shapes.SmallPieces;
import umbercard.words.Message;

/** Lays the small lights over and lifts the small darks away; a dark that goes under with the light round it needs no lifting. */
public final class DropPieces implements Remedy {
    /** Pieces in pieces go from one round to the next. */
    private static final int ROUNDS = 8;

    @Override
    public String id() {
        return "drop-pieces";
    }

    @Override
    public int rank() {
        return 300;
    }

    @Override
    public Set<String> mends() {
        return Set.of("small-pieces");
    }

    @Override
    public Optional<Remedied> tried(Trial trial) {
        Draft draft = Draft.of(trial);
        double under = draft.limits().apply(new SmallPieces().rule()).get("under");
        int before = small(draft, Value.LIGHT, under).size()
                + small(draft, Value.DARK, under).size();
        for (int round = 0; round < ROUNDS && !trial.plan().stopped().getAsBoolean(); round++) {
            Value value = small(draft, Value.LIGHT, under).isEmpty() ? Value.DARK : Value.LIGHT;
            List<Region> small = small(draft, value, under);
            if (small.isEmpty()) {
                break;
            }
            Draft from = draft;
            draft = from.with(
                    value.other(),
                    small.stream().map(piece -> from.without(piece, value)).toList());
        }
        return Optional.of(draft)
                .filter(after -> before > 0)
                .map(after -> new Remedied(
                        Message.of("remedies.drop-pieces", before),
                        Message.of("remedies.drop-pieces.called"),
                        after.plan().thumbnail(),
                        List.of()));
    }

    private static List<Region> small(Draft draft, Value value, double under) {
        return value.masses(draft.plan()).stream()
                .filter(mass -> mass.share() < under)
                .map(mass -> mass.region())
                .toList();
    }
}
