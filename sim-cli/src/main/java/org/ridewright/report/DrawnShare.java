package org.ridewright.report;

import org.ridewright.math.Quantiles;
import org.ridewright.study.Findings;
import org.ridewright.study.Method;

/** What an interval holds: 90 % of the draws, or, where there are too few for that, all of them. */
final class DrawnShare {
    private DrawnShare() {}

    /** Draws of a study; 0 if it has none. */
    static int draws(Findings findings) {
        Method method = findings.study().method();
        if (method instanceof Method.Compare compare) {
            return compare.draws();
        }
        return method instanceof Method.Uncertainty uncertainty ? uncertainty.draws() : 0;
    }

    static boolean isFew(int draws) {
        return draws < Quantiles.FEWEST;
    }

    /** {@code 90 % of the draws}, or {@code all 8 draws}. */
    static String of(int draws) {
        return isFew(draws) ? "all " + draws + " draws" : "90 % of the draws";
    }

    /** {@code 90 % of 64 draws}, or {@code all 8 draws}. */
    static String counted(int draws) {
        return isFew(draws) ? "all " + draws + " draws" : "90 % of " + draws + " draws";
    }
}
