package umbercard.cards.svg;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.function.BooleanSupplier;
import org.w3c.dom.DOMException;
import org.w3c.dom.bootstrap.DOMImplementationRegistry;
import org.w3c.dom.ls.DOMImplementationLS;
import org.w3c.dom.ls.LSException;
import org.w3c.dom.ls.LSOutput;
import org.w3c.dom.ls.LSSerializer;
import org.w3c.dom.svg.SVGDocument;
import umbercard.door.Pages;
import umbercard.door.Shelf;
import umbercard.door.Writer;
import umbercard.kernel.EventThread;
import umbercard.words.Words;

/**
 * Writes each side as an SVG 1.1 document at true size: width and height in millimeters, and a view box that makes one user
 * unit one millimeter. Text stays text. Two writes of the same pages give the same bytes. A single side is {@code
 * name.svg}; several are {@code name-1.svg}, {@code name-2.svg} and so on.
 */
public final class SvgWriter implements Writer {
    @Override
    public String id() {
        return "svg";
    }

    @Override
    public int rank() {
        return 10;
    }

    @Override
    public void write(Pages pages, Shelf shelf, BooleanSupplier stopped) throws IOException {
        EventThread.refuse("writing cards");
        int sides = pages.sides().size();
        for (int i = 0; i < sides && !stopped.getAsBoolean(); i++) {
            boolean single = sides == 1;
            String title = single ? pages.title() : Words.say("cards.side", pages.title(), i + 1, sides);
            SvgDrawing drawing = new SvgDrawing(pages.width(), pages.height(), title, pages.concept());
            pages.sides().get(i).accept(drawing);
            // Whole in memory first: a side that fails leaves no half a file.
            byte[] bytes = bytes(drawing.document());
            try (OutputStream out = shelf.open(pages.name() + (single ? "" : "-" + (i + 1)) + ".svg")) {
                out.write(bytes);
            }
        }
    }

    private static byte[] bytes(SVGDocument document) throws IOException {
        try {
            DOMImplementationLS saving = (DOMImplementationLS)
                    DOMImplementationRegistry.newInstance().getDOMImplementation("LS");
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            LSOutput output = saving.createLSOutput();
            output.setEncoding("UTF-8");
            output.setByteStream(bytes);
            LSSerializer serializer = saving.createLSSerializer();
            serializer.setNewLine("\n");
            serializer.write(document, output);
            return bytes.toByteArray();
        } catch (LSException | DOMException failure) {
            throw new IOException("the document could not be put into bytes", failure);
        } catch (ReflectiveOperationException missing) {
            throw new IllegalStateException("this Java has no XML serializer", missing);
        }
    }
}
