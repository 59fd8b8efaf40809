package umbercard.readings.mirrored;

/**
 * How far two orders of the same things agree: Kendall's tau with ties, 1 for the same order, -1 for the reverse, 0 where
 * neither prevails or all are tied.
 *
 * <p>Source: M. G. Kendall, The treatment of ties in ranking problems, Biometrika 33(3), 1945 (tau-b; from memory).
 */
final class RankAgreement {
    private RankAgreement() {}

    /** Tau of ranks given in pairs, two or more. */
    static double of(double[] one, double[] other) {
        int agreeing = 0;
        int untiedOne = 0;
        int untiedOther = 0;
        for (int i = 0; i < one.length; i++) {
            for (int k = i + 1; k < one.length; k++) {
                int first = Double.compare(one[i], one[k]);
                int second = Double.compare(other[i], other[k]);
                agreeing += first * second;
                untiedOne += first * first;
                untiedOther += second * second;
            }
        }
        return untiedOne == 0 || untiedOther == 0 ? 0 : agreeing / Math.sqrt((double) untiedOne * untiedOther);
    }
}
