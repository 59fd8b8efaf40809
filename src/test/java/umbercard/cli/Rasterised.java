package umbercard.cli;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.transcoder.TranscoderException;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.ImageTranscoder;
import org.apache.batik.transcoder.image.PNGTranscoder;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/** A written card as a general-purpose SVG renderer sees it, eight pixels to the millimeter. */
final class Rasterised {
    static final double PIXELS = 8;

    /** The levels of paper and ink on a notan card, 0..255. */
    private static final double PAPER = 0xff;

    private static final double INK = 0x14;

    private final BufferedImage image;
    private final Element frame;

    private Rasterised(BufferedImage image, Element frame) {
        this.image = image;
        this.frame = frame;
    }

    static Rasterised of(Path svg) throws IOException {
        return new Rasterised(image(svg), frame(svg));
    }

    /** The whole card. */
    static BufferedImage image(Path svg) throws IOException {
        PNGTranscoder renderer = new PNGTranscoder();
        renderer.addTranscodingHint(ImageTranscoder.KEY_PIXEL_UNIT_TO_MILLIMETER, (float) (1 / PIXELS));
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        try (InputStream in = Files.newInputStream(svg)) {
            renderer.transcode(new TranscoderInput(in), new TranscoderOutput(png));
        } catch (TranscoderException failure) {
            throw new IOException(failure);
        }
        return ImageIO.read(new ByteArrayInputStream(png.toByteArray()));
    }

    private static Element frame(Path svg) throws IOException {
        try {
            Document document =
                    DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(svg.toFile());
            NodeList rectangles = document.getElementsByTagName("rect");
            for (int i = 0; i < rectangles.getLength(); i++) {
                Element rectangle = (Element) rectangles.item(i);
                if (rectangle.getAttribute("id").equals("frame")) {
                    return rectangle;
                }
            }
        } catch (ParserConfigurationException | SAXException failure) {
            throw new IOException(failure);
        }
        throw new IOException("no frame in " + svg);
    }

    int width() {
        return image.getWidth();
    }

    int height() {
        return image.getHeight();
    }

    /** The share of the frame that is ink, by the mean level of the pixels whose centers it holds. */
    double darkShare() {
        double left = millimeters("x");
        double top = millimeters("y");
        double right = left + millimeters("width");
        double bottom = top + millimeters("height");
        double dark = 0;
        int count = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                double across = (x + 0.5) / PIXELS;
                double down = (y + 0.5) / PIXELS;
                if (across > left && across < right && down > top && down < bottom) {
                    dark += (PAPER - (image.getRGB(x, y) & 0xff)) / (PAPER - INK);
                    count++;
                }
            }
        }
        return dark / count;
    }

    private double millimeters(String attribute) {
        return Double.parseDouble(frame.getAttribute(attribute));
    }
}
