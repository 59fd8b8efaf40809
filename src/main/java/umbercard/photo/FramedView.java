package umbercard.photo;

import umbercard.geometry.Point;
import umbercard.kernel.EventThread;
import umbercard.model.Frame;
import umbercard.model.Framing;
import umbercard.picture.Picture;

/**
 * The part of a photograph that lies in a frame, resampled in linear light: smoothly where it is enlarged, by the mean of
 * what a pixel covers where it is reduced: from the photograph halved as often as keeps two of its pixels or fewer to one of
 * the result, by several samples in each. Outside the photograph lies bare card.
 */
public final class FramedView {
    /** The color of bare card, as {@code 0xRRGGBB}. */
    public static final int BARE_CARD = 0xfdfcf8;

    private static final int CHUNK = 32;

    /** Samples each way in a pixel that the photograph's border crosses, so that a tilted border is no stair. */
    private static final int AT_BORDER = 4;

    /** The farthest that samples lie apart, in pixels of what they are taken from. */
    private static final double FARTHEST = 0.75;

    /** What rounding may put beyond the border, in pixels. */
    private static final double ROUNDING = 1e-6;

    private final Picture source;
    private final double wide;
    private final double high;
    private final int samples;
    private final double originX;
    private final double originY;
    private final double acrossX;
    private final double acrossY;
    private final double downX;
    private final double downY;
    private final double reachX;
    private final double reachY;
    private float red;
    private float green;
    private float blue;

    private FramedView(Picture photograph, Frame frame, double ratio, int width, int height) {
        Framing plane = new Framing(photograph.ratio(), ratio);
        Point origin = plane.onPhotograph(frame, new Point(0, 0));
        Point right = plane.onPhotograph(frame, new Point(ratio, 0));
        Point low = plane.onPhotograph(frame, new Point(0, 1));
        double pixel = frame.height() * photograph.height() * Math.max(ratio / width, 1.0 / height);
        Picture reduced = photograph;
        double part = 1;
        while (pixel * part > 2 - ROUNDING && Math.min(reduced.width(), reduced.height()) > 1) {
            reduced = Halves.of(reduced);
            part /= 2;
        }
        source = reduced;
        wide = part * photograph.width();
        high = part * photograph.height();
        originX = origin.x() * wide;
        originY = origin.y() * high;
        acrossX = (right.x() - origin.x()) * wide / width;
        acrossY = (right.y() - origin.y()) * high / width;
        downX = (low.x() - origin.x()) * wide / height;
        downY = (low.y() - origin.y()) * high / height;
        reachX = (Math.abs(acrossX) + Math.abs(downX)) / 2;
        reachY = (Math.abs(acrossY) + Math.abs(downY)) / 2;
        samples = pixel * part < 1 + ROUNDING ? 1 : (int) Math.ceil(pixel * part / FARTHEST);
    }

    /**
     * The framed part as a picture of {@code height} rows.
     *
     * @param ratio the frame's width divided by its height; the picture's width is {@code ratio * height} rounded, and spans
     *     the frame exactly
     * @throws IllegalStateException on the event thread
     */
    public static Picture of(Picture photograph, Frame frame, double ratio, int height) {
        EventThread.refuse("framing a photograph");
        int width = Math.max(1, (int) Math.round(ratio * height));
        FramedView view = new FramedView(photograph, frame, ratio, width, height);
        int[] pixels = new int[width * height];
        // Small tiles keep the part of the photograph that is read in the cache, however the frame is tilted.
        for (int top = 0; top < height; top += CHUNK) {
            for (int left = 0; left < width; left += CHUNK) {
                view.tile(pixels, width, left, top, Math.min(width, left + CHUNK), Math.min(height, top + CHUNK));
            }
        }
        return new Picture(width, height, pixels);
    }

    private void tile(int[] pixels, int width, int left, int top, int right, int bottom) {
        for (int y = top; y < bottom; y++) {
            for (int x = left; x < right; x++) {
                pixels[y * width + x] = pixel(x, y);
            }
        }
    }

    private int pixel(int x, int y) {
        int samples = samplesIn(
                originX + (x + 0.5) * acrossX + (y + 0.5) * downX, originY + (x + 0.5) * acrossY + (y + 0.5) * downY);
        if (samples == 0) {
            return BARE_CARD;
        }
        red = 0;
        green = 0;
        blue = 0;
        for (int j = 0; j < samples; j++) {
            double v = y + (j + 0.5) / samples;
            for (int i = 0; i < samples; i++) {
                double u = x + (i + 0.5) / samples;
                sample(originX + u * acrossX + v * downX, originY + u * acrossY + v * downY);
            }
        }
        float part = 1f / (samples * samples);
        return LinearLight.rgbOf(red * part, green * part, blue * part);
    }

    /** Samples each way in a pixel about that place: none beyond the photograph, more where its border crosses the pixel. */
    private int samplesIn(double x, double y) {
        double beyondX = Math.max(-x, x - wide);
        double beyondY = Math.max(-y, y - high);
        if (beyondX >= reachX || beyondY >= reachY) {
            return 0;
        }
        boolean within = beyondX <= ROUNDING - reachX && beyondY <= ROUNDING - reachY;
        return within ? samples : Math.max(samples, AT_BORDER);
    }

    /** Adds the light at a place of the photograph, its pixels being one unit wide. */
    private void sample(double x, double y) {
        if (x < 0 || y < 0 || x > wide || y > high) {
            add(BARE_CARD, 1);
            return;
        }
        double fromX = Math.min(source.width() - 1.0, Math.max(0, x - 0.5));
        double fromY = Math.min(source.height() - 1.0, Math.max(0, y - 0.5));
        int left = (int) fromX;
        int top = (int) fromY;
        int right = Math.min(source.width() - 1, left + 1);
        int bottom = Math.min(source.height() - 1, top + 1);
        float partX = (float) (fromX - left);
        float partY = (float) (fromY - top);
        add(source.rgb(left, top), (1 - partX) * (1 - partY));
        add(source.rgb(right, top), partX * (1 - partY));
        add(source.rgb(left, bottom), (1 - partX) * partY);
        add(source.rgb(right, bottom), partX * partY);
    }

    private void add(int rgb, float part) {
        red += part * LinearLight.OF_BYTE[rgb >> 16 & 0xff];
        green += part * LinearLight.OF_BYTE[rgb >> 8 & 0xff];
        blue += part * LinearLight.OF_BYTE[rgb & 0xff];
    }
}
