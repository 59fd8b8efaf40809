package umbercard.photo;

import java.util.List;

/**
 * A squint that melts small shapes but keeps the edges of large ones. First a Gaussian takes away what is smaller than its
 * sigma; then the edges that are left are made as sharp as they were, by rolling guidance: Q. Zhang, X. Shen, L. Xu, J. Jia,
 * "Rolling Guidance Filter", ECCV 2014. Each round is a bilateral filter of the picture whose weights come from what the last
 * round left, in L*, since edges are seen by it; what is averaged is linear light. The filter is done on a {@link
 * BilateralGrid}.
 */
final class EdgeKeeping {
    /** Rounds after the Gaussian; the edges hardly change after these. */
    private static final int ROUNDS = 3;

    private EdgeKeeping() {}

    /**
     * Squints at planes of one picture.
     *
     * @param planes what to smooth
     * @param luminance of the picture: where its edges are
     * @param sigma of the Gaussian whose blur small shapes get, in samples
     */
    static List<Plane> squint(List<Plane> planes, Plane luminance, double sigma) {
        Plane rolled = luminance.blurred(sigma);
        for (int i = 1; i < ROUNDS; i++) {
            rolled = new BilateralGrid(rolled, sigma, List.of(luminance))
                    .planes()
                    .get(0);
        }
        return new BilateralGrid(rolled, sigma, planes).planes();
    }
}
