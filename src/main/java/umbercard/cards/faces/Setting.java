package umbercard.cards.faces;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import umbercard.door.Type;

/**
 * Sets words within a width, by the measures of a typeface, with a tenth to spare: a viewer that lacks the typeface takes
 * another that may run wider.
 */
record Setting(Type type) {
    static final double SLACK = 1.1;

    /** How nearly lines are balanced, in millimeters. */
    private static final double CLOSE = 0.5;

    private static final String ELLIPSIS = "…";

    /** The words on one line: runs of spaces and line ends become one space. */
    static String plain(String words) {
        return words.codePoints()
                .map(c -> Character.isISOControl(c) ? ' ' : c)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString()
                .replaceAll("\\s+", " ")
                .strip();
    }

    /** The width that the words need, with the tenth. */
    double width(String words, Style style) {
        return SLACK * type.width(words, style.points(), style.weight());
    }

    boolean fits(String words, double width, Style style) {
        return width(words, style) <= width;
    }

    /** The words broken into lines that fit the width, at the places where a line may break; none for blank words. */
    List<String> lines(String words, double width, Style style) {
        String text = plain(words);
        List<String> lines = new ArrayList<>();
        int start = 0;
        while (start < text.length()) {
            int end = lineEnd(text, start, width, style);
            lines.add(text.substring(start, end).strip());
            start = end;
        }
        return lines;
    }

    /** The words in as few lines as fit the width, broken so that the lines are about equally long. */
    List<String> balanced(String words, double width, Style style) {
        List<String> best = lines(words, width, style);
        double enough = width;
        double tight = 0;
        while (best.size() > 1 && enough - tight > CLOSE) {
            double middle = (tight + enough) / 2;
            List<String> tried = lines(words, middle, style);
            if (tried.size() <= best.size()) {
                best = tried;
                enough = middle;
            } else {
                tight = middle;
            }
        }
        return best;
    }

    private int lineEnd(String text, int start, double width, Style style) {
        int words = lastBreak(BreakIterator.getLineInstance(Locale.ROOT), text, start, width, style);
        if (words > start) {
            return words;
        }
        // A word longer than the line: broken between characters, at least one a line.
        BreakIterator characters = BreakIterator.getCharacterInstance(Locale.ROOT);
        int part = lastBreak(characters, text, start, width, style);
        characters.setText(text);
        return part > start ? part : characters.following(start);
    }

    private int lastBreak(BreakIterator breaks, String text, int start, double width, Style style) {
        breaks.setText(text);
        int last = start;
        for (int end = breaks.following(start); end != BreakIterator.DONE; end = breaks.next()) {
            if (!fits(text.substring(start, end).strip(), width, style)) {
                break;
            }
            last = end;
        }
        return last;
    }

    /** The words on one line, shortened with an ellipsis if they do not fit. */
    String shortened(String words, double width, Style style) {
        String text = plain(words);
        if (fits(text, width, style)) {
            return text;
        }
        double room = width - width(ELLIPSIS, style);
        int end = lastBreak(BreakIterator.getCharacterInstance(Locale.ROOT), text, 0, room, style);
        return text.substring(0, end).strip() + ELLIPSIS;
    }
}
