package umbercard.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import umbercard.desk.KilnHill;
import umbercard.geometry.Point;
import umbercard.model.Frame;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.picture.Picture;

class FramedReferenceTest {
    private static final Study STUDY = KilnHill.beforePhotograph();
    private static final Thumbnail FIRST = STUDY.thumbnails().get(0);
    private static final Picture PHOTOGRAPH = KilnHill.photograph();

    private final FramedReference framed = new FramedReference();

    @Test
    void thePhotographLiesInTheFrameAsTheCardDoes() {
        Picture picture = framed.of(STUDY, FIRST, PHOTOGRAPH).orElseThrow();
        assertThat(picture.height()).isEqualTo(200);
        assertThat(picture.width()).isEqualTo((int) Math.round(200 * STUDY.ratio()));
        assertThat(picture.pixels()[0]).isEqualTo(0x303030);
        assertThat(picture.pixels()[picture.width() - 1]).isEqualTo(0xd0d0d0);
    }

    @Test
    void aThumbnailsOwnFrameGoesBeforeTheReferences() {
        Frame atRight = new Frame(new Point(.8, .5), .3, 0, false);
        Thumbnail own = FIRST.withFrame(Optional.of(atRight));
        Study study = STUDY.withThumbnails(java.util.List.of(own));
        Picture picture = framed.of(study, own, PHOTOGRAPH).orElseThrow();
        assertThat(picture.pixels()[0]).isEqualTo(0xd0d0d0);
    }

    @Test
    void theSameIsFramedOnce() {
        Picture first = framed.of(STUDY, FIRST, PHOTOGRAPH).orElseThrow();
        assertThat(framed.of(STUDY.withTitle("Alder bank"), FIRST, PHOTOGRAPH)).containsSame(first);
        assertThat(framed.of(STUDY, FIRST, KilnHill.photograph()).orElseThrow()).isNotSameAs(first);
    }

    @Test
    void withoutAReferenceThereIsNone() {
        assertThat(framed.of(STUDY.withReference(Optional.empty()), FIRST, PHOTOGRAPH))
                .isEmpty();
    }
}
