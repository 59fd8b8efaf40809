package umbercard.cards.faces;

import java.text.BreakIterator;
import java.util.Locale;
import umbercard.door.Type;

/**
 * Sets words within a width, by the measures of a typeface, with a tenth to spare: a viewer that lacks the typeface takes
 * another that may run wider.
 */
record Setting(Type type) {
    static final double SLACK = 1.1;

    private static final String ELLIPSIS = "…";

    /** The words on one line: runs of white space become one space. */
    static String plain(String words) {
        return words.codePoints()
                .map(c -> Character.isISOControl(c) || Character.isWhitespace(c) ? ' ' : c)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString()
                .replaceAll(" +", " ")
                .strip();
    }

    /** The width that the words need, with the tenth. */
    double width(String words, Style style) {
        return SLACK * type.width(words, style.points(), style.weight());
    }

    boolean fits(String words, double width, Style style) {
        return width(words, style) <= width;
    }

    /** The words on one line, shortened with an ellipsis if they do not fit. */
    String shortened(String words, double width, Style style) {
        String text = plain(words);
        if (fits(text, width, style)) {
            return text;
        }
        BreakIterator characters = BreakIterator.getCharacterInstance(Locale.ROOT);
        characters.setText(text);
        int end = characters.last();
        while (end > 0 && !fits(text.substring(0, end).strip() + ELLIPSIS, width, style)) {
            end = characters.previous();
        }
        return text.substring(0, Math.max(0, end)).strip() + ELLIPSIS;
    }
}
