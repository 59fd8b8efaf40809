package umbercard.notes;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import umbercard.color.Lab;
import umbercard.color.Warmth;

/**
 * What a stick set out may be there for, whatever it covers: the warm and the cool one of two darks, and the accent, the
 * strongest color against the picture's own. That these belong on every tray is common practice, no source.
 */
enum Part {
    WARM_DARK,
    COOL_DARK,
    ACCENT;

    /** The least chroma C*ab of an accent. */
    private static final double CLEAR = 20;

    /** An accent stands at least so far off the picture's mean color, as a share of the farthest stick's distance. */
    private static final double NEARLY = 0.8;

    /** The places of the sticks at hand that can play it, the best first. */
    List<Integer> candidates(AtHand atHand, List<Goal> goals, double darkBelow) {
        if (this == ACCENT) {
            return accents(atHand, goals);
        }
        int sign = this == WARM_DARK ? 1 : -1;
        IntToDoubleFunction warmth =
                place -> sign * Warmth.of(atHand.sticks().get(place).color());
        return places(atHand)
                .filter(place -> atHand.value(place) < darkBelow && warmth.applyAsDouble(place) >= Warmth.NEUTRAL)
                .boxed()
                .sorted(Comparator.comparingDouble(place -> -warmth.applyAsDouble(place)))
                .toList();
    }

    private static List<Integer> accents(AtHand atHand, List<Goal> goals) {
        double all = goals.stream().mapToDouble(Goal::share).sum();
        double a = goals.stream()
                        .mapToDouble(goal -> goal.share() * goal.reached().a())
                        .sum()
                / all;
        double b = goals.stream()
                        .mapToDouble(goal -> goal.share() * goal.reached().b())
                        .sum()
                / all;
        IntToDoubleFunction off = place -> {
            Lab color = atHand.sticks().get(place).color();
            return Math.hypot(color.a() - a, color.b() - b);
        };
        double farthest = clear(atHand).mapToDouble(off).max().orElse(0);
        return clear(atHand)
                .filter(place -> off.applyAsDouble(place) >= NEARLY * farthest)
                .boxed()
                .sorted(Comparator.comparingDouble(place -> -off.applyAsDouble(place)))
                .toList();
    }

    private static IntStream clear(AtHand atHand) {
        return places(atHand).filter(place -> atHand.sticks().get(place).color().chroma() >= CLEAR);
    }

    private static IntStream places(AtHand atHand) {
        return IntStream.range(0, atHand.sticks().size());
    }

    String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
