package umbercard.cards;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import org.apache.batik.transcoder.SVGAbstractTranscoder;
import org.apache.batik.transcoder.TranscoderException;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.ImageTranscoder;

/** A written card as a general-purpose renderer puts it into pixels. */
public final class Print {
    private Print() {}

    /** What is not printed on is clear: 0 in every channel. */
    public static BufferedImage of(byte[] svg, double pixelsPerMillimeter) {
        BufferedImage[] made = new BufferedImage[1];
        ImageTranscoder transcoder = new ImageTranscoder() {
            @Override
            public BufferedImage createImage(int width, int height) {
                return new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
            }

            @Override
            public void writeImage(BufferedImage image, TranscoderOutput output) {
                made[0] = image;
            }
        };
        transcoder.addTranscodingHint(
                SVGAbstractTranscoder.KEY_PIXEL_UNIT_TO_MILLIMETER, (float) (1 / pixelsPerMillimeter));
        try {
            transcoder.transcode(new TranscoderInput(new ByteArrayInputStream(svg)), new TranscoderOutput());
        } catch (TranscoderException failure) {
            throw new AssertionError(failure);
        }
        return made[0];
    }
}
