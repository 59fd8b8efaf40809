package umbercard.photo;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import umbercard.color.MunsellValue;
import umbercard.picture.ValueField;

/**
 * Looks for the split at which a wished share of the frame is dark. Small masses that give in make that share jump and even
 * fall as the split rises, so it is not enough to take the field's own quantile: its neighborhood is looked through, step
 * by step away from it, and a step in which the share passes the wish is halved.
 */
final class ShareSearch {
    private static final double GOOD = 2e-4;
    private static final double STEP = 0.04;

    /** How far from the wished quantile: a split that leaves much more or much less dark would be another picture. */
    private static final double REACH = 0.16;

    private static final int HALVINGS = 11;

    /** After so many halvings a share that changes this many times as fast as the quantile jumps between the two. */
    private static final int BEFORE_JUMP = 3;

    private static final double JUMP = 16;

    private final float[] ordered;

    /** @param field the blurred field */
    ShareSearch(ValueField field) {
        ordered = field.luminance().clone();
        Arrays.sort(ordered);
    }

    /**
     * Where a search came to.
     *
     * @param split a Munsell value
     * @param share what is dark there
     */
    record Found(double split, double share) {}

    /**
     * The split nearest to a wished share.
     *
     * @param shareAt the share of dark at a split; asked for some splits more than once
     */
    Found nearest(double wished, DoubleUnaryOperator shareAt) {
        return new Search(wished, shareAt).nearest();
    }

    private final class Search {
        private final double wished;
        private final DoubleUnaryOperator shareAt;
        private Found best = new Found(5, Double.POSITIVE_INFINITY);

        Search(double wished, DoubleUnaryOperator shareAt) {
            this.wished = wished;
            this.shareAt = shareAt;
        }

        Found nearest() {
            boolean rightSide = off(wished) < 0;
            for (int i = 1; i * STEP <= REACH && !isGood(); i++) {
                look(rightSide ? i : -i);
                if (!isGood()) {
                    look(rightSide ? -i : i);
                }
            }
            return best;
        }

        private boolean isGood() {
            return Math.abs(best.share() - wished) <= GOOD;
        }

        /** Looks between two neighboring steps from the wished quantile. */
        private void look(int step) {
            double inner = clip(wished + (step - Integer.signum(step)) * STEP);
            double outer = clip(wished + step * STEP);
            double low = Math.min(inner, outer);
            double high = Math.max(inner, outer);
            double offLow = off(low);
            double offHigh = off(high);
            for (int i = 0; i < HALVINGS && offLow * offHigh < 0 && !isGood(); i++) {
                if (i >= BEFORE_JUMP && Math.abs(offHigh - offLow) > JUMP * (high - low)) {
                    break;
                }
                double middle = (low + high) / 2;
                double off = off(middle);
                if (off * offLow > 0) {
                    low = middle;
                    offLow = off;
                } else {
                    high = middle;
                    offHigh = off;
                }
            }
        }

        /** How far the share at a quantile's split is over the wish; the best split is kept. */
        private double off(double quantile) {
            double split = splitAt(quantile);
            double share = shareAt.applyAsDouble(split);
            if (Math.abs(share - wished) < Math.abs(best.share() - wished)) {
                best = new Found(split, share);
            }
            return share - wished;
        }
    }

    private static double clip(double share) {
        return Math.min(1, Math.max(0, share));
    }

    private double splitAt(double quantile) {
        int below = (int) Math.round(quantile * ordered.length);
        if (below == 0 || below == ordered.length) {
            return below == 0 ? 0 : 10;
        }
        return MunsellValue.ofLuminance(((double) ordered[below - 1] + ordered[below]) / 2);
    }
}
