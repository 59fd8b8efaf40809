package umbercard.photo;

import java.util.ArrayList;
import java.util.List;

/**
 * A squint that melts small shapes but keeps the edges of large ones. First a Gaussian takes away what is smaller than its
 * sigma; then the edges that are left are made as sharp as they were, by rolling guidance: Q. Zhang, X. Shen, L. Xu, J. Jia,
 * "Rolling Guidance Filter", ECCV 2014. Each round is the guided filter of K. He, J. Sun, X. Tang, "Guided Image Filtering",
 * IEEE Trans. Pattern Analysis and Machine Intelligence 35(6), 2013: the picture smoothed along what the last round left.
 * The guide is L*, since edges are seen by it; what is averaged is linear light.
 */
final class EdgeKeeping {
    /** Rounds after the Gaussian; the edges hardly change after these. */
    private static final int ROUNDS = 3;

    /** Steps of L* / 100 whose edges are just about kept, halved and squared: the variance across such an edge. */
    private static final float EPSILON = 0.03f * 0.03f;

    private final Plane guide;
    private final Plane mean;
    private final Plane variance;
    private final LineBlur.Box box;

    /** The guided filter along a guide of luminance. */
    private EdgeKeeping(Plane luminance, LineBlur.Box box) {
        float[] lightness = Lightness.of(luminance.samples());
        for (int i = 0; i < lightness.length; i++) {
            lightness[i] /= 100;
        }
        this.box = box;
        guide = new Plane(luminance.width(), luminance.height(), lightness);
        mean = guide.mean(box);
        variance = guide.times(guide).mean(box);
        for (int i = 0; i < lightness.length; i++) {
            variance.samples()[i] -= mean.samples()[i] * mean.samples()[i];
        }
    }

    /**
     * Squints at planes of one picture.
     *
     * @param planes what to smooth
     * @param luminance of the picture: where its edges are
     * @param sigma of the Gaussian whose blur small shapes get, in samples
     */
    static List<Plane> squint(List<Plane> planes, Plane luminance, double sigma) {
        // The filter averages twice, so each box has half of the Gaussian's variance.
        LineBlur.Box box = LineBlur.Box.of(sigma * sigma / 2);
        Plane rolled = luminance.blurred(sigma);
        for (int i = 1; i < ROUNDS; i++) {
            rolled = new EdgeKeeping(rolled, box).filter(luminance);
        }
        EdgeKeeping last = new EdgeKeeping(rolled, box);
        List<Plane> squinted = new ArrayList<>();
        for (Plane plane : planes) {
            squinted.add(last.filter(plane));
        }
        return squinted;
    }

    private Plane filter(Plane plane) {
        float[] slope = guide.times(plane).mean(box).samples();
        float[] offset = plane.mean(box).samples();
        for (int i = 0; i < slope.length; i++) {
            float m = mean.samples()[i];
            slope[i] = (slope[i] - m * offset[i]) / (Math.max(0, variance.samples()[i]) + EPSILON);
            offset[i] -= slope[i] * m;
        }
        float[] slopes =
                new Plane(plane.width(), plane.height(), slope).mean(box).samples();
        float[] offsets =
                new Plane(plane.width(), plane.height(), offset).mean(box).samples();
        for (int i = 0; i < slopes.length; i++) {
            float light = slopes[i] * guide.samples()[i] + offsets[i];
            slopes[i] = Math.min(1, Math.max(0, light));
        }
        return new Plane(plane.width(), plane.height(), slopes);
    }
}
