package org.ridewright.measurement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.ridewright.comfort.Axis;
import org.ridewright.comfort.Window;
import org.ridewright.signal.Channel;
import org.ridewright.signal.FilterStream;

/**
 * A recording made ready: checked, cut, evened out, turned upright.
 *
 * @param recording as read
 * @param options as stated
 * @param checks of each column
 * @param timing what was found in the time stamps
 * @param mounting how the logger stood
 * @param pieces unbroken stretches long enough to be measured, at least one
 * @param tooShort stretches left out, as whole sentences
 * @param startUp time left out at the beginning of each stretch (s)
 */
public record RecordedRide(
        Recording recording,
        LogOptions options,
        List<ColumnCheck> checks,
        Timing timing,
        Mounting mounting,
        List<Piece> pieces,
        List<String> tooShort,
        double startUp) {
    /** Below this the band in which a seated person feels most, 4 to 8 Hz, is not covered (Hz). */
    public static final double LOWEST_RATE = 20;

    /** Highest rate (Hz); far above anything that a ride holds, and a sign that the time unit is wrong. */
    public static final double HIGHEST_RATE = 50_000;

    private static final double SHORTEST_WINDOW = 1;

    /**
     * Makes a recording ready.
     *
     * @throws UnusableLogException if nothing in it can be measured
     */
    public static RecordedRide of(Recording recording, LogOptions options) {
        List<ColumnCheck> checks = new ArrayList<>();
        recording.columns().keySet().forEach(axis -> checks.add(ColumnCheck.of(recording, axis)));
        Stretches stretches = Stretches.of(recording, options.gapBound());
        requireRate(recording, stretches.rate());
        EvenSamples samples = EvenSamples.of(recording, stretches);
        Mounting mounting = Mounting.of(recording, samples, options);
        double startUp = Double.isNaN(options.startUp()) ? settlingTime(options, recording) : options.startUp();
        List<Piece> pieces = new ArrayList<>();
        List<String> tooShort = new ArrayList<>();
        for (int s = 0; s < samples.starts().size(); s++) {
            cutPiece(samples, s, stretches, mounting, options, startUp, pieces, tooShort);
        }
        Timing timing = Timing.of(recording, stretches, samples);
        if (pieces.isEmpty()) {
            throw tooShort(timing, startUp, options, samples, stretches.rate());
        }
        return new RecordedRide(
                recording,
                options,
                List.copyOf(checks),
                timing,
                mounting,
                List.copyOf(pieces),
                List.copyOf(tooShort),
                startUp);
    }

    /** Samples per second (Hz). */
    public double rate() {
        return timing.rate();
    }

    /** Time that counts, over all pieces (s). */
    public double length() {
        return pieces.stream().mapToDouble(piece -> piece.window().length()).sum();
    }

    /** Axes of the person that were recorded, upright; two horizontal ones only together where forward is not known. */
    public List<Axis> axes() {
        return recording.columns().keySet().stream().map(RecordedRide::axis).toList();
    }

    static Axis axis(LogAxis axis) {
        return switch (axis) {
            case X -> Axis.X;
            case Y -> Axis.Y;
            case Z -> Axis.Z;
        };
    }

    private static double settlingTime(LogOptions options, Recording recording) {
        return recording.columns().keySet().stream()
                .mapToDouble(axis -> options.position().weighting(axis(axis)).settlingTime())
                .max()
                .orElseThrow();
    }

    private static void requireRate(Recording recording, double rate) {
        if (rate >= LOWEST_RATE && rate <= HIGHEST_RATE) {
            return;
        }
        String found = String.format(Locale.ROOT, "%.4g samples a second", rate);
        String expected = String.format(
                Locale.ROOT, "%.0f to %.0f samples a second, better 100 or more", LOWEST_RATE, HIGHEST_RATE);
        String fix = rate < LOWEST_RATE
                ? "record again at a higher rate; if the time unit is wrong, state it, as in --time-unit ms"
                : "the time unit is likely wrong: state it, as in --time-unit ms";
        String fault = rate < LOWEST_RATE
                ? "are too few: only motion below " + String.format(Locale.ROOT, "%.2g", 0.4 * rate)
                        + " Hz would be seen, and a seated person feels 4 to 8 Hz most"
                : "are more than any ride needs";
        throw new UnusableLogException(
                LogFault.whole(recording.stamped() ? "time" : "--rate", found, fault, expected, fix));
    }

    private static void cutPiece(
            EvenSamples samples,
            int s,
            Stretches stretches,
            Mounting mounting,
            LogOptions options,
            double startUp,
            List<Piece> pieces,
            List<String> tooShort) {
        double rate = stretches.rate();
        Map<LogAxis, double[]> logged = samples.values().get(s);
        int count = logged.values().iterator().next().length;
        double start = samples.starts().get(s);
        double end = start + (count - 1) / rate;
        double from = greatest(start + startUp, options.from());
        double to = least(end - FilterStream.DELAY / rate, options.to());
        if (to - from < SHORTEST_WINDOW) {
            boolean wanted = !(end < options.from()) && !(start > options.to());
            if (wanted) {
                tooShort.add(String.format(
                        Locale.ROOT,
                        "The stretch from %.2f s to %.2f s (from line %d) is left out: after %.2f s of start-up less than 1 s remains.",
                        start,
                        end,
                        stretches.lines().get(s),
                        startUp));
            }
            return;
        }
        Map<LogAxis, Channel> channels = new EnumMap<>(LogAxis.class);
        mounting.upright(logged)
                .forEach((axis, values) -> channels.put(axis, new Channel(axis.word(), "m/s²", rate, start, values)));
        pieces.add(new Piece(channels, new Window(from, to)));
    }

    private static UnusableLogException outside(String option, double value, String fault, double bound) {
        return new UnusableLogException(LogFault.whole(
                option,
                seconds(value),
                fault + " " + seconds(bound),
                "a stretch of 1 s or more within the log, counted from its first row",
                "state --from and --to in seconds from the first row, or leave them out"));
    }

    private static String seconds(double value) {
        return String.format(Locale.ROOT, "%.3f", value).replaceAll("\\.?0+$", "") + " s";
    }

    private static double greatest(double value, double stated) {
        return Double.isNaN(stated) ? value : Math.max(value, stated);
    }

    private static double least(double value, double stated) {
        return Double.isNaN(stated) ? value : Math.min(value, stated);
    }

    private static UnusableLogException tooShort(
            Timing timing, double startUp, LogOptions options, EvenSamples samples, double rate) {
        int last = samples.starts().size() - 1;
        int count = samples.values().get(last).values().iterator().next().length;
        double begin = samples.starts().get(0);
        double end = samples.starts().get(last) + (count - 1) / rate;
        if (options.from() > end - SHORTEST_WINDOW) {
            return outside("--from", options.from(), "leaves less than 1 s of the log, which ends at", end);
        } else if (options.to() < begin + SHORTEST_WINDOW) {
            return outside("--to", options.to(), "comes before 1 s of the log has passed, which begins at", begin);
        } else if (options.to() - options.from() < SHORTEST_WINDOW) {
            return outside("--to", options.to(), "comes less than 1 s after --from,", options.from());
        }
        double longest =
                timing.stretches().stream().max(Comparator.naturalOrder()).orElse(0.0);
        boolean cut = !Double.isNaN(options.from()) || !Double.isNaN(options.to());
        String value = String.format(Locale.ROOT, "%.3g s", longest);
        String expected = String.format(
                Locale.ROOT,
                "at least %.1f s without a gap%s: %.1f s for the filters to settle, then 1 s for the shortest running mean",
                startUp + SHORTEST_WINDOW + FilterStream.DELAY / timing.rate(),
                cut ? ", inside --from and --to" : "",
                startUp);
        String fix = timing.dropouts().isEmpty()
                ? "record for longer; a log that begins at rest may be taken with --start-up 0"
                : "record again without gaps (the first is before line "
                        + timing.dropouts().get(0).line() + "), or allow longer ones, as in --gap "
                        + String.format(Locale.ROOT, "%.2g", 5 / timing.rate());
        return new UnusableLogException(LogFault.whole("", value, "is the longest unbroken stretch", expected, fix));
    }
}
