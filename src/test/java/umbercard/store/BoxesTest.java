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
    @TempDir
    private Path folder;

    /** Takes files that begin with its own word, and fails if told so. */
    private record Fake(String id, String word, boolean fails) implements BoxReader {
        @Override
        public int rank() {
            return 1;
        }

        @Override
        public boolean reads(String fileName, byte[] head) {
            return new String(head, StandardCharsets.UTF_8).startsWith(word);
        }

        @Override
        public Reads read(String fileName, InputStream in) throws IOException {
            if (fails) {
                throw new IllegalStateException("broken on purpose");
            }
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return new Reads(new Box(id, text, List.of(), Map.of()), List.of());
        }
    }

    private Path file(String text) throws IOException {
        return Files.writeString(folder.resolve("box.txt"), text);
    }

    @Test
    void readsTheProgramsOwnBoxesThroughTheDoor() throws IOException {
        Reads reads = new Boxes().read(Path.of("samples/kiln-yard-36.json"));
        assertThat(reads.box().sticks()).hasSize(36);
        assertThat(reads.faults()).isEmpty();
    }

    @Test
    void theReaderThatTakesTheKindOfFileIsAsked() throws IOException {
        Boxes boxes =
                new Boxes(Plugins.of(List.of(new Fake("other", "OTHER", false), new Fake("mine", "MINE", false))));
        Reads reads = boxes.read(file("MINE, all of it"));
        assertThat(reads.box().id()).isEqualTo("mine");
        assertThat(reads.box().name()).isEqualTo("MINE, all of it");
    }

    @Test
    void aReaderThatFailsIsSwitchedOffAndTheNextIsAsked() throws IOException {
        Plugins<BoxReader> readers =
                Plugins.of(List.of(new Fake("bad", "MINE", true), new Fake("good", "MINE", false)));
        assertThat(new Boxes(readers).read(file("MINE")).box().id()).isEqualTo("good");
        assertThat(readers.switchedOff()).hasSize(1);
    }

    @Test
    void aFileOfNoKnownKindIsRefusedByName() throws IOException {
        Path file = file("something else");
        Boxes boxes = new Boxes();
        assertThatThrownBy(() -> boxes.read(file)).isInstanceOf(Trouble.class).hasMessageContaining("box.txt");
    }

    @Test
    void aMissingFileIsRefusedByName() {
        Boxes boxes = new Boxes();
        Path missing = folder.resolve("none.json");
        assertThatThrownBy(() -> boxes.read(missing))
                .isInstanceOf(Trouble.class)
                .hasMessageContaining("none.json");
    }
}
