package umbercard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import umbercard.cards.WrittenCard;
import umbercard.color.Ciede2000;
import umbercard.color.Lab;
import umbercard.geometry.Point;
import umbercard.model.Box;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.photo.Photographs;
import umbercard.picture.Picture;
import umbercard.spectra.Falloff;
import umbercard.spectra.Pinhole;
import umbercard.spectra.Trays;
import umbercard.store.Boxes;
import umbercard.store.Samples;
import umbercard.store.StudyFile;

/**
 * From the color card as it is written, rubbed with known colors and photographed, to a box with true colors. The card is drawn
 * by a general-purpose renderer, the places to rub are read from what it drew, and the view is worked out in space: nothing is
 * shared with what reads the photograph. The light is warm and uneven.
 */
class BoxRubbedTest {
    /** What card throws back of all light; printers lay white as bare card, and all else by so much darker. */
    private static final double PAPER = 0.88;

    private static final double[] LIGHT = {0.95, 0.88, 0.8};

    @TempDir
    private static Path folder;

    private static final Study STUDY = Samples.kilnHill().study();
    private static final List<Stick> RUBBED =
            STUDY.notes().stream().map(note -> note.stick()).distinct().toList();

    private static Path study = Path.of("");
    private static Path box = Path.of("");
    private static Path photo = Path.of("");
    private static String corners = "";
    private static Map<String, Integer> trueColors = Map.of();

    @BeforeAll
    static void printRubAndPhotograph() throws IOException {
        study = folder.resolve("hill.json");
        StudyFile.write(STUDY, study);
        box = folder.resolve("yard.json");
        Boxes.write(STUDY.box().orElseThrow(), box);
        Path cards = folder.resolve("cards");
        assertThat(Calls.run("cards", study, "-o", cards).code()).isZero();
        Path svg;
        try (var files = Files.list(cards)) {
            svg = files.filter(file -> file.getFileName().toString().contains("color"))
                    .findFirst()
                    .orElseThrow();
        }
        trueColors = IntStream.range(0, RUBBED.size())
                .boxed()
                .collect(Collectors.toMap(
                        i -> RUBBED.get(i).id(), i -> Color.HSBtoRGB(i * 0.19f, 0.5f, 0.25f + 0.05f * (i % 9))));
        BufferedImage card = rubbed(svg);
        Pinhole view = new Pinhole(
                1800,
                1300,
                new Point(card.getWidth() / 2.0 / Rasterised.PIXELS, card.getHeight() / 2.0 / Rasterised.PIXELS),
                0.25,
                0.06,
                500,
                9);
        photo = Files.write(folder.resolve("rubbed.jpg"), Photographs.jpeg(photographed(card, view)));
        corners = view.corners(card.getWidth() / Rasterised.PIXELS, card.getHeight() / Rasterised.PIXELS).stream()
                .map(p -> String.format(Locale.ROOT, "%.1f,%.1f", p.x(), p.y()))
                .collect(Collectors.joining(","));
    }

    /** The card with every patch rubbed, from the printed color to the printed gray; the last one is left bare. */
    private static BufferedImage rubbed(Path svg) throws IOException {
        WrittenCard written = WrittenCard.read(Files.readAllBytes(svg));
        BufferedImage image = Rasterised.image(svg);
        Graphics2D hand = image.createGraphics();
        for (int i = 0; i < STUDY.notes().size(); i++) {
            Stick stick = STUDY.notes().get(i).stick();
            if (stick.equals(RUBBED.get(RUBBED.size() - 1))) {
                continue;
            }
            Rectangle2D printed = WrittenCard.box(written.part("strip-" + (i + 1) + "-color"));
            double white = whiteBeside(image, printed);
            hand.setColor(new Color(trueColors.get(stick.id())));
            hand.fill(new Rectangle2D.Double(
                    Rasterised.PIXELS * printed.getMaxX(),
                    Rasterised.PIXELS * printed.getMinY(),
                    white,
                    Rasterised.PIXELS * printed.getHeight()));
        }
        hand.dispose();
        return image;
    }

    /** How many pixels of white there are to the right of a printed color. */
    private static double whiteBeside(BufferedImage card, Rectangle2D printed) {
        int y = (int) (Rasterised.PIXELS * printed.getCenterY());
        int from = (int) Math.ceil(Rasterised.PIXELS * printed.getMaxX()) + 1;
        int x = from;
        while ((card.getRGB(x, y) & 0xff) > 0xf0) {
            x++;
        }
        return x - from + 1;
    }

    private static Picture photographed(BufferedImage card, Pinhole view) {
        double[] place = new double[2];
        Falloff falloff = new Falloff(0.12, 0.06);
        return Photographs.picture(view.width(), view.height(), (x, y) -> {
            view.place(x + 0.5, y + 0.5, place);
            int across = (int) Math.floor(Rasterised.PIXELS * place[0]);
            int down = (int) Math.floor(Rasterised.PIXELS * place[1]);
            boolean on = across >= 0 && down >= 0 && across < card.getWidth() && down < card.getHeight();
            int rgb = on ? card.getRGB(across, down) : 0x303030;
            double light = falloff.at(x, y, view.width(), view.height());
            int seen = 0;
            for (int k = 0; k < 3; k++) {
                double reflected = PAPER * linear(rgb >> (16 - 8 * k) & 0xff);
                seen = seen << 8 | encoded(0.9 * light * LIGHT[k] * reflected);
            }
            return seen;
        });
    }

    /** IEC 61966-2-1. */
    private static double linear(int level) {
        double v = level / 255.0;
        return v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
    }

    private static int encoded(double v) {
        double c = Math.max(0, Math.min(1, v));
        return (int) Math.round(255 * (c <= 0.0031308 ? 12.92 * c : 1.055 * Math.pow(c, 1 / 2.4) - 0.055));
    }

    private static Calls.Result call(Object... more) {
        List<Object> words = new ArrayList<>(List.of("box", box, "--rubbed", photo, "--study", study));
        words.addAll(List.of("--card-corners", corners));
        words.addAll(List.of(more));
        return Calls.run(words.toArray());
    }

    @Test
    void theBoxLearnsItsColorsFromTheRubbedCard() throws IOException {
        Path out = folder.resolve("learned.json");
        Calls.Result result = call("-o", out);
        assertThat(result.err()).isEmpty();
        assertThat(result.code()).isZero();
        Stick bare = RUBBED.get(RUBBED.size() - 1);
        assertThat(result.outLines())
                .contains(bare.title() + ": its patch is bare card or as white as that; its color stays.")
                .anyMatch(line -> line.startsWith(RUBBED.get(0).title()) && line.contains(", now "));
        List<Stick> learned = new Boxes().read(out).box().sticks();
        double[] errors = learned.stream()
                .filter(stick -> isRubbed(stick) && !stick.id().equals(bare.id()))
                .mapToDouble(stick -> Ciede2000.difference(stick.color(), onCard(trueColors.get(stick.id()))))
                .sorted()
                .toArray();
        assertThat(errors).hasSize(RUBBED.size() - 1);
        assertThat(Trays.quantile(errors, 0.5)).isLessThan(1.2);
        assertThat(Trays.quantile(errors, 0.95)).isLessThan(2.5);
        Box before = STUDY.box().orElseThrow();
        assertThat(learned)
                .filteredOn(stick -> !isRubbed(stick))
                .isEqualTo(before.sticks().stream()
                        .filter(stick -> !isRubbed(stick))
                        .toList());
        assertThat(learned).contains(bare);
    }

    /** The color that the hand laid, as light as it is beside a perfect white. */
    private static Lab onCard(int rgb) {
        return Lab.ofLinear(
                PAPER * linear(rgb >> 16 & 0xff), PAPER * linear(rgb >> 8 & 0xff), PAPER * linear(rgb & 0xff));
    }

    private static boolean isRubbed(Stick stick) {
        return RUBBED.stream().anyMatch(rubbed -> rubbed.id().equals(stick.id()));
    }

    @Test
    void scriptsGetWhatWasAndWhatIs() throws IOException {
        Calls.Result result = call("--json");
        JsonNode rubbed = new ObjectMapper().readTree(result.out()).get("rubbed");
        assertThat(rubbed.get("sticks")).hasSize(RUBBED.size());
        JsonNode first = rubbed.get("sticks").get(0);
        assertThat(first.get("id").asText()).isEqualTo(RUBBED.get(0).id());
        assertThat(first.get("look").asText()).isEqualTo("rubbed");
        assertThat(first.get("before").get(0).asDouble())
                .isEqualTo(RUBBED.get(0).color().l());
        assertThat(first.get("ciede2000").asDouble()).isPositive();
        assertThat(rubbed.get("notInBox")).isEmpty();
    }

    @Test
    void aStickThatTheBoxDoesNotHaveIsTold() throws IOException {
        Path other = folder.resolve("other.json");
        Box whole = STUDY.box().orElseThrow();
        Boxes.write(
                whole.withSticks(whole.sticks().stream()
                        .filter(stick -> !stick.id().equals(RUBBED.get(0).id()))
                        .toList()),
                other);
        Calls.Result result = Calls.run("box", other, "--rubbed", photo, "--study", study, "--card-corners", corners);
        assertThat(result.outLines()).contains(RUBBED.get(0).title() + " is on the card, but not in this box.");
    }

    @Test
    void saysWhatIsWrongWithTheCall() throws IOException {
        assertThat(call("--card-number", "two").errLines())
                .singleElement()
                .asString()
                .contains("\"two\" is not a card's number");
        assertThat(call("--card-number", "7").errLines())
                .singleElement()
                .asString()
                .contains(study.toString(), "has 1 color card, so there is no number 7; give number 1.");
        Calls.Result three =
                Calls.run("box", box, "--rubbed", photo, "--study", study, "--card-corners", "1,2,3,4,5,6");
        assertThat(three.code()).isEqualTo(2);
        assertThat(three.errLines()).singleElement().asString().contains("--card-corners should be four places");
        Calls.Result lonely = Calls.run("box", box, "--rubbed", photo);
        assertThat(lonely.code()).isEqualTo(2);
        assertThat(lonely.errLines()).singleElement().asString().contains("--study");
        Path empty = folder.resolve("empty.json");
        StudyFile.write(STUDY.withNotes(List.of()).withChosen(Optional.empty()), empty);
        assertThat(Calls.run("box", box, "--rubbed", photo, "--study", empty, "--card-corners", corners)
                        .errLines())
                .singleElement()
                .asString()
                .contains("has no color card, so there is no number 1; note some colors first.");
    }
}
