package umbercard.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import umbercard.desk.KilnHill;
import umbercard.geometry.Point;
import umbercard.model.Frame;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.model.Zone;
import umbercard.picture.Picture;

class ZonesOfThumbnailTest {
    private final Study study = KilnHill.beforePhotograph();
    private final Thumbnail first = study.thumbnail("t1").orElseThrow();
    private final Picture photograph = KilnHill.photograph();

    @Test
    void zonesThatHaveAnAreaAreAskedInTheOrderOfTheStudy() {
        var asked = FramedZones.in(first, study, photograph);
        assertThat(asked.keySet()).extracting(Zone::id).containsExactly("z1", "z2");
        assertThat(asked.get(study.zone("z2").orElseThrow()).outlines())
                .isEqualTo(first.zoneAreas().get("z2"));
    }

    @Test
    void aThumbnailsOwnFrameGoesBeforeTheReferences() {
        Frame own = new Frame(new Point(0.4, 0.5), 0.6, 2, false);
        var asked = FramedZones.in(first.withFrame(Optional.of(own)), study, photograph);
        assertThat(asked.values()).allMatch(zone -> zone.frame().equals(own));
        assertThat(FramedZones.in(first, study, photograph).values())
                .allMatch(zone ->
                        zone.frame().equals(study.reference().orElseThrow().frame()));
    }

    @Test
    void withoutAReferenceNothingIsAsked() {
        assertThat(FramedZones.in(first, study.withReference(Optional.empty()), photograph))
                .isEmpty();
    }
}
