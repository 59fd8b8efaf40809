package umbercard.cards;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import umbercard.Studies;
import umbercard.model.Study;

/** The dark of a printed card, counted in the pixels of a rasteriser. */
class RasterTest {
    @ParameterizedTest
    @CsvSource({
        "3x5in, false, 8",
        "3x5in, true, 8",
        "4x6in, true, 8",
        "4x6in, true, 11.811",
        "5x8in, false, 8",
        "a6, true, 10",
        "a6, false, 8"
    })
    void darkPixelsInTheFrameAreTheDarkShare(String size, boolean landscape, double pixelsPerMillimeter)
            throws IOException {
        Study study = Studies.onCard(Studies.kilnHill(), CardSizes.parse(size), landscape);
        byte[] svg = Written.files(study, "notan").values().iterator().next();
        BufferedImage image = Print.of(svg, pixelsPerMillimeter);
        assertThat(image.getWidth()).isEqualTo((int)
                Math.round(study.cards().card().turned(landscape).width() * pixelsPerMillimeter));

        Rectangle2D frame = WrittenCard.box(WrittenCard.read(svg).part("frame"));
        long all = 0;
        long dark = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                if (frame.contains((x + 0.5) / pixelsPerMillimeter, (y + 0.5) / pixelsPerMillimeter)) {
                    all++;
                    dark += (image.getRGB(x, y) & 0xff) < 128 ? 1 : 0;
                }
            }
        }
        assertThat((double) dark / all).isEqualTo(Written.design(study).darkShare(), within(0.003));
    }
}
