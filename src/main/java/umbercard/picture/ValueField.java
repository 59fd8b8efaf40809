package umbercard.picture;

/**
 * The light and dark of a picture: relative luminance Y in linear light, 0 black to 1 white, row after row from the upper
 * left. The samples are shared, not copied.
 */
public final class ValueField {
    private final int width;
    private final int height;
    private final float[] luminance;

    public ValueField(int width, int height, float[] luminance) {
        if (width < 1 || height < 1 || luminance.length != width * height) {
            throw new IllegalArgumentException(width + " x " + height + " samples do not fit " + luminance.length);
        }
        this.width = width;
        this.height = height;
        this.luminance = luminance;
    }

    public int width() {
        return width;
    }

    public int height() {
        return height;
    }

    /** The array itself, not a copy; to be read only. */
    public float[] luminance() {
        return luminance;
    }

    public float at(int x, int y) {
        return luminance[y * width + x];
    }
}
