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
        double extra = width - look.number("stripNarrow");
        double printed = look.number("printedWidth") + clip(extra / 10, -1, 4);
        double rub = Math.max(RUB_WIDTH, look.number("rubWidth")) + clip(extra / 4, 0, 12);
        double gap = look.number("wordsGap");
        double more = (lines - 3) * look.number("lineMore");
        double tall = Math.max(RUB_HEIGHT, look.number("rubHeight")) + more;
        double pitch = Math.max(tall + 1, look.number("pitch") + more);
        return new StripForm(left, printed, rub, gap, width - left - printed - rub - gap, lines, tall, pitch);
    }

    private static double clip(double value, double least, double most) {
        return Math.min(most, Math.max(least, value));
    }

    double width() {
        return labels + printed + rub + gap + words;
    }

    /**
     * The room for words that nothing else stands beside: the tenth to spare may be had from the gap next to the strip.
     *
     * @param columnGap how wide that is at least
     */
    double widest(double columnGap) {
        return Math.min(Setting.SLACK * words, words + columnGap - 1);
    }

    /** The same with the strips set further apart, where a height leaves room, by {@code most} millimeters or less. */
    StripForm spread(double height, double most) {
        int gaps = rows(height) - 1;
        double wider = gaps < 1 ? pitch : Math.min(pitch + most, (height - tall) / gaps);
        return new StripForm(labels, printed, rub, gap, words, lines, tall, wider);
    }

    /** How many strips stand one under the other in a height. */
    int rows(double height) {
        return height < tall ? 0 : 1 + (int) Math.floor((height - tall) / pitch + 1e-9);
    }

    /** The patch up to its gray, where the patches of a strip begin at {@code left}. */
    Box white(double left, double top) {
        return new Box(left + printed, top, 2 * rub / 3, tall);
    }

    /** The last third of the patch, which is printed gray. */
    Box gray(double left, double top) {
        return new Box(left + printed + 2 * rub / 3, top, rub / 3, tall);
    }
}
