package umbercard.spectra;

/**
 * Uneven light over a picture: one side darker, and the corners darker by the lens.
 *
 * @param slope what the light has lost at the lower right corner against the middle, as a share; the upper left gains it
 * @param corners what the lens loses in the corners, as a share
 */
public record Falloff(double slope, double corners) {
    public static final Falloff NONE = new Falloff(0, 0);

    /** The light at a pixel of a picture of that size; 1 in the middle. */
    public double at(double x, double y, int width, int height) {
        double across = 2 * x / width - 1;
        double down = 2 * y / height - 1;
        return (1 - slope * (across + down) / 2) * (1 - corners * (across * across + down * down) / 2);
    }
}
