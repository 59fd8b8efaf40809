package umbercard.color;

/**
 * How warm a color is, as a signed figure in units of L*a*b* (D65): its chroma times the cosine of its hue angle from the
 * warmest hue, orange. Positive is warm, negative cool, a gray is 0, and so are a green and a red-violet that stand square to
 * that axis. The warmest hue is that of Munsell's 5YR (renotation of 1943, chip 5YR 6/12 adapted to D65: 64.0°); the coolest,
 * opposite, is a blue between 5B and 10B. That orange is the warmest and blue the coolest, and that a figure under
 * {@value #NEUTRAL} is neither, is common practice, no source.
 */
public final class Warmth {
    /** The warmest hue, h*ab in degrees. */
    public static final double WARMEST = 64.0;

    /** What stays under this, either way, is neither warm nor cool. */
    public static final double NEUTRAL = 5;

    private static final double COSINE = StrictMath.cos(Math.toRadians(WARMEST));
    private static final double SINE = StrictMath.sin(Math.toRadians(WARMEST));

    private Warmth() {}

    /** The figure; its size is at most the chroma. */
    public static double of(Lab color) {
        return color.a() * COSINE + color.b() * SINE;
    }

    /** Whether the color is clearly warm. */
    public static boolean isWarm(Lab color) {
        return of(color) >= NEUTRAL;
    }

    /** Whether the color is clearly cool. */
    public static boolean isCool(Lab color) {
        return of(color) <= -NEUTRAL;
    }
}
