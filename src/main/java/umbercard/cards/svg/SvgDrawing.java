package umbercard.cards.svg;

import java.util.Base64;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.apache.batik.anim.dom.SVGDOMImplementation;
import org.w3c.dom.Element;
import org.w3c.dom.svg.SVGDocument;
import umbercard.color.Lab;
import umbercard.door.Drawing;
import umbercard.geometry.Outline;
import umbercard.geometry.PathData;
import umbercard.geometry.Point;
import umbercard.geometry.Size;
import umbercard.picture.Picture;

/** Draws one side into an SVG document. Ids are checked: one that is no XML name, or comes twice, is a defect of the face. */
final class SvgDrawing implements Drawing {
    private static final String SVG = SVGDOMImplementation.SVG_NAMESPACE_URI;
    private static final String XLINK = "http://www.w3.org/1999/xlink";
    private static final String FONTS = "Roboto, Arial, 'Liberation Sans', sans-serif";
    private static final double MILLIMETERS_PER_POINT = 25.4 / 72;
    private static final Pattern NAME = Pattern.compile("[A-Za-z][A-Za-z0-9-]*");

    private final SVGDocument document;
    private final Set<String> ids = new HashSet<>();
    private Element into;

    SvgDrawing(double width, double height, String title, String description) {
        document = (SVGDocument) SVGDOMImplementation.getDOMImplementation().createDocument(SVG, "svg", null);
        into = document.getDocumentElement();
        set(into, "version", "1.1");
        set(into, "width", Numbers.write(width) + "mm");
        set(into, "height", Numbers.write(height) + "mm");
        set(into, "viewBox", "0 0 " + Numbers.write(width) + " " + Numbers.write(height));
        set(into, "font-family", FONTS);
        words(into, "title", title);
        if (!description.isBlank()) {
            words(into, "desc", description);
        }
        box(add("rect"), new Point(0, 0), new Size(width, height), "#ffffff");
    }

    SVGDocument document() {
        into.appendChild(document.createTextNode("\n"));
        return document;
    }

    @Override
    public void group(String id, String title, Runnable inside) {
        Element outer = into;
        into = named("g", id, title);
        inside.run();
        into.appendChild(document.createTextNode("\n"));
        into = outer;
    }

    @Override
    public void rectangle(String id, String title, Point corner, Size size, Lab color) {
        box(named("rect", id, title), corner, size, color.hex());
    }

    @Override
    public void fill(List<Outline> evenOdd, Lab color) {
        String data = PathData.of(evenOdd, Numbers.DECIMALS);
        if (!data.isEmpty()) {
            Element path = add("path");
            set(path, "d", data);
            set(path, "fill", color.hex());
            set(path, "fill-rule", "evenodd");
        }
    }

    @Override
    public void stroke(List<Outline> outlines, double width, Lab color) {
        String data = PathData.of(outlines, Numbers.DECIMALS);
        if (!data.isEmpty()) {
            Element path = add("path");
            set(path, "d", data);
            pen(path, width, color);
        }
    }

    @Override
    public void line(List<Point> points, double width, Lab color) {
        Element line = add("polyline");
        set(line, "points", Numbers.pairs(points));
        pen(line, width, color);
    }

    @Override
    public void text(String words, Point baseline, double points, Weight weight, Lab color) {
        Element text = words(into, "text", words);
        set(text, "x", Numbers.write(baseline.x()));
        set(text, "y", Numbers.write(baseline.y()));
        set(text, "font-size", Numbers.write(points * MILLIMETERS_PER_POINT));
        if (weight == Weight.MEDIUM) {
            set(text, "font-weight", "500");
        }
        set(text, "fill", color.hex());
    }

    @Override
    public void picture(Picture picture, Point corner, double width) {
        Element image = add("image");
        set(image, "x", Numbers.write(corner.x()));
        set(image, "y", Numbers.write(corner.y()));
        set(image, "width", Numbers.write(width));
        set(image, "height", Numbers.write(width / picture.ratio()));
        String data = "data:image/png;base64," + Base64.getEncoder().encodeToString(Png.of(picture));
        image.setAttributeNS(XLINK, "xlink:href", data);
    }

    private static void box(Element rect, Point corner, Size size, String color) {
        set(rect, "x", Numbers.write(corner.x()));
        set(rect, "y", Numbers.write(corner.y()));
        set(rect, "width", Numbers.write(size.width()));
        set(rect, "height", Numbers.write(size.height()));
        set(rect, "fill", color);
    }

    private static void pen(Element element, double width, Lab color) {
        set(element, "fill", "none");
        set(element, "stroke", color.hex());
        set(element, "stroke-width", Numbers.write(width));
    }

    private Element named(String element, String id, String title) {
        if (!NAME.matcher(id).matches() || !ids.add(id)) {
            throw new IllegalArgumentException("no new name for a part of the side: " + id);
        }
        Element part = add(element);
        set(part, "id", id);
        words(part, "title", title);
        return part;
    }

    private Element words(Element parent, String element, String words) {
        Element child = document.createElementNS(SVG, element);
        child.appendChild(document.createTextNode(Numbers.legible(words)));
        parent.appendChild(document.createTextNode("\n"));
        parent.appendChild(child);
        return child;
    }

    private Element add(String element) {
        Element child = document.createElementNS(SVG, element);
        into.appendChild(document.createTextNode("\n"));
        into.appendChild(child);
        return child;
    }

    private static void set(Element element, String name, String value) {
        element.setAttributeNS(null, name, value);
    }
}
