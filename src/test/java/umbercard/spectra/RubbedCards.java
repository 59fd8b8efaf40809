package umbercard.spectra;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import umbercard.color.Ciede2000;
import umbercard.color.MunsellValue;
import umbercard.geometry.Point;
import umbercard.geometry.Size;
import umbercard.photo.CardMarks;
import umbercard.photo.CardMarks.Patch;
import umbercard.photo.CardMarks.Printed;
import umbercard.photo.PhotoReader;
import umbercard.photo.Progress;
import umbercard.photo.RubbedCard;
import umbercard.photo.RubbedCard.Findings;
import umbercard.photo.RubbedCard.Look;
import umbercard.words.Trouble;

/**
 * A card of 152 by 102 mm with fifteen patches in three columns, each with a printed gray at its right; two are left bare,
 * and on two the stick was rubbed over the gray as well.
 */
public final class RubbedCards {
    public static final List<String> BARE = List.of("4", "9");
    public static final int RUBBED_OVER = 2;

    private static final Size CARD = new Size(152, 102);
    private static final Size RUB = new Size(12, 10.8);
    private static final Size GRAY = new Size(6, 10.8);
    private static final int COUNT = 15;

    private final CardScene scene;
    private final UnaryOperator<List<Point>> corners;
    private final List<Spectrum> sticks = Sticks.of(23, COUNT);
    private final List<Patch> patches = new ArrayList<>();
    private final List<Printed> printed = new ArrayList<>();

    private RubbedCards(Falloff falloff) {
        List<CardScene.Area> areas = new ArrayList<>();
        double paper = MunsellValue.ofLuminance(CardScene.PAPER);
        for (int i = 0; i < COUNT; i++) {
            Point corner = new Point(14 + 46 * (i % 3), 10 + 18 * (i / 3));
            String id = Integer.toString(i);
            Point right = corner.plus(RUB.width(), 0);
            patches.add(new Patch(id, corner, RUB));
            printed.add(new Printed(right, GRAY, 5));
            printed.add(new Printed(corner.plus(-9, 0), new Size(6, 10.8), paper));
            printed.add(new Printed(right.plus(9, 0), new Size(6, 10.8), paper));
            areas.add(new CardScene.Area(right, GRAY, Spectrum.neutral(0.1927), false));
            if (!BARE.contains(id)) {
                areas.add(new CardScene.Area(corner, i % 7 == 5 ? new Size(18, 10.8) : RUB, sticks.get(i), true));
            }
        }
        scene = new CardScene(CARD, areas, falloff);
        corners = seen -> seen;
    }

    private RubbedCards(RubbedCards from, Predicate<Printed> known, UnaryOperator<List<Point>> corners) {
        scene = from.scene;
        this.corners = corners;
        patches.addAll(from.patches);
        from.printed.stream().filter(known).forEach(printed::add);
    }

    public static RubbedCards card(Falloff falloff) {
        return new RubbedCards(falloff);
    }

    /** The same card, read as if nothing were known of its grays. */
    public RubbedCards withoutGrays() {
        return new RubbedCards(this, one -> one.value() != 5, corners);
    }

    /** The corners marked the wrong way round. */
    public RubbedCards cornersTurned() {
        return new RubbedCards(this, one -> true, seen -> List.of(seen.get(0), seen.get(3), seen.get(2), seen.get(1)));
    }

    /** The corners marked so that the card reaches out of the picture. */
    public RubbedCards partOutside() {
        return new RubbedCards(
                this,
                one -> true,
                seen -> seen.stream().map(p -> p.plus(-600, 0)).toList());
    }

    public Findings read(Camera camera) throws Trouble {
        Pinhole view = scene.view(0.3, -0.08);
        return RubbedCard.read(
                "card.jpg",
                PhotoReader.read("card.jpg", scene.shoot(camera, view), Progress.NONE),
                new CardMarks(corners.apply(view.corners(CARD.width(), CARD.height())), CARD, patches, printed));
    }

    /** How far, by CIEDE2000, the rubbed patches are from the true colors, rising. */
    public double[] errors(Findings findings) {
        return findings.patches().stream()
                .filter(patch -> patch.look() == Look.RUBBED)
                .mapToDouble(patch -> Ciede2000.difference(
                        patch.color(), Observer.trueColor(sticks.get(Integer.parseInt(patch.id())))))
                .sorted()
                .toArray();
    }
}
