package umbercard.cards.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;
import org.xml.sax.SAXParseException;
import org.xml.sax.helpers.DefaultHandler;
import umbercard.Studies;
import umbercard.cards.WrittenCard;
import umbercard.cards.type.Roboto;
import umbercard.color.Lab;
import umbercard.door.Drawing;
import umbercard.door.Drawing.Weight;
import umbercard.door.Pages;
import umbercard.door.Shelf;
import umbercard.geometry.Node;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.geometry.Size;
import umbercard.picture.Picture;

class SvgWriterTest {
    private static final Lab INK = Lab.ofSrgb(0x204060);
    private final Map<String, byte[]> files = new LinkedHashMap<>();
    private final Shelf shelf = name -> new ByteArrayOutputStream() {
        @Override
        public void close() {
            files.put(name, toByteArray());
        }
    };

    private static Pages pages(String title, String concept, List<Consumer<Drawing>> sides) {
        return new Pages("kiln", title, concept, 100, 60, sides, Roboto.type(), 300);
    }

    private WrittenCard written(Consumer<Drawing> side) throws IOException {
        new SvgWriter().write(pages("Kiln", "Why", List.of(side)), shelf, () -> false);
        return WrittenCard.read(files.values().iterator().next());
    }

    @Test
    void aSingleSideIsOneFile() throws IOException {
        written(drawing -> {});
        assertThat(files.keySet()).containsExactly("kiln.svg");
    }

    @Test
    void severalSidesAreNumbered() throws IOException {
        new SvgWriter().write(pages("Kiln", "", List.of(d -> {}, d -> {}, d -> {})), shelf, () -> false);
        assertThat(files.keySet()).containsExactly("kiln-1.svg", "kiln-2.svg", "kiln-3.svg");
        assertThat(WrittenCard.title(WrittenCard.read(files.get("kiln-2.svg")).root()))
                .isEqualTo("Kiln (2 of 3)");
    }

    @Test
    void stopsBetweenSides() throws IOException {
        int[] asked = {0};
        new SvgWriter().write(pages("Kiln", "", List.of(d -> {}, d -> {}, d -> {})), shelf, () -> asked[0]++ >= 1);
        assertThat(files.keySet()).containsExactly("kiln-1.svg");
    }

    @Test
    void titleAndConceptAreThereForScreenReaders() throws IOException {
        WrittenCard card = written(drawing -> {});
        assertThat(WrittenCard.title(card.root())).isEqualTo("Kiln");
        assertThat(card.elements("desc").get(0).getTextContent()).isEqualTo("Why");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>&\"']]>",
                "bell \u0007 and \u0000 null",
                "half \uD83C and \uFFFE",
                "\uD83C\uDFA8 雪の丘 \u202Eabc",
                "a\r\nb\tc"
            })
    void anyCharactersGiveAValidDocument(String nasty) throws IOException {
        Consumer<Drawing> side = drawing ->
                drawing.group("a", nasty, () -> drawing.text(nasty, new Point(1, 1), 9, Weight.REGULAR, INK));
        new SvgWriter().write(pages(nasty, nasty, List.of(side)), shelf, () -> false);
        WrittenCard card = WrittenCard.read(files.get("kiln.svg"));
        String legible = nasty.replaceAll("[\\x00-\\x1f]", " ").replaceAll("\uD83C(?!\uDFA8)|\uFFFE", "\uFFFD");
        assertThat(WrittenCard.title(card.root())).isEqualTo(legible);
        assertThat(card.texts().get(0).words()).isEqualTo(legible);
        assertThat(card.elements("script")).isEmpty();
    }

    @Test
    void twoWritesAreTheSameBytes() throws IOException {
        written(SvgWriterTest::everything);
        byte[] first = files.get("kiln.svg");
        written(SvgWriterTest::everything);
        assertThat(files.get("kiln.svg")).isEqualTo(first);
    }

    private static void everything(Drawing drawing) {
        drawing.group("part", "a part", () -> {
            drawing.rectangle("box", "a box", new Point(1, 2), new Size(3, 4), INK);
            drawing.fill(List.of(Studies.circle(20, 20, 5), Outline.rectangle(40, 10, 50, 20)), INK);
            drawing.stroke(List.of(Outline.rectangle(1, 1, 9, 9)), 0.2, INK);
            drawing.line(List.of(new Point(1, 2), new Point(3, 4)), 0.5, INK);
            drawing.text("words", new Point(5, 50), 12, Weight.MEDIUM, INK);
            drawing.picture(new Picture(2, 1, new int[] {0xff0000, 0x00ff00}), new Point(60, 10), 20);
        });
    }

    @Test
    void everyKindOfDrawingIsValidSvgOneOne() throws Exception {
        written(SvgWriterTest::everything);
        String svg = new String(files.get("kiln.svg"), StandardCharsets.UTF_8);
        String declared =
                svg.replaceFirst("<svg ", "<!DOCTYPE svg PUBLIC \"-//W3C//DTD SVG 1.1//EN\" \"svg11.dtd\"><svg ");
        DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
        factory.setValidating(true);
        DocumentBuilder builder = factory.newDocumentBuilder();
        builder.setEntityResolver((publicId, systemId) -> new InputSource(
                SvgWriterTest.class.getResourceAsStream("/org/apache/batik/dom/svg/resources/svg11-flat.dtd")));
        List<String> faults = new ArrayList<>();
        builder.setErrorHandler(new DefaultHandler() {
            @Override
            public void error(SAXParseException fault) {
                faults.add(fault.getMessage());
            }
        });
        builder.parse(new InputSource(new StringReader(declared)));
        assertThat(faults).isEmpty();
    }

    @Test
    void nothingPointsOutOfTheDocument() throws IOException {
        written(SvgWriterTest::everything);
        String svg = new String(files.get("kiln.svg"), StandardCharsets.UTF_8);
        assertThat(svg.replaceAll("xmlns(:xlink)?=\"[^\"]*\"", "")).doesNotContain("http", "url(", "<style", "script");
    }

    @Test
    void coordinatesHaveFourDecimalsAndNoExponent() throws IOException {
        Outline outline =
                Outline.polygon(List.of(new Point(1.0 / 3, 1e-9), new Point(1e4, -2e-9), new Point(12.5, 7.00004999)));
        WrittenCard card = written(drawing -> drawing.fill(List.of(outline), INK));
        assertThat(card.elements("path").get(0).getAttribute("d")).isEqualTo("M.3333 0L10000 0L12.5 7Z");
    }

    @Test
    void curvesStayCurvesAndTheLastLineIsLeftToTheClosing() throws IOException {
        Outline half = new Outline(List.of(
                new Node(new Point(0, 0), new Point(0, 0), new Point(0, 2), true),
                new Node(new Point(4, 0), new Point(4, 2), new Point(4, 0), true)));
        WrittenCard card = written(drawing -> drawing.fill(List.of(half), INK));
        assertThat(card.elements("path").get(0).getAttribute("d")).isEqualTo("M0 0C0 2 4 2 4 0Z");
    }

    @Test
    void anOutlineThatPassesItsFirstPointAgainKeepsAllItsCorners() throws IOException {
        Outline bow = Outline.polygon(List.of(
                new Point(0, 0),
                new Point(2, 0),
                new Point(2, 1),
                new Point(0, 0),
                new Point(-2, 0),
                new Point(-2, 1)));
        WrittenCard card = written(drawing -> drawing.fill(List.of(bow), INK));
        assertThat(card.elements("path").get(0).getAttribute("d")).isEqualTo("M0 0L2 0L2 1L0 0L-2 0L-2 1Z");
    }

    @Test
    void nothingToFillIsNoPath() throws IOException {
        WrittenCard card = written(drawing -> drawing.fill(List.of(), INK));
        assertThat(card.elements("path")).isEmpty();
    }

    @Test
    void typeIsInMillimeters() throws IOException {
        WrittenCard card = written(d -> d.text("snow", new Point(5, 6), 72, Weight.REGULAR, INK));
        Element text = card.elements("text").get(0);
        assertThat(text.getAttribute("font-size")).isEqualTo("25.4");
        assertThat(text.getAttribute("fill")).isEqualTo("#204060");
        assertThat(card.root().getAttribute("font-family"))
                .startsWith("Roboto, Arial")
                .endsWith("sans-serif");
    }

    @Test
    void aPictureIsCarriedWithin() throws IOException {
        int[] pixels = {0x102030, 0xff8000, 0x000000, 0xffffff, 0x00ff7f, 0x7f7f7f};
        WrittenCard card = written(d -> d.picture(new Picture(3, 2, pixels), new Point(10, 20), 30));
        Element image = card.elements("image").get(0);
        assertThat(image.getAttribute("height")).isEqualTo("20");
        String data = image.getAttributeNS("http://www.w3.org/1999/xlink", "href");
        assertThat(data).startsWith("data:image/png;base64,");
        byte[] png = Base64.getDecoder().decode(data.substring(data.indexOf(',') + 1));
        // The check value of an empty IEND chunk, as ISO/IEC 15948 defines it.
        assertThat(png).endsWith(new byte[] {'I', 'E', 'N', 'D', (byte) 0xae, 0x42, 0x60, (byte) 0x82});
        BufferedImage read = ImageIO.read(new ByteArrayInputStream(png));
        assertThat(read.getWidth()).isEqualTo(3);
        assertThat(read.getHeight()).isEqualTo(2);
        for (int i = 0; i < pixels.length; i++) {
            assertThat(read.getRGB(i % 3, i / 3) & 0xffffff).isEqualTo(pixels[i]);
        }
    }

    @Test
    void refusesAnIdThatComesTwice() {
        assertThatThrownBy(() -> written(d -> {
                    d.group("a", "one", () -> {});
                    d.group("a", "two", () -> {});
                }))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(files).isEmpty();
    }

    @Test
    void refusesAnIdThatIsNoName() {
        assertThatThrownBy(() -> written(d -> d.group("1 & 2", "one", () -> {})))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aSideThatFailsLeavesNoFile() {
        assertThatThrownBy(() -> written(d -> {
                    throw new IllegalStateException("no ink");
                }))
                .hasMessage("no ink");
        assertThat(files).isEmpty();
    }

    @Test
    void aFullShelfIsTold() {
        Shelf full = name -> new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException("full");
            }
        };
        assertThatThrownBy(() -> new SvgWriter().write(pages("Kiln", "", List.of(d -> {})), full, () -> false))
                .isInstanceOf(IOException.class)
                .hasMessage("full");
    }

    @Test
    void refusesTheEventThread() throws InterruptedException {
        AtomicReference<Throwable> refused = new AtomicReference<>();
        Thread events = new Thread(
                () -> {
                    try {
                        written(d -> {});
                    } catch (IOException | IllegalStateException failure) {
                        refused.set(failure);
                    }
                },
                "AWT-EventQueue-0");
        events.start();
        events.join();
        assertThat(refused.get()).isInstanceOf(IllegalStateException.class).hasMessageContaining("event thread");
        assertThat(files).isEmpty();
    }
}
