package umbercard.photo;

import java.util.Arrays;
import java.util.List;
import umbercard.color.Lab;

/** Medians, of an even count the upper one. */
final class Medians {
    private Medians() {}

    /** Of one number or more, which are left as they are. */
    static double of(double[] numbers) {
        return quantile(numbers, 0.5);
    }

    /** The number that a share of them lies below. */
    static double quantile(double[] numbers, double share) {
        double[] sorted = numbers.clone();
        Arrays.sort(sorted);
        return sorted[Math.min(sorted.length - 1, (int) (share * sorted.length))];
    }

    /** Coordinate by coordinate. */
    static Lab of(List<Lab> colors) {
        return new Lab(
                of(colors.stream().mapToDouble(Lab::l).toArray()),
                of(colors.stream().mapToDouble(Lab::a).toArray()),
                of(colors.stream().mapToDouble(Lab::b).toArray()));
    }
}
