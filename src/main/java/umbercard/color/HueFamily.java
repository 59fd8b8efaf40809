package umbercard.color;

import java.util.Locale;

/**
 * What a painter calls a color in a word: nine hues, brown, and the neutrals. Hues part at these angles h*ab (D65), which are
 * those of chips of the Munsell renotation (Newhall, Nickerson, Judd 1943) of middle value, adapted to D65 by Bradford:
 *
 * <table>
 * <caption>Where the families part</caption>
 * <tr><th>between</th><th>h*ab</th><th>from</th></tr>
 * <tr><td>red-violet, red</td><td>11.0°</td><td>half way from 5RP 6/6 to 5R 5/8</td></tr>
 * <tr><td>red, orange</td><td>44.9°</td><td>10R 5/10</td></tr>
 * <tr><td>orange, yellow</td><td>66.6°</td><td>7.5YR 5/4: yellow ochre lies just beyond</td></tr>
 * <tr><td>yellow, yellow-green</td><td>106.7°</td><td>half way from 5Y 6/2 to 5GY 5/6</td></tr>
 * <tr><td>yellow-green, green</td><td>140.4°</td><td>half way from 5GY 5/6 to 5G 5/8</td></tr>
 * <tr><td>green, blue-green</td><td>174.9°</td><td>half way from 5G 5/8 to 5BG 6/4</td></tr>
 * <tr><td>blue-green, blue</td><td>207.0°</td><td>half way from 5BG 6/4 to 5B 5/6</td></tr>
 * <tr><td>blue, violet</td><td>304.4°</td><td>three quarters from 5PB 6/6 to 5P 5/8: ultramarine is a blue</td></tr>
 * <tr><td>violet, red-violet</td><td>335.6°</td><td>half way from 5P 5/8 to 5RP 6/6</td></tr>
 * </table>
 *
 * <p>Brown is what is orange, or yellow up to 5Y 4/4 (90.4°), under Munsell value {@value #BROWN_BELOW}: common practice, no
 * source. Darker yellows beyond it keep their hue's name, as there is no one word for them.
 *
 * <p>Neutral is what has a chroma C*ab under {@value #NEUTRAL_BELOW}. A gray that is warm or cool by {@link Warmth} is called so; other
 * grays, and white and black whatever their cast, by value: black under 2.5, dark gray under 4.5, gray under 6.5, light gray
 * under 8.5, white from there (the ISCC-NBS limits, Kelly and Judd 1976, from memory). The chroma limit is common practice,
 * no source.
 */
public enum HueFamily {
    RED,
    ORANGE,
    YELLOW,
    YELLOW_GREEN,
    GREEN,
    BLUE_GREEN,
    BLUE,
    VIOLET,
    RED_VIOLET,
    BROWN,
    WHITE,
    LIGHT_GRAY,
    GRAY,
    DARK_GRAY,
    BLACK,
    WARM_GRAY,
    COOL_GRAY;

    /** A chroma C*ab under this is a neutral. */
    public static final double NEUTRAL_BELOW = 10;

    /** A dark orange is called brown under this Munsell value. */
    public static final double BROWN_BELOW = 5.5;

    private static final double RED_FROM = 11.0;
    private static final double[] UP_TO = {44.9, 66.6, 106.7, 140.4, 174.9, 207.0, 304.4, 335.6};
    private static final double BROWN_UP_TO = 90.4;

    /** The family of a color. */
    public static HueFamily of(Lab color) {
        if (color.chroma() < NEUTRAL_BELOW) {
            return neutral(color);
        }
        HueFamily hue = ofHue(color.hue());
        boolean brown = hue == ORANGE || (hue == YELLOW && color.hue() <= BROWN_UP_TO);
        return brown && color.value() < BROWN_BELOW ? BROWN : hue;
    }

    /** The family of a hue angle h*ab in degrees, 0..360: one of the nine hues. */
    public static HueFamily ofHue(double hue) {
        if (hue < RED_FROM) {
            return RED_VIOLET;
        }
        for (int i = 0; i < UP_TO.length; i++) {
            if (hue < UP_TO[i]) {
                return values()[i];
            }
        }
        return RED_VIOLET;
    }

    private static HueFamily neutral(Lab color) {
        double value = color.value();
        if (value < 2.5) {
            return BLACK;
        } else if (value >= 8.5) {
            return WHITE;
        } else if (Warmth.isWarm(color)) {
            return WARM_GRAY;
        } else if (Warmth.isCool(color)) {
            return COOL_GRAY;
        } else if (value < 4.5) {
            return DARK_GRAY;
        }
        return value < 6.5 ? GRAY : LIGHT_GRAY;
    }

    /** Whether it is white, black or a gray. */
    public boolean isNeutral() {
        return compareTo(BROWN) > 0;
    }

    /** The key of its words, for example {@code blue-green}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
