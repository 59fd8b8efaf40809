package umbercard.photo;

import java.util.List;
import java.util.Optional;
import umbercard.color.Ciede2000;
import umbercard.color.Lab;
import umbercard.geometry.Outline;
import umbercard.picture.MainColor;
import umbercard.picture.Picture;

/**
 * What the reference is like within a zone.
 *
 * @param share of the frame that the zone takes up, over 0 up to 1
 * @param mean of its light
 * @param main its main colors, the largest share first: two to four, as many as are each {@value #LEAST_SHARE} of it or more
 *     and can be told apart (CIEDE2000 of {@value #APART} or more); one where it is of one color
 */
public record ZoneColors(double share, Lab mean, List<MainColor> main) {
    private static final int MOST = 4;
    private static final int LEAST = 2;
    private static final double LEAST_SHARE = 0.05;
    private static final double APART = 5;

    public ZoneColors {
        main = List.copyOf(main);
    }

    /**
     * The colors of a zone.
     *
     * @param framed the reference within the frame, which it spans
     * @param zone outlines in frame units, filled together by the non-zero rule
     * @return empty where no pixel's middle lies in it
     */
    public static Optional<ZoneColors> of(Picture framed, List<Outline> zone) {
        boolean[] inside = ZoneMask.of(zone, framed.width(), framed.height());
        return Sampling.mean(framed, inside).map(mean -> new ZoneColors(share(inside), mean, main(framed, inside)));
    }

    private static double share(boolean[] inside) {
        int count = 0;
        for (boolean one : inside) {
            count += one ? 1 : 0;
        }
        return (double) count / inside.length;
    }

    private static List<MainColor> main(Picture framed, boolean[] inside) {
        for (int most = MOST; most > LEAST; most--) {
            List<MainColor> colors = MainColors.of(framed, inside, most);
            if (areAllLarge(colors) && areAllApart(colors)) {
                return colors;
            }
        }
        return MainColors.of(framed, inside, LEAST);
    }

    private static boolean areAllLarge(List<MainColor> colors) {
        return colors.stream().allMatch(color -> color.share() >= LEAST_SHARE);
    }

    private static boolean areAllApart(List<MainColor> colors) {
        for (int i = 0; i < colors.size(); i++) {
            for (int k = i + 1; k < colors.size(); k++) {
                if (Ciede2000.difference(colors.get(i).color(), colors.get(k).color()) < APART) {
                    return false;
                }
            }
        }
        return true;
    }
}
