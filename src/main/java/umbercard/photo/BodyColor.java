package umbercard.photo;

import java.util.ArrayList;
import java.util.List;
import umbercard.color.Ciede2000;
import umbercard.color.Lab;

/**
 * The color of a thing's body, where it does not throw the lamp back.
 *
 * @param color the median of what is no highlight, coordinate by coordinate
 * @param spread the median CIEDE2000 of what is no highlight from that
 * @param shine the share, 0..1, that is clipped or lighter than shading makes a body
 */
record BodyColor(Lab color, double spread, double shine) {
    /** The body is taken to be as light as this share of its pixels at least: highlights may cover the rest. */
    private static final double BODY = 0.3;

    /** Lighter than the body by more than this is a highlight: a round stick's shading makes a tenth. */
    private static final double LIGHTER = 1.2;

    private static final double OFFSET = 0.02;

    static BodyColor of(LitPixels pixels, ToneCurve tone, WhiteCorrection correction) {
        List<Lab> colors = new ArrayList<>(pixels.count());
        double[] light = new double[pixels.count()];
        for (int i = 0; i < pixels.count(); i++) {
            Lab color = correction.color(pixels.rgb(i, tone));
            colors.add(color);
            light[i] = color.luminance();
        }
        double most = LIGHTER * Medians.quantile(light, BODY) + OFFSET;
        List<Lab> body = new ArrayList<>();
        for (int i = 0; i < light.length; i++) {
            if (!pixels.isClipped(i) && light[i] <= most) {
                body.add(colors.get(i));
            }
        }
        double shine = 1 - (double) body.size() / light.length;
        Lab color = Medians.of(body.isEmpty() ? colors : body);
        double[] off = body.stream()
                .mapToDouble(one -> Ciede2000.difference(one, color))
                .toArray();
        return new BodyColor(color, off.length == 0 ? 0 : Medians.of(off), shine);
    }
}
