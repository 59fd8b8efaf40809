package umbercard.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.io.IOException;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import umbercard.picture.Picture;

/**
 * Embedded color profiles against the same conversion computed by matrix and curve ({@link Profiles}, which names the
 * sources). Tolerance: 1.5 steps of 8 bits, half a step of it for rounding; colors outside of sRGB are clipped in both.
 */
class PhotoColorsTest {
    private static final double STEPS = 1.5;
    private static final int SIDE = 9;
    /** Every combination of nine levels of red, green and blue. */
    private static final Picture LATTICE =
            Photographs.picture(SIDE * SIDE, SIDE, (x, y) -> level(x % SIDE) << 16 | level(x / SIDE) << 8 | level(y));

    private static int level(int place) {
        return 255 * place / (SIDE - 1);
    }

    @ParameterizedTest
    @EnumSource(Profiles.Space.class)
    void followsTheProfileOfAPng(Profiles.Space space) throws IOException {
        byte[] file = Formats.profiledPng(Photographs.png(LATTICE), space.profile());
        assertFollowed(space, PhotoReader.read("colors.png", file, Progress.NONE));
    }

    @ParameterizedTest
    @EnumSource(Profiles.Space.class)
    void followsTheProfileOfATiff(Profiles.Space space) throws IOException {
        byte[] profile = space.profile();
        byte[] tiff = Formats.tiff(LATTICE, new int[] {34675, 7, profile.length, 0});
        // The entry's value is where the profile lies: behind everything else.
        int entry = 8 + 2 + 12 * 9 + 8;
        byte[] file = Arrays.copyOf(tiff, tiff.length + profile.length);
        System.arraycopy(profile, 0, file, tiff.length, profile.length);
        for (int i = 0; i < 4; i++) {
            file[entry + i] = (byte) (tiff.length >> 8 * i);
        }
        assertFollowed(space, PhotoReader.read("colors.tif", file, Progress.NONE));
    }

    /**
     * wide.webp: these colors written losslessly by libwebp 1.2.4 ({@code cwebp -lossless -exact}), the profile of {@link
     * Profiles.Space#WIDE} put in by its {@code webpmux -set icc}.
     */
    @Test
    void followsTheProfileOfAWebp() throws IOException {
        assertFollowed(
                Profiles.Space.WIDE, PhotoReader.read("wide.webp", Photographs.resource("wide.webp"), Progress.NONE));
    }

    private static void assertFollowed(Profiles.Space space, Picture read) {
        for (int i = 0; i < LATTICE.pixels().length; i++) {
            int rgb = LATTICE.pixels()[i];
            double[] wanted = space.toSrgb(rgb >> 16 & 0xff, rgb >> 8 & 0xff, rgb & 0xff);
            for (int band = 0; band < 3; band++) {
                assertThat((double) (read.pixels()[i] >> 16 - 8 * band & 0xff))
                        .as("%s %06x, band %d", space, rgb, band)
                        .isCloseTo(wanted[band], within(STEPS));
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Profiles.Space.class)
    void followsTheProfileOfAJpeg(Profiles.Space space) throws IOException {
        byte[] flat = Photographs.jpeg(Photographs.picture(64, 64, (x, y) -> 0x60a070));
        Picture read = PhotoReader.read("flat.jpg", Photographs.profiled(flat, space.profile()), Progress.NONE);
        Picture plain = PhotoReader.read("flat.jpg", flat, Progress.NONE);
        int rgb = plain.rgb(32, 32);
        double[] wanted = space.toSrgb(rgb >> 16 & 0xff, rgb >> 8 & 0xff, rgb & 0xff);
        for (int band = 0; band < 3; band++) {
            assertThat((double) (read.rgb(32, 32) >> 16 - 8 * band & 0xff)).isCloseTo(wanted[band], within(STEPS));
        }
    }

    @Test
    void followsAGrayProfile() throws IOException {
        BufferedImage ramp = new BufferedImage(256, 8, BufferedImage.TYPE_BYTE_GRAY);
        byte[] samples = ((DataBufferByte) ramp.getRaster().getDataBuffer()).getData();
        for (int i = 0; i < samples.length; i++) {
            samples[i] = (byte) (i % 256);
        }
        byte[] png = Formats.profiledPng(Photographs.bytes(ramp, "png", 1, false), Profiles.gray());
        Picture read = PhotoReader.read("ramp.png", png, Progress.NONE);
        for (int gray = 0; gray < 256; gray++) {
            for (int shift = 0; shift < 24; shift += 8) {
                assertThat((double) (read.rgb(gray, 3) >> shift & 0xff))
                        .as("gray %d", gray)
                        .isCloseTo(Profiles.grayToSrgb(gray), within(STEPS));
            }
        }
        BufferedImage flat = new BufferedImage(64, 64, BufferedImage.TYPE_BYTE_GRAY);
        Arrays.fill(((DataBufferByte) flat.getRaster().getDataBuffer()).getData(), (byte) 20);
        byte[] jpeg = Photographs.profiled(Photographs.bytes(flat, "jpeg", 1, false), Profiles.gray());
        assertThat((double) (PhotoReader.read("flat.jpg", jpeg, Progress.NONE).rgb(30, 30) & 0xff))
                .isCloseTo(Profiles.grayToSrgb(20), within(STEPS));
    }

    @Test
    void aProfileThatCannotBeReadCountsAsNone() throws IOException {
        byte[] flat = Photographs.jpeg(Photographs.picture(64, 64, (x, y) -> 0x60a070));
        int[] plain = PhotoReader.read("flat.jpg", flat, Progress.NONE).pixels();
        byte[] gray = Photographs.profiled(flat, Profiles.gray());
        byte[] broken = Photographs.profiled(flat, new byte[300]);
        assertThat(PhotoReader.read("gray.jpg", gray, Progress.NONE).pixels()).isEqualTo(plain);
        assertThat(PhotoReader.read("broken.jpg", broken, Progress.NONE).pixels())
                .isEqualTo(plain);
    }
}
