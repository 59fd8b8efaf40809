package umbercard.photo;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What undoes a camera's tone curve, told from things of known lightness: a power of the light between each two of them,
 * and the nearest one's beyond. It rises throughout and leaves white and black where they are. With white and one gray that
 * is a single exponent.
 */
final class ToneCurve {
    /** A camera that was honest. */
    static final ToneCurve NONE = new ToneCurve(1, List.of(), List.of());

    /** No camera's curve is steeper or flatter than this: what asks for more was no gray. */
    private static final double LEAST = 0.55;

    private static final double MOST = 1.8;

    private final double white;
    private final List<Double> seen;
    private final List<Double> known;

    private ToneCurve(double white, List<Double> seen, List<Double> known) {
        this.white = white;
        this.seen = seen;
        this.known = known;
    }

    /**
     * The curve through grays.
     *
     * @param white the linear level of white, over 0
     * @param grays for each known light against white's, 0..1, the light seen against white's
     */
    static ToneCurve of(double white, Map<Double, Double> grays) {
        List<Double> seen = new ArrayList<>(List.of(0.0));
        List<Double> known = new ArrayList<>(List.of(0.0));
        for (Map.Entry<Double, Double> gray :
                new TreeMap<>(grays).descendingMap().entrySet()) {
            double x = Math.log(gray.getValue());
            double y = Math.log(gray.getKey());
            int last = seen.size() - 1;
            if (isBearable((y - known.get(last)) / (x - seen.get(last))) && x < seen.get(last)) {
                seen.add(x);
                known.add(y);
            }
        }
        return new ToneCurve(white, seen, known);
    }

    static boolean isBearable(double exponent) {
        return exponent >= LEAST && exponent <= MOST;
    }

    /** Linear light of what the photograph shows as linear light, 0 or more. */
    double linear(double shown) {
        if (seen.size() < 2 || shown <= 0) {
            return shown;
        }
        double x = Math.log(shown / white);
        int upper = 0;
        while (upper < seen.size() - 2 && x < seen.get(upper + 1)) {
            upper++;
        }
        double exponent = (known.get(upper + 1) - known.get(upper)) / (seen.get(upper + 1) - seen.get(upper));
        return white * Math.exp(known.get(upper) + exponent * (x - seen.get(upper)));
    }
}
