package umbercard.model;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import umbercard.geometry.Size;

/**
 * How the study is laid on cards.
 *
 * @param card in millimeters, as it lies when {@code landscape} is applied
 * @param page in millimeters; empty means that each card is a page of its own
 * @param faces ids of the faces to lay, in order
 * @param gutter millimeters between cards on a page, 0 for none
 * @param copies 1 or more
 */
@RecordBuilder
public record CardSettings(
        Size card,
        boolean landscape,
        Optional<Size> page,
        List<String> faces,
        Backs backs,
        double gutter,
        int copies,
        Map<String, Object> more)
        implements CardSettingsBuilder.With {

    /** How the backs of cards are printed, if at all. */
    public enum Backs implements Keyed {
        NONE,
        LONG,
        SHORT,
        BY_HAND
    }

    public CardSettings {
        if (copies < 1 || !(gutter >= 0)) {
            throw new IllegalArgumentException("copies are 1 or more, a gutter is 0 or more");
        }
        faces = List.copyOf(faces);
        more = More.copyOf(more);
    }

    /** Both cards, 4 × 6 in, landscape, one side. In tenths, because 6 times 25.4 is not 152.4 in binary. */
    public static CardSettings usual() {
        return new CardSettings(
                new Size(6 * 254 / 10.0, 4 * 254 / 10.0),
                true,
                Optional.empty(),
                List.of("notan", "color-notes"),
                Backs.NONE,
                0,
                1,
                Map.of());
    }
}
