package umbercard.notes.layers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import umbercard.color.Lab;
import umbercard.color.MunsellValue;
import umbercard.geometry.Outline;
import umbercard.geometry.Region;
import umbercard.model.ColorNote;
import umbercard.model.ColorNote.Touch;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.model.Zone;
import umbercard.notan.Design;
import umbercard.notes.Purposes;
import umbercard.notes.turned.Skies;
import umbercard.picture.MainColor;
import umbercard.words.Words;
import umbercard.zones.ZoneMap;

class LayersTest {
    private static final double RATIO = 4.0 / 3;
    private static final ColorNote LOW = Skies.note("n1", Skies.stick("low", 3, 0, -10), "pond", Purposes.WATER);
    private static final ColorNote PALE = Skies.note("n2", Skies.stick("pale", 8, 0, 6), "pond", Purposes.WATER)
            .withTouch(Touch.LIGHT);
    private static final ColorNote SPARK = Skies.note("n3", Skies.stick("spark", 9.7, 0, 0), "pond", Purposes.ACCENTS);

    private static Study study() {
        return Skies.study().withNotes(List.of(LOW, PALE, SPARK));
    }

    private static Design dark(double top) {
        return new Design(RATIO, Region.of(Outline.rectangle(0, top, RATIO, 1)));
    }

    private static ZoneMap zones(Study study) {
        return ZoneMap.of(study, study.thumbnails().get(0));
    }

    private static List<ExpectedZone> layers(Study study, Map<String, List<MainColor>> colors) {
        return Layers.of(study, zones(study), dark(0.8), colors);
    }

    /** Luminances mix by area: half of the pond dark, then 85 % of the low one, then 45 % of the pale one (CIE 15, additive). */
    @Test
    void luminancesMixByTheAreaCovered() {
        ExpectedZone pond = layers(study(), Map.of()).get(0);
        double ground = (MunsellValue.luminance(9.5) + MunsellValue.luminance(2)) / 2;
        double low = 0.85 * MunsellValue.luminance(3) + 0.15 * ground;
        double pale = 0.45 * MunsellValue.luminance(8) + 0.55 * low;
        assertThat(pond.coats()).extracting(Coat::note).containsExactly(LOW, PALE);
        assertThat(pond.coats().get(0).before().luminance()).isEqualTo(ground, within(1e-9));
        assertThat(pond.coats().get(0).after().luminance()).isEqualTo(low, within(1e-9));
        assertThat(pond.color().luminance()).isEqualTo(pale, within(1e-9));
        assertThat(pond.value()).isEqualTo(MunsellValue.ofLuminance(pale), within(1e-9));
        assertThat(Words.say(pond.coats().get(1).words())).contains("pale, value 8.0", "what is below darkens it");
    }

    @Test
    void theTargetGoesBeforeTheReference() {
        Map<String, List<MainColor>> colors = Map.of(
                "pond",
                List.of(
                        new MainColor(Skies.stick("x", 8, 0, 0).color(), 0.5),
                        new MainColor(Skies.stick("y", 9, 0, 0).color(), 0.5)));
        ExpectedZone pond = layers(study(), colors).get(0);
        assertThat(pond.wanted().orElseThrow()).isEqualTo(8.5, within(1e-6));
        assertThat(Words.say(pond.words())).contains("darker than the 8.5 wanted");
        Study aimed = study().withZones(study().zones().stream()
                .map(zone -> zone.withTargetValue(OptionalDouble.of(3)))
                .toList());
        assertThat(layers(aimed, colors).get(0).wanted()).hasValue(3);
        assertThat(Words.say(layers(aimed, colors).get(0).words())).contains("lighter than the 3.0 wanted");
        assertThat(Words.say(layers(study(), Map.of()).get(0).words())).startsWith("pond comes to about value ");
    }

    @Test
    void theToneAndTheBlockInAreTheGround() {
        Lab buff = new Lab(75, 4, 15);
        ColorNote blockIn = ColorNote.of("n9", Skies.stick("wash", 2.5, 8, 4)).withPurpose(Purposes.BLOCK_IN);
        Study study = study();
        Study toned =
                study.withSurface(study.surface().withTone(Optional.of(buff))).withNotes(List.of(blockIn));
        assertThat(Underpainting.of(toned))
                .isEqualTo(new Underpainting(buff, blockIn.stick().color()));
        assertThat(Underpainting.of(study).light().value()).isEqualTo(9.5, within(1e-6));
    }

    @Provide
    Arbitrary<List<ColorNote>> notes() {
        Arbitrary<Integer> color = Arbitraries.integers().between(-30, 30);
        return Combinators.combine(
                        Arbitraries.integers().between(100, 970), color, color, Arbitraries.of(Touch.values()))
                .as((value, a, b, touch) -> Skies.note("n", Skies.stick("s", value / 100.0, a, b), "pond", "")
                        .withTouch(touch))
                .list()
                .ofMinSize(1)
                .ofMaxSize(6);
    }

    @Property(tries = 300)
    void theValueLiesBetweenTheLayersExtremes(@ForAll("notes") List<ColorNote> notes) {
        Lab ground = Lab.gray(60);
        List<Double> values = new ArrayList<>(List.of(ground.value()));
        notes.forEach(note -> values.add(note.stick().color().value()));
        double least = values.stream().mapToDouble(v -> v).min().orElseThrow();
        double most = values.stream().mapToDouble(v -> v).max().orElseThrow();
        List<Coat> coats = Layers.coats(notes, ground);
        assertThat(coats.get(coats.size() - 1).after().value()).isBetween(least - 1e-6, most + 1e-6);
    }

    @Property(tries = 200)
    void firmCoversMoreThanLight(@ForAll("notes") List<ColorNote> notes) {
        Lab ground = Lab.gray(50);
        ColorNote note = notes.get(0);
        double stick = note.stick().color().luminance();
        double firm = Layers.coats(List.of(note.withTouch(Touch.FIRM)), ground)
                .get(0)
                .after()
                .luminance();
        double light = Layers.coats(List.of(note.withTouch(Touch.LIGHT)), ground)
                .get(0)
                .after()
                .luminance();
        assertThat(Coverage.of(Touch.FIRM)).isGreaterThan(Coverage.of(Touch.LIGHT));
        assertThat(Math.abs(firm - stick)).isLessThanOrEqualTo(Math.abs(light - stick) + 1e-12);
    }

    @Test
    void breaksPartTheCardIntoSittings() {
        Study study = study();
        assertThat(Trial.sittings(study)).isEqualTo(1);
        assertThat(Trial.sittings(study.withNotes(List.of()))).isZero();
        Study parted = study.withNotes(List.of(LOW.withBreakBefore(true), PALE.withBreakBefore(true), SPARK));
        assertThat(Trial.sittings(parted)).isEqualTo(2);
    }

    @Test
    void theTrialIsPaintedSittingBySitting() {
        Study study = study().withNotes(List.of(LOW, PALE.withBreakBefore(true), SPARK));
        ZoneMap zones = zones(study);
        Design design = dark(0.8);
        Trial none = Trial.of(study, zones, design, 0);
        assertThat(none.areas()).noneMatch(Trial.Area::isPainted);
        assertThat(area(none)).isEqualTo(RATIO + 0.8 * RATIO, within(1e-6));
        assertThat(none.areas().stream()
                        .filter(area -> area.zone().isEmpty())
                        .mapToDouble(area -> area.region().area()))
                .hasSize(2)
                .allSatisfy(part -> assertThat(part).isGreaterThan(0));
        assertThat(none.areas())
                .extracting(Trial.Area::value)
                .allSatisfy(value -> assertThat(value)
                        .satisfiesAnyOf(
                                v -> assertThat(v).isEqualTo(2, within(1e-6)),
                                v -> assertThat(v).isEqualTo(9.5, within(1e-6))));
        Trial first = Trial.of(study, zones, design, 1);
        Trial all = Trial.of(study, zones, design, 9);
        List<Coat> coats = layers(study, Map.of()).get(0).coats();
        assertThat(pond(first).color()).isEqualTo(coats.get(0).after());
        assertThat(pond(all).color()).isEqualTo(coats.get(1).after());
        assertThat(pond(all).region().area()).isEqualTo(0.4 * RATIO, within(1e-6));
        assertThat(pond(all).gray().value()).isEqualTo(pond(all).value(), within(1e-9));
        assertThat(all.areas().get(all.areas().size() - 1)).isEqualTo(pond(all));
    }

    private static double area(Trial trial) {
        return trial.areas().stream().mapToDouble(area -> area.region().area()).sum();
    }

    private static Trial.Area pond(Trial trial) {
        return trial.areas().stream()
                .filter(area -> area.zone().map(Zone::id).equals(Optional.of("pond")))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aThumbnailWithoutZonesIsUnderpaintingAlone() {
        Study bare = study().withThumbnails(List.of(Thumbnail.empty("t1", "first")));
        assertThat(Trial.of(bare, zones(bare), dark(0.5), 3).areas()).hasSize(2);
    }
}
