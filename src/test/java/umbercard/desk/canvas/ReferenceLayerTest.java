package umbercard.desk.canvas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.EventQueue;
import java.awt.image.BufferedImage;
import java.lang.ref.WeakReference;
import java.lang.reflect.InvocationTargetException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import umbercard.desk.KilnHill;
import umbercard.geometry.Outline;
import umbercard.model.Frame;
import umbercard.model.Mark;
import umbercard.model.Reference;
import umbercard.model.Squint;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.photo.FramedView;
import umbercard.photo.SquintPyramid;
import umbercard.photo.SquintWay;
import umbercard.photo.ValueCurve;
import umbercard.photo.Values;
import umbercard.picture.Picture;

class ReferenceLayerTest {
    private static final int WIDTH = 120;
    private static final int HEIGHT = 80;
    private static final int LARGE = 900;
    private static final double RATIO = 1.5;

    private final Semaphore told = new Semaphore(0);
    private final ReferenceLayer layer = new ReferenceLayer(told::release);

    /** Black at the left, white at the right, every column a little lighter. */
    private static Picture ramp() {
        int[] pixels = IntStream.range(0, WIDTH * HEIGHT)
                .map(i -> 0x010101 * (i % WIDTH * 255 / (WIDTH - 1)))
                .toArray();
        return new Picture(WIDTH, HEIGHT, pixels);
    }

    private static ReferenceLayer.Wanted wanted(Picture photograph, SeenAs as, Optional<Thumbnail> design) {
        return new ReferenceLayer.Wanted(
                photograph,
                Frame.largest(RATIO, RATIO),
                RATIO,
                HEIGHT,
                Squint.gaussian(0),
                as,
                OptionalDouble.empty(),
                design);
    }

    /** Has no height, so it cannot be made. */
    private static ReferenceLayer.Wanted broken(Picture photograph) {
        return new ReferenceLayer.Wanted(
                photograph,
                Frame.largest(RATIO, RATIO),
                RATIO,
                -1,
                Squint.gaussian(0),
                SeenAs.COLOR,
                OptionalDouble.empty(),
                Optional.empty());
    }

    private void want(Optional<ReferenceLayer.Wanted> wanted) {
        onEvents(() -> layer.want(wanted));
    }

    private static void onEvents(Runnable action) {
        try {
            EventQueue.invokeAndWait(action);
        } catch (InterruptedException | InvocationTargetException failure) {
            throw new AssertionError(failure);
        }
    }

    private boolean settled() {
        boolean[] settled = new boolean[1];
        onEvents(() -> settled[0] = layer.isSettled());
        return settled[0];
    }

    private void awaitAnswer() throws InterruptedException {
        assertThat(told.tryAcquire(20, TimeUnit.SECONDS)).as("an answer came").isTrue();
    }

    private void awaitSettled() throws InterruptedException {
        for (int i = 0; i < 1000 && !settled(); i++) {
            Thread.sleep(10);
        }
        assertThat(settled()).isTrue();
    }

    private BufferedImage shown(ReferenceLayer.Wanted wanted) throws InterruptedException {
        want(Optional.of(wanted));
        awaitAnswer();
        assertThat(settled()).isTrue();
        return layer.image().orElseThrow();
    }

    private static double dark(BufferedImage image) {
        int[] pixels = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        List<Integer> values = IntStream.of(pixels).distinct().sorted().boxed().toList();
        assertThat(values).hasSize(2);
        return (double) IntStream.of(pixels).filter(p -> p == values.get(0)).count() / pixels.length;
    }

    @Test
    void inColorItIsThePhotographAsFramed() throws InterruptedException {
        BufferedImage image = shown(wanted(ramp(), SeenAs.COLOR, Optional.empty()));
        assertThat(image.getHeight()).isEqualTo(HEIGHT);
        assertThat(image.getRGB(0, 40) & 0xff).isLessThan(12);
        assertThat(image.getRGB(image.getWidth() - 1, 40) & 0xff).isGreaterThan(243);
    }

    @ParameterizedTest
    @ValueSource(doubles = {.2, .5, .7})
    void theSplitFollowsTheThumbnailsDarkShare(double share) throws InterruptedException {
        Mark dark = new Mark("m1", Mark.Kind.LAY, Outline.rectangle(0, 0, RATIO, share));
        Thumbnail thumbnail = Thumbnail.empty("t1", "first").withMarks(List.of(dark));
        assertThat(dark(shown(wanted(ramp(), SeenAs.TWO_VALUES, Optional.of(thumbnail)))))
                .isCloseTo(share, within(1.5 / WIDTH));
    }

    @Test
    void theThumbnailCountsOnlyWhereTheSplitFollowsIt() {
        Study study =
                KilnHill.study().withReference(Optional.of(Reference.to("hill.jpg", "0", Frame.largest(RATIO, RATIO))));
        Optional<Thumbnail> thumbnail = study.chosenThumbnail();
        assertThat(design(study, thumbnail, SeenAs.TWO_VALUES)).isEqualTo(thumbnail);
        assertThat(design(study, thumbnail, SeenAs.GRAY)).isEmpty();
        Study split = study.withReference(study.reference().map(r -> r.withSplit(OptionalDouble.of(40))));
        assertThat(design(split, thumbnail, SeenAs.TWO_VALUES)).isEmpty();
    }

    private static Optional<Thumbnail> design(Study study, Optional<Thumbnail> thumbnail, SeenAs as) {
        return ReferenceLayer.Wanted.of(ramp(), study, thumbnail, HEIGHT, as)
                .orElseThrow()
                .design();
    }

    @Test
    void whatCannotBeMadeLeavesTheLastPictureAndMayBeAskedForAgain() throws InterruptedException {
        Picture photograph = ramp();
        BufferedImage last = shown(wanted(photograph, SeenAs.COLOR, Optional.empty()));
        ReferenceLayer.Wanted broken = broken(photograph);
        for (int i = 0; i < 2; i++) {
            boolean[] settledAtOnce = new boolean[1];
            onEvents(() -> {
                layer.want(Optional.of(broken));
                settledAtOnce[0] = layer.isSettled();
            });
            assertThat(settledAtOnce[0]).as("not asked").isFalse();
            awaitSettled();
            assertThat(layer.image()).containsSame(last);
        }
        assertThat(shown(wanted(photograph, SeenAs.GRAY, Optional.empty()))).isNotSameAs(last);
    }

    @Test
    void anotherPhotographsPictureIsNotShownForOneToCome() throws InterruptedException {
        shown(wanted(ramp(), SeenAs.COLOR, Optional.empty()));
        want(Optional.of(broken(ramp())));
        assertThat(layer.image()).isEmpty();
    }

    /** What is larger than a move has time for comes at half its size first; what stays is exact. */
    @ParameterizedTest
    @EnumSource(SeenAs.class)
    void theLastOfManyMovesIsExact(SeenAs as) throws InterruptedException {
        Picture photograph = ramp();
        for (int i = 1; i < 12; i++) {
            want(Optional.of(large(photograph, as, i)));
        }
        ReferenceLayer.Wanted last = large(photograph, as, 12);
        want(Optional.of(last));
        awaitAnswer();
        awaitSettled();
        BufferedImage image = layer.image().orElseThrow();
        assertThat(image.getHeight()).isEqualTo(LARGE);
        Picture framed = FramedView.of(photograph, last.frame(), RATIO, LARGE);
        SquintPyramid pyramid = new SquintPyramid(framed);
        double sigma = last.squint().sigma() * Math.hypot(framed.width(), framed.height());
        if (as == SeenAs.COLOR) {
            assertThat(pixels(image))
                    .isEqualTo(
                            pyramid.colors(SquintWay.GAUSSIAN, sigma).picture().pixels());
        } else if (as == SeenAs.GRAY) {
            assertThat(pixels(image))
                    .isEqualTo(Values.gray(pyramid.values(SquintWay.GAUSSIAN, sigma))
                            .pixels());
        } else {
            assertThat(layer.seen().orElseThrow().split().orElseThrow())
                    .isEqualTo(ValueCurve.of(pyramid.values(SquintWay.GAUSSIAN, sigma))
                            .otsu());
        }
    }

    @Test
    void aLargeOneIsSeenAtHalfItsSizeFirst() throws InterruptedException {
        List<Integer> heights = new CopyOnWriteArrayList<>();
        ReferenceLayer[] seen = new ReferenceLayer[1];
        seen[0] = new ReferenceLayer(() -> {
            heights.add(seen[0].image().orElseThrow().getHeight());
            told.release();
        });
        onEvents(() -> seen[0].want(Optional.of(large(ramp(), SeenAs.GRAY, 3))));
        awaitAnswer();
        awaitAnswer();
        assertThat(heights).containsExactly(LARGE / 2, LARGE);
    }

    private static ReferenceLayer.Wanted large(Picture photograph, SeenAs as, int squint) {
        return new ReferenceLayer.Wanted(
                photograph,
                Frame.largest(RATIO, RATIO),
                RATIO,
                LARGE,
                Squint.gaussian(0.002 * squint),
                as,
                OptionalDouble.empty(),
                Optional.empty());
    }

    private static int[] pixels(BufferedImage image) {
        return IntStream.of(image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth()))
                .map(pixel -> pixel & 0xffffff)
                .toArray();
    }

    @Test
    void nothingOfAPhotographIsKeptOnceNothingIsWanted() throws InterruptedException {
        WeakReference<Picture> photograph = shownOnce();
        want(Optional.empty());
        assertThat(layer.image()).isEmpty();
        for (int i = 0; i < 100 && photograph.get() != null; i++) {
            System.gc();
            Thread.sleep(20);
        }
        assertThat(photograph.get()).isNull();
        assertThat(settled()).isTrue();
    }

    private WeakReference<Picture> shownOnce() throws InterruptedException {
        Picture photograph = ramp();
        shown(wanted(photograph, SeenAs.COLOR, Optional.empty()));
        return new WeakReference<>(photograph);
    }
}
