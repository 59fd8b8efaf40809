package umbercard.photo;

import java.awt.Image;
import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.MultiResolutionImage;
import java.awt.image.PixelGrabber;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import javax.imageio.ImageIO;
import umbercard.kernel.EventThread;

/** Writes photographs that come as images, without a file, so that a study can keep them. */
public final class PhotoWriter {
    private PhotoWriter() {}

    /**
     * The image as the bytes of a PNG file, pixel for pixel; of one that has several resolutions the largest.
     *
     * @throws IOException if it has no pixels, or they cannot be had
     * @throws IllegalStateException on the event thread
     */
    public static byte[] png(Image image) throws IOException {
        EventThread.refuse("writing a photograph");
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        if (!ImageIO.write(buffered(image), "png", bytes)) {
            throw new IOException("no PNG of such an image");
        }
        return bytes.toByteArray();
    }

    private static BufferedImage buffered(Image image) throws IOException {
        if (image instanceof MultiResolutionImage several) {
            List<Image> variants = several.getResolutionVariants();
            return loaded(variants.get(variants.size() - 1));
        }
        return image instanceof BufferedImage ready ? ready : loaded(image);
    }

    private static BufferedImage loaded(Image image) throws IOException {
        PixelGrabber grabber = new PixelGrabber(image, 0, 0, -1, -1, true);
        try {
            if (!grabber.grabPixels() || grabber.getWidth() < 1 || grabber.getHeight() < 1) {
                throw new IOException("an image without pixels");
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IOException("stopped while an image was loading", stopped);
        }
        int width = grabber.getWidth();
        int height = grabber.getHeight();
        // Forced, so that the pixels come in the default model, whatever the image's own.
        BufferedImage copy = new BufferedImage(
                width,
                height,
                opaque(grabber.getColorModel()) ? BufferedImage.TYPE_INT_RGB : BufferedImage.TYPE_INT_ARGB);
        copy.setRGB(0, 0, width, height, (int[]) grabber.getPixels(), 0, width);
        return copy;
    }

    private static boolean opaque(ColorModel model) {
        return !model.hasAlpha();
    }
}
