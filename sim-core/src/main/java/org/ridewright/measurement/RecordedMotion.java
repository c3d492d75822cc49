package org.ridewright.measurement;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A recording turned upright at the instants at which it was logged; nothing is resampled, so that a jump stays a jump.
 *
 * @param recording as read
 * @param checks of each column
 * @param timing what was found in the time stamps
 * @param mounting how the logger stood
 * @param runs unbroken stretches, at least one
 * @param clips where a column stood at its extreme, in order of time
 */
public record RecordedMotion(
        Recording recording,
        List<ColumnCheck> checks,
        Timing timing,
        Mounting mounting,
        List<Run> runs,
        List<ClippedTime> clips) {
    /** Below this nothing of a vehicle's bounce would be left (Hz). */
    public static final double LOWEST_RATE = 5;

    private static final int SHORTEST_RUN = 16;

    /** A column with less of the vertical than this does not spoil it. */
    private static final double COUNTING_SHARE = 0.1;

    /**
     * An unbroken stretch.
     *
     * @param times rising (s), from the first row of the log
     * @param values X forward, Y left, Z up (m/s²), as far as logged, gravity or means taken off; where forward is not known, X and Y are some two
     *     horizontal directions
     */
    public record Run(double[] times, Map<LogAxis, double[]> values) {}

    /**
     * Rows that stand at an extreme value.
     *
     * @param line of the first
     * @param column its name
     * @param from (s)
     * @param to (s)
     */
    public record ClippedTime(int line, String column, double from, double to) {}

    /**
     * Makes a recording ready.
     *
     * @param options of which position and start-up are not looked at
     * @throws UnusableLogException if nothing is left of it
     */
    public static RecordedMotion of(Recording recording, LogOptions options) {
        List<ColumnCheck> checks = new ArrayList<>();
        recording.columns().keySet().forEach(axis -> checks.add(ColumnCheck.of(recording, axis)));
        Stretches stretches = Stretches.of(recording, options.gapBound());
        requireRate(recording, stretches.rate());
        EvenSamples samples = EvenSamples.of(recording, stretches);
        Mounting mounting = Mounting.of(recording, samples, options);
        List<Run> runs = new ArrayList<>();
        for (int s = 0; s < stretches.rows().size(); s++) {
            Run run = run(recording, stretches.rows().get(s), stretches.times().get(s), mounting, options);
            if (run.times().length >= SHORTEST_RUN) {
                runs.add(run);
            }
        }
        if (runs.isEmpty()) {
            throw new UnusableLogException(LogFault.whole(
                    "",
                    "",
                    "no unbroken stretch of " + SHORTEST_RUN + " rows is left",
                    "some seconds without a gap" + (cut(options) ? ", inside --from and --to" : ""),
                    "record again without gaps, or allow longer ones with --gap"));
        }
        return new RecordedMotion(
                recording,
                List.copyOf(checks),
                Timing.of(recording, stretches, samples),
                mounting,
                List.copyOf(runs),
                clips(recording, stretches, checks, mounting));
    }

    private static boolean cut(LogOptions options) {
        return !Double.isNaN(options.from()) || !Double.isNaN(options.to());
    }

    private static void requireRate(Recording recording, double rate) {
        if (rate >= LOWEST_RATE && rate <= RecordedRide.HIGHEST_RATE) {
            return;
        }
        throw new UnusableLogException(LogFault.whole(
                recording.stamped() ? "time" : "--rate",
                String.format(Locale.ROOT, "%.4g samples a second", rate),
                rate < LOWEST_RATE ? "are too few for any bounce" : "are more than any logger takes",
                "at least four samples in each cycle, better 50 a second",
                rate < LOWEST_RATE
                        ? "record again at a higher rate; if the time unit is wrong, state it, as in --time-unit ms"
                        : "the time unit is likely wrong: state it, as in --time-unit ms"));
    }

    /** Rows of one instant become one, their mean. */
    private static Run run(Recording recording, int[] rows, double[] clock, Mounting mounting, LogOptions options) {
        double[] times = new double[rows.length];
        Map<LogAxis, double[]> logged = new EnumMap<>(LogAxis.class);
        recording.columns().keySet().forEach(axis -> logged.put(axis, new double[rows.length]));
        int n = 0;
        for (int i = 0; i < rows.length; ) {
            int same = i;
            while (same < rows.length && clock[same] == clock[i]) {
                same++;
            }
            boolean wanted = !(clock[i] < options.from()) && !(clock[i] > options.to());
            if (wanted) {
                times[n] = clock[i];
                for (Map.Entry<LogAxis, double[]> axis : logged.entrySet()) {
                    double sum = 0;
                    for (int k = i; k < same; k++) {
                        sum += recording.values(axis.getKey())[rows[k]];
                    }
                    axis.getValue()[n] = sum / (same - i);
                }
                n++;
            }
            i = same;
        }
        int count = n;
        logged.replaceAll((axis, values) -> Arrays.copyOf(values, count));
        return new Run(Arrays.copyOf(times, n), mounting.upright(logged));
    }

    private static List<ClippedTime> clips(
            Recording recording, Stretches stretches, List<ColumnCheck> checks, Mounting mounting) {
        List<ClippedTime> clips = new ArrayList<>();
        for (ColumnCheck check : checks) {
            if (Math.abs(mounting.rotation()[LogAxis.Z.place()][check.axis().place()]) < COUNTING_SHARE) {
                continue;
            }
            for (ColumnCheck.Clip clip : check.clipped()) {
                for (int s = 0; s < stretches.rows().size(); s++) {
                    int[] rows = stretches.rows().get(s);
                    for (int i = 0; i < rows.length; i++) {
                        if (recording.line(rows[i]) == clip.line()) {
                            double[] times = stretches.times().get(s);
                            double to = times[Math.min(rows.length - 1, i + clip.rows() - 1)];
                            clips.add(
                                    new ClippedTime(clip.line(), check.column().name(), times[i], to));
                        }
                    }
                }
            }
        }
        clips.sort((a, b) -> Double.compare(a.from(), b.from()));
        return List.copyOf(clips);
    }
}
