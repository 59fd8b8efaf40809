package umbercard.cards.faces;

import java.util.ArrayList;
import java.util.List;
import umbercard.door.Look;
import umbercard.geometry.Point;
import umbercard.geometry.Size;
import umbercard.model.Stick;
import umbercard.words.Words;

/**
 * Deals strips out to cards: down a column, then down the next one, then on to the next card. An upright card has one
 * column; a landscape card two, where they leave the words enough room.
 */
final class NotesLayout {
    private final Size card;
    private final Look look;
    private final Setting setting;
    private final Block concept;
    private final boolean guidesInHead;
    private final int columns;
    private final StripForm form;

    /**
     * What a study's notes need across, with the tenth to spare.
     *
     * @param labels the widest number or place
     * @param strokes the widest words for strokes, in their brief form
     * @param head the title with a number of cards beside it
     * @param more whether any strip has words that take a fourth line
     */
    record Needs(double labels, double strokes, double head, boolean more) {}

    NotesLayout(Size card, Look look, Setting setting, String concept, Needs needs) {
        this.card = card;
        this.look = look;
        this.setting = setting;
        Style style = Style.regular(look.number("conceptPoints"));
        this.concept = new Paragraph(concept, style, setting.type()).balanced(width());
        guidesInHead = needs.head() + look.number("columnGap") + guidesWidth() <= width();
        double gap = columnGap();
        boolean two = card.width() > card.height() && (width() - gap) / 2 >= look.number("stripLeast");
        columns = two ? 2 : 1;
        double each = (width() - (columns - 1) * gap) / columns;
        StripForm three = StripForm.of(each, needs.labels(), 3, look);
        StripForm four = StripForm.of(each, needs.labels(), 4, look);
        double height = stripsHeight();
        boolean free = three.words() < look.number("wordsNarrow") && four.rows(height) == three.rows(height);
        boolean needed = needs.more() || needs.strokes() > three.widest(look.number("columnGap"));
        form = free || needed ? four.spread(height, look.number("lineMore") / 4) : three;
    }

    /** Where one note goes; {@code session} where the word for a new session stands over it. */
    record Place(int note, double left, double top, boolean session) {}

    /** The cards with their strips; each note's index is its place in the study. On the last card columns are level. */
    List<List<Place>> deal(List<Boolean> breaks) {
        List<List<Place>> cards = new ArrayList<>();
        int next = 0;
        while (next < breaks.size()) {
            List<Place> filled = fill(breaks, next, Integer.MAX_VALUE);
            if (filled.isEmpty()) {
                throw new IllegalStateException("no strip fits: ask first whether the layout serves");
            }
            next += filled.size();
            cards.add(filled);
        }
        if (columns > 1 && !cards.isEmpty()) {
            List<Place> last = cards.remove(cards.size() - 1);
            List<Place> level = fill(breaks, next - last.size(), (last.size() + 1) / columns);
            cards.add(level.size() == last.size() ? level : last);
        }
        return cards;
    }

    /** One card, from the note at {@code first} on, with so many at most in a column. */
    private List<Place> fill(List<Boolean> breaks, int first, int most) {
        List<Place> filled = new ArrayList<>();
        double top = stripsTop();
        double bottom = top + stripsHeight() + 1e-9;
        int next = first;
        for (int column = 0; column < columns; column++) {
            double left = look.number("margin") + column * (form.width() + columnGap());
            double y = top;
            for (int count = 0; count < most && next < breaks.size(); count++) {
                double session = breaks.get(next) ? look.number("sessionHeight") : 0;
                if (y + session + form.tall() > bottom) {
                    break;
                }
                filled.add(new Place(next, left, y + session, breaks.get(next)));
                y += session + form.pitch();
                next++;
            }
        }
        return filled;
    }

    /** Whether a card takes as many strips as make one worth while, with a session's break over each. */
    boolean serves() {
        double height = stripsHeight() - look.number("sessionHeight");
        return form.width() >= look.number("stripLeast") && columns * form.rows(height) >= look.number("stripsFewest");
    }

    /** Where a note's stick is rubbed; bare is the card's margin at either side, but for a millimeter next to what is printed. */
    RubbedStrip rubbed(Place place, Stick stick) {
        double left = place.left() + form.labels();
        Size margin = new Size(look.number("margin") - 2, form.tall());
        return new RubbedStrip(
                place.note(),
                stick,
                RubbedStrip.Part.of(form.white(left, place.top())),
                RubbedStrip.Part.of(form.gray(left, place.top())),
                List.of(
                        new RubbedStrip.Part(new Point(1, place.top()), margin),
                        new RubbedStrip.Part(new Point(card.width() - 1 - margin.width(), place.top()), margin)));
    }

    StripForm form() {
        return form;
    }

    /** The concept, broken into lines. */
    Block concept() {
        return concept;
    }

    double conceptTop() {
        return bottom() - (guidesInHead ? 0 : guidesLine()) - concept.height();
    }

    /** Whether the remark on the printed color stands beside the title, or else at the foot. */
    boolean guidesInHead() {
        return guidesInHead;
    }

    double right() {
        return card.width() - look.number("margin");
    }

    double bottom() {
        return card.height() - look.number("margin");
    }

    /** Wider where the strips can do with less. */
    private double columnGap() {
        double over = Math.max(0, width() - 2 * look.number("stripNarrow"));
        return look.number("columnGap") + Math.min(6, 0.4 * over);
    }

    private double guidesWidth() {
        return setting.width(Words.say("cards.notes.guides"), Style.quiet(look.number("wordsPoints")));
    }

    private double guidesLine() {
        return look.number("guidesGap") + setting.type().capHeight(look.number("wordsPoints"));
    }

    private double stripsTop() {
        return look.number("margin") + setting.type().capHeight(look.number("titlePoints")) + look.number("headGap");
    }

    private double stripsHeight() {
        return conceptTop() - look.number("footGap") - stripsTop();
    }

    private double width() {
        return card.width() - 2 * look.number("margin");
    }
}
