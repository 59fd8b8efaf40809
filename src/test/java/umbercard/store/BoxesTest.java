package umbercard.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import umbercard.door.BoxReader;
import umbercard.door.Reads;
import umbercard.kernel.Plugins;
import umbercard.model.Box;
import umbercard.words.Trouble;

class BoxesTest {
    private static final Path HAND_WRITTEN = Path.of("src/test/resources/umbercard/store/boxes/hand-written.json");

    @TempDir
    private Path folder;

    /** Reads plain lists, which end in .txt and begin with BOX: the name of the box is the rest. */
    private static class ListReader implements BoxReader {
        @Override
        public String id() {
            return "list";
        }

        @Override
        public int rank() {
            return 0;
        }

        @Override
        public boolean reads(String fileName, byte[] head) {
            return fileName.endsWith(".txt") && new String(head, StandardCharsets.UTF_8).startsWith("BOX");
        }

        @Override
        public Reads read(String fileName, InputStream in) throws IOException {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return new Reads(new Box("b", text.substring(3).strip(), List.of(), Map.of()), List.of());
        }
    }

    private Path file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    private static Boxes with(BoxReader... readers) {
        return new Boxes(Plugins.of(List.of(readers)));
    }

    @Test
    void findsTheProgramsOwnReader() throws IOException {
        assertThat(new Boxes().read(HAND_WRITTEN))
                .isEqualTo(BoxFile.parse(Files.readString(HAND_WRITTEN), HAND_WRITTEN.toString()));
    }

    @Test
    void eachKindOfFileIsReadByItsReader() throws IOException {
        Boxes boxes = with(new ListReader(), new JsonBoxReader());
        assertThat(boxes.read(file("slate.txt", "BOX Slates")).box().name()).isEqualTo("Slates");
        assertThat(boxes.read(HAND_WRITTEN)).isEqualTo(new Boxes().read(HAND_WRITTEN));
    }

    @Test
    void aFileThatNoReaderKnowsIsNamedWithTheKindsThatCanBeRead() throws IOException {
        Path letter = file("letter.txt", "Dear painter");
        assertThatThrownBy(() -> with(new ListReader(), new JsonBoxReader()).read(letter))
                .isInstanceOf(Trouble.class)
                .hasMessage(letter + " is not a box of sticks; choose a file of a kind that can be read: list, json.");
    }

    @Test
    void aMissingAnEmptyAndADamagedFileAreToldApart() throws IOException {
        Boxes boxes = new Boxes();
        assertThatThrownBy(() -> boxes.read(folder.resolve("none.json"))).hasMessageContaining("not there");
        assertThatThrownBy(() -> boxes.read(file("empty.json", ""))).hasMessageContaining("empty");
        assertThatThrownBy(() -> boxes.read(file("cut.json", "{\"format\": \"umbercard-box\", \"na")))
                .hasMessageContaining("damaged at line 1");
        assertThat(boxes.switchedOff()).isEmpty();
    }

    @Test
    void aReaderThatCannotReadTheStreamSaysSoWithoutBeingSwitchedOff() throws IOException {
        Boxes boxes = with(new ListReader() {
            @Override
            public Reads read(String fileName, InputStream in) throws IOException {
                throw new IOException("worn out");
            }
        });
        Path list = file("slate.txt", "BOX Slates");
        assertThatThrownBy(() -> boxes.read(list)).isInstanceOf(Trouble.class).hasMessageContaining(list.toString());
        assertThat(boxes.switchedOff()).isEmpty();
    }

    @Test
    void aReaderThatFailsIsSwitchedOffAndTheNextIsAsked() throws IOException {
        BoxReader cannotTell = new ListReader() {
            @Override
            public boolean reads(String fileName, byte[] head) {
                throw new IllegalStateException("cannot tell");
            }
        };
        BoxReader cannotRead = new ListReader() {
            @Override
            public Reads read(String fileName, InputStream in) {
                throw new IllegalStateException("cannot read");
            }
        };
        Boxes boxes = with(cannotTell, cannotRead, new ListReader());

        assertThat(boxes.read(file("slate.txt", "BOX Slates")).box().name()).isEqualTo("Slates");
        assertThat(boxes.switchedOff())
                .extracting(off -> off.cause().getMessage())
                .containsExactly("cannot tell", "cannot read");
    }
}
