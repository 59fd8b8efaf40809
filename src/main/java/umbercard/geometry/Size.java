package umbercard.geometry;

/** A width and a height, both over zero, in the unit that the holder states (cards: millimeters). */
public record Size(double width, double height) {
    public Size {
        if (!(width > 0) || !(height > 0) || !Double.isFinite(width) || !Double.isFinite(height)) {
            throw new IllegalArgumentException("a size is over zero both ways: " + width + " x " + height);
        }
    }

    /** Width divided by height. */
    public double ratio() {
        return width / height;
    }

    /** The same size lying on its longer side when {@code landscape}, standing on its shorter side otherwise. */
    public Size turned(boolean landscape) {
        return landscape == (width >= height) ? this : new Size(/* width= */ height, /* height= */ width);
    }
}
