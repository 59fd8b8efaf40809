package umbercard.color;

import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A color in CIE 1976 L*a*b* under D65 (x 0.3127, y 0.3290), the 2° observer: lightness {@code l} 0..100, {@code a} and
 * {@code b} roughly -128..128. Finite, otherwise unbounded: a stick may lie outside the screen's gamut. The program works in
 * this; what was measured under another white is a {@link MeasuredLab} first.
 *
 * <p>Source: CIE 15 with the exact fractions 216/24389 and 24389/27.
 */
public record Lab(double l, double a, double b) {
    private static final Pattern HEX = Pattern.compile("#[0-9a-fA-F]{6}");

    public Lab {
        Cielab.check(l, a, b);
    }

    /** The color of an sRGB triple written as {@code #7a5c48}; empty for any other text. */
    public static Optional<Lab> ofHex(String text) {
        return HEX.matcher(text).matches()
                ? Optional.of(ofSrgb(Integer.parseInt(text.substring(1), 16)))
                : Optional.empty();
    }

    /** The color of an 8-bit sRGB triple, packed as {@code 0xRRGGBB}; higher bits are ignored. */
    public static Lab ofSrgb(int rgb) {
        return ofLinear(Srgb.linear(rgb >> 16 & 0xff), Srgb.linear(rgb >> 8 & 0xff), Srgb.linear(rgb & 0xff));
    }

    /** The color of linear light in sRGB's primaries, each 0..1. */
    public static Lab ofLinear(double red, double green, double blue) {
        return ofXyz(Xyz.ofLinear(red, green, blue));
    }

    /** From tristimulus values under D65. */
    public static Lab ofXyz(Xyz color) {
        Xyz lab = Cielab.of(color, WhitePoint.D65);
        return new Lab(lab.x(), lab.y(), lab.z());
    }

    /** The gray of a lightness 0..100. */
    public static Lab gray(double lightness) {
        return new Lab(lightness, 0, 0);
    }

    /** L*, 0..100, of a relative luminance 0..1. */
    public static double lightness(double luminance) {
        return Cielab.lightness(luminance);
    }

    /** Tristimulus values under D65. */
    public Xyz xyz() {
        return Cielab.xyz(l, a, b, WhitePoint.D65);
    }

    /** Lightness, chroma and hue angle. */
    public Lch lch() {
        return new Lch(l, chroma(), hue());
    }

    /**
     * The nearest 8-bit sRGB triple, packed as {@code 0xRRGGBB}; of a color outside the gamut that of {@link Gamut#nearest},
     * so that it keeps its lightness and hue.
     */
    public int srgb() {
        Xyz linear = Srgb.toLinear(Gamut.nearest(this).xyz());
        return Srgb.byteOf(linear.x()) << 16 | Srgb.byteOf(linear.y()) << 8 | Srgb.byteOf(linear.z());
    }

    /** {@link #srgb()} written as {@code #rrggbb}. */
    public String hex() {
        return String.format("#%06x", srgb());
    }

    /** Relative luminance Y, 0 black to 1 white. */
    public double luminance() {
        return Cielab.luminance(l);
    }

    /** C*ab: the distance from gray. */
    public double chroma() {
        return Math.hypot(a, b);
    }

    /** h*ab in degrees, 0 up to but not including 360; 0 for an exact gray. */
    public double hue() {
        double degrees = Math.toDegrees(StrictMath.atan2(b, a));
        double turned = degrees < 0 ? degrees + 360 : degrees;
        return turned < 360 ? turned : 0;
    }

    /** Munsell value, 0 black to 10 white, from the luminance; see {@link MunsellValue}. */
    public double value() {
        return MunsellValue.ofLuminance(luminance());
    }
}
