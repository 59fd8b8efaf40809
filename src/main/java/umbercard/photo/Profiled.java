package umbercard.photo;

import com.twelvemonkeys.imageio.color.ColorProfiles;
import java.awt.color.CMMException;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.ColorConvertOp;
import java.awt.image.DataBuffer;
import java.awt.image.IndexColorModel;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.util.Arrays;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * From the colors of an embedded profile (ICC.1) to sRGB, by the toolkit's color management. A profile that cannot be read,
 * or that does not fit the samples, counts as none; so does one that says what sRGB says, to within one step of 8 bits.
 */
final class Profiled {
    private static final Logger LOG = Logger.getLogger(Profiled.class.getName());
    private static final int LEVELS = 9;

    private final ColorConvertOp toSrgb;

    private Profiled(ColorConvertOp toSrgb) {
        this.toSrgb = toSrgb;
    }

    /** By a profile's bytes, for samples of so many colors. */
    static Optional<Profiled> of(byte[] profile, int colors) {
        try {
            return of(ColorProfiles.createProfile(profile), colors);
        } catch (IllegalArgumentException unreadable) {
            LOG.log(Level.FINE, "an embedded color profile cannot be read", unreadable);
            return Optional.empty();
        }
    }

    /** By a color space that a decoder gives; those that the toolkit brings along say no more than that nothing was said. */
    static Optional<Profiled> of(ColorSpace space, int colors) {
        boolean said = space instanceof ICC_ColorSpace
                && !space.isCS_sRGB()
                && !space.equals(ColorSpace.getInstance(ColorSpace.CS_GRAY));
        return said ? of(((ICC_ColorSpace) space).getProfile(), colors) : Optional.empty();
    }

    private static Optional<Profiled> of(ICC_Profile profile, int colors) {
        if (profile.getNumComponents() != colors) {
            return Optional.empty();
        }
        try {
            ICC_Profile srgb = ICC_Profile.getInstance(ColorSpace.CS_sRGB);
            Profiled converted = new Profiled(new ColorConvertOp(new ICC_Profile[] {profile, srgb}, null));
            return converted.changesNothing(colors) ? Optional.empty() : Optional.of(converted);
        } catch (CMMException | IllegalArgumentException unfit) {
            LOG.log(Level.FINE, "an embedded color profile cannot be followed", unfit);
            return Optional.empty();
        }
    }

    /** The colors of samples, without their transparency, as red, green and blue of sRGB at the same depth. */
    WritableRaster convert(Raster samples, int colors) {
        int[] bands = {0, 1, 2};
        Raster source = samples.getNumBands() == colors
                ? samples
                : samples.createChild(
                        samples.getMinX(),
                        samples.getMinY(),
                        samples.getWidth(),
                        samples.getHeight(),
                        0,
                        0,
                        Arrays.copyOf(bands, colors));
        WritableRaster srgb = Raster.createInterleavedRaster(
                samples.getTransferType() == DataBuffer.TYPE_USHORT ? DataBuffer.TYPE_USHORT : DataBuffer.TYPE_BYTE,
                samples.getWidth(),
                samples.getHeight(),
                3,
                null);
        return toSrgb.filter(source, srgb);
    }

    /** The palette in sRGB. */
    IndexColorModel convert(IndexColorModel palette) {
        int size = palette.getMapSize();
        int[] argb = new int[size];
        palette.getRGBs(argb);
        WritableRaster colors = Raster.createInterleavedRaster(DataBuffer.TYPE_BYTE, size, 1, 3, null);
        for (int i = 0; i < size; i++) {
            colors.setPixel(i, 0, new int[] {argb[i] >> 16 & 0xff, argb[i] >> 8 & 0xff, argb[i] & 0xff});
        }
        WritableRaster srgb = convert(colors, 3);
        for (int i = 0; i < size; i++) {
            int[] rgb = srgb.getPixel(i, 0, new int[3]);
            argb[i] = (argb[i] & 0xff000000) | (rgb[0] << 16) | (rgb[1] << 8) | rgb[2];
        }
        return new IndexColorModel(palette.getPixelSize(), size, argb, 0, palette.hasAlpha(), -1, DataBuffer.TYPE_BYTE);
    }

    private boolean changesNothing(int colors) {
        int count = colors == 1 ? 256 : LEVELS * LEVELS * LEVELS;
        WritableRaster tried = Raster.createInterleavedRaster(DataBuffer.TYPE_BYTE, count, 1, colors, null);
        for (int i = 0; i < count; i++) {
            tried.setPixel(
                    i,
                    0,
                    colors == 1 ? new int[] {i} : new int[] {level(i), level(i / LEVELS), level(i / LEVELS / LEVELS)});
        }
        WritableRaster srgb = convert(tried, colors);
        for (int i = 0; i < count; i++) {
            for (int band = 0; band < 3; band++) {
                if (Math.abs(srgb.getSample(i, 0, band) - tried.getSample(i, 0, Math.min(band, colors - 1))) > 1) {
                    return false;
                }
            }
        }
        return true;
    }

    private static int level(int place) {
        return 255 * (place % LEVELS) / (LEVELS - 1);
    }
}
