package umbercard.cards.faces;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import umbercard.door.Look;
import umbercard.geometry.Size;

/**
 * Finds the places of picture, figures and words on a notan card. The picture is as large as the words allow. On a
 * landscape card the words stand in a column beside it, with the figures under the picture or at the column's foot; on an
 * upright card everything stands in one column. Larger type for the concept is taken where it costs the picture little.
 */
final class NotanLayout {
    /** Pictures begin and end on half millimeters across, so that rasters show them crisply. */
    private static final double STEP = 0.5;

    /** Larger type for the concept must leave the picture this share of its width. */
    private static final double WORTH = 0.9;

    /** Figures under the picture rather than beside it must leave it this share of its width. */
    private static final double WORTH_CLOSING = 0.88;

    private final Size card;
    private final double ratio;
    private final Look look;
    private final Setting setting;
    private final DoubleFunction<Figures> figures;
    private final String title;

    /**
     * @param ratio the opening's width divided by its height
     * @param figures the figures beside a picture that is so many millimeters wide
     */
    NotanLayout(Size card, double ratio, Look look, Setting setting, DoubleFunction<Figures> figures, String title) {
        this.card = card;
        this.ratio = ratio;
        this.look = look;
        this.setting = setting;
        this.figures = figures;
        this.title = title;
    }

    /** Where everything goes; the figures and the words are as wide as their boxes. */
    record Places(Box picture, Box figures, Box words, Block title, Block concept) {}

    /** The best layout with this concept; empty if not even the smallest picture leaves room for the words. */
    Optional<Places> with(String concept) {
        double least = look.number("conceptPoints");
        Optional<Places> plain = largest(concept, least, look.number("pictureLeast") * ideal());
        if (plain.isEmpty()) {
            return plain;
        }
        double worth = WORTH * plain.get().picture().width();
        for (double points = look.number("conceptPointsMost"); points > least; points--) {
            Optional<Places> larger = largest(concept, points, worth);
            if (larger.isPresent()) {
                return larger;
            }
        }
        return plain;
    }

    /** The width of the picture if there were next to nothing to say. */
    private double ideal() {
        double across = landscape() ? width() - look.number("gap") - look.number("columnLeast") : width();
        return Math.min(across, ratio * height());
    }

    private Optional<Places> largest(String concept, double points, double least) {
        Optional<Places> stacked = largest(least, across -> below(across, concept, points));
        if (!landscape()) {
            return stacked;
        }
        Optional<Places> under = largest(least, across -> beside(across, concept, points, true));
        Optional<Places> foot = largest(least, across -> beside(across, concept, points, false));
        // Figures under the picture close the card off below, which is worth a little of the picture.
        Optional<Places> column = preferred(under, foot, WORTH_CLOSING);
        return preferred(column, stacked, 1);
    }

    private Optional<Places> largest(double least, DoubleFunction<Optional<Places>> way) {
        double most = Math.floor(Math.min(width(), ratio * height()) / STEP) * STEP;
        for (double across = most; across >= least; across -= STEP) {
            Optional<Places> found = way.apply(across);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    /** The first, if its picture has at least this share of the second's width; else the second. */
    private static Optional<Places> preferred(Optional<Places> first, Optional<Places> second, double share) {
        boolean better = first.isPresent()
                && (second.isEmpty()
                        || first.get().picture().width()
                                >= share * second.get().picture().width());
        return better ? first : second;
    }

    /** The words in a column to the right; the figures under the picture, or at the foot of the column. */
    private Optional<Places> beside(double across, String concept, double points, boolean figuresUnder) {
        double gap = look.number("gap");
        double column = width() - across - gap;
        if (column < look.number("columnLeast")) {
            return Optional.empty();
        }
        Box picture = new Box(margin(), margin(), across, across / ratio);
        Box words = words(picture.right() + gap, margin(), column, concept, points);
        double figuresWidth = figuresUnder ? across : column;
        Optional<Double> tall = figures.apply(across).height(figuresWidth);
        if (tall.isEmpty()) {
            return Optional.empty();
        }
        double foot = margin() + height();
        Box numbers;
        if (figuresUnder) {
            numbers = new Box(margin(), picture.bottom() + look.number("figureGap"), across, tall.get());
        } else {
            // Level with the picture's foot, unless the words reach so far down.
            double lowest = Math.max(picture.bottom(), words.bottom() + gap + tall.get());
            numbers = new Box(words.left(), lowest - tall.get(), column, tall.get());
        }
        boolean fits = Stream.of(picture, words, numbers).allMatch(box -> box.bottom() <= foot + 1e-9);
        return fits ? Optional.of(places(picture, numbers, words, concept, points)) : Optional.empty();
    }

    /** All in one column: picture, figures, words. */
    private Optional<Places> below(double across, String concept, double points) {
        Box picture = new Box(margin(), margin(), across, across / ratio);
        Figures set = figures.apply(across);
        // As wide as the picture, unless they would need more lines for it.
        double wide = set.height(across).equals(set.height(width())) ? across : width();
        return set.height(wide).flatMap(tall -> {
            Box numbers = new Box(margin(), picture.bottom() + look.number("figureGap"), wide, tall);
            Box words = words(margin(), numbers.bottom() + look.number("gap"), width(), concept, points);
            return words.bottom() <= margin() + height() + 1e-9
                    ? Optional.of(places(picture, numbers, words, concept, points))
                    : Optional.empty();
        });
    }

    private Box words(double left, double top, double width, String concept, double points) {
        Block heading = heading(width);
        Block said = said(width, concept, points);
        double between = heading.lines().isEmpty() || said.lines().isEmpty() ? 0 : look.number("titleGap");
        return new Box(left, top, width, heading.height() + between + said.height());
    }

    private Places places(Box picture, Box numbers, Box words, String concept, double points) {
        return new Places(picture, numbers, words, heading(words.width()), said(words.width(), concept, points));
    }

    private Block heading(double width) {
        Style style = Style.medium(look.number("titlePoints"));
        return new Block(setting.balanced(title, width, style), style, setting.type());
    }

    private Block said(double width, String concept, double points) {
        Style style = Style.regular(points);
        List<String> lines = setting.balanced(concept, width, style);
        return new Block(lines, style, setting.type());
    }

    private boolean landscape() {
        return card.width() > card.height();
    }

    private double margin() {
        return look.number("margin");
    }

    private double width() {
        return card.width() - 2 * margin();
    }

    private double height() {
        return card.height() - 2 * margin();
    }
}
