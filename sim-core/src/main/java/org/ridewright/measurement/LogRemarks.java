package org.ridewright.measurement;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.ridewright.comfort.Axis;
import org.ridewright.comfort.TrustedBand;

/** What a reader of the numbers must know of the log, in whole sentences, the weightiest first. */
public final class LogRemarks {
    private static final int MOST_DROPOUTS = 5;
    private static final double COARSE = 0.05;
    private static final double NOTABLE_TILT = 2;
    private static final double NOTABLE_GAIN = 0.03;
    private static final double UNEVEN = 0.02;

    private LogRemarks() {}

    /** Those of a ride and its measures. */
    public static List<String> of(RecordedRide ride, LogVibration vibration) {
        List<String> remarks = new ArrayList<>();
        clipping(ride, remarks);
        dropouts(ride, remarks);
        remarks.addAll(ride.tooShort());
        rows(ride.timing(), remarks);
        remarks.addAll(ride.recording().remarks());
        mounting(ride, remarks);
        resolution(ride, vibration, remarks);
        if (vibration.vertical().metrics().isHardlyFelt()) {
            remarks.add(
                    "The vertical weighted peak is below what half of alert people just feel (0.015 m/s²): either the vehicle stood still, or"
                            + " the unit is wrong.");
        }
        remarks.add(trusted(ride));
        return List.copyOf(remarks);
    }

    /** The band that can be trusted, as a sentence. */
    public static String trusted(RecordedRide ride) {
        String statement =
                new TrustedBand(ride.rate()).statement(ride.options().position().weighting(Axis.Z));
        return Character.toUpperCase(statement.charAt(0)) + statement.substring(1) + ".";
    }

    private static void clipping(RecordedRide ride, List<String> remarks) {
        for (ColumnCheck check : ride.checks()) {
            if (!check.clipped().isEmpty()) {
                ColumnCheck.Clip first = check.clipped().get(0);
                int rows = check.clipped().stream()
                        .mapToInt(ColumnCheck.Clip::rows)
                        .sum();
                remarks.add(String.format(
                        Locale.ROOT,
                        "Column '%s' is clipped: it stands at an extreme value for 3 rows or more in %d place%s, %d rows in all, first at line %d (%.4g"
                                + " m/s²). The true peaks were higher, and all measures are too low.",
                        check.column().name(),
                        check.clipped().size(),
                        check.clipped().size() == 1 ? "" : "s",
                        rows,
                        first.line(),
                        first.value()));
            }
        }
    }

    private static void dropouts(RecordedRide ride, List<String> remarks) {
        List<Dropout> all = ride.timing().dropouts();
        if (all.isEmpty()) {
            return;
        }
        List<String> places = new ArrayList<>();
        for (Dropout dropout : all.subList(0, Math.min(MOST_DROPOUTS, all.size()))) {
            places.add(
                    Double.isNaN(dropout.length())
                            ? String.format(Locale.ROOT, "the clock was set back before line %d", dropout.line())
                            : String.format(
                                    Locale.ROOT,
                                    "%.3g s before line %d (at %.2f s)",
                                    dropout.length(),
                                    dropout.line(),
                                    dropout.at()));
        }
        remarks.add("The log has " + all.size() + (all.size() == 1 ? " dropout: " : " dropouts: ")
                + String.join("; ", places)
                + (all.size() > MOST_DROPOUTS ? "; and so on" : "")
                + ". Nothing is bridged: each stretch is measured by itself, without its start-up.");
    }

    /** What was passed over, averaged or filled in, row by row. */
    public static List<String> rows(Timing timing) {
        List<String> remarks = new ArrayList<>();
        rows(timing, remarks);
        return remarks;
    }

    private static void rows(Timing timing, List<String> remarks) {
        if (timing.missing() > 0) {
            remarks.add(rows(timing.missing()) + " without a value in a column used " + were(timing.missing())
                    + " passed over.");
        }
        if (timing.repeated() > 0) {
            remarks.add(rows(timing.repeated()) + " with the time of the row above " + were(timing.repeated())
                    + " averaged with it.");
        }
        if (timing.outOfOrder() > 0) {
            remarks.add(
                    rows(timing.outOfOrder()) + " going back in time " + were(timing.outOfOrder()) + " passed over.");
        }
        if (timing.bridged() > 0) {
            remarks.add(
                    "Single rows are missing in " + timing.bridged() + (timing.bridged() == 1 ? " place" : " places")
                            + "; the band-limited curve through their neighbours spans them.");
        }
        if (timing.resampled() > 0) {
            remarks.add(String.format(
                    Locale.ROOT,
                    "The time stamps are uneven (intervals vary by %.2g %% r.m.s.): the log was brought to %.4g Hz, its own mean rate, by the"
                            + " band-limited curve that passes closest to the values; nothing can fold in this.%s",
                    100 * timing.jitter(),
                    timing.rate(),
                    timing.jitter() > UNEVEN
                            ? " If the logger sampled evenly and only its stamps are late or early, state the rate with --rate instead."
                            : ""));
        }
    }

    private static String rows(int count) {
        return count + (count == 1 ? " row" : " rows");
    }

    private static String were(int count) {
        return count == 1 ? "was" : "were";
    }

    private static void mounting(RecordedRide ride, List<String> remarks) {
        Mounting mounting = ride.mounting();
        boolean three = mounting.mean().size() == 3;
        if (!mounting.gravityFound()) {
            remarks.add(
                    "Gravity is not in the values: which way is up cannot be found, and the columns are taken as they are marked, z upright.");
        } else if (three) {
            double size = Math.sqrt(
                    mounting.mean().values().stream().mapToDouble(m -> m * m).sum());
            if (mounting.tilt() > NOTABLE_TILT) {
                remarks.add(String.format(
                        Locale.ROOT,
                        "The logger's z axis stood %.0f° from upright%s; the values were turned upright by the mean, which is gravity.",
                        mounting.tilt(),
                        mounting.tilt() > 90 ? ", or it counts gravity downward, which comes to the same" : ""));
            }
            gain(size, remarks);
        } else {
            remarks.add(String.format(
                    Locale.ROOT,
                    "The mean of the vertical column is %.3g m/s²%s; with fewer than three axes its tilt cannot be put right.",
                    mounting.mean().get(LogAxis.Z),
                    mounting.tilt() > NOTABLE_TILT
                            ? String.format(Locale.ROOT, ", as of an axis %.0f° from upright", mounting.tilt())
                            : ""));
        }
        if (ride.recording().columns().size() > 1 && !mounting.forwardKnown()) {
            remarks.add(
                    "Which way was forward is not known (--forward): the two horizontal directions are given as one value.");
        }
    }

    private static void gain(double size, List<String> remarks) {
        double gain = size / Mounting.G - 1;
        if (Math.abs(gain) > NOTABLE_GAIN) {
            remarks.add(String.format(
                    Locale.ROOT,
                    "The mean acceleration is %.2f m/s², %.0f %% %s gravity: the sensor's gain or offset is off by about as much, and is not"
                            + " put right.",
                    size,
                    100 * Math.abs(gain),
                    gain > 0 ? "above" : "below"));
        }
    }

    private static void resolution(RecordedRide ride, LogVibration vibration, List<String> remarks) {
        double felt = vibration.vertical().bands().whole().rms();
        for (ColumnCheck check : ride.checks()) {
            if (check.axis() == LogAxis.Z && check.roundingError() > COARSE * felt) {
                remarks.add(String.format(
                        Locale.ROOT,
                        "Column '%s' moves in steps of %.2g m/s²; rounding to them adds about %.2g m/s² r.m.s. to a motion of %.2g m/s² r.m.s.",
                        check.column().name(),
                        check.resolution(),
                        check.roundingError(),
                        felt));
            }
        }
    }
}
