package umbercard.photo;

import java.util.Arrays;
import java.util.Optional;
import umbercard.geometry.Perspective;
import umbercard.geometry.Point;
import umbercard.geometry.Size;
import umbercard.picture.Picture;

/** The linear light of some of a photograph's pixels, channel by channel, and how many are clipped. */
final class LitPixels {
    /** A code that a camera gives to all that is too bright for it; one less for the rounding of JPEG. */
    private static final int FULL = 254;

    /** So many samples each way at most: the median of more gains nothing. */
    private static final int SAMPLES = 40;

    private final double[][] channels;
    private final boolean[] clipped;
    private int count;

    private LitPixels(int most) {
        channels = new double[3][most];
        clipped = new boolean[most];
    }

    /** The pixels under an even lattice on an upright rectangle of a flat thing; empty where some lie outside the picture. */
    static Optional<LitPixels> under(Picture picture, Perspective view, Point corner, Size size) {
        LitPixels pixels = new LitPixels(SAMPLES * SAMPLES);
        for (int j = 0; j < SAMPLES; j++) {
            for (int i = 0; i < SAMPLES; i++) {
                double right = size.width() * (i + 0.5) / SAMPLES;
                double down = size.height() * (j + 0.5) / SAMPLES;
                Point seen = view.seen(corner.plus(right, down));
                if (!isOn(picture, seen)) {
                    return Optional.empty();
                }
                pixels.add(picture.rgb((int) seen.x(), (int) seen.y()));
            }
        }
        return Optional.of(pixels);
    }

    /** The pixels of a disk; empty where some of it lies outside the picture. */
    static Optional<LitPixels> disk(Picture picture, Point middle, double radius) {
        if (!isOn(picture, middle.plus(-radius, -radius)) || !isOn(picture, middle.plus(radius, radius))) {
            return Optional.empty();
        }
        LitPixels pixels = new LitPixels(SAMPLES * SAMPLES);
        for (int j = 0; j < SAMPLES; j++) {
            for (int i = 0; i < SAMPLES; i++) {
                double right = (2 * i + 1.0) / SAMPLES - 1;
                double down = (2 * j + 1.0) / SAMPLES - 1;
                if (right * right + down * down <= 1) {
                    pixels.add(picture.rgb((int) (middle.x() + radius * right), (int) (middle.y() + radius * down)));
                }
            }
        }
        return Optional.of(pixels);
    }

    private static boolean isOn(Picture picture, Point place) {
        return place.x() >= 0 && place.y() >= 0 && place.x() < picture.width() && place.y() < picture.height();
    }

    private void add(int rgb) {
        int most = 0;
        for (int k = 0; k < 3; k++) {
            int code = rgb >> (16 - 8 * k) & 0xff;
            channels[k][count] = LinearLight.OF_BYTE[code];
            most = Math.max(most, code);
        }
        clipped[count++] = most >= FULL;
    }

    int count() {
        return count;
    }

    boolean isClipped(int i) {
        return clipped[i];
    }

    /** The linear channels of one of them, as the camera's curve undone gives them. */
    double[] rgb(int i, ToneCurve tone) {
        return new double[] {tone.linear(channels[0][i]), tone.linear(channels[1][i]), tone.linear(channels[2][i])};
    }

    /** The share, 0..1, with a channel that the camera could not hold. */
    double clippedShare() {
        int sum = 0;
        for (int i = 0; i < count; i++) {
            sum += clipped[i] ? 1 : 0;
        }
        return (double) sum / count;
    }

    /** The median of each channel. */
    double[] median() {
        return Arrays.stream(channels)
                .mapToDouble(channel -> Medians.of(Arrays.copyOf(channel, count)))
                .toArray();
    }

    /** How far the lightest and darkest tenths lie apart, as a share of the median, in the green channel. */
    double unevenness() {
        double[] green = Arrays.copyOf(channels[1], count);
        Arrays.sort(green);
        return (green[9 * count / 10] - green[count / 10]) / Math.max(1e-6, green[count / 2]);
    }
}
