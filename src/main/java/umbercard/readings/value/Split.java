package umbercard.readings.value;

import java.util.Arrays;
import java.util.OptionalDouble;
import umbercard.color.MunsellValue;
import umbercard.color.Srgb;
import umbercard.door.Plan;
import umbercard.model.Reference;
import umbercard.picture.Picture;

/** The Munsell value below which the reference goes dark. */
final class Split {
    /** Where there is no reference, or all is of one value: the middle of the scale. */
    private static final double MIDDLE = 5;

    private Split() {}

    /** The painter's own, else the one that gives the thumbnail's dark share of the reference at hand, else the middle. */
    static double of(Plan plan) {
        OptionalDouble own = plan.study().reference().map(Reference::split).orElse(OptionalDouble.empty());
        double share = plan.design().darkShare();
        return own.isPresent()
                ? own.getAsDouble()
                : plan.reference()
                        .filter(picture -> share > 0 && share < 1)
                        .map(picture -> forShare(picture, share))
                        .orElse(MIDDLE);
    }

    private static double forShare(Picture picture, double share) {
        double[] rising = Arrays.stream(picture.pixels())
                .mapToDouble(rgb -> Srgb.luminance(rgb & 0xffffff))
                .sorted()
                .toArray();
        return MunsellValue.ofLuminance(rising[(int) Math.min(rising.length - 1L, Math.round(share * rising.length))]);
    }
}
