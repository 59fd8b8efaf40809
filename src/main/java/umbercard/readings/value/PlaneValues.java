package umbercard.readings.value;

import static umbercard.door.Finding.Verdict.DOES_NOT_APPLY;
import static umbercard.door.Finding.Verdict.HOLDS;
import static umbercard.door.Finding.Verdict.LOOK_AGAIN;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import umbercard.door.Figure;
import umbercard.door.Finding;
import umbercard.door.Limit;
import umbercard.door.Limits;
import umbercard.door.Plan;
import umbercard.door.Reading;
import umbercard.door.Rule;
import umbercard.model.Light;
import umbercard.model.Zone.Plane;
import umbercard.readings.Noted;
import umbercard.words.Message;
import umbercard.words.Words;

/**
 * Whether the planes of the landscape stand in the order of values that the light gives them: in open light the sky is lightest,
 * the flat ground next, then what slopes, what stands upright darkest; snow and a low sun have orders of their own. A plane's
 * value is the mean of its zones', by area; what takes up little of the frame tells nothing of a plane. Sources: {@code
 * readings.plane-values.source}.
 */
public final class PlaneValues implements Reading {
    private static final Rule RULE = new Rule(
            "plane-values",
            630,
            Map.of("over", new Limit(0.5, "steps", 0, 5), "least-share", new Limit(0.05, "share", 0, 0.5)),
            Words.say("readings.plane-values.source"));

    private static final List<Set<Plane>> OPEN =
            List.of(Set.of(Plane.SKY), Set.of(Plane.FLAT), Set.of(Plane.SLOPE), Set.of(Plane.UPRIGHT));
    private static final List<Set<Plane>> SNOW =
            List.of(Set.of(Plane.FLAT), Set.of(Plane.SLOPE), Set.of(Plane.SKY), Set.of(Plane.UPRIGHT));
    private static final List<Set<Plane>> LOW_SUN =
            List.of(Set.of(Plane.SKY), Set.of(Plane.UPRIGHT, Plane.SLOPE), Set.of(Plane.FLAT));

    @Override
    public Rule rule() {
        return RULE;
    }

    /** The planes from light to dark, those of one set in either order; none where the light has no order. */
    private static List<Set<Plane>> order(Light light) {
        return switch (light) {
            case CLEAR, OVERCAST, BACKLIT -> OPEN;
            case SNOW -> SNOW;
            case LOW_SUN -> LOW_SUN;
            case NIGHT, INDOORS -> List.of();
        };
    }

    /** @param rank its place from light to dark */
    private record Planed(Plane plane, int rank, double value, List<Noted> zones) {}

    /** @param over by how much the plane that should be darker is lighter, in steps */
    private record Pair(Planed lighter, Planed darker, double over) {}

    @Override
    public Finding read(Plan plan, Limits limits) {
        Light light = plan.study().light();
        Message lit = Message.of("trade.light." + light.key());
        List<Set<Plane>> order = order(light);
        if (order.isEmpty()) {
            return new Finding(DOES_NOT_APPLY, List.of(), Message.of("readings.plane-values.no-order", lit), List.of());
        }
        List<Planed> planes = planes(Noted.of(plan), order, limits.get("least-share"));
        Optional<Pair> worst = pairs(planes).stream().max(Comparator.comparingDouble(Pair::over));
        if (worst.isEmpty()) {
            return Finding.notSet(Message.of("readings.plane-values.few"));
        }
        Pair pair = worst.get();
        boolean again = pair.over() > limits.get("over") + Noted.HAIR;
        return new Finding(
                again ? LOOK_AGAIN : HOLDS,
                List.of(new Figure("over", pair.over(), "steps"), new Figure("planes", planes.size(), "count")),
                again
                        ? Message.of(
                                "readings.plane-values.again",
                                words(pair.darker().plane()),
                                Noted.said(pair.darker().value()),
                                words(pair.lighter().plane()),
                                Noted.said(pair.lighter().value()),
                                lit)
                        : Message.of("readings.plane-values.holds", lit),
                again ? List.of(Noted.place(zones(pair))) : List.of());
    }

    private static Message words(Plane plane) {
        return Message.of("trade.plane." + plane.key());
    }

    private static Noted[] zones(Pair pair) {
        List<Noted> zones = new ArrayList<>(pair.lighter().zones());
        zones.addAll(pair.darker().zones());
        return zones.toArray(Noted[]::new);
    }

    private static List<Planed> planes(List<Noted> zones, List<Set<Plane>> order, double least) {
        List<Planed> planes = new ArrayList<>();
        for (Plane plane : Plane.values()) {
            List<Noted> own = zones.stream()
                    .filter(zone -> zone.place().zone().plane() == plane)
                    .toList();
            double share =
                    own.stream().mapToDouble(zone -> zone.place().share()).sum();
            for (int rank = 0; rank < order.size(); rank++) {
                if (order.get(rank).contains(plane) && !own.isEmpty() && share >= least) {
                    double value = own.stream()
                                    .mapToDouble(zone -> zone.place().share() * zone.mean())
                                    .sum()
                            / share;
                    planes.add(new Planed(plane, rank, value, own));
                }
            }
        }
        return planes;
    }

    private static List<Pair> pairs(List<Planed> planes) {
        List<Pair> pairs = new ArrayList<>();
        for (Planed one : planes) {
            for (Planed other : planes) {
                if (one.rank() < other.rank()) {
                    pairs.add(new Pair(one, other, other.value() - one.value()));
                }
            }
        }
        return pairs;
    }
}
