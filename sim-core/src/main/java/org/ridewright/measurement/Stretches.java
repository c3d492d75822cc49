package org.ridewright.measurement;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * A log cut into stretches in which its instants rise without a gap.
 *
 * <p>Rows of one instant become one, their mean. A single row whose instant lies before the row above it is left out; where the clock
 * goes back for good, the log is cut. A gap is an interval above a bound, {@value #GAP_BOUND} median intervals unless stated: up to
 * there one row at most is missing, which the curve through the others spans; beyond, nothing is bridged.
 *
 * @param rows of each stretch, row numbers of the recording
 * @param lines of the file where each begins
 * @param times of those rows (s); those after the clock was set back are counted on from there
 * @param interval Δ, median interval (s)
 * @param rate f, samples per second of the intervals that are about Δ (Hz)
 * @param jitter standard deviation of those intervals over Δ (1)
 * @param dropouts where it was cut, in order
 * @param bridged single missing rows spanned by the curve
 * @param repeated rows of an instant that was there before
 * @param outOfOrder rows left out
 * @param missing rows left out because a cell held no value
 */
record Stretches(
        List<int[]> rows,
        List<Integer> lines,
        List<double[]> times,
        double interval,
        double rate,
        double jitter,
        List<Dropout> dropouts,
        int bridged,
        int repeated,
        int outOfOrder,
        int missing) {
    /** Longest interval that is not a gap, in median intervals. */
    static final double GAP_BOUND = 2.5;

    /** More rows than this share having the instant of the row above means that the stamps are not those of the samples. */
    private static final double MOST_REPEATED = 0.2;

    private static final int FEWEST_ROWS = 16;

    /** What the walk along the rows gathers. */
    private static final class Walk {
        final List<int[]> rows = new ArrayList<>();
        final List<double[]> times = new ArrayList<>();
        final List<Dropout> dropouts = new ArrayList<>();
        int bridged;
        int repeated;
        int outOfOrder;
        int missing;
        double[] intervals = new double[1024];
        int count;

        void interval(double dt) {
            if (count == intervals.length) {
                intervals = Arrays.copyOf(intervals, 2 * count);
            }
            intervals[count++] = dt;
        }
    }

    /**
     * Cuts a recording.
     *
     * @param gapBound longest interval that is not a gap (s); NaN for the usual one
     * @throws UnusableLogException if there are too few rows or the instants are not those of the samples
     */
    static Stretches of(Recording recording, double gapBound) {
        Walk walk = new Walk();
        int[] kept = orderedRows(recording, walk);
        if (kept.length < FEWEST_ROWS) {
            throw new UnusableLogException(LogFault.whole(
                    "",
                    kept.length + " usable row" + (kept.length == 1 ? "" : "s"),
                    kept.length == 1 ? "is too few" : "are too few",
                    "at least " + FEWEST_ROWS
                            + " rows with a time and a value in every column used, and some seconds for metrics",
                    "record for longer, or name other columns with --x, --y, --z"));
        }
        double[] clock = clock(recording, kept, walk);
        double interval = median(walk);
        refuseBatches(recording, walk, kept.length);
        double bound = Double.isNaN(gapBound) ? GAP_BOUND * interval : gapBound;
        cut(recording, kept, clock, bound, interval, walk);
        double[] usual = Arrays.stream(walk.intervals, 0, walk.count)
                .filter(dt -> dt <= 1.5 * interval)
                .toArray();
        double mean = Arrays.stream(usual).average().orElse(interval);
        double variance = Arrays.stream(usual)
                .map(dt -> (dt - mean) * (dt - mean))
                .average()
                .orElse(0);
        return new Stretches(
                walk.rows,
                walk.rows.stream().map(r -> recording.line(r[0])).toList(),
                walk.times,
                interval,
                rounded(1 / mean),
                Math.sqrt(variance) / mean,
                walk.dropouts,
                walk.bridged,
                walk.repeated,
                walk.outOfOrder,
                walk.missing);
    }

    /** A rate within 0.1 % of a whole number of samples a second is that number: stamps are rounded, clocks are off. */
    private static double rounded(double rate) {
        double whole = Math.rint(rate);
        return whole > 0 && Math.abs(rate - whole) < 1e-3 * whole ? whole : rate;
    }

    /** Rows with values on every axis, less single ones that are out of order. */
    private static int[] orderedRows(Recording recording, Walk walk) {
        int[] rows = new int[recording.size()];
        int n = 0;
        for (int i = 0; i < recording.size(); i++) {
            if (!recording.whole(i)) {
                walk.missing++;
            } else if (n > 0 && isLoneStep(recording, rows[n - 1], i)) {
                walk.outOfOrder++;
            } else {
                rows[n++] = i;
            }
        }
        return Arrays.copyOf(rows, n);
    }

    /** Whether row i goes back in time and the next goes on from where it was. */
    private static boolean isLoneStep(Recording recording, int before, int i) {
        boolean back = recording.time(i) < recording.time(before);
        return back && i + 1 < recording.size() && recording.time(i + 1) >= recording.time(before);
    }

    /** Instants that never fall: where the clock was set back, it is let go on by no time at all, to be cut there. */
    private static double[] clock(Recording recording, int[] kept, Walk walk) {
        double[] clock = new double[kept.length];
        double shift = -recording.time(kept[0]);
        for (int k = 1; k < kept.length; k++) {
            double dt = recording.time(kept[k]) - recording.time(kept[k - 1]);
            if (dt < 0) {
                shift -= dt;
            } else if (dt == 0) {
                walk.repeated++;
            } else {
                walk.interval(dt);
            }
            clock[k] = recording.time(kept[k]) + shift;
        }
        return clock;
    }

    private static double median(Walk walk) {
        if (walk.count == 0) {
            throw new UnusableLogException(LogFault.whole(
                    "time",
                    "",
                    "the time stamps never rise",
                    "an instant for each row",
                    "name another column with --time, or state the sampling rate, as in --rate 100"));
        }
        double[] sorted = Arrays.copyOf(walk.intervals, walk.count);
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }

    private static void refuseBatches(Recording recording, Walk walk, int kept) {
        if (walk.repeated > MOST_REPEATED * kept) {
            double span = recording.time(recording.size() - 1) - recording.time(0);
            throw new UnusableLogException(LogFault.whole(
                    "time",
                    "",
                    walk.repeated + " of " + kept
                            + " rows have the time of the row above: the stamps are too coarse, or"
                            + " those of batches",
                    "an instant of its own for most rows",
                    String.format(
                            Locale.ROOT,
                            "state the sampling rate instead; %d rows in %.6g s make about --rate %.3g",
                            kept,
                            span,
                            (kept - 1) / span)));
        }
    }

    private static void cut(Recording recording, int[] kept, double[] clock, double bound, double interval, Walk walk) {
        int from = 0;
        for (int k = 1; k <= kept.length; k++) {
            boolean end = k == kept.length;
            double dt = end ? 0 : clock[k] - clock[k - 1];
            boolean back = !end && recording.time(kept[k]) < recording.time(kept[k - 1]);
            if (!end && !back && dt <= bound) {
                walk.bridged += dt > 1.5 * interval ? 1 : 0;
                continue;
            }
            walk.rows.add(Arrays.copyOfRange(kept, from, k));
            walk.times.add(Arrays.copyOfRange(clock, from, k));
            if (!end) {
                walk.dropouts.add(new Dropout(recording.line(kept[k]), clock[k - 1], back ? Double.NaN : dt));
            }
            from = k;
        }
    }
}
