package umbercard.cards.faces;

import java.util.Optional;
import java.util.function.DoubleFunction;
import umbercard.door.Look;
import umbercard.door.Type;
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
    private final Type type;
    private final DoubleFunction<Figures> figures;
    private final Paragraph title;
    private final String concept;

    /**
     * @param ratio the opening's width divided by its height
     * @param figures the figures beside a picture that is so many millimeters wide
     */
    NotanLayout(
            Size card,
            double ratio,
            Look look,
            Type type,
            DoubleFunction<Figures> figures,
            String title,
            String concept) {
        this.card = card;
        this.ratio = ratio;
        this.look = look;
        this.type = type;
        this.figures = figures;
        this.title = new Paragraph(title, Style.medium(look.number("titlePoints")), type);
        this.concept = concept;
    }

    /** Where everything goes; the figures and the words are to be set as wide as their boxes. */
    record Places(Box picture, Box figures, Box words, Paragraph title, Paragraph concept) {}

    /** The best layout; empty if not even the smallest picture leaves room for the words. */
    Optional<Places> best() {
        double least = look.number("conceptPoints");
        Optional<Places> plain = largest(saying(least), look.number("pictureLeast") * ideal());
        if (plain.isEmpty()) {
            return plain;
        }
        double worth = WORTH * plain.get().picture().width();
        for (double points = look.number("conceptPointsMost"); points > least; points--) {
            Optional<Places> larger = largest(saying(points), worth);
            if (larger.isPresent()) {
                return larger;
            }
        }
        return plain;
    }

    private Paragraph saying(double points) {
        return new Paragraph(concept, Style.regular(points), type);
    }

    /** The width of the picture if there were next to nothing to say. */
    private double ideal() {
        double across = landscape() ? width() - look.number("gap") - look.number("columnLeast") : width();
        return Math.min(across, ratio * height());
    }

    private Optional<Places> largest(Paragraph said, double least) {
        Optional<Places> stacked = largest(least, across -> below(across, said));
        if (!landscape()) {
            return stacked;
        }
        Optional<Places> under = largest(least, across -> beside(across, said, true));
        Optional<Places> foot = largest(least, across -> beside(across, said, false));
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
    private Optional<Places> beside(double across, Paragraph said, boolean figuresUnder) {
        double gap = look.number("gap");
        double column = width() - across - gap;
        Box picture = new Box(margin(), margin(), across, across / ratio);
        if (column < look.number("columnLeast") || !onCard(picture)) {
            return Optional.empty();
        }
        return figures.apply(across).height(figuresUnder ? across : column).flatMap(tall -> {
            Box words = words(picture.right() + gap, margin(), column, said);
            // At the column's foot they are level with the picture's, unless the words reach so far down.
            double lowest = Math.max(picture.bottom(), words.bottom() + gap + tall);
            Box numbers = figuresUnder
                    ? new Box(margin(), picture.bottom() + look.number("figureGap"), across, tall)
                    : new Box(words.left(), lowest - tall, column, tall);
            return onCard(words) && onCard(numbers)
                    ? Optional.of(new Places(picture, numbers, words, title, said))
                    : Optional.empty();
        });
    }

    /** All in one column: picture, figures, words. */
    private Optional<Places> below(double across, Paragraph said) {
        Box picture = new Box(margin(), margin(), across, across / ratio);
        Figures set = figures.apply(across);
        // As wide as the picture, unless they would need more lines for it.
        double wide = set.height(across).equals(set.height(width())) ? across : width();
        return set.height(wide).flatMap(tall -> {
            Box numbers = new Box(margin(), picture.bottom() + look.number("figureGap"), wide, tall);
            Box words = words(margin(), numbers.bottom() + look.number("gap"), width(), said);
            return onCard(words) ? Optional.of(new Places(picture, numbers, words, title, said)) : Optional.empty();
        });
    }

    private boolean onCard(Box box) {
        return box.bottom() <= margin() + height() + 1e-9;
    }

    private Box words(double left, double top, double width, Paragraph said) {
        Block heading = title.block(width);
        Block concept = said.block(width);
        double between = heading.lines().isEmpty() || concept.lines().isEmpty() ? 0 : look.number("titleGap");
        return new Box(left, top, width, heading.height() + between + concept.height());
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
