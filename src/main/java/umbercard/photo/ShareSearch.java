package umbercard.photo;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import umbercard.color.MunsellValue;
import umbercard.picture.ValueField;

/**
 * Looks for the split whose marks leave a wished share of the frame dark. Small masses that give in make that share jump
 * and even fall as the split rises, so it is not enough to take the field's own quantile.
 */
final class ShareSearch {
    private static final double GOOD = 5e-4;
    private static final double NEAR = 5e-3;
    private static final double STEP = 0.02;
    private static final int HALVINGS = 14;
    private static final int CORRECTIONS = 3;

    private final float[] ordered;
    private final Map<Double, Double> known = new HashMap<>();
    private final DoubleFunction<FirstPass.Traced> trace;
    private final DoubleUnaryOperator shareAt;
    private double bestSplit;
    private double bestShare;

    /**
     * @param field the blurred field
     * @param trace the marks for a split
     * @param shareAt the share of dark for a split before curves are fitted, more quickly
     */
    ShareSearch(ValueField field, DoubleFunction<FirstPass.Traced> trace, DoubleUnaryOperator shareAt) {
        ordered = field.luminance().clone();
        Arrays.sort(ordered);
        this.trace = trace;
        this.shareAt = shareAt;
    }

    /** The marks nearest to a wished share. */
    FirstPass.Traced nearest(double wished) {
        double aim = wished;
        FirstPass.Traced best = trace.apply(splitFor(aim));
        for (int i = 0; i < CORRECTIONS && Math.abs(best.darkShare() - wished) > 2 * GOOD; i++) {
            // The curves' own small error is made up for by aiming beside the mark.
            aim = Math.min(1, Math.max(0, aim + wished - best.darkShare()));
            FirstPass.Traced again = trace.apply(splitFor(aim));
            if (Math.abs(again.darkShare() - wished) < Math.abs(best.darkShare() - wished)) {
                best = again;
            }
        }
        return best;
    }

    private double splitFor(double wished) {
        bestShare = Double.POSITIVE_INFINITY;
        double start = off(wished, wished);
        for (int i = 1; i * STEP <= 1 && Math.abs(bestShare - wished) > GOOD; i++) {
            boolean rightSide = start < 0;
            look(wished, rightSide ? i : -i);
            if (Math.abs(bestShare - wished) > NEAR) {
                look(wished, rightSide ? -i : i);
            }
            if (Math.abs(bestShare - wished) <= NEAR && i > 4) {
                break;
            }
        }
        return bestSplit;
    }

    /** Looks between two neighboring steps from the wished quantile, and halves the gap where the share passes the wish. */
    private void look(double wished, int step) {
        double inner = clip(wished + (step - Integer.signum(step)) * STEP);
        double outer = clip(wished + step * STEP);
        double low = Math.min(inner, outer);
        double high = Math.max(inner, outer);
        double offLow = off(low, wished);
        double offHigh = off(high, wished);
        for (int i = 0; i < HALVINGS && offLow * offHigh < 0 && Math.abs(bestShare - wished) > GOOD / 4; i++) {
            double middle = (low + high) / 2;
            double off = off(middle, wished);
            if (off * offLow > 0) {
                low = middle;
                offLow = off;
            } else {
                high = middle;
                offHigh = off;
            }
        }
    }

    private static double clip(double share) {
        return Math.min(1, Math.max(0, share));
    }

    /** How far the share at a quantile's split is over the wish; the best split is kept. */
    private double off(double quantile, double wished) {
        double split = splitAt(quantile);
        double share = known.computeIfAbsent(split, shareAt::applyAsDouble);
        if (Math.abs(share - wished) < Math.abs(bestShare - wished)) {
            bestShare = share;
            bestSplit = split;
        }
        return share - wished;
    }

    private double splitAt(double quantile) {
        int below = (int) Math.round(quantile * ordered.length);
        if (below == 0 || below == ordered.length) {
            return below == 0 ? 0 : 10;
        }
        return MunsellValue.ofLuminance(((double) ordered[below - 1] + ordered[below]) / 2);
    }
}
