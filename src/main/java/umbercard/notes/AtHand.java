package umbercard.notes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import umbercard.model.Stick;

/** The sticks to choose from, in the order of the box, with the Munsell value of each worked out once. */
public final class AtHand {
    private final List<Stick> sticks;
    private final double[] values;

    /** Places of sticks in the box, dark to light, equally light ones in the order of the box; and their values. */
    private final int[] byValue;

    private final double[] rising;

    private AtHand(List<Stick> sticks) {
        this.sticks = List.copyOf(sticks);
        values = sticks.stream().mapToDouble(stick -> stick.color().value()).toArray();
        byValue = IntStream.range(0, values.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> values[i]))
                .mapToInt(Integer::intValue)
                .toArray();
        rising = IntStream.of(byValue).mapToDouble(i -> values[i]).toArray();
    }

    /** Those that the painter has; worn out and not owned ones are left out. */
    public static AtHand of(List<Stick> sticks) {
        return new AtHand(sticks.stream()
                .filter(stick -> stick.state() == Stick.State.OWNED)
                .toList());
    }

    /** All of them, whether the painter has them or not. */
    public static AtHand all(List<Stick> sticks) {
        return new AtHand(sticks);
    }

    public List<Stick> sticks() {
        return sticks;
    }

    public boolean isEmpty() {
        return sticks.isEmpty();
    }

    /** The Munsell value of the stick at a place in {@link #sticks()}, counted from 0. */
    double value(int place) {
        return values[place];
    }

    double darkest() {
        return rising[0];
    }

    double lightest() {
        return rising[rising.length - 1];
    }

    /** The places of sticks whose value is within reach of another, dark to light. */
    List<Integer> within(double value, double reach) {
        List<Integer> places = new ArrayList<>();
        for (int i = firstFrom(value - reach); i < rising.length && rising[i] <= value + reach; i++) {
            places.add(byValue[i]);
        }
        return places;
    }

    private int firstFrom(double value) {
        int low = 0;
        int high = rising.length;
        while (low < high) {
            int middle = (low + high) / 2;
            if (rising[middle] < value) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
