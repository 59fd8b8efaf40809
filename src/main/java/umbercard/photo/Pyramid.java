package umbercard.photo;

import java.util.ArrayList;
import java.util.List;

/** Planes of one picture at full size and at halves of it, made when they are first wanted. Level 0 is full size. */
final class Pyramid {
    /** Samples of sigma that a blur is done with at least, where the picture has so many. */
    private static final double LEAST = 1.5;

    /** No plane gets smaller than this. */
    private static final int SMALLEST = 16;

    private final List<List<Plane>> levels = new ArrayList<>();

    Pyramid(List<Plane> planes) {
        levels.add(planes);
    }

    int width() {
        return levels.get(0).get(0).width();
    }

    int height() {
        return levels.get(0).get(0).height();
    }

    List<Plane> at(int level) {
        while (levels.size() <= level) {
            levels.add(levels.get(levels.size() - 1).stream().map(Plane::half).toList());
        }
        return levels.get(level);
    }

    /** Whether planes may be as small as those of a level. */
    boolean reaches(int level) {
        return Math.min(width(), height()) >> level >= SMALLEST;
    }

    /**
     * The planes of a level, blurred by a Gaussian.
     *
     * @param sigma in pixels of the picture at full size
     */
    Rows blurred(double sigma, int shown) {
        int level = shown;
        while (rest(sigma, level + 1, shown) >= LEAST && reaches(level + 1)) {
            level++;
        }
        Rows rows = new BlurredRows(at(level), rest(sigma, level, shown));
        Plane size = at(shown).get(0);
        return level == shown
                ? rows
                : new EnlargedRows(rows.whole(), size.width(), size.height(), 1 << (level - shown));
    }

    /**
     * The sigma left for a level, in its own pixels; not a number where none is left. A mean of n × n pixels has the
     * variance (n² - 1) / 12 each way, going straight between samples n pixels apart to those m apart (n² - m²) / 6.
     */
    private static double rest(double sigma, int level, int shown) {
        double square = Math.scalb(1.0, 2 * level);
        double shownSquare = Math.scalb(1.0, 2 * shown);
        return Math.sqrt((sigma * sigma - (square - 1) / 12 - (square - shownSquare) / 6) / square);
    }
}
