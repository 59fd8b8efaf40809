package umbercard.notes;

import java.util.Comparator;
import java.util.List;
import umbercard.color.Lab;
import umbercard.color.MunsellValue;
import umbercard.picture.MainColor;

/**
 * A main color of a zone that sticks are to cover.
 *
 * @param share of the picture
 * @param reached the color at a value that the sticks at hand have
 * @param value the Munsell value of that
 */
record Goal(ColoredZone zone, MainColor color, double share, Lab reached, double value) {

    /** The goals of a study, the largest share of the picture first. */
    static List<Goal> of(List<ColoredZone> zones, AtHand atHand) {
        return zones.stream()
                .flatMap(zone -> zone.colors().stream().map(color -> of(zone, color, atHand)))
                .sorted(Comparator.comparingDouble(goal -> -goal.share))
                .toList();
    }

    /** What lies beyond the darkest or the lightest stick takes its value, with a* and b* as they are; the rest stays. */
    private static Goal of(ColoredZone zone, MainColor color, AtHand atHand) {
        Lab wanted = color.color();
        double value = wanted.value();
        double within = Math.max(atHand.darkest(), Math.min(atHand.lightest(), value));
        Lab reached = within == value
                ? wanted
                : new Lab(Lab.lightness(MunsellValue.luminance(within)), wanted.a(), wanted.b());
        return new Goal(zone, color, zone.share() * color.share(), reached, within);
    }
}
