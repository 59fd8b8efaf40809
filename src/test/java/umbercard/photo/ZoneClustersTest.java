package umbercard.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import umbercard.color.Ciede2000;
import umbercard.color.Lab;
import umbercard.geometry.Outline;
import umbercard.model.Thumbnail;
import umbercard.model.Zone;
import umbercard.picture.Picture;
import umbercard.picture.ZoneColors;

class ZoneClustersTest {
    private static final List<Zone> ZONES = List.of(
            new Zone("z1", "sky", Zone.Plane.SKY, Zone.Distance.FAR),
            new Zone("z2", "bank", Zone.Plane.FLAT, Zone.Distance.NEAR),
            new Zone("z3", "barn", Zone.Plane.UPRIGHT, Zone.Distance.MIDDLE),
            new Zone("z4", "not laid out", Zone.Plane.UPRIGHT, Zone.Distance.MIDDLE));

    /** The sky in the upper half, a quarter of it darker; below, the bank in two browns that are hardly different. */
    private static final Picture PICTURE = Photographs.picture(
            200, 100, (x, y) -> y < 50 ? x < 50 ? 0x8090a8 : 0xc8d2de : x < 100 ? 0x5a4630 : 0x5c4832);

    private static final Thumbnail THUMBNAIL = Thumbnail.empty("t1", "first")
            .withZoneAreas(Map.of(
                    "z1", List.of(Outline.rectangle(0, 0, 2, 0.5)),
                    "z2", List.of(Outline.rectangle(0, 0.5, 1.5, 1)),
                    "z3", List.of(Outline.rectangle(3, 0, 4, 1))));

    @Test
    void eachZoneHasItsOwnColorsWithTheirShares() {
        List<ZoneColors> zones = ZoneClusters.of(PICTURE, ZONES, THUMBNAIL);
        assertThat(zones).extracting(ZoneColors::name).containsExactly("sky", "bank");
        ZoneColors sky = zones.get(0);
        assertThat(sky.zone()).isEqualTo("z1");
        assertThat(sky.share()).isCloseTo(0.5, within(1e-9));
        assertThat(sky.colors()).hasSize(2);
        assertThat(sky.colors().get(0).share()).isCloseTo(0.75, within(1e-9));
        assertThat(Ciede2000.difference(sky.colors().get(0).color(), Lab.ofSrgb(0xc8d2de))).isLessThan(0.01);
        assertThat(Ciede2000.difference(sky.colors().get(1).color(), Lab.ofSrgb(0x8090a8))).isLessThan(0.01);
        assertThat(zones.get(1).share()).isCloseTo(0.375, within(1e-9));
    }

    @Test
    void theSameEveryTime() {
        Picture noise = Photographs.noise(150, 100, 3);
        assertThat(ZoneClusters.of(noise, ZONES, THUMBNAIL)).isEqualTo(ZoneClusters.of(noise, ZONES, THUMBNAIL));
    }
}
