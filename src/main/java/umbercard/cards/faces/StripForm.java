package umbercard.cards.faces;

import umbercard.door.Look;

/**
 * The measures of the strips on a card, alike for all of a study, in millimeters: from the left a column for number, place
 * and strokes, the printed color, the patch to rub the stick on, the words.
 *
 * @param labels how wide the left column is, with the gap to its right
 * @param printed how wide the printed color is
 * @param rub how wide the patch is
 * @param gap between the patch and the words
 * @param words how wide the words are
 * @param lines of words, 3 or 4
 * @param tall the height of the patches
 * @param pitch from the top of one strip to the top of the next
 */
record StripForm(
        double labels, double printed, double rub, double gap, double words, int lines, double tall, double pitch) {

    /** A patch must take two strokes of a real stick. */
    static final double RUB_WIDTH = 18;

    static final double RUB_HEIGHT = 10;

    /**
     * The form for strips of a width.
     *
     * @param labels the width that the widest number or place needs
     */
    static StripForm of(double width, double labels, int lines, Look look) {
        double left = labels + look.number("labelGap");
        double extra = Math.max(0, width - look.number("stripNarrow"));
        double printed = look.number("printedWidth") + Math.min(4, extra / 10);
        double rub = Math.max(RUB_WIDTH, look.number("rubWidth")) + Math.min(12, extra * 0.25);
        double gap = look.number("wordsGap");
        double more = (lines - 3) * look.number("lineMore");
        double tall = Math.max(RUB_HEIGHT, look.number("rubHeight")) + more;
        double pitch = Math.max(tall + 1, look.number("pitch") + more);
        return new StripForm(left, printed, rub, gap, width - left - printed - rub - gap, lines, tall, pitch);
    }

    double width() {
        return labels + printed + rub + gap + words;
    }

    /** How many strips stand one under the other in a height. */
    int rows(double height) {
        return height < tall ? 0 : 1 + (int) Math.floor((height - tall) / pitch + 1e-9);
    }
}
