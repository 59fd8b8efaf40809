package umbercard.spectra;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/**
 * A camera: what it makes of a light and a surface, and how it writes it down. XYZ becomes linear sRGB by the four-digit
 * matrix printed in IEC 61966-2-1 and is encoded by that standard's curve. Whites are balanced as cameras do it, by a gain for
 * each of these channels; the program adapts in another space.
 *
 * @param light what it photographs under
 * @param balancedTo the white that its balance was set for
 * @param completeness how far the balance goes: 1 all the way, 0.8 as automatic ones do
 * @param exposure the linear level, 0..1, that the brightest channel of a surface throwing all light back comes to
 * @param tone what the camera makes of linear light 0..1 before encoding it; the identity for an honest one
 * @param seed of the noise
 */
public record Camera(
        Spectrum light,
        Spectrum balancedTo,
        double completeness,
        double exposure,
        DoubleUnaryOperator tone,
        long seed) {
    private static final double[][] SRGB = {
        {3.2406, -1.5372, -0.4986}, {-0.9689, 1.8758, 0.0415}, {0.0557, -0.2040, 1.0570}
    };
    /** Electrons that fill a pixel, and the noise of reading it in electrons. */
    private static final double FULL = 8000;

    private static final double READING = 6;
    private static final float QUALITY = 0.92f;

    /** Set to daylight once and for all. */
    public static Camera fixed(Spectrum light, double exposure, long seed) {
        return new Camera(light, Lights.D55, 1, exposure, c -> c, seed);
    }

    /** Balanced by itself, nearly all the way. */
    public static Camera asShot(Spectrum light, double exposure, long seed) {
        return new Camera(light, light, 0.8, exposure, c -> c, seed);
    }

    public Camera with(DoubleUnaryOperator otherTone) {
        return new Camera(light, balancedTo, completeness, exposure, otherTone, seed);
    }

    /** The linear channels of a surface, not yet clipped; white's brightest is at the exposure. */
    public double[] linear(Spectrum surface) {
        double[] white = channels(Observer.white(light));
        double most = Math.max(white[0], Math.max(white[1], white[2]));
        double[] rgb = channels(Observer.xyz(surface, light));
        for (int k = 0; k < 3; k++) {
            rgb[k] *= exposure / most;
        }
        return rgb;
    }

    private double[] channels(double[] xyz) {
        double[] from = times(SRGB, Observer.white(balancedTo));
        double[] rgb = times(SRGB, xyz);
        for (int k = 0; k < 3; k++) {
            rgb[k] /= Math.pow(from[k], completeness);
        }
        return rgb;
    }

    private static double[] times(double[][] m, double[] v) {
        double[] product = new double[3];
        for (int i = 0; i < 3; i++) {
            product[i] = m[i][0] * v[0] + m[i][1] * v[1] + m[i][2] * v[2];
        }
        return product;
    }

    /** What the lens throws on a pixel. */
    public interface View {
        /** Writes the linear channels at a pixel's middle into {@code rgb}. */
        void look(double x, double y, double[] rgb);
    }

    /** A JPEG file of the view, with noise, in eight bits. */
    public byte[] shoot(int width, int height, View view) {
        Random random = new Random(seed);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        double[] rgb = new double[3];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                view.look(x + 0.5, y + 0.5, rgb);
                int packed = 0;
                for (double channel : rgb) {
                    double noisy = channel
                            + random.nextGaussian() * Math.sqrt(Math.max(0, channel) * FULL + READING * READING) / FULL;
                    packed = packed << 8 | code(tone.applyAsDouble(Math.min(1, Math.max(0, noisy))));
                }
                image.setRGB(x, y, packed);
            }
        }
        return jpeg(image);
    }

    private static int code(double linear) {
        double encoded = linear <= 0.0031308 ? 12.92 * linear : 1.055 * Math.pow(linear, 1 / 2.4) - 0.055;
        return (int) Math.round(255 * Math.min(1, Math.max(0, encoded)));
    }

    private static byte[] jpeg(BufferedImage image) {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
            ImageWriteParam how = writer.getDefaultWriteParam();
            how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            how.setCompressionQuality(QUALITY);
            writer.setOutput(out);
            writer.write(null, new IIOImage(image, null, null), how);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}
