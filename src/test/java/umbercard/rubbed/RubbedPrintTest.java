package umbercard.rubbed;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import umbercard.Studies;
import umbercard.cards.CardSizes;
import umbercard.cards.PrintedSheet;
import umbercard.cards.Written;
import umbercard.color.Ciede2000;
import umbercard.model.Study;
import umbercard.photo.CardMarks.Patch;
import umbercard.photo.PhotoReader;
import umbercard.photo.Progress;
import umbercard.photo.RubbedCard;
import umbercard.photo.RubbedCard.Findings;
import umbercard.photo.RubbedCard.Look;
import umbercard.photo.RubbedCard.Rubbed;
import umbercard.spectra.Camera;
import umbercard.spectra.Observer;
import umbercard.spectra.RubbedPrint;
import umbercard.spectra.Spectrum;
import umbercard.spectra.Sticks;
import umbercard.spectra.Trays;
import umbercard.store.Samples;

/**
 * Kiln Hill's color cards all the way round: written, put into pixels by a renderer, rubbed on where the print leaves room,
 * photographed by spectra, and read.
 */
class RubbedPrintTest {
    private static Study kilnHill(String size, boolean landscape) throws IOException {
        return Studies.onCard(Samples.kilnHill().study(), CardSizes.parse(size), landscape);
    }

    private static List<PrintedSheet> sheets(Study study) throws IOException {
        return Written.files(study, "color-notes").values().stream()
                .map(PrintedSheet::of)
                .toList();
    }

    /** On the first card two patches stay bare. Measured: medians of 0.6 to 1.3 in daylight, 2.1 in lamplight, 2.8 under LEDs. */
    @ParameterizedTest(name = "{0}, {1}, {2}")
    @CsvSource(delimiter = ';', textBlock = """
                    4x6in; true; D50, balanced by the camera; 1.4; 2.2
                    4x6in; true; A, balanced for daylight; 2.4; 4.2
                    3x5in; false; D75, balanced for daylight; 1.4; 2
                    5x8in; true; LED, balanced by the camera; 3.1; 7.3
                    a6; false; D50, balanced for daylight; 1.4; 2.2
                    """)
    void sticksRubbedOnThePrintAreFoundByTheirTrueColor(
            String size, boolean landscape, String light, double median, double most) throws IOException {
        Study study = inThreeLines(kilnHill(size, landscape));
        List<PrintedSheet> sheets = sheets(study);
        for (int number = 1; number <= sheets.size(); number++) {
            PrintedSheet sheet = sheets.get(number - 1);
            List<Spectrum> sticks = Sticks.of(40 + number, sheet.rooms().size());
            int bare = number == 1 ? 2 : 0;
            Map<Integer, Spectrum> rubbed = new TreeMap<>();
            for (int i = bare; i < sticks.size(); i++) {
                rubbed.put(i, sticks.get(i));
            }
            Findings findings = read(
                    study, number, sheet, sheet.rubbed(rubbed), Trays.cameras().get(light));

            assertThat(findings.patches()).hasSameSizeAs(sticks);
            assertThat(findings.grays()).isEqualTo(sticks.size());
            assertThat(findings.patches().subList(0, bare))
                    .allSatisfy(patch -> assertThat(patch.look()).isEqualTo(Look.BARE));
            List<Rubbed> found = findings.patches().subList(bare, sticks.size());
            assertThat(found).extracting(Rubbed::look).containsOnly(Look.RUBBED);
            double[] errors = new double[found.size()];
            for (int i = 0; i < errors.length; i++) {
                errors[i] = Ciede2000.difference(found.get(i).color(), Observer.trueColor(sticks.get(bare + i)));
            }
            Arrays.sort(errors);
            assertThat(Trays.quantile(errors, 0.5)).as("median").isLessThan(median);
            assertThat(Trays.quantile(errors, 1)).as("most").isLessThan(most);
        }
    }

    /** Words of a fourth line leave room for fewer strips: then other sticks are drawn than those that were measured. */
    private static Study inThreeLines(Study study) {
        return study.withNotes(study.notes().stream()
                .map(note -> note.withWords("").withLayer(1))
                .toList());
    }

    private static Findings read(Study study, int number, PrintedSheet sheet, RubbedPrint rubbed, Camera camera)
            throws IOException {
        return RubbedCard.read(
                "card.jpg",
                PhotoReader.read("card.jpg", rubbed.shoot(camera, rubbed.view()), Progress.NONE),
                RubbedNotes.cardsOf(study).get(number - 1).marks(sheet.corners()));
    }

    @ParameterizedTest(name = "{0}, {1}")
    @CsvSource({"4x6in, true", "3x5in, false", "5x8in, true", "a6, false"})
    void whatIsTakenForBareCardIsBare(String size, boolean landscape) throws IOException {
        Study study = kilnHill(size, landscape);
        PrintedSheet sheet = sheets(study).get(0);
        assertThat(RubbedNotes.cardsOf(study).get(0).marks(sheet.corners()).printed())
                .filteredOn(printed -> printed.value() == 9.5)
                .isNotEmpty()
                .allSatisfy(bare -> assertThat(sheet.print()
                                .isBare(new Rectangle2D.Double(
                                        bare.corner().x(),
                                        bare.corner().y(),
                                        bare.size().width(),
                                        bare.size().height())))
                        .isTrue());
    }

    /** To a third of a millimeter, by the pixels: what is looked at is the printed patch, and all of it. */
    @ParameterizedTest(name = "{0}, {1}")
    @CsvSource({"4x6in, true", "3x5in, false", "5x8in, true", "a6, false"})
    void everyPatchIsTheWhiteThatIsPrinted(String size, boolean landscape) throws IOException {
        Study study = kilnHill(size, landscape);
        List<PrintedSheet> sheets = sheets(study);
        for (int number = 1; number <= sheets.size(); number++) {
            PrintedSheet sheet = sheets.get(number - 1);
            List<Patch> patches = RubbedNotes.cardsOf(study)
                    .get(number - 1)
                    .marks(sheet.corners())
                    .patches();
            assertThat(patches).hasSameSizeAs(sheet.rooms());
            for (int i = 0; i < patches.size(); i++) {
                Rectangle2D room = sheet.rooms().get(i);
                Patch patch = patches.get(i);
                double left = room.getX() - PrintedSheet.EDGE;
                double top = room.getY() - PrintedSheet.EDGE;
                assertThat(List.of(
                                patch.corner().x() - left,
                                patch.corner().y() - top,
                                patch.size().width() - room.getWidth() - 2 * PrintedSheet.EDGE,
                                patch.size().height() - room.getHeight() - 2 * PrintedSheet.EDGE))
                        .allSatisfy(off -> assertThat(off).isBetween(-0.33, 0.33));
            }
        }
    }
}
