package umbercard.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import umbercard.color.Lab;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.model.Frame;
import umbercard.picture.Picture;

/** Values are those of ASTM D1535's polynomial for the sRGB grays (IEC 61966-2-1) that the pictures are made of. */
class ZoneColorsTest {
    private static final int SIDE = 200;
    private static final int DARK = 0x303030;
    private static final int LIGHT = 0xd0d0d0;
    private static final int RED = 0xb03020;

    private static final List<Outline> ALL = List.of(Outline.rectangle(0, 0, 1, 1));

    /** Dark from the left up to a share of the width, then red up to another, then light. */
    private static Picture bands(double dark, double red) {
        int[] pixels = new int[SIDE * SIDE];
        for (int i = 0; i < pixels.length; i++) {
            double x = (i % SIDE + 0.5) / SIDE;
            pixels[i] = x < dark ? DARK : x < red ? RED : LIGHT;
        }
        return new Picture(SIDE, SIDE, pixels);
    }

    private static ZoneColors colors(Picture picture, List<Outline> zone) {
        return ZoneColors.of(picture, zone).orElseThrow();
    }

    @Test
    void tellsTheMeanAndTheMainColorsBySharesOfTheZoneAlone() {
        // Of the left three fifths: half dark, a third red, a sixth light.
        ZoneColors found = colors(bands(0.3, 0.5), List.of(Outline.rectangle(0, 0, 0.6, 1)));
        assertThat(found.share()).isCloseTo(0.6, within(1e-9));
        assertThat(found.main()).hasSize(3);
        assertThat(found.main()).extracting(c -> c.color().hex()).containsExactly("#303030", "#b03020", "#d0d0d0");
        double[] shares = {1.0 / 2, 1.0 / 3, 1.0 / 6};
        double luminance = 0;
        for (int i = 0; i < 3; i++) {
            assertThat(found.main().get(i).share()).isCloseTo(shares[i], within(1e-9));
            luminance += shares[i] * Lab.ofSrgb(new int[] {DARK, RED, LIGHT}[i]).luminance();
        }
        // Light mixes linearly: the mean's luminance is the mean of the luminances.
        assertThat(found.mean().luminance()).isCloseTo(luminance, within(1e-4));
    }

    @Test
    void leavesOutWhatIsHardlyThere() {
        assertThat(colors(bands(0.5, 0.545), ALL).main()).hasSize(2);
        assertThat(colors(bands(0.5, 0.555), ALL).main()).hasSize(3);
    }

    @Test
    void doesNotTellApartWhatLooksAlike() {
        int[] pixels = new int[SIDE * SIDE];
        for (int i = 0; i < pixels.length; i++) {
            int shade = 4 * (i % SIDE * 4 / SIDE);
            pixels[i] = i / SIDE < SIDE / 2 ? DARK : LIGHT - 0x010101 * shade;
        }
        assertThat(colors(new Picture(SIDE, SIDE, pixels), ALL).main()).hasSize(2);
    }

    /**
     * Red beside two grays of 4.77 and of 5.17 by CIEDE2000, worked out apart from the program; among grays it is the
     * difference of their L* by the formula's weight for lightness (Sharma, Wu and Dalal 2005). The limit of 5 is ours.
     */
    @Test
    void tellsApartFromTheLimitOn() {
        assertThat(colors(thirds(RED, 0x717171, 0x7d7d7d), ALL).main()).hasSize(2);
        assertThat(colors(thirds(RED, 0x707070, 0x7d7d7d), ALL).main()).hasSize(3);
    }

    private static Picture thirds(int... colors) {
        int[] pixels = new int[SIDE * SIDE];
        for (int i = 0; i < pixels.length; i++) {
            pixels[i] = colors[3 * (i % SIDE) / SIDE];
        }
        return new Picture(SIDE, SIDE, pixels);
    }

    @Test
    void isOfOneColorWhereThereIsNoOther() {
        ZoneColors found = colors(bands(1, 1), ALL);
        assertThat(found.main()).hasSize(1);
        assertThat(found.main().get(0).share()).isEqualTo(1);
        assertThat(found.mean().value()).isCloseTo(found.main().get(0).color().value(), within(1e-3));
    }

    @Test
    void aZoneWithoutAreaHasNone() {
        assertThat(ZoneColors.of(bands(0.5, 0.5), List.of())).isEmpty();
        assertThat(ZoneColors.of(bands(0.5, 0.5), List.of(Outline.rectangle(2, 0, 3, 1))))
                .isEmpty();
    }

    @Test
    void aFrameOfItsOwnIsLookedAtWithin() {
        FramedZones zones = new FramedZones();
        Picture picture = bands(0.5, 0.5);
        Frame left = new Frame(new Point(0.25, 0.25), 0.4, 0, false);
        Frame right = new Frame(new Point(0.75, 0.25), 0.4, 0, false);
        assertThat(hex(zones, picture, left)).isEqualTo("#303030");
        assertThat(hex(zones, picture, right)).isEqualTo("#d0d0d0");
        assertThat(hex(zones, picture, left)).isEqualTo("#303030");
        assertThat(hex(zones, bands(0, 1), left)).isEqualTo("#b03020");
    }

    @Test
    void anotherPhotographInTheSameFrameIsLookedAtAnew() {
        FramedZones zones = new FramedZones();
        Frame left = new Frame(new Point(0.25, 0.25), 0.4, 0, false);
        assertThat(hex(zones, bands(0.5, 0.5), left)).isEqualTo("#303030");
        assertThat(hex(zones, bands(0, 1), left)).isEqualTo("#b03020");
    }

    /** A frame of 0.4 of the height reaches from 0.1 to 0.5 across if it is square, and from 0 to 0.6 if half as wide again. */
    @Test
    void aWiderFrameSeesMore() {
        FramedZones zones = new FramedZones();
        Picture picture = bands(0.5, 0.5);
        Frame frame = new Frame(new Point(0.3, 0.5), 0.4, 0, false);
        for (double ratio : new double[] {1, 1.5}) {
            ZoneColors found = zones.of(
                            new FramedZones.Asked(picture, frame, ratio, List.of(Outline.rectangle(0, 0, ratio, 1))))
                    .orElseThrow();
            assertThat(found.main().get(0).share()).isCloseTo(ratio == 1 ? 1 : 5.0 / 6, within(0.01));
        }
    }

    @Test
    void whatWasFoundInAnotherPhotographIsNotKept() {
        FramedZones zones = new FramedZones();
        Picture picture = bands(0.5, 0.5);
        Frame frame = new Frame(new Point(0.5, 0.5), 1, 0, false);
        ZoneColors before = found(zones, picture, frame).orElseThrow();
        assertThat(found(zones, bands(0, 1), frame)).isPresent();
        assertThat(found(zones, picture, frame).orElseThrow()).isEqualTo(before).isNotSameAs(before);
    }

    private static String hex(FramedZones zones, Picture picture, Frame frame) {
        return found(zones, picture, frame).orElseThrow().mean().hex();
    }

    private static Optional<ZoneColors> found(FramedZones zones, Picture picture, Frame frame) {
        return zones.of(new FramedZones.Asked(picture, frame, 1, ALL));
    }

    @Test
    void whatIsKnownIsNotLookedForAgain() {
        FramedZones zones = new FramedZones();
        Picture picture = bands(0.5, 0.5);
        Frame frame = new Frame(new Point(0.5, 0.5), 1, 0, false);
        assertThat(found(zones, picture, frame).orElseThrow())
                .isSameAs(found(zones, picture, frame).orElseThrow());
    }

    @Test
    void refusesTheEventThread() throws InterruptedException {
        FramedZones zones = new FramedZones();
        List<Throwable> thrown = new ArrayList<>();
        Thread thread = new Thread(
                () -> thrown.add(catchThrowable(
                        () -> found(zones, bands(1, 1), new Frame(new Point(0.5, 0.5), 1, 0, false)))),
                "AWT-EventQueue-0");
        thread.start();
        thread.join();
        assertThat(thrown).singleElement().isInstanceOf(IllegalStateException.class);
    }
}
