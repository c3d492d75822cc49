package org.ridewright.report;

import java.util.List;
import java.util.stream.IntStream;
import org.ridewright.math.Quantiles;
import org.ridewright.study.CompareFindings;
import org.ridewright.study.Findings;
import org.ridewright.study.UncertaintyFindings;

/**
 * What an interval holds: 90 % of the draws, or, where there are too few for that, all of them. Draws that could not be ridden are none of them.
 *
 * @param least draws of the answer that has fewest, of those that have any
 * @param most draws of the answer that has most
 * @param of draws that were asked for; 0 if there are none
 * @param failed whether runs could not be ridden, rather than have no such answer
 */
record DrawnShare(long least, long most, long of, boolean failed) {
    /** Of all answers of a study. */
    static DrawnShare of(Findings findings) {
        return of(
                findings,
                IntStream.range(0, findings.study().questions().size()).boxed().toList());
    }

    /** Of some answers, by their numbers. */
    static DrawnShare of(Findings findings, List<Integer> questions) {
        DrawnShare all = none(findings);
        for (int q : questions) {
            all = all.and(of(findings, q));
        }
        return all;
    }

    /** Of one answer, in all its ride tests and at all steps. */
    static DrawnShare of(Findings findings, int question) {
        DrawnShare share = none(findings);
        if (findings instanceof CompareFindings compare && share.of > 0) {
            for (int r = 0; r < compare.rows().size(); r++) {
                share = share.with(compare.used(r, question));
            }
        } else if (findings instanceof UncertaintyFindings uncertainty
                && !uncertainty.base().isEmpty()) {
            for (int t = 0; t < uncertainty.tests().size(); t++) {
                for (int slot = 0; slot < uncertainty.axis().length; slot++) {
                    share = share.with(uncertainty.spread(slot, t, question).count());
                }
            }
        }
        return share;
    }

    private static DrawnShare none(Findings findings) {
        long of = findings instanceof CompareFindings compare
                ? compare.method().draws()
                : findings instanceof UncertaintyFindings uncertainty
                        ? uncertainty.method().draws()
                        : 0;
        return new DrawnShare(Long.MAX_VALUE, 0, of, findings.failed() > 0);
    }

    private DrawnShare with(long count) {
        // what has no answer in any draw is told as such
        return count == 0 ? this : new DrawnShare(Math.min(least, count), Math.max(most, count), of, failed);
    }

    private DrawnShare and(DrawnShare other) {
        return new DrawnShare(Math.min(least, other.least), Math.max(most, other.most), of, failed);
    }

    /** Whether draws are left out. */
    boolean isPart() {
        return most > 0 && least < of;
    }

    /** Whether there are too few for an interval of nine tenths everywhere. */
    boolean isFew() {
        return (most > 0 ? most : of) < Quantiles.FEWEST;
    }

    /** {@code 90 % of the draws}, or {@code all 8 draws}. */
    String words() {
        return isFew() ? isPart() ? "all draws " + which() : "all " + of + " draws" : "90 % of the draws";
    }

    /** {@code 90 % of 64 draws}, {@code all 8 draws}, {@code 90 % of the 33 of 64 draws that have the answer}. */
    String counted() {
        if (!isPart()) {
            return isFew() ? "all " + of + " draws" : "90 % of " + of + " draws";
        }
        String some =
                !isFew() && least < Quantiles.FEWEST ? " (where fewer than " + Quantiles.FEWEST + ", all of them)" : "";
        return (isFew() ? "all" : "90 % of the") + " " + (least == most ? "" + most : least + " to " + most) + " of "
                + of + " draws " + which() + some;
    }

    private String which() {
        return failed ? "that could be ridden" : "that have the answer";
    }

    /** {@code 33 of 64 draws}; empty if all have the answer. */
    static String part(long used, long of) {
        return used > 0 && used < of ? used + " of " + of + " draws" : "";
    }
}
