package umbercard.model;

/**
 * How the reference is squinted at.
 *
 * @param way the kind of blur, by key: {@code gaussian}, or another that keeps the edges of large shapes; one that is not known
 *     is kept, and blurred as by {@code gaussian}
 * @param sigma the blur's standard deviation as a share of the frame's diagonal, 0 for none
 */
public record Squint(String way, double sigma) {
    public Squint {
        if (!(sigma >= 0) || sigma > 0.5) {
            throw new IllegalArgumentException("a squint is 0 to 0.5 of the diagonal: " + sigma);
        }
    }

    public static Squint gaussian(double sigma) {
        return new Squint("gaussian", sigma);
    }
}
