package umbercard.notan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import umbercard.geometry.Cubic;
import umbercard.geometry.Outline;
import umbercard.geometry.Rows;

/** Every drawing kept as a case obeys every law. A new case needs a file in the folder and nothing else. */
class CasesTest {
    private static final Path FOLDER = Path.of("src", "test", "resources", "umbercard", "notan", "cases");
    private static final int ROWS = 100;

    static Stream<Drawing> cases() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.sorted().map(CasesTest::read).toList().stream();
        }
    }

    private static Drawing read(Path file) {
        try {
            return DrawingText.read(file.getFileName().toString().replace(".txt", ""), Files.readString(file));
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void aCaseObeysEveryLaw(Drawing drawing) {
        assertThat(Laws.broken(drawing)).as("%s", drawing.origin()).isEmpty();
    }

    /** Rows of a curve and its polygon differ by up to twice the tolerance of flattening at every border they cross. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void aCaseHasTheRowsOfItsDrawnCurves(Drawing drawing) {
        List<Outline> rings = drawing.fold().dark().outlines();
        boolean straight = drawing.marks().stream()
                .flatMap(mark -> mark.outline().segments().stream())
                .allMatch(Cubic::isLine);
        Random random = new Random(1);
        double off = 0;
        for (int i = 0; i < ROWS; i++) {
            double y = (i + random.nextDouble()) / ROWS;
            double folded = Rows.length(Rows.filled(rings, y), drawing.ratio());
            off += Math.abs(folded - Drawings.row(drawing.thumbnail(), drawing.ratio(), y)) / ROWS;
        }
        assertThat(off).isLessThan(straight ? 1e-7 : 2e-4);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void aCaseSaysWhereItCameFrom(Drawing drawing) {
        assertThat(drawing.origin()).isNotEmpty();
        assertThat(drawing.marks()).isNotEmpty();
    }
}
