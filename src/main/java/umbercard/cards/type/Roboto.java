package umbercard.cards.type;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import umbercard.door.Drawing.Weight;
import umbercard.door.Type;

/**
 * The cards' typeface, Roboto, measured from the font files that come with the program, so that a card is laid alike on
 * every machine. Advance widths only: kerning would make text a little narrower, never wider. Safe for use by several
 * threads.
 */
public final class Roboto implements Type {
    private static final double MILLIMETERS_PER_POINT = 25.4 / 72;

    /** From one line to the next, in ems: a common practice for running text. */
    private static final double LEADING = 1.25;

    /** What another typeface may need for a character that this one lacks, in ems: a full square and a little. */
    private static final double LACKING = 1.25;

    private final Face regular;
    private final Face medium;

    private Roboto(Face regular, Face medium) {
        this.regular = regular;
        this.medium = medium;
    }

    /** The typeface; read once. */
    public static Type type() {
        return Holder.TYPE;
    }

    @Override
    public double width(String text, double points, Weight weight) {
        Face face = weight == Weight.MEDIUM ? medium : regular;
        double ems = 0;
        for (int i = 0; i < text.length(); i = text.offsetByCodePoints(i, 1)) {
            ems += face.advance(text.codePointAt(i));
        }
        return ems * points * MILLIMETERS_PER_POINT;
    }

    @Override
    public double height(double points) {
        return LEADING * points * MILLIMETERS_PER_POINT;
    }

    @Override
    public double capHeight(double points) {
        return regular.capHeight * points * MILLIMETERS_PER_POINT;
    }

    @Override
    public boolean covers(String text) {
        return text.codePoints().allMatch(regular::has);
    }

    private static final class Holder {
        static final Type TYPE = new Roboto(Face.read("Roboto-Regular.ttf"), Face.read("Roboto-Medium.ttf"));
    }

    /** The measures of one font file, in ems; characters beyond the first 65 536 count as lacking. */
    private static final class Face {
        private static final String FOLDER = "/com/formdev/flatlaf/fonts/roboto/";

        /** By code point; negative where the font has no glyph. */
        private final float[] advances = new float[Character.MAX_VALUE + 1];

        private final double capHeight;

        private Face(TrueTypeFont font) throws IOException {
            CmapLookup glyphs = font.getUnicodeCmapLookup();
            float em = font.getUnitsPerEm();
            for (int codePoint = 0; codePoint < advances.length; codePoint++) {
                int glyph = glyphs.getGlyphId(codePoint);
                advances[codePoint] = glyph == 0 ? -1 : font.getAdvanceWidth(glyph) / em;
            }
            capHeight = font.getOS2Windows().getCapHeight() / em;
        }

        static Face read(String file) {
            try (InputStream in = Roboto.class.getResourceAsStream(FOLDER + file)) {
                if (in == null) {
                    throw new IllegalStateException("the program was packed without " + file);
                }
                try (TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in))) {
                    return new Face(font);
                }
            } catch (IOException damaged) {
                throw new UncheckedIOException("cannot read " + file, damaged);
            }
        }

        boolean has(int codePoint) {
            return codePoint < advances.length && advances[codePoint] >= 0;
        }

        double advance(int codePoint) {
            return has(codePoint) ? advances[codePoint] : LACKING;
        }
    }
}
