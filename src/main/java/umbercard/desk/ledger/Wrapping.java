package umbercard.desk.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;

/** Breaks a sentence into lines at its spaces. */
final class Wrapping {
    private Wrapping() {}

    /**
     * The lines, each at most {@code width} wide, save one that is a single word wider than that.
     *
     * @param measure the width of some words
     */
    static List<String> lines(String sentence, int width, ToIntFunction<String> measure) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : sentence.strip().split(" +", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && measure.applyAsInt(longer) > width) {
                lines.add(line.toString());
                line.setLength(0);
                line.append(word);
            } else {
                line.setLength(0);
                line.append(longer);
            }
        }
        lines.add(line.toString());
        return lines;
    }
}
