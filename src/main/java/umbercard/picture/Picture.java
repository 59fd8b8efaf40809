package umbercard.picture;

/**
 * An upright photograph as plain values: sRGB, 8 bits a channel, packed as {@code 0xRRGGBB}, row after row from the upper
 * left. The pixels are shared, not copied: whoever makes a picture hands the array over and leaves it alone.
 */
public final class Picture {
    private final int width;
    private final int height;
    private final int[] pixels;

    public Picture(int width, int height, int[] pixels) {
        if (width < 1 || height < 1 || pixels.length != width * height) {
            throw new IllegalArgumentException(width + " x " + height + " pixels do not fit " + pixels.length);
        }
        this.width = width;
        this.height = height;
        this.pixels = pixels;
    }

    public int width() {
        return width;
    }

    public int height() {
        return height;
    }

    /** The array itself, not a copy; to be read only. */
    public int[] pixels() {
        return pixels;
    }

    /** The pixel at column {@code x} and row {@code y}, as {@code 0xRRGGBB}. */
    public int rgb(int x, int y) {
        return pixels[y * width + x] & 0xffffff;
    }

    /** Width divided by height. */
    public double ratio() {
        return (double) width / height;
    }
}
