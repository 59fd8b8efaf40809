package umbercard.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Polygon;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.DialogFixture;
import org.assertj.swing.fixture.JOptionPaneFixture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;
import umbercard.cards.WrittenCard;
import umbercard.model.ColorNote;
import umbercard.model.Light;
import umbercard.model.Mark;
import umbercard.model.Study;
import umbercard.model.Zone;
import umbercard.notan.Fold;
import umbercard.store.StudyFile;
import umbercard.words.Trouble;
import umbercard.words.Words;

/** A painting planned from the photograph to the written cards, by pointer and keyboard. */
@SuppressWarnings("deprecation") // the robot knows only the old masks of InputEvent
class WholeJobIT extends AtDesk {
    private static final Path BOX = Path.of("samples", "kiln-yard-36.json");
    private static final String CONCEPT = "The shed keeps its dark while the pond lets go of the ice.";

    @TempDir
    private Path folder;

    @Test
    void aPaintingIsPlannedFromThePhotographToTheWrittenCards() throws IOException, Trouble {
        beginFromAPhotograph();
        sayTheConcept();
        layTheShedByItsCorners();
        layTheLandInOneStroke();
        liftTheIceByItsCorners();
        drawTheLandEdge();
        chooseACopy();
        takeABox();
        pickThreeSticks();
        putTheThirdFirst();
        planItsStrip();
        undoAndRedo();
        shot("planned");
        Study saved = save();
        writeCards();
        checkNotanCard(saved);
        checkColorNotes(saved);
    }

    private void beginFromAPhotograph() throws IOException {
        choose("Study", "New from a photograph…");
        give(photograph());
        DialogFixture dialog =
                WindowFinder.findDialog("new").withTimeout(10_000).using(robot());
        dialog.textBox("title").requireText("pond");
        type(dialog.textBox("title"), "Mill pond, thaw");
        dialog.spinner("width").enterTextAndCommit("16");
        dialog.spinner("height").enterTextAndCommit("10");
        dialog.comboBox("light").selectItem("low sun");
        dialog.comboBox("light").requireSelection("low sun");
        dialog.button("yes").click();
        until("the study is on the desk", () -> desk().session().study().title().equals("Mill pond, thaw"));
        settled();
        assertThat(study().light()).isEqualTo(Light.LOW_SUN);
        assertThat(study().surface().width()).isEqualTo(16);
        assertThat(study().ratio()).isEqualTo(15.5 / 9.5, within(1e-12));
        assertThat(window().target().getTitle()).startsWith("Mill pond, thaw (untitled)");
    }

    /** A pale sky over a dark shed, snowy land and a pond. */
    private Path photograph() throws IOException {
        BufferedImage image = new BufferedImage(640, 400, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setPaint(new GradientPaint(0, 0, new Color(0x9fb3c8), 0, 260, new Color(0xf0e2d0)));
        g.fillRect(0, 0, 640, 400);
        g.setColor(new Color(0x3b4038));
        g.fill(new Polygon(new int[] {0, 200, 420, 640, 640, 0}, new int[] {270, 250, 275, 255, 400, 400}, 6));
        g.setColor(new Color(0x241d1a));
        g.fillRect(80, 100, 160, 130);
        g.setColor(new Color(0xdfe6ea));
        g.fill(new Polygon(new int[] {320, 480, 400}, new int[] {320, 320, 380}, 3));
        g.dispose();
        Path file = folder.resolve("pond.jpg");
        ImageIO.write(image, "jpg", file.toFile());
        return file;
    }

    private void sayTheConcept() {
        window().textBox("concept").click();
        window().textBox("concept").enterText(CONCEPT);
        strike(KeyEvent.VK_ENTER);
        until("the concept is kept", () -> desk().session().study().concept().equals(CONCEPT));
    }

    private void layTheShedByItsCorners() {
        clickCorners(.2, .25, .6, .25, .6, .55, .2, .55);
        assertThat(thumbnail().marks()).as("as if it were closed").hasSize(1);
        assertThat(study().thumbnails().get(0).marks()).as("not closed yet").isEmpty();
        strike(KeyEvent.VK_ENTER);
        assertThat(study().thumbnails().get(0).marks()).extracting(Mark::kind).containsExactly(Mark.Kind.LAY);
        assertThat(darkShare()).isEqualTo(.4 * .3 / study().ratio(), within(.005));
        until("the ledger says so", () -> darkSaid().equals(darkToSay()));
    }

    /** From beyond the left border to beyond the right one; the lower side becomes dark. */
    private void layTheLandInOneStroke() {
        String before = darkSaid();
        double right = study().ratio() + .02;
        dragThrough(at(-.02, .7), at(.2, .6), at(.45, .7));
        until(
                "the ledger follows the hand",
                () -> darkSaid().equals(darkToSay()) && !darkSaid().equals(before));
        String half = darkSaid();
        moveOn(at(.45, .7), at(right, .7));
        until(
                "the ledger follows on",
                () -> darkSaid().equals(darkToSay()) && !darkSaid().equals(half));
        assertThat(study().thumbnails().get(0).marks()).as("not let go yet").hasSize(1);
        letGo();
        assertThat(study().thumbnails().get(0).marks()).hasSize(2);
        double rise = .47 * .1 / 2;
        assertThat(darkShare()).isEqualTo(.3 + (.12 + rise) / study().ratio(), within(.004));
        until("the ledger says so", () -> darkSaid().equals(darkToSay()));
    }

    /** Closed by a tap on its start. */
    private void liftTheIceByItsCorners() {
        double before = darkShare();
        strike(KeyEvent.VK_L);
        clickCorners(.8, .8, 1.2, .8, 1.0, .95, .8, .8);
        assertThat(study().thumbnails().get(0).marks())
                .extracting(Mark::kind)
                .containsExactly(Mark.Kind.LAY, Mark.Kind.LAY, Mark.Kind.LIFT);
        assertThat(before - darkShare()).isEqualTo(.4 * .15 / 2 / study().ratio(), within(.002));
        until("the ledger says so", () -> darkSaid().equals(darkToSay()));
    }

    private void drawTheLandEdge() {
        strike(KeyEvent.VK_E);
        window().toggleButton("instrument-land-edge").requireSelected();
        drag(card(), MouseButton.LEFT_BUTTON, List.of(at(.8, .5), at(.8, .6), at(.8, .68)));
        assertThat(study().thumbnails().get(0).landEdge().orElseThrow().y()).isEqualTo(.68, within(.003));
    }

    private void chooseACopy() {
        window().button("stack.copy").click();
        assertThat(study().thumbnails()).hasSize(2);
        window().button("stack.choose").click();
        assertThat(study().chosen()).contains(study().thumbnails().get(1).id());
        assertThat(thumbnail().marks()).hasSize(3);
    }

    private void takeABox() {
        choose("Plan", "Take another box…");
        give(BOX);
        until("the box is there", () -> desk().session().study().box().isPresent());
        assertThat(study().box().orElseThrow().sticks()).hasSize(36);
    }

    /** Two by pointer, and the stick beside the second by the arrow and Enter. */
    private void pickThreeSticks() {
        window().button("notes.open-box").click();
        window().button("box.stick.s1").click();
        window().button("box.stick.s15").click();
        strike(KeyEvent.VK_RIGHT);
        String focused = ask(() -> window().target().getFocusOwner().getName());
        strike(KeyEvent.VK_ENTER);
        assertThat(sticks()).startsWith("s1", "s15").hasSize(3).doesNotHaveDuplicates();
        assertThat("box.stick." + sticks().get(2)).isEqualTo(focused);
        strike(KeyEvent.VK_ESCAPE);
    }

    private List<String> sticks() {
        return study().notes().stream().map(note -> note.stick().id()).toList();
    }

    private void putTheThirdFirst() {
        String third = sticks().get(2);
        var strips = window().list("notes.strips").target();
        int pitch = ask(() -> strips.getCellBounds(0, 0).height);
        drag(
                strips,
                MouseButton.LEFT_BUTTON,
                List.of(new Point(60, 2 * pitch + pitch / 2), new Point(60, pitch), new Point(60, 2)));
        assertThat(sticks()).containsExactly(third, "s1", "s15");
    }

    private void planItsStrip() {
        window().list("notes.strips").clickItem(0);
        window().button("notes.change").click();
        window().comboBox("notes.editor.zone").selectItem("new zone…");
        window().textBox("notes.zone.name").enterText("shed wall");
        window().comboBox("notes.zone.plane").selectItem("upright");
        window().comboBox("notes.zone.distance").selectItem("middle");
        window().button("notes.zone.add").click();
        window().comboBox("notes.editor.purpose").selectItem("darks");
        until("the purpose is taken", () -> note().purpose().equals("darks"));
        window().comboBox("notes.editor.direction").selectItem("slanting left");
        until("the direction is taken", () -> note().direction() == ColorNote.Direction.SLANT_LEFT);
        ColorNote.Touch touch = note().touch();
        window().comboBox("notes.editor.touch").selectItem(touch == ColorNote.Touch.FIRM ? "light" : "firm");
        until("the touch is taken", () -> note().touch() != touch);
        Zone zone = study().zone(note().zone().orElseThrow()).orElseThrow();
        assertThat(zone).isEqualTo(new Zone(zone.id(), "shed wall", Zone.Plane.UPRIGHT, Zone.Distance.MIDDLE));
    }

    private ColorNote note() {
        return study().notes().get(0);
    }

    private void undoAndRedo() {
        Study planned = study();
        strike(KeyEvent.VK_Z, InputEvent.CTRL_MASK);
        assertThat(note().touch()).isNotEqualTo(planned.notes().get(0).touch());
        strike(KeyEvent.VK_Z, InputEvent.CTRL_MASK);
        assertThat(note().direction()).isNotEqualTo(ColorNote.Direction.SLANT_LEFT);
        strike(KeyEvent.VK_Z, InputEvent.CTRL_MASK | InputEvent.SHIFT_MASK);
        strike(KeyEvent.VK_Z, InputEvent.CTRL_MASK | InputEvent.SHIFT_MASK);
        assertThat(study()).isEqualTo(planned);
    }

    private Study save() throws IOException, Trouble {
        assertThat(ask(() -> desk().session().isChanged())).isTrue();
        choose("Study", "Save as…");
        Path file = Files.createDirectory(folder.resolve("studies")).resolve("thaw.json");
        give(file);
        until("it is saved", () -> !desk().session().isChanged());
        assertThat(ask(() -> desk().session().file())).contains(file.toAbsolutePath());
        Study saved = StudyFile.read(file);
        assertThat(saved).isEqualTo(study());
        assertThat(saved.reference().orElseThrow().file()).isEqualTo("../pond.jpg");
        return saved;
    }

    private void writeCards() throws IOException {
        Path cards = Files.createDirectory(folder.resolve("cards"));
        choose("Study", "Write cards…");
        DialogFixture dialog = WindowFinder.findDialog("cards").using(robot());
        dialog.comboBox("card-size").selectItem("4 × 6 in");
        dialog.button("yes").click();
        give(cards);
        JOptionPaneFixture told = told();
        assertThat(sentence(told)).isEqualTo(Words.say("desk.cards.written", 2, cards.toAbsolutePath()));
        told.okButton().click();
    }

    private WrittenCard written(String face) throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve("cards"))) {
            Optional<Path> file = files.filter(path -> path.endsWith("mill-pond-thaw-" + face + ".svg"))
                    .findFirst();
            return WrittenCard.read(Files.readAllBytes(file.orElseThrow()));
        }
    }

    private static void checkSize(WrittenCard card) {
        assertThat(card.root().getAttribute("width")).isEqualTo("152.4mm");
        assertThat(card.root().getAttribute("height")).isEqualTo("101.6mm");
    }

    private void checkNotanCard(Study saved) throws IOException {
        WrittenCard card = written("notan");
        checkSize(card);
        Rectangle2D frame = WrittenCard.box(card.part("frame"));
        double share = WrittenCard.evenOddArea(card.part("notan")) / (frame.getWidth() * frame.getHeight());
        double folded =
                Fold.of(saved.chosenThumbnail().orElseThrow(), saved.ratio()).darkShare();
        assertThat(folded).isBetween(.3, .4);
        assertThat(share).isEqualTo(folded, within(1e-4));
        assertThat(String.join(
                        " ", card.texts().stream().map(WrittenCard.Text::words).toList()))
                .contains(CONCEPT);
    }

    private void checkColorNotes(Study saved) throws IOException {
        WrittenCard card = written("color-notes");
        checkSize(card);
        for (int i = 0; i < 3; i++) {
            Element strip = card.part("strip-" + (i + 1));
            int color = saved.notes().get(i).stick().color().srgb();
            assertThat(WrittenCard.elements(strip, "rect").get(0).getAttribute("fill"))
                    .isEqualTo(String.format("#%06x", color));
        }
        assertThat(card.ids()).doesNotContain("strip-4");
        String words = String.join(
                " ",
                WrittenCard.texts(card.part("strip-1")).stream()
                        .map(WrittenCard.Text::words)
                        .toList());
        assertThat(words).contains("shed wall", "darks");
    }
}
