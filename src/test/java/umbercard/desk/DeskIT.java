package umbercard.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.function.IntPredicate;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.DialogFixture;
import org.assertj.swing.fixture.JOptionPaneFixture;
import org.assertj.swing.fixture.JTextComponentFixture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import umbercard.desk.theme.Theme;
import umbercard.door.Edit;
import umbercard.door.Instrument;
import umbercard.model.Mark;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.store.Boxes;
import umbercard.store.StudyFile;
import umbercard.words.Message;

/** The desk round the job: what it opens, asks, tells and shows. */
@SuppressWarnings("deprecation") // the robot knows only the old masks of InputEvent
class DeskIT extends AtDesk {
    private static final int SAMPLES = 60;

    @TempDir
    private Path folder;

    private void openKilnHill() {
        act(desk().files()::showKilnHill);
        until("Kiln Hill is there", () -> desk().session().study().thumbnails().size() > 1);
        until("its photograph is there", () -> desk().session().photograph().isPresent());
        settled();
    }

    /**
     * A picture of the desk with the pointer off the cards, painted anew: in memory a window stays erased where another
     * stood over it.
     */
    private BufferedImage picture(String name) {
        robot().moveMouse(window().textBox("concept").target());
        act(window().target()::repaint);
        return shot(name);
    }

    /** The share of a grid of places within the frame whose color is such. */
    private double shareOfFrame(BufferedImage picture, IntPredicate such) {
        Point origin = ask(() -> SwingUtilities.convertPoint(card(), 0, 0, window().target()));
        Point from = at(.01, .01);
        Point to = at(study().ratio() - .01, .99);
        int found = 0;
        for (int i = 0; i < SAMPLES * SAMPLES; i++) {
            int x = origin.x + from.x + (to.x - from.x) * (i % SAMPLES) / (SAMPLES - 1);
            int y = origin.y + from.y + (to.y - from.y) * (i / SAMPLES) / (SAMPLES - 1);
            found += such.test(picture.getRGB(x, y) & 0xffffff) ? 1 : 0;
        }
        return (double) found / (SAMPLES * SAMPLES);
    }

    /** Whether a color is the theme's, give or take what rounding and smoothing make of it. */
    private static IntPredicate like(String name) {
        Color wanted = ask(() -> Theme.color(name));
        return rgb -> {
            Color found = new Color(rgb);
            return Math.abs(found.getRed() - wanted.getRed()) < 6
                    && Math.abs(found.getGreen() - wanted.getGreen()) < 6
                    && Math.abs(found.getBlue() - wanted.getBlue()) < 6;
        };
    }

    private String instrument() {
        return ask(() -> card().instrument().map(Instrument::id).orElse("none"));
    }

    @Test
    void beginsEmptyAndShowsKilnHillWithItsPhotograph() {
        IntPredicate paper = like("Umbercard.paper");
        assertThat(shareOfFrame(picture("nothing"), paper)).isEqualTo(1);
        openKilnHill();
        BufferedImage light = picture("desk-light");
        assertThat(shareOfFrame(light, paper)).as("not covered").isLessThan(.05);
        assertThat(shareOfFrame(light, like("Umbercard.dark")))
                .as("solid darks")
                .isGreaterThan(.1);
        assertThat(window().target().getTitle()).startsWith("Kiln Hill, first snow (untitled)");
        until("the ledger says so", () -> darkSaid().equals(darkToSay()));
    }

    @Test
    void spaceHeldShowsTheBareNotan() {
        openKilnHill();
        until("the keyboard is on the card", card()::isFocusOwner);
        parkPointer();
        robot().pressKey(KeyEvent.VK_SPACE);
        BufferedImage bare = picture("bare");
        double dark = shareOfFrame(bare, like("Umbercard.dark"));
        double paper = shareOfFrame(bare, like("Umbercard.paper"));
        assertThat(dark).isBetween(darkShare() - .05, darkShare() + .05);
        assertThat(dark + paper).as("nothing but two values, and lines").isGreaterThan(.9);
        robot().releaseKey(KeyEvent.VK_SPACE);
        assertThat(shareOfFrame(picture("with-reference"), like("Umbercard.paper")))
                .isLessThan(.05);
    }

    @Test
    void aBrokenStudyIsToldInOneSentenceAndChangesNothing() throws IOException {
        openKilnHill();
        Study before = study();
        Path broken = Files.writeString(folder.resolve("broken.json"), "{\"format\": \"umbercard-study\"");
        choose("Study", "Open…");
        give(broken);
        JOptionPaneFixture told = told();
        assertThat(sentence(told)).contains("broken.json").endsWith(".").doesNotContain("\n", "Exception");
        told.okButton().click();
        assertThat(study()).isEqualTo(before);
        assertThat(ask(() -> desk().session().file())).isEmpty();
        assertThat(ask(() -> desk().session().photograph())).isPresent();
    }

    @Test
    void lettersAreWordsInTheConceptAndInstrumentsOnTheCard() {
        openKilnHill();
        choose("View", "Light desk");
        type(window().textBox("concept"), "The held hill leads");
        assertThat(instrument()).isEqualTo("lay-dark");
        strike(KeyEvent.VK_ENTER);
        assertThat(study().concept()).isEqualTo("The held hill leads");
        robot().click(card(), at(.5, .5));
        strike(KeyEvent.VK_ESCAPE);
        strike(KeyEvent.VK_H);
        assertThat(instrument()).isEqualTo("horizon");
        strike(KeyEvent.VK_L);
        assertThat(instrument()).isEqualTo("lift-light");
        window().toggleButton("instrument-lift-light").requireSelected();
    }

    @Test
    void escapeDropsAHalfMadeOutline() {
        openKilnHill();
        List<Mark> before = thumbnail().marks();
        clickCorners(.2, .1, .5, .1, .5, .3);
        assertThat(thumbnail().marks()).as("as if it were closed").hasSize(before.size() + 1);
        strike(KeyEvent.VK_ESCAPE);
        assertThat(thumbnail().marks()).isEqualTo(before);
        strike(KeyEvent.VK_ENTER);
        assertThat(thumbnail().marks()).isEqualTo(before);
        assertThat(ask(() -> desk().session().isChanged())).isFalse();
    }

    @Test
    void theLineUnderThePointerGoesWithThePointer() {
        openKilnHill();
        window().toggleButton("instrument-land-edge").click();
        BufferedImage before = picture("before-hovering");
        robot().moveMouse(card(), at(.5, .2));
        robot().waitForIdle();
        IntPredicate ink = like("Umbercard.ink");
        assertThat(shareOfFrame(shot("hovering"), ink)).isNotEqualTo(shareOfFrame(before, ink));
        BufferedImage after = picture("after-hovering");
        int[] pixels = before.getRGB(160, 80, 660, 430, null, 0, 660);
        assertThat(after.getRGB(160, 80, 660, 430, null, 0, 660)).isEqualTo(pixels);
    }

    @Test
    void closingAsksAboutChangesFirst() {
        openKilnHill();
        type(window().textBox("concept"), "Another reason");
        strike(KeyEvent.VK_ENTER);
        window().close();
        JOptionPaneFixture asked = told();
        assertThat(sentence(asked)).isEqualTo("Save the changes to “Kiln Hill, first snow” first?");
        asked.buttonWithText("Stay here").click();
        window().requireVisible();
        assertThat(study().concept()).isEqualTo("Another reason");
        window().close();
        told().buttonWithText("Don't save").click();
        until("the window is closed", () -> !desk().isDisplayable());
    }

    @Test
    void closesAtOnceWithoutChanges() {
        openKilnHill();
        window().close();
        until("the window is closed", () -> !desk().isDisplayable());
    }

    @Test
    void theDarkThemeTakesTheDeskAndLeavesTheCardsPaper() {
        openKilnHill();
        choose("View", "Dark desk");
        assertThat(ask(Theme::isDark)).isTrue();
        BufferedImage dark = picture("desk-dark");
        Rectangle content = ask(() -> desk().getContentPane().getBounds());
        Color surround = new Color(dark.getRGB(content.x + 6, dark.getHeight() - 6));
        assertThat(surround.getRed()).isLessThan(100).isEqualTo(surround.getBlue());
        settled();
        window().requireVisible().requireEnabled();
        strike(KeyEvent.VK_L);
        assertThat(instrument()).isEqualTo("lift-light");
        choose("View", "Light desk");
        assertThat(ask(Theme::isDark)).isFalse();
    }

    @Test
    void aFirstPassIsOneMoreThumbnailWithMarks() {
        openKilnHill();
        List<Thumbnail> before = study().thumbnails();
        choose("Plan", "First pass from the photograph…");
        DialogFixture asked = WindowFinder.findDialog("first-pass").using(robot());
        until(
                "what would come of it is told",
                () -> !asked.label("first-pass-outcome").text().isBlank());
        settled();
        shot("first-pass-asked");
        asked.button("yes").click();
        until("one more is there", () -> desk().session().study().thumbnails().size() == before.size() + 1);
        settled();
        assertThat(study().thumbnails()).startsWith(before.toArray(Thumbnail[]::new));
        assertThat(thumbnail().name()).isEqualTo("first pass");
        assertThat(thumbnail().marks()).isNotEmpty();
        assertThat(darkShare()).isBetween(.05, .95);
        until("the ledger says so", () -> darkSaid().equals(darkToSay()));
        picture("first-pass");
    }

    @Test
    void aLongConceptStaysInSight() {
        openKilnHill();
        String words = "The kiln holds its dark against the snow and lends it to the pond; ".repeat(3);
        String concept = words.substring(0, 200);
        type(window().textBox("concept"), concept);
        strike(KeyEvent.VK_ENTER);
        assertThat(study().concept()).isEqualTo(concept.strip());
        JTextComponent field = window().textBox("concept").target();
        Rectangle last = ask(
                () -> field.modelToView2D(field.getDocument().getLength() - 1).getBounds());
        assertThat(ask(field::getVisibleRect).contains(last)).as("its end").isTrue();
        everythingKeepsToTheDesk();
        picture("long-concept");
    }

    @Test
    void theDeskKeepsItsMarginsHoweverFullItIs() {
        openKilnHill();
        everythingKeepsToTheDesk();
        window().button("stack.copy").click();
        window().list("notes.strips").clickItem(0);
        window().button("notes.change").click();
        window().toggleButton("seen-as-two-values").click();
        settled();
        everythingKeepsToTheDesk();
        picture("full");
        window().resizeTo(ask(desk()::getMinimumSize));
        act(desk()::validate); // which a frame in memory does not do by itself
        settled();
        everythingKeepsToTheDesk();
        picture("smallest");
    }

    /** Cards, ledger and concept lie within the window, with the margins it leaves at both sides. */
    private void everythingKeepsToTheDesk() {
        JComponent content = (JComponent) window().panel("desk-content").target();
        for (java.awt.Component part : ask(content::getComponents)) {
            Rectangle place = ask(part::getBounds);
            assertThat(place.x).as(part.toString()).isEqualTo(14);
            assertThat(place.getMaxX()).as(part.toString()).isEqualTo(content.getWidth() - 14);
            assertThat(place.getMaxY()).as(part.toString()).isLessThanOrEqualTo(content.getHeight() - 12);
        }
        JComponent rules = (JComponent) window().panel("reference-rules").target();
        for (java.awt.Component rule : ask(rules::getComponents)) {
            assertThat(!rule.isVisible() || rule.getX() + rule.getWidth() <= rules.getWidth())
                    .as(rule.toString())
                    .isTrue();
        }
    }

    @Test
    void whatIsBeingTypedIsKeptByASaveThatDoesNotMoveTheFocus() throws IOException {
        openKilnHill();
        Path file = folder.resolve("hill.json");
        act(() -> desk().session()
                .saved(
                        desk().session().opening(),
                        desk().session().study(),
                        desk().session().study(),
                        file));
        JTextComponentFixture concept = window().textBox("concept");
        type(concept, "Snow holds");
        strike(KeyEvent.VK_S, InputEvent.CTRL_MASK);
        until(
                "the study is written",
                () -> Files.exists(file) && !desk().session().isChanged());
        assertThat(StudyFile.read(file).concept()).isEqualTo("Snow holds");
        concept.requireText("Snow holds");
        assertThat(ask(() -> desk().session().isChanged())).isFalse();
    }

    @Test
    void anEditFromElsewhereDoesNotWipeOutWhatIsBeingTyped() {
        openKilnHill();
        type(window().textBox("concept"), "Snow");
        act(() -> desk().session().edit(new Edit(Message.of("desk.box.done"), s -> s.withTitle("another"))));
        window().textBox("concept").requireText("Snow");
    }

    @Test
    void aFileChangedByOthersIsNotReplacedUnasked() throws IOException {
        openKilnHill();
        Path file = folder.resolve("hill.json");
        choose("Study", "Save as…");
        give(file);
        until(
                "the study is written",
                () -> Files.exists(file) && desk().session().file().isPresent());
        settled();
        Files.writeString(file, Files.readString(file).replace("first snow", "second snow"));
        Files.setLastModifiedTime(file, FileTime.fromMillis(System.currentTimeMillis() + 60_000));
        choose("Study", "Save");
        JOptionPaneFixture asked = told();
        assertThat(sentence(asked)).contains("hill.json", "changed");
        asked.buttonWithText("Keep it").click();
        settled();
        assertThat(StudyFile.read(file).title()).isEqualTo("Kiln Hill, second snow");
    }

    @Test
    void aStudyWithoutABoxIsOfferedTheOneThatComesAlong() {
        act(desk().colorCard()::openBox);
        window().button("box.file").click();
        told().buttonWithText("Kiln Yard 36, to try").click();
        until("the box is there", () -> desk().session().study().box().isPresent());
        assertThat(study().box().orElseThrow().sticks()).hasSize(36);
    }

    @Test
    void ofATableOfSticksWhatWasLeftOutIsListed() throws IOException {
        Path table = Files.writeString(
                folder.resolve("shed tray.csv"),
                "hex;name\n#7a5c48;Peat\n" + "brown;Rust\n".repeat(40) + "#ffffff;Chalk\n");
        choose("Plan", "Take another box\u2026");
        give(table);
        JOptionPaneFixture told = told();
        assertThat(sentence(told)).isEqualTo("shed tray: 2 sticks; 40 entries were left out.");
        assertThat(told.textBox("lines").text().lines())
                .hasSize(41)
                .startsWith("Line 3: hex should be a color such as \"#7a5c48\"")
                .endsWith("Read as a table with semicolons between its cells; colors from hex (D65).");
        assertThat(told.target().getHeight()).isLessThan(500);
        told.okButton().click();
        assertThat(study().box().orElseThrow().sticks())
                .extracting(Stick::title)
                .containsExactly("Peat", "Chalk");
    }

    @Test
    void theBoxIsSavedAsAFileOfItsOwn() throws IOException {
        openKilnHill();
        Path file = folder.resolve("winter box");
        choose("Plan", "Save the box as\u2026");
        give(file);
        Path written = folder.resolve("winter box.json");
        until("the box is written", () -> Files.exists(written));
        settled();
        assertThat(new Boxes().read(written).box()).isEqualTo(study().box().orElseThrow());
        Path table = folder.resolve("winter box.csv");
        choose("Plan", "Save the box as\u2026");
        give(table);
        JOptionPaneFixture told = told();
        assertThat(sentence(told)).startsWith("winter box.csv holds the sticks.");
        told.okButton().click();
        assertThat(new Boxes().read(table).box().sticks())
                .isEqualTo(study().box().orElseThrow().sticks());
    }
}
