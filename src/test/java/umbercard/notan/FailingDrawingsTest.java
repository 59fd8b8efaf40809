package umbercard.notan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import umbercard.geometry.Shapes;
import umbercard.model.Mark;
import umbercard.model.Thumbnail;

class FailingDrawingsTest {
    @TempDir
    Path folder;

    @Test
    void aFailingDrawingIsWrittenAsACaseThatFailsAsWell() throws IOException {
        Thumbnail square = Drawings.thumbnail(
                Thumbnail.Ground.LIGHT, List.of(Drawings.mark(Mark.Kind.LAY, Shapes.polygon(0, 0, 1, 0, 1, 1, 0, 1))));
        Drawing wrong = new Drawing(
                "wrong", List.of("An example."), 2, square, OptionalDouble.of(.75), 1e-9, OptionalInt.empty());
        Laws.Broken broken = Laws.broken(wrong).orElseThrow();

        String told = FailingDrawings.kept(folder, wrong, broken);

        Path file;
        try (Stream<Path> files = Files.list(folder)) {
            file = files.findFirst().orElseThrow();
        }
        assertThat(told).contains(file.toString()).contains("src/test/resources/umbercard/notan/cases");
        Drawing kept = DrawingText.read("kept", Files.readString(file));
        assertThat(kept.origin()).contains("An example.", "Breaks the law that known figures come out:");
        assertThat(Laws.broken(kept))
                .hasValueSatisfying(again -> assertThat(again.law()).isEqualTo(broken.law()));
    }

    @Test
    void aPropertyThatFailsKeepsItsDrawing() throws IOException {
        Drawing drawing = Drawing.of("example", 1.25, Drawings.thumbnail(Thumbnail.Ground.LIGHT, List.of()))
                .from("example", List.of("Not a fault: FailingDrawingsTest makes this one."));

        AssertionError failure = catchThrowableOfType(
                AssertionError.class,
                () -> FailingDrawings.keeping(drawing, () -> assertThat(1).isEqualTo(2)));

        assertThat(failure).hasMessageContaining("a property of example holds");
        Path file = Path.of(failure.getMessage().replaceAll("(?s).*The drawing is in (.*?);.*", "$1"));
        assertThat(DrawingText.read("kept", Files.readString(file)).ratio()).isEqualTo(1.25);
        Files.delete(file);
    }

    @Test
    void itIsMadeAsSmallAsItStillFails() {
        Drawing drawing =
                Drawing.of("any", 1.25, Drawings.thumbnail(Thumbnail.Ground.LIGHT, Drawings.marks(new Random(4), 9)));

        Drawing small = FailingDrawings.shrunk(
                drawing,
                d -> d.marks().stream().anyMatch(mark -> mark.outline().nodes().size() >= 3 && !mark.hidden()));

        assertThat(small.marks())
                .singleElement()
                .satisfies(mark -> assertThat(mark.outline().nodes()).hasSize(3));
    }
}
