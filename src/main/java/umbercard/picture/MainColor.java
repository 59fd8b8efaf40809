package umbercard.picture;

import java.util.List;
import java.util.OptionalDouble;
import umbercard.color.Lab;

/**
 * One of the few colors that a part of a picture is mostly made of.
 *
 * @param color the mean of its cluster in L*a*b*
 * @param share of all that was looked at, over 0 up to 1
 */
public record MainColor(Lab color, double share) {

    /** The mean Munsell value of colors, by their shares; empty where there are none. */
    public static OptionalDouble meanValue(List<MainColor> colors) {
        double shares = colors.stream().mapToDouble(MainColor::share).sum();
        return shares > 0
                ? OptionalDouble.of(colors.stream()
                                .mapToDouble(
                                        color -> color.share() * color.color().value())
                                .sum()
                        / shares)
                : OptionalDouble.empty();
    }
}
