package umbercard.cards.faces;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import umbercard.door.Type;

/**
 * Words in one style, to be broken into lines for one width after another. Measured once, character by character. Lines
 * break where a line may break in the words' language; a word longer than a line is broken between characters. Blank words
 * have no lines.
 */
final class Paragraph {
    /** How nearly lines are balanced, in millimeters. */
    private static final double CLOSE = 0.5;

    private final Style style;
    private final Type type;
    private final String text;

    /** How far each place in the text lies from its beginning, with the tenth to spare. */
    private final double[] along;

    /** The places where a line may end. */
    private final int[] breaks;

    Paragraph(String words, Style style, Type type) {
        this.style = style;
        this.type = type;
        text = Setting.plain(words);
        along = new double[text.length() + 1];
        for (int i = 0; i < text.length(); i++) {
            boolean half = Character.isLowSurrogate(text.charAt(i)) && i > 0;
            String character = Character.toString(text.codePointAt(i));
            double width = half ? 0 : type.width(character, style.points(), style.weight());
            along[i + 1] = along[i] + Setting.SLACK * width;
        }
        breaks = breaks(BreakIterator.getLineInstance(Locale.ROOT));
    }

    private int[] breaks(BreakIterator places) {
        places.setText(text);
        List<Integer> found = new ArrayList<>();
        for (int place = places.next(); place != BreakIterator.DONE; place = places.next()) {
            found.add(place);
        }
        return found.stream().mapToInt(place -> place).toArray();
    }

    /** The lines for a width, each as full as may be. */
    Block block(double width) {
        return new Block(lines(width), style, type);
    }

    /** As few lines as fit the width, broken so that they are about equally long. */
    Block balanced(double width) {
        List<String> best = lines(width);
        double enough = width;
        double tight = 0;
        while (best.size() > 1 && enough - tight > CLOSE) {
            double middle = (tight + enough) / 2;
            List<String> tried = lines(middle);
            if (tried.size() <= best.size()) {
                best = tried;
                enough = middle;
            } else {
                tight = middle;
            }
        }
        return new Block(best, style, type);
    }

    List<String> lines(double width) {
        List<String> lines = new ArrayList<>();
        int start = 0;
        while (start < text.length()) {
            int end = last(breaks, start, width);
            if (end == start) {
                int[] characters = breaks(BreakIterator.getCharacterInstance(Locale.ROOT));
                end = Math.max(last(characters, start, width), next(characters, start));
            }
            lines.add(text.substring(start, end).strip());
            start = end;
        }
        return lines;
    }

    /** The last of the places up to which the line that begins at {@code start} fits; {@code start} if none does. */
    private int last(int[] places, int start, double width) {
        int last = start;
        for (int place : places) {
            if (place > start) {
                int end = text.charAt(place - 1) == ' ' ? place - 1 : place;
                if (along[end] - along[start] > width) {
                    break;
                }
                last = place;
            }
        }
        return last;
    }

    private static int next(int[] places, int start) {
        int next = start;
        for (int place : places) {
            next = place;
            if (place > start) {
                break;
            }
        }
        return next;
    }
}
