package umbercard.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import umbercard.color.Ciede2000;
import umbercard.color.Lab;
import umbercard.geometry.Outline;
import umbercard.geometry.Region;
import umbercard.model.Box;
import umbercard.model.ColorNote;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.model.Zone;
import umbercard.notan.Design;
import umbercard.notan.Fold;

class SamplesTest {
    private static final Path STUDY = Path.of("samples/kiln-hill.json");
    private static final Path BOX = Path.of("samples/kiln-yard-36.json");

    private static Study study() throws Exception {
        return StudyFile.read(STUDY);
    }

    private static Box box() throws Exception {
        assertThat(new Boxes().read(BOX).faults()).isEmpty();
        return new Boxes().read(BOX).box();
    }

    private static Design design(Study study, String name) {
        Thumbnail thumbnail = study.thumbnails().stream()
                .filter(t -> t.name().equals(name))
                .findFirst()
                .orElseThrow();
        return Fold.of(thumbnail, study.ratio());
    }

    @Test
    void bothFilesStandAsTheProgramWritesThem() throws Exception {
        assertThat(StudyFile.text(study())).isEqualTo(Files.readString(STUDY));
        assertThat(BoxFile.text(box())).isEqualTo(Files.readString(BOX));
    }

    @Test
    void kilnHillIsPackedWithItsPhotographAndOpensAsAnUntitledCopy(@TempDir Path folder) throws Exception {
        Samples.Sample sample = Samples.kilnHill();
        assertThat(sample.study()).isEqualTo(study());
        assertThat(sample.photographName()).isEqualTo("kiln-hill.jpg");
        assertThat(sample.photograph()).isEqualTo(Files.readAllBytes(Path.of("samples/kiln-hill.jpg")));
        assertThat(sample.study().reference().orElseThrow().sha256()).isEqualTo(References.sha256(sample.photograph()));
        Path file = folder.resolve("mine.json");
        Study mine = StudyFolder.save(sample.study(), sample.photograph(), sample.photographName(), file);
        assertThat(mine).isEqualTo(sample.study());
        assertThat(References.bytes(mine, Optional.of(file))).isEqualTo(sample.photograph());
    }

    @Test
    void theStudyCarriesTheBoxAndItsSticksComeFromIt() throws Exception {
        Study study = study();
        assertThat(study.box()).contains(box());
        assertThat(study.notes()).hasSizeBetween(9, 10).allSatisfy(note -> {
            assertThat(box().sticks()).contains(note.stick());
            assertThat(study.setOut()).contains(note.stick());
            assertThat(note.zone().flatMap(study::zone)).isPresent();
        });
    }

    @Test
    void theFirstThumbnailIsDullAndTheChosenOneIsNot() throws Exception {
        Study study = study();
        assertThat(study.chosenThumbnail().map(Thumbnail::name)).contains("raised");
        assertThat(design(study, "first").darkShare()).isCloseTo(0.5, within(0.02));
        assertThat(study.thumbnails().get(0).horizon().orElseThrow().y()).isCloseTo(0.5, within(0.02));
        assertThat(design(study, "raised").darkShare()).isBetween(0.57, 0.63);
        assertThat(design(study, "raised").dark().pieces()).as("joined darks").hasSize(1);
        assertThat(study.thumbnails().get(1).landEdge().orElseThrow().y()).isLessThan(0.3);
    }

    @Test
    void everyZoneLiesOnBothThumbnailsAndTogetherTheyFillTheFrame() throws Exception {
        Study study = study();
        for (Thumbnail thumbnail : study.thumbnails()) {
            assertThat(thumbnail.zoneAreas().keySet())
                    .isEqualTo(
                            new HashSet<>(study.zones().stream().map(Zone::id).toList()));
            List<Outline> all = thumbnail.zoneAreas().values().stream()
                    .flatMap(List::stream)
                    .toList();
            Region covered = Region.empty();
            for (List<Outline> zone : thumbnail.zoneAreas().values()) {
                covered = covered.union(Region.of(zone));
            }
            assertThat(all).hasSizeGreaterThan(8);
            assertThat(covered.area()).isCloseTo(study.ratio(), within(0.01 * study.ratio()));
        }
    }

    /** A hole runs the other way round: the slope does not lie over the kiln. */
    @Test
    void theSlopeLeavesTheKilnOut() throws Exception {
        Study study = study();
        for (Thumbnail thumbnail : study.thumbnails()) {
            Region slope = Region.of(thumbnail.zoneAreas().get("z3"));
            Region kiln = Region.of(thumbnail.zoneAreas().get("z4"));
            assertThat(slope.intersect(kiln).area()).isLessThan(1e-6);
        }
    }

    /** Common practice, no source: darks first and more than one, the land's edge before the sky, accents last. */
    @Test
    void theNotesStandInAGoodOrder() throws Exception {
        List<String> purposes = study().notes().stream().map(ColorNote::purpose).toList();
        assertThat(purposes.subList(0, 2)).containsOnly("darks");
        assertThat(purposes.indexOf("land-edge")).isLessThan(purposes.indexOf("sky"));
        assertThat(purposes.lastIndexOf("sky")).isLessThan(purposes.indexOf("ground"));
        assertThat(purposes.indexOf("ground")).isLessThan(purposes.indexOf("growth"));
        assertThat(purposes.lastIndexOf("growth")).isLessThan(purposes.indexOf("water"));
        assertThat(purposes.get(purposes.size() - 1)).isEqualTo("accents");
    }

    @Test
    void theBoxFillsItsTray() throws Exception {
        Set<Optional<Stick.Slot>> places = new HashSet<>();
        for (int row = 1; row <= 6; row++) {
            for (int column = 1; column <= 6; column++) {
                places.add(Optional.of(new Stick.Slot(row, column)));
            }
        }
        assertThat(box().sticks()).hasSize(36);
        assertThat(new HashSet<>(box().sticks().stream().map(Stick::slot).toList()))
                .isEqualTo(places);
        assertThat(box().sticks())
                .extracting(Stick::name)
                .doesNotHaveDuplicates()
                .doesNotContain(Optional.empty());
    }

    /** What a working landscape box holds: common practice, no source. */
    @Test
    void theBoxIsALandscapeBox() throws Exception {
        assertThat(count(stick -> stick.color().value() < 4)).as("darks").isEqualTo(12);
        assertThat(count(stick -> stick.color().value() > 9)).as("near-whites").isEqualTo(3);
        assertThat(count(stick -> stick.color().chroma() > 45)).as("brights").isBetween(2L, 5L);
        assertThat(count(stick -> stick.color().chroma() < 28))
                .as("grays and earths")
                .isGreaterThanOrEqualTo(24L);
        for (Stick.Hardness hardness : Stick.Hardness.values()) {
            assertThat(count(stick -> stick.hardness().equals(Optional.of(hardness))))
                    .as(hardness.key())
                    .isGreaterThanOrEqualTo(6L);
        }
    }

    /** Common practice, no source. */
    @Test
    void eachRowOfTheTrayIsLighterThanTheOneAboveWithWarmAndCoolInEach() throws Exception {
        double lightest = 0;
        for (int row = 0; row < 6; row++) {
            List<Lab> colors = box().sticks().subList(6 * row, 6 * row + 6).stream()
                    .map(Stick::color)
                    .toList();
            assertThat(colors.stream().filter(color -> color.b() < 0))
                    .as("cool")
                    .hasSizeGreaterThanOrEqualTo(2);
            assertThat(colors.stream().filter(color -> color.b() > 3))
                    .as("warm")
                    .hasSizeGreaterThanOrEqualTo(2);
            assertThat(colors.stream().mapToDouble(Lab::value).min().orElseThrow())
                    .isGreaterThan(lightest);
            lightest = colors.stream().mapToDouble(Lab::value).max().orElseThrow();
        }
    }

    @Test
    void everyStickCanBeShownOnAScreen() throws Exception {
        assertThat(box().sticks()).allSatisfy(stick -> {
            Lab shown = Lab.ofSrgb(stick.color().srgb());
            assertThat(Ciede2000.difference(shown, stick.color())).isLessThan(0.6);
        });
    }

    private static long count(Predicate<Stick> which) throws Exception {
        return box().sticks().stream().filter(which).count();
    }
}
