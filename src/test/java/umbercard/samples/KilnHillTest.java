package umbercard.samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.metadata.exif.ExifDirectoryBase;
import com.drew.metadata.jpeg.JpegDirectory;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import umbercard.geometry.Point;
import umbercard.model.Frame;
import umbercard.model.Mark;
import umbercard.model.Thumbnail;
import umbercard.notan.Design;
import umbercard.notan.Fold;
import umbercard.photo.FirstPass;
import umbercard.photo.FramedView;
import umbercard.photo.PhotoReader;
import umbercard.photo.Progress;
import umbercard.picture.Picture;

class KilnHillTest {
    private static final Path FILE = Path.of("samples/kiln-hill.jpg");

    /** The opening of a sheet of 12 × 9 in inside a quarter inch of tape. */
    private static final double RATIO = 11.5 / 8.5;

    private static Picture photograph;

    @BeforeAll
    static void read() throws IOException {
        photograph = PhotoReader.read(FILE, Progress.NONE);
    }

    @Test
    void thePhotographIsLargePlainAndNotTooHeavy() throws IOException, ImageProcessingException {
        assertThat(Files.size(FILE)).isBetween(1_000_000L, 2_500_000L);
        var metadata = ImageMetadataReader.readMetadata(FILE.toFile());
        JpegDirectory stored = metadata.getFirstDirectoryOfType(JpegDirectory.class);
        assertThat(stored.getInteger(JpegDirectory.TAG_IMAGE_WIDTH)).isEqualTo(3000);
        assertThat(stored.getInteger(JpegDirectory.TAG_IMAGE_HEIGHT)).isEqualTo(2000);
        // ITU-T T.81: 0 is the baseline process.
        assertThat(stored.getInteger(JpegDirectory.TAG_COMPRESSION_TYPE)).isZero();
        assertThat(metadata.getDirectoriesOfType(ExifDirectoryBase.class)).isEmpty();
        assertThat(photograph.width()).isEqualTo(2000);
        assertThat(photograph.height()).isEqualTo(1333);
    }

    @Test
    void theFileIsWhatTheProgramMakes() {
        Picture small = FramedView.of(photograph, new Frame(new Point(0.5, 0.5), 1, 0, false), 1.5, 60);
        Picture made = FramedView.of(KilnHill.paint(200), new Frame(new Point(0.5, 0.5), 1, 0, false), 1.5, 60);
        double difference = 0;
        for (int i = 0; i < made.pixels().length; i++) {
            difference += Math.abs((made.pixels()[i] >> 8 & 0xff) - (small.pixels()[i] >> 8 & 0xff));
        }
        // The same scene at another size: grain and twigs differ, nothing else.
        assertThat(difference / made.pixels().length).isLessThan(8);
    }

    @Test
    void makesTheSamePictureEachTime() {
        assertThat(KilnHill.paint(90).pixels()).isEqualTo(KilnHill.paint(90).pixels());
    }

    @Test
    void squintsToADarkKilnOnALightSlopeOverADarkPond() {
        Frame frame = new Frame(new Point(0.5, 0.48), 0.9, 0, false);
        Picture framed = FramedView.of(photograph, frame, RATIO, 400);
        FirstPass.Traced traced = FirstPass.trace(framed, RATIO, FirstPass.Wish.usual(), () -> false);
        assertThat(traced.darkShare()).isBetween(0.25, 0.45);
        assertThat(traced.marks()).hasSizeBetween(2, 7).extracting(Mark::kind).contains(Mark.Kind.LAY);
        Thumbnail empty = Thumbnail.empty("t1", "traced");
        Design design = Fold.of(empty.withGround(traced.ground()).withMarks(traced.marks()), RATIO);
        assertThat(design.darkShare()).isCloseTo(traced.darkShare(), within(1e-4));
        // In frame units: kiln, slope, sky, pond.
        assertThat(design.dark().contains(new Point(0.95, 0.5))).isTrue();
        assertThat(design.dark().contains(new Point(0.6, 0.55))).isFalse();
        assertThat(design.dark().contains(new Point(0.9, 0.2))).isFalse();
        assertThat(design.dark().contains(new Point(0.7, 0.97))).isTrue();
    }
}
