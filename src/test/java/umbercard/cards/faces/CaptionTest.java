package umbercard.cards.faces;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import umbercard.Studies;
import umbercard.cards.type.Roboto;
import umbercard.model.ColorNote;
import umbercard.model.Study;

class CaptionTest {
    private static final Setting SETTING = new Setting(Roboto.type());
    private static final Style STYLE = Style.regular(9);
    private static final Caption WATER =
            new Caption("Mill water", "mill pond", "restated growth", "along the form", "light", "");

    @Test
    void saysAllWhereThereIsRoom() {
        assertThat(WATER.lines(SETTING, STYLE, 60, STYLE, 60, 3))
                .containsExactly("Mill water", "mill pond, restated growth", "along the form, light touch");
    }

    @Test
    void shortensTheZoneBeforeThePurpose() {
        assertThat(WATER.lines(SETTING, STYLE, 30, STYLE, 37, 3).get(1)).endsWith("…, restated growth");
    }

    @Test
    void givesASpareLineToZoneAndPurpose() {
        assertThat(WATER.lines(SETTING, STYLE, 30, STYLE, 32, 4))
                .containsExactly("Mill water", "mill pond", "restated growth", "along the form, light");
    }

    @Test
    void breaksTheStrokesRatherThanShortenThem() {
        assertThat(WATER.lines(SETTING, STYLE, 30, STYLE, 25, 4)).endsWith("along the form", "light");
    }

    @Test
    void breaksANameWhereALineIsFree() {
        Caption plain = new Caption("Mill water in the shade", "", "", "flat", "firm", "");
        assertThat(plain.lines(SETTING, STYLE, 20, STYLE, 40, 3))
                .containsExactly("Mill water in", "the shade", "flat, firm touch");
    }

    @Test
    void shortensANameThatHasNoRoom() {
        assertThat(WATER.lines(SETTING, STYLE, 12, STYLE, 60, 3).get(0))
                .startsWith("Mill")
                .endsWith("…");
    }

    @Test
    void aLaterLayerAndThePaintersOwnWordsTakeTheFourthLine() {
        ColorNote note = Studies.kilnHill().notes().get(0).withLayer(2).withWords(" drag it\nsideways ");
        Caption caption = Caption.of(note, Studies.kilnHill());
        List<String> lines = caption.lines(SETTING, STYLE, 60, STYLE, 60, 4);
        assertThat(lines).hasSize(4).endsWith("layer 2, drag it sideways");
        assertThat(caption.lines(SETTING, STYLE, 60, STYLE, 60, 3)).isEqualTo(lines.subList(0, 3));
        assertThat(Caption.of(note.withWords(""), Studies.kilnHill()).own()).isEqualTo("layer 2");
        assertThat(Caption.of(note.withLayer(1), Studies.kilnHill()).own()).isEqualTo("drag it sideways");
    }

    @Test
    void usesThePaintersOwnPurposeAndTheTradesWords() {
        Study study = Studies.kilnHill();
        Caption own = Caption.of(study.notes().get(0).withPurpose("  the warm\nglow "), study);
        assertThat(own.purpose()).isEqualTo("the warm glow");
        Caption trade = Caption.of(study.notes().get(0).withPurpose("sky-holes"), study);
        assertThat(trade.purpose()).isEqualTo("sky holes");
        assertThat(trade.zone()).isEqualTo("kiln");
    }
}
