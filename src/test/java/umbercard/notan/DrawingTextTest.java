package umbercard.notan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import umbercard.geometry.Cubic;
import umbercard.geometry.Shapes;
import umbercard.model.Mark;
import umbercard.model.Thumbnail;

class DrawingTextTest {
    private static final String TEXT = """
            # two marks
            ratio 1.25
            ground dark
            dark-share 0.5 within 1.0E-9
            pieces 2
            lift sss M0.1 0.2L0.9 0.2L0.5 0.7Z
            lay hidden rs M0.0 0.5C0.1 0.1 0.2 0.1 1.0E-12 0.5C0.3 0.9 0.1 0.9 0.0 0.5Z
            """;

    @Test
    void aTextIsReadAndWrittenTheSame() {
        Drawing drawing = DrawingText.read("two", TEXT);

        assertThat(DrawingText.written(drawing)).isEqualTo(TEXT);
        assertThat(drawing.origin()).containsExactly("two marks");
        assertThat(drawing.isDarkGround()).isTrue();
        assertThat(drawing.share()).isEqualTo(OptionalDouble.of(.5));
        assertThat(drawing.pieces()).isEqualTo(OptionalInt.of(2));
        assertThat(drawing.marks().get(0).kind()).isEqualTo(Mark.Kind.LIFT);
        assertThat(drawing.marks().get(0).outline()).isEqualTo(Shapes.polygon(.1, .2, .9, .2, .5, .7));
        assertThat(drawing.marks().get(1).hidden()).isTrue();
        assertThat(drawing.marks().get(1).outline().nodes().get(0).round()).isTrue();
    }

    @Property(seed = "1")
    void theVerySameCurvesComeBack(@ForAll long seed) {
        List<Mark> marks = Drawings.marks(new Random(seed), 5);
        Drawing drawing = Drawing.of("any", 1.353, Drawings.thumbnail(Thumbnail.Ground.LIGHT, marks));

        Drawing back = DrawingText.read("any", DrawingText.written(drawing));

        assertThat(back.ratio()).isEqualTo(1.353);
        for (int i = 0; i < marks.size(); i++) {
            List<Cubic> segments = back.marks().get(i).outline().segments();
            assertThat(segments).isEqualTo(marks.get(i).outline().segments());
            assertThat(back.marks().get(i).kind()).isEqualTo(marks.get(i).kind());
            assertThat(back.marks().get(i).hidden()).isEqualTo(marks.get(i).hidden());
        }
    }

    @Test
    void whatIsNotOfTheFormIsRefused() {
        assertThatThrownBy(() -> DrawingText.read("odd", "ratio 1\nnonsense\n"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("nonsense");
        assertThatThrownBy(() -> DrawingText.read("odd", "lay s M0 0Z\n")).hasMessageContaining("ratio");
        assertThatThrownBy(() -> DrawingText.read("odd", "ratio 1\nlay ssss M0 0L1 0L1 1Z\n"))
                .hasMessageContaining("4 letters for 3 points");
    }
}
