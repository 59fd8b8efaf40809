package umbercard.photo;

import java.util.List;

/**
 * A few steps of value that a picture is seen in.
 *
 * @param borders the Munsell values between the steps, ascending
 * @param values the Munsell value that each step is shown in, from dark to light: one more than there are borders
 */
public record ValueSteps(List<Double> borders, List<Double> values) {
    public ValueSteps {
        borders = List.copyOf(borders);
        values = List.copyOf(values);
        if (values.size() != borders.size() + 1) {
            throw new IllegalArgumentException(borders.size() + " borders do not part " + values.size() + " steps");
        }
    }
}
