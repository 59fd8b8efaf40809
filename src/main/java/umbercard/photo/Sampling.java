package umbercard.photo;

import java.util.Optional;
import umbercard.color.Lab;
import umbercard.picture.Picture;

/** What a part of a picture looks like from afar: the mean of its light. Quick enough for the event thread. */
public final class Sampling {
    private Sampling() {}

    /**
     * The mean color over a disk: of the pixels whose middles lie in it, or of the one that its middle lies in where it is
     * smaller than that. Averaged in linear light.
     *
     * @param x the disk's middle, in pixels from the left edge
     * @param y likewise from the upper edge
     * @param radius in pixels, 0 or more
     * @return empty where the middle lies outside the picture
     */
    public static Optional<Lab> disk(Picture picture, double x, double y, double radius) {
        if (!(x >= 0 && y >= 0 && x < picture.width() && y < picture.height())) {
            return Optional.empty();
        }
        Light light = new Light();
        int last = Math.min(picture.height() - 1, (int) Math.floor(y + radius));
        for (int row = (int) Math.max(0, Math.floor(y - radius)); row <= last; row++) {
            double down = row + 0.5 - y;
            double room = radius * radius - down * down;
            if (room >= 0) {
                int from = (int) Math.max(0, Math.ceil(x - Math.sqrt(room) - 0.5));
                int to = (int) Math.min(picture.width() - 1.0, Math.floor(x + Math.sqrt(room) - 0.5));
                for (int column = from; column <= to; column++) {
                    light.add(picture.rgb(column, row));
                }
            }
        }
        if (light.count == 0) {
            light.add(picture.rgb((int) x, (int) y));
        }
        return Optional.of(light.mean());
    }

    /**
     * The mean color of some of a picture's pixels, averaged in linear light.
     *
     * @param inside for each pixel, row after row, whether it counts
     * @return empty where none does
     */
    public static Optional<Lab> mean(Picture picture, boolean[] inside) {
        Light light = new Light();
        for (int i = 0; i < inside.length; i++) {
            if (inside[i]) {
                light.add(picture.pixels()[i]);
            }
        }
        return light.count == 0 ? Optional.empty() : Optional.of(light.mean());
    }

    /** A sum of linear light. */
    private static final class Light {
        private double red;
        private double green;
        private double blue;
        private long count;

        void add(int rgb) {
            red += LinearLight.OF_BYTE[rgb >> 16 & 0xff];
            green += LinearLight.OF_BYTE[rgb >> 8 & 0xff];
            blue += LinearLight.OF_BYTE[rgb & 0xff];
            count++;
        }

        Lab mean() {
            return Lab.ofLinear(red / count, green / count, blue / count);
        }
    }
}
