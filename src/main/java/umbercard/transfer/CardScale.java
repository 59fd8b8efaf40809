package umbercard.transfer;

import umbercard.model.Surface;

/**
 * How much larger the opening of the surface is than the frame on the card: 1 on the card is {@code times} on the surface.
 *
 * @param times over 0; under 1 where the card's frame is the larger
 */
public record CardScale(double times) {
    public CardScale {
        if (!(times > 0) || !Double.isFinite(times)) {
            throw new IllegalArgumentException("a scale is over zero: " + times);
        }
    }

    /**
     * The scale from a frame on a card to a surface's opening. Both have the same proportions, so the widths tell.
     *
     * @param frameWidth of the frame on the card, in millimeters
     */
    public static CardScale of(Surface surface, double frameWidth) {
        return new CardScale(surface.opening().width() * surface.unit().millimeters() / frameWidth);
    }

    /** A length in millimeters on the card, carried to the surface: in the surface's own unit. */
    public double onSurface(double millimeters, Surface.Unit unit) {
        return millimeters * times / unit.millimeters();
    }
}
