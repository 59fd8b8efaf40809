package umbercard.cards;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.parser.DefaultPathHandler;
import org.apache.batik.parser.PathParser;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/** A written card, read back without any of the program: the JDK's parser and fonts, and a path parser. */
public final class WrittenCard {
    private static final String SVG = "http://www.w3.org/2000/svg";
    private static final FontRenderContext UNHINTED = new FontRenderContext(new AffineTransform(), true, true);

    private final Document document;

    private WrittenCard(Document document) {
        this.document = document;
    }

    public static WrittenCard read(byte[] bytes) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
            factory.setNamespaceAware(true);
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            DocumentBuilder builder = factory.newDocumentBuilder();
            return new WrittenCard(builder.parse(new ByteArrayInputStream(bytes)));
        } catch (ParserConfigurationException | SAXException | IOException broken) {
            throw new AssertionError("not well-formed", broken);
        }
    }

    public Element root() {
        return document.getDocumentElement();
    }

    /** Every element of that name, in document order; {@code *} for all. */
    public List<Element> elements(String name) {
        return elements(root(), name);
    }

    public static List<Element> elements(Element within, String name) {
        NodeList found = within.getElementsByTagNameNS(SVG, name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            elements.add((Element) found.item(i));
        }
        return elements;
    }

    /** The only element with that id. */
    public Element part(String id) {
        List<Element> found = elements("*").stream()
                .filter(element -> element.getAttribute("id").equals(id))
                .toList();
        if (found.size() != 1) {
            throw new AssertionError(found.size() + " parts called " + id);
        }
        return found.get(0);
    }

    public List<String> ids() {
        return elements("*").stream()
                .map(element -> element.getAttribute("id"))
                .filter(id -> !id.isEmpty())
                .toList();
    }

    /** The words of the element's own title. */
    public static String title(Element element) {
        return elements(element, "title").stream()
                .filter(title -> title.getParentNode().equals(element))
                .findFirst()
                .map(Element::getTextContent)
                .orElse("");
    }

    /** A number with or without {@code mm}. */
    public static double number(Element element, String attribute) {
        String written = element.getAttribute(attribute);
        return Double.parseDouble(written.endsWith("mm") ? written.substring(0, written.length() - 2) : written);
    }

    public static Rectangle2D box(Element rect) {
        return new Rectangle2D.Double(
                number(rect, "x"), number(rect, "y"), number(rect, "width"), number(rect, "height"));
    }

    /** The area of all paths under the element, each filled by the even-odd rule. */
    public static double evenOddArea(Element within) {
        return elements(within, "path").stream()
                .peek(path -> {
                    if (!path.getAttribute("fill-rule").equals("evenodd")) {
                        throw new AssertionError("not filled by the even-odd rule");
                    }
                })
                .mapToDouble(path -> area(new Area(path(path.getAttribute("d")))))
                .sum();
    }

    private static Path2D path(String data) {
        Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        PathParser parser = new PathParser();
        parser.setPathHandler(new DefaultPathHandler() {
            @Override
            public void movetoAbs(float x, float y) {
                path.moveTo(x, y);
            }

            @Override
            public void linetoAbs(float x, float y) {
                path.lineTo(x, y);
            }

            @Override
            public void curvetoCubicAbs(float x1, float y1, float x2, float y2, float x, float y) {
                path.curveTo(x1, y1, x2, y2, x, y);
            }

            @Override
            public void closePath() {
                path.closePath();
            }
        });
        parser.parse(data);
        return path;
    }

    /** By the surveyor's formula over the flattened outline. */
    private static double area(Area area) {
        double twice = 0;
        double[] at = new double[6];
        double firstX = 0;
        double firstY = 0;
        double x = 0;
        double y = 0;
        for (PathIterator points = area.getPathIterator(null, 1e-4); !points.isDone(); points.next()) {
            int kind = points.currentSegment(at);
            if (kind == PathIterator.SEG_MOVETO) {
                firstX = at[0];
                firstY = at[1];
            } else {
                double toX = kind == PathIterator.SEG_CLOSE ? firstX : at[0];
                double toY = kind == PathIterator.SEG_CLOSE ? firstY : at[1];
                twice += x * toY - toX * y;
                at[0] = toX;
                at[1] = toY;
            }
            x = at[0];
            y = at[1];
        }
        return Math.abs(twice) / 2;
    }

    /** Words on the card: where they begin, how wide the JDK measures them in the cards' typeface, all in millimeters. */
    public record Text(String words, double x, double baseline, double size, double width, Element element) {
        public double right() {
            return x + width;
        }

        public double points() {
            return size / 25.4 * 72;
        }
    }

    public List<Text> texts() {
        return texts(root());
    }

    public static List<Text> texts(Element within) {
        return elements(within, "text").stream().map(WrittenCard::text).toList();
    }

    private static Text text(Element element) {
        boolean medium = element.getAttribute("font-weight").equals("500");
        double size = number(element, "font-size");
        String words = element.getTextContent();
        Font font = (medium ? Fonts.MEDIUM : Fonts.REGULAR).deriveFont(1000f);
        double width = font.getStringBounds(words, UNHINTED).getWidth() / 1000 * size;
        return new Text(words, number(element, "x"), number(element, "y"), size, width, element);
    }

    /** The first text with exactly these words. */
    public Optional<Text> text(String words) {
        return texts().stream().filter(text -> text.words().equals(words)).findFirst();
    }

    private static final class Fonts {
        static final Font REGULAR = load("Roboto-Regular.ttf");
        static final Font MEDIUM = load("Roboto-Medium.ttf");

        private static Font load(String file) {
            try (InputStream in = WrittenCard.class.getResourceAsStream("/com/formdev/flatlaf/fonts/roboto/" + file)) {
                return Font.createFont(Font.TRUETYPE_FONT, in);
            } catch (IOException | FontFormatException missing) {
                throw new AssertionError(missing);
            }
        }
    }
}
