package org.ridewright.study;

import java.util.Arrays;

/**
 * What a search must keep: an answer on one side of a bound, in each of its ride tests.
 *
 * @param asked which answer, where
 * @param side which side is kept
 * @param bound unit of the answer
 */
public record Limit(Asked asked, Side side, double bound) {
    /** What an answer that equals its bound is taken to be beyond it, where it may not. */
    static final double HAIR = 1e-12;

    /** Which side of a bound is kept. */
    public enum Side {
        /** Less than the bound. */
        BELOW("below"),
        /** More than the bound. */
        ABOVE("above"),
        /** The bound, or less. */
        AT_MOST("at most"),
        /** The bound, or more. */
        AT_LEAST("at least");

        private final String word;

        Side(String word) {
            this.word = word;
        }

        /** The words as written in files. */
        public String word() {
            return word;
        }

        /** Whether the bound is the upper end of what is kept. */
        public boolean isUpper() {
            return this == BELOW || this == AT_MOST;
        }
    }

    /** The answer that decides, the greatest of the tests for an upper bound, the least for a lower one; not a number where there is none. */
    public double decisive(Outcome outcome) {
        double[] values = asked.of(outcome);
        return (side.isUpper()
                        ? Arrays.stream(values).max()
                        : Arrays.stream(values).min())
                .orElse(Double.NaN);
    }

    /**
     * By how much an answer is beyond the bound, as a share of the bound (in the answer's unit if that is nil); ≤ 0 if it keeps it. Not a number
     * where there is no answer.
     */
    public double excess(double value) {
        double beyond = (side.isUpper() ? value - bound : bound - value) / (bound == 0 ? 1 : Math.abs(bound));
        boolean strict = side == Side.BELOW || side == Side.ABOVE;
        return beyond == 0 && strict ? HAIR : beyond;
    }
}
