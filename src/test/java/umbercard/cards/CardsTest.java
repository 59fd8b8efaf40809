package umbercard.cards;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import umbercard.Studies;
import umbercard.cards.svg.SvgWriter;
import umbercard.cards.type.Roboto;
import umbercard.door.Deck;
import umbercard.door.Drawing;
import umbercard.door.Face;
import umbercard.door.Look;
import umbercard.door.Pages;
import umbercard.door.Shelf;
import umbercard.door.Type;
import umbercard.door.Writer;
import umbercard.geometry.Point;
import umbercard.kernel.Plugins;
import umbercard.model.Study;
import umbercard.words.Trouble;

class CardsTest {
    private static final Study KILN_HILL = Studies.kilnHill();

    /** A face that does as it is told. */
    private record Told(String id, List<Consumer<Drawing>> sides) implements Face {
        @Override
        public int rank() {
            return 0;
        }

        @Override
        public List<Consumer<Drawing>> lay(Deck deck, Look look, Type type) {
            return sides;
        }
    }

    private static final Face PLAIN =
            new Told("plain", List.of(d -> d.text("hello", new Point(5, 9), 9, Drawing.Weight.REGULAR, Ink.BLACK)));

    private static final Face BROKEN = new Told("broken", List.of(d -> {
        throw new IllegalStateException("no ink");
    }));

    /** A black to draw with. */
    private static final class Ink {
        static final umbercard.color.Lab BLACK = umbercard.color.Lab.ofSrgb(0);
    }

    private static Cards with(List<Face> faces, Writer... writers) {
        return new Cards(Plugins.of(faces), Plugins.of(List.of(writers)), Roboto.type());
    }

    @Test
    void findsItsFacesAndWriters() {
        Cards cards = new Cards();
        assertThat(cards.faces()).startsWith("notan", "color-notes");
        assertThat(cards.writers()).contains("svg");
        assertThat(cards.switchedOff()).isEmpty();
    }

    @Test
    void namesFilesByTitleAndFace() throws IOException {
        assertThat(Written.files(KILN_HILL, "notan", "color-notes").keySet())
                .containsExactly("kiln-hill-first-snow-notan.svg", "kiln-hill-first-snow-color-notes.svg");
    }

    @Test
    void laysFacesInTheOrderAskedForAndEachOnce() throws Trouble {
        assertThat(Written.lay(new Cards(), KILN_HILL, "color-notes", "notan", "color-notes"))
                .extracting(Pages::name)
                .containsExactly("kiln-hill-first-snow-color-notes", "kiln-hill-first-snow-notan");
    }

    @Test
    void tellsWhatItWrote() throws IOException {
        Cards cards = new Cards();
        Written shelf = new Written();
        List<String> names = cards.write(Written.lay(cards, KILN_HILL, "notan"), List.of("svg"), shelf, () -> false);
        assertThat(names).containsExactlyElementsOf(shelf.files().keySet()).hasSize(1);
    }

    @Test
    void aFaceThatNobodyKnowsIsRefusedWithThoseThereAre() {
        assertThatThrownBy(() -> Written.lay(new Cards(), KILN_HILL, "notan", "sculpture"))
                .isInstanceOf(Trouble.class)
                .hasMessageContaining("sculpture")
                .hasMessageContaining("notan, color-notes");
    }

    @Test
    void aWriterThatNobodyKnowsIsRefusedWithThoseThereAre() throws Trouble {
        Cards cards = new Cards();
        List<Pages> pages = Written.lay(cards, KILN_HILL, "notan");
        Written shelf = new Written();
        assertThatThrownBy(() -> cards.write(pages, List.of("clay"), shelf, () -> false))
                .isInstanceOf(Trouble.class)
                .hasMessageContaining("clay")
                .hasMessageContaining("svg");
        assertThat(shelf.files()).isEmpty();
    }

    @Test
    void aFaceThatFailsIsSwitchedOffAndTheOthersGoOn() throws Trouble {
        Cards cards = with(List.of(BROKEN, PLAIN));
        assertThat(Written.lay(cards, KILN_HILL, "broken", "plain"))
                .extracting(Pages::name)
                .containsExactly("kiln-hill-first-snow-plain");
        assertThat(cards.switchedOff()).hasSize(1);
        assertThat(cards.faces()).containsExactly("plain");
    }

    @Test
    void aWriterThatFailsIsSwitchedOffAndTheOthersGoOn() throws IOException {
        Writer broken = new Writer() {
            @Override
            public String id() {
                return "broken";
            }

            @Override
            public int rank() {
                return 0;
            }

            @Override
            public void write(Pages pages, Shelf shelf, BooleanSupplier stopped) {
                throw new IllegalStateException("no press");
            }
        };
        Cards cards = with(List.of(PLAIN), broken, new SvgWriter());
        Written shelf = new Written();
        List<Pages> pages = Written.lay(cards, KILN_HILL, "plain");
        assertThat(cards.write(pages, List.of("broken", "svg"), shelf, () -> false))
                .containsExactly("kiln-hill-first-snow-plain.svg");
        assertThat(cards.switchedOff()).hasSize(1);
    }

    @Test
    void aShelfThatTakesNothingIsTold() throws Trouble {
        Cards cards = new Cards();
        List<Pages> pages = Written.lay(cards, KILN_HILL, "notan");
        assertThatThrownBy(() -> cards.write(
                        pages,
                        List.of("svg"),
                        name -> {
                            throw new IOException("read-only");
                        },
                        () -> false))
                .isInstanceOf(IOException.class)
                .hasMessage("read-only");
        assertThat(cards.switchedOff()).isEmpty();
    }

    @Test
    void nothingToShowIsSaid() {
        assertThatThrownBy(() -> Written.lay(new Cards(), Studies.withNotes(0), "color-notes"))
                .isInstanceOf(Trouble.class)
                .hasMessageContaining("pick color notes first");
    }

    @Test
    void aFaceWithNothingToShowIsLeftOut() throws Trouble {
        assertThat(Written.lay(new Cards(), Studies.withNotes(0), "notan", "color-notes"))
                .hasSize(1);
    }
}
