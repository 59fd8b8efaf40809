package umbercard.cards.faces;

import java.util.ArrayList;
import java.util.List;
import umbercard.door.Look;
import umbercard.geometry.Size;
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
     * @param labels the width that the widest number or place needs
     * @param head the width of the title with a number of cards beside it
     */
    NotesLayout(Size card, Look look, Setting setting, String concept, double labels, double head) {
        this.card = card;
        this.look = look;
        this.setting = setting;
        Style style = Style.regular(look.number("conceptPoints"));
        this.concept = new Block(setting.lines(concept, width(), style), style, setting.type());
        guidesInHead = head + look.number("columnGap") + guidesWidth() <= width();
        double gap = look.number("columnGap");
        boolean two = card.width() > card.height() && (width() - gap) / 2 >= look.number("stripLeast");
        columns = two ? 2 : 1;
        double each = (width() - (columns - 1) * gap) / columns;
        StripForm three = StripForm.of(each, labels, 3, look);
        StripForm four = StripForm.of(each, labels, 4, look);
        boolean cramped = three.words() < look.number("wordsNarrow");
        form = cramped && four.rows(stripsHeight()) == three.rows(stripsHeight()) ? four : three;
    }

    /** Where one note goes; {@code session} where the word for a new session stands over it. */
    record Place(int note, double left, double top, boolean session) {}

    /** The cards with their strips; each note's index is its place in the study. */
    List<List<Place>> deal(List<Boolean> breaks) {
        List<List<Place>> cards = new ArrayList<>();
        List<Place> now = new ArrayList<>();
        double top = stripsTop();
        double bottom = top + stripsHeight();
        int column = 0;
        double y = top;
        for (int i = 0; i < breaks.size(); i++) {
            double session = breaks.get(i) ? look.number("sessionHeight") : 0;
            if (y > top && y + session + form.tall() > bottom + 1e-9) {
                y = top;
                column++;
            }
            if (column == columns) {
                cards.add(now);
                now = new ArrayList<>();
                column = 0;
            }
            double left = look.number("margin") + column * (form.width() + look.number("columnGap"));
            now.add(new Place(i, left, y + session, breaks.get(i)));
            y += session + form.pitch();
        }
        if (!now.isEmpty()) {
            cards.add(now);
        }
        return cards;
    }

    /** Whether a card takes as many strips as make one worth while, with a session's break over each. */
    boolean serves() {
        double height = stripsHeight() - look.number("sessionHeight");
        return form.width() >= look.number("stripLeast") && columns * form.rows(height) >= look.number("stripsFewest");
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
