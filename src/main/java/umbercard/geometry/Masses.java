package umbercard.geometry;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * The masses of dark and of light in a frame, counted as an eye counts them.
 *
 * <p>With w the least width that the eye makes out:
 * <ol>
 *   <li>Gaps in the dark narrower than w are filled, then what is thinner than w is taken away (closing and opening of Serra
 *       1982, "Image analysis and mathematical morphology", with discs of radius w/2). What is left are the dark's bodies.
 *   <li>Bodies nearer than w to each other are one dark mass. So a neck thinner than w parts two, unless it is shorter than
 *       w: there the gap beside it joins them. Two pieces that touch in a point, or nearly, or overlap by a hair, are one.
 *   <li>Light is the rest: within the frame, every place further than w/2 from all bodies and from the frame's sides that can
 *       be reached from another without leaving such places belongs to the same light mass. So light that narrows below w is
 *       parted, just where the dark about it is joined, and dark lines thinner than w do not part light.
 * </ol>
 *
 * <p>Masses consist of the dark and the light as drawn, with their true borders, not of the rounded bodies. A connected piece
 * that reaches one mass only belongs to it with all its tips and twigs. One that reaches several is cut w/2 beyond their
 * bodies; what is left over belongs to the mass that it touches, if it touches just one; if not it is a neck. Necks, lines
 * and slivers thinner than w, and masses under the least area are a rest: shares of masses and rest add up to the whole.
 *
 * <p>The count changes only where a neck or a gap passes w, to about 1 % of it, or an area the least one. Bodies have round
 * corners, so between two right corners that point at each other the gap that passes is 0.6 w. The area of a neck goes from a
 * mass to the rest where it comes to touch a second one. Should the library that swells and shrinks fail, which
 * areas show, each connected piece is a mass.
 *
 * @param dark the largest first
 * @param light the largest first
 * @param darkRest all dark that belongs to no mass
 * @param lightRest all light that belongs to no mass
 */
public record Masses(List<Mass> dark, List<Mass> light, Region darkRest, Region lightRest) {
    public Masses {
        dark = List.copyOf(dark);
        light = List.copyOf(light);
    }

    /**
     * The masses of a design.
     *
     * @param dark what lies outside the frame is left out
     * @param ratio the frame's width, over zero; its height is 1
     */
    public static Masses of(Region dark, double ratio, Eye eye) {
        if (!(ratio > 0)) {
            throw new IllegalArgumentException("a frame has a width: " + ratio);
        }
        Region frame = Region.rectangle(0, 0, ratio, 1);
        Region within = dark.intersect(frame);
        Bodies bodies = Bodies.of(within, ratio, eye.widthIn(ratio));
        double least = eye.leastShare() * ratio;
        Allotment darks = Allotment.of(within, bodies.dark(), eye.widthIn(ratio));
        Allotment lights = Allotment.of(frame.minus(within), bodies.light(), eye.widthIn(ratio));
        return new Masses(
                masses(darks, least, ratio), masses(lights, least, ratio), rest(darks, least), rest(lights, least));
    }

    private static List<Mass> masses(Allotment allotted, double least, double whole) {
        return allotted.masses().stream()
                .filter(region -> region.area() >= least)
                .map(region -> new Mass(region, region.area() / whole))
                .sorted(Comparator.comparingDouble(Mass::share).reversed())
                .toList();
    }

    private static Region rest(Allotment allotted, double least) {
        Stream<Region> small = allotted.masses().stream().filter(region -> region.area() < least);
        return Region.together(Stream.concat(small, allotted.rest().stream()).toList());
    }
}
