package umbercard.notes.turned;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import umbercard.color.MunsellValue;
import umbercard.model.ColorNote;
import umbercard.model.ColorNote.Touch;
import umbercard.model.Level;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.model.Zone;
import umbercard.model.Zone.Distance;
import umbercard.model.Zone.Plane;
import umbercard.notes.Purposes;
import umbercard.store.Samples;
import umbercard.words.Words;
import umbercard.zones.ZoneMap;

class TurnedSkyTest {
    private static final Stick HIGH = Skies.stick("high", 6.5, -4, -20);
    private static final Stick CLOUD = Skies.stick("cloud", 7.5, 0, -4);
    private static final Stick GLOW = Skies.stick("glow", 8.5, 6, 20);

    private static List<String> sticks(Offers offers) {
        return offers.notes().stream().map(note -> note.stick().id()).toList();
    }

    private static List<String> remarks(Offers offers) {
        return offers.remarks().stream().map(Words::say).toList();
    }

    /** Ruskin, The Elements of Drawing (1857): the reflection is what the same things would show turned upside down. */
    @Test
    void theHorizonIsLaidFirst() {
        Offers offers = Skies.turned(Skies.study(HIGH, CLOUD, GLOW));
        assertThat(sticks(offers)).containsExactly("glow", "cloud", "high");
        assertThat(offers.remarks()).isEmpty();
        ColorNote first = offers.notes().get(0);
        assertThat(first.zone()).contains("pond");
        assertThat(first.purpose()).isEqualTo(Purposes.WATER);
        assertThat(first.touch()).isEqualTo(Touch.LIGHT);
        assertThat(first.direction()).isEqualTo(ColorNote.Direction.FLAT);
        assertThat(Words.say(offers.offers().get(0).reason())).contains("glow", "far bank");
    }

    @Test
    void lightOnesComeBackDarkerAndDarkOnesLighter() {
        Stick night = Skies.stick("night", 2, 0, -15);
        Study study = Skies.study(GLOW, night);
        List<Stick> out = new ArrayList<>(study.setOut());
        out.add(Skies.stick("warm8", 8, 6, 20));
        out.add(Skies.stick("warm9", 9, 6, 20));
        out.add(Skies.stick("dark2.5", 2.5, 0, -15));
        out.add(Skies.stick("dark1.5", 1.5, 0, -15));
        Offers offers = Skies.turned(study.withSetOut(out));
        assertThat(sticks(offers)).containsExactly("dark2.5", "warm8");
        assertThat(Words.say(offers.offers().get(0).reason())).contains("a touch lighter");
        assertThat(Words.say(offers.offers().get(1).reason())).contains("a touch darker");
    }

    /**
     * The direction in which a value moves against computed mixes of what is mirrored and of the water (Fresnel equations,
     * n = 1.333): toward the water's own, never past it. The rows have things lighter than the water, which come back darker, and
     * things darker than it, which come back lighter; here the first lie above the middle value and the second below.
     */
    @ParameterizedTest
    @CsvFileSource(resources = "light_reflection.csv", delimiter = '|', numLinesToSkip = 2)
    void theWayAValueMovesIsThatOfPhysics(
            String check, double object, double water, double incidence, double reflected) {
        assertThat(check).isEqualTo("mix");
        assertThat(incidence).isBetween(0.0, 90.0);
        assertThat(reflected).isBetween(Math.min(object, water), Math.max(object, water));
        Stick sky = Skies.stick("sky", MunsellValue.ofLuminance(object), 0, 0);
        double value = sky.color().value();
        Study study = Skies.study(sky)
                .withSetOut(List.of(
                        sky, Skies.stick("lighter", value + 0.5, 0, 0), Skies.stick("darker", value - 0.5, 0, 0)));
        double to = Skies.turned(study).notes().get(0).stick().color().value();
        assertThat(Math.signum(to - value)).isEqualTo(Math.signum(reflected - object));
    }

    @Test
    void theBoxServesWhereNothingSetOutDoes() {
        Study study = Skies.study(GLOW);
        Stick inBox = Skies.stick("boxed", 8, 6, 19);
        Study boxed = study.withBox(Optional.of(Samples.kilnYard().box().withSticks(List.of(inBox))));
        Offers offers = Skies.turned(boxed);
        assertThat(sticks(offers)).containsExactly("boxed");
        Study added = offers.adding().apply(boxed);
        assertThat(added.setOut()).extracting(Stick::id).containsExactlyInAnyOrder("glow", "boxed");
        assertThat(added.notes()).hasSize(2).endsWith(offers.notes().get(0));
        assertThat(remarks(Skies.turned(added))).singleElement().asString().contains("pond has boxed for it already");
    }

    /** A hill from .3 down before the lowest of three bands, .27 to .4: three quarters of it is gone, so it stays. */
    @Test
    void whatLiesBehindIsLeftOutAndTheHiderNamed() {
        Study study = Skies.study(HIGH, CLOUD, GLOW);
        Zone hill = new Zone("hill", "hill", Plane.SLOPE, Distance.MIDDLE);
        assertThat(sticks(Skies.turned(Skies.with(study, hill, Skies.rectangle(0, 0.3, Skies.RATIO, 0.6)))))
                .containsExactly("glow", "cloud", "high");
        Offers hidden = Skies.turned(Skies.with(study, hill, Skies.rectangle(0, 0.27, Skies.RATIO, 0.6)));
        assertThat(sticks(hidden)).containsExactly("cloud", "high");
        assertThat(remarks(hidden)).containsExactly("glow is left out: hill hides it from the water.");
    }

    /** The horizon lies .1 above the waterline, so that a wall up to .35 reaches .15 in the mirror: over the two lower bands. */
    @Test
    void uprightsAtTheWaterReachHigherInTheMirror() {
        Study study = Skies.study(HIGH, CLOUD, GLOW);
        Zone wall = new Zone("wall", "wall", Plane.UPRIGHT, Distance.MIDDLE);
        Study walled = Skies.with(study, wall, Skies.rectangle(0, 0.35, Skies.RATIO, 0.6));
        List<SkyBand> bands = bands(walled);
        assertThat(bands.get(0).left()).isZero();
        assertThat(bands.get(1).left()).isEqualTo((0.15 - 0.4 / 3) / (0.4 / 3), within(1e-6));
        assertThat(bands.get(2).left()).isEqualTo(1, within(1e-9));
        assertThat(sticks(Skies.turned(walled))).containsExactly("cloud", "high");
        Study level = walled.withThumbnails(List.of(walled.thumbnails().get(0).withHorizon(Optional.empty())));
        assertThat(sticks(Skies.turned(level))).containsExactly("glow", "cloud", "high");
        Zone away = new Zone("away", "away", Plane.UPRIGHT, Distance.MIDDLE);
        Study apart = Skies.with(study, away, Skies.rectangle(0, 0.35, Skies.RATIO, 0.5));
        assertThat(sticks(Skies.turned(apart))).containsExactly("glow", "cloud", "high");
    }

    private static List<SkyBand> bands(Study study) {
        Thumbnail thumbnail = study.thumbnails().get(0);
        return VisibleSky.of(study, thumbnail, ZoneMap.of(study, thumbnail)).bands();
    }

    @Test
    void whatIsMissingIsSaid() {
        Study study = Skies.study(GLOW);
        Thumbnail dry = Skies.thumbnail().withWaterline(Optional.empty());
        assertThat(remarks(Skies.turned(study.withThumbnails(List.of(dry)))))
                .singleElement()
                .asString()
                .contains("no waterline");
        assertThat(remarks(Skies.turned(study.withZones(study.zones().subList(0, 1)))))
                .singleElement()
                .asString()
                .contains("No zone is water");
        assertThat(remarks(Skies.turned(study.withNotes(List.of()))))
                .singleElement()
                .asString()
                .contains("no notes");
    }

    @Provide
    Arbitrary<Stick> stick() {
        Arbitrary<Double> color = Arbitraries.integers().between(-40, 40).map(i -> (double) i);
        return Combinators.combine(
                        Arbitraries.integers().between(1000, 9700),
                        color,
                        color,
                        Arbitraries.integers().between(0, 1_000_000_000))
                .as((value, a, b, id) -> Skies.stick("s" + id, value / 1000.0, a, b));
    }

    @Provide
    Arbitrary<List<Stick>> sticks() {
        return stick().list().ofMinSize(1).ofMaxSize(6).uniqueElements(Stick::id);
    }

    @Property(tries = 150)
    void theOrderIsTheVisibleSkysReversed(
            @ForAll("sticks") List<Stick> sky, @ForAll("sticks") List<Stick> others, @ForAll boolean walled) {
        Study study = study(sky, others);
        if (walled) {
            Zone wall = new Zone("wall", "wall", Plane.UPRIGHT, Distance.MIDDLE);
            study = Skies.with(study, wall, Skies.rectangle(0, 0.38, Skies.RATIO, 0.6));
        }
        List<String> expected = bands(study).stream()
                .filter(SkyBand::isSeen)
                .map(band -> band.note().stick().id())
                .toList();
        List<String> down = new ArrayList<>(sky.stream().map(Stick::id).toList());
        Collections.reverse(down);
        assertThat(down).endsWith(expected.toArray(String[]::new));
        assertThat(Skies.turned(study).offers().stream()
                        .map(offer -> offer.reason().arguments().get(0)))
                .isEqualTo(expected);
    }

    @Property(tries = 150)
    void aValueMovesAtMostOneAndNeverAwayFromTheMiddle(
            @ForAll("sticks") List<Stick> sky, @ForAll("sticks") List<Stick> others) {
        List<ColorNote> water = Skies.turned(study(sky, others)).notes();
        assertThat(water).hasSameSizeAs(sky);
        for (int i = 0; i < water.size(); i++) {
            double from = sky.get(sky.size() - 1 - i).color().value();
            double to = water.get(i).stick().color().value();
            assertThat(Math.abs(to - from)).isLessThanOrEqualTo(1 + 1e-9);
            assertThat(Math.abs(to - 5)).isLessThanOrEqualTo(Math.abs(from - 5) + 1e-9);
        }
        assertThat(water).extracting(ColorNote::id).doesNotHaveDuplicates();
    }

    private static Study study(List<Stick> sky, List<Stick> others) {
        List<Stick> out = new ArrayList<>(sky);
        others.stream()
                .filter(stick -> sky.stream().noneMatch(one -> one.id().equals(stick.id())))
                .forEach(out::add);
        return Skies.study(sky.toArray(Stick[]::new)).withSetOut(out);
    }

    @Test
    void aTiltedWaterlineIsTakenAtTheMiddle() {
        Study study = Skies.study(HIGH, CLOUD, GLOW);
        Thumbnail tilted = Skies.thumbnail().withWaterline(Optional.of(new Level(0.6, 2)));
        assertThat(sticks(Skies.turned(study.withThumbnails(List.of(tilted)))))
                .containsExactly("glow", "cloud", "high");
    }
}
