package org.ridewright.report;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ridewright.comfort.Axis;
import org.ridewright.comfort.AxisVibration;
import org.ridewright.comfort.Discomfort;
import org.ridewright.comfort.MotionSickness;
import org.ridewright.comfort.Position;
import org.ridewright.comfort.VibrationMetrics;
import org.ridewright.measurement.LogOptions;
import org.ridewright.measurement.LogRemarks;
import org.ridewright.measurement.LogSickness;
import org.ridewright.measurement.LogSpectra;
import org.ridewright.measurement.LogVibration;
import org.ridewright.measurement.RecordedRide;
import org.ridewright.measurement.Recording;

/**
 * Everything measured of a log, for table, page, figures and numbers.
 *
 * @param ride made ready
 * @param vibration measures
 * @param spectra where the pieces are long enough
 * @param sickness of the vertical motion, where a piece is long enough
 * @param riding time of such riding a day (s), where stated
 * @param remarks whole sentences
 */
public record LogResult(
        RecordedRide ride,
        LogVibration vibration,
        Optional<LogSpectra> spectra,
        Optional<MotionSickness> sickness,
        OptionalDouble riding,
        List<String> remarks) {
    /** Rides shorter than this are events, for which the standard's words are not meant (s). */
    static final double STEADY = 20;

    /**
     * A direction and its measures.
     *
     * @param name in running text
     * @param weighting symbol
     * @param factor k
     */
    public record Direction(String name, String weighting, double factor, VibrationMetrics metrics) {}

    /**
     * Measures a recording.
     *
     * @throws org.ridewright.measurement.UnusableLogException if nothing in it can be measured
     */
    public static LogResult of(Recording recording, LogOptions options, OptionalDouble riding) {
        RecordedRide ride = RecordedRide.of(recording, options);
        LogVibration vibration = LogVibration.of(ride);
        return new LogResult(
                ride, vibration, LogSpectra.of(ride), LogSickness.of(ride), riding, LogRemarks.of(ride, vibration));
    }

    /** The log's file name. */
    public String name() {
        return Path.of(ride.recording().file()).getFileName().toString();
    }

    /** Where it was recorded, in words. */
    public String place() {
        return switch (vibration.position()) {
            case SEAT -> "on the seat";
            case BACKREST -> "at the backrest";
            case FEET -> "at the feet";
        };
    }

    /** How much of it counts, in words. */
    public String extent() {
        String pieces = ride.pieces().size() == 1 ? "" : " in " + ride.pieces().size() + " pieces";
        return String.format(
                Locale.ROOT, "%.1f s counted%s, %.4g samples a second", ride.length(), pieces, ride.rate());
    }

    /** One entry a direction measured, vertical first. */
    public List<Direction> directions() {
        Position position = vibration.position();
        List<Direction> directions = new ArrayList<>();
        Map<Axis, AxisVibration> axes = vibration.axes();
        for (Axis axis : List.of(Axis.Z, Axis.X, Axis.Y)) {
            if (axes.containsKey(axis)) {
                directions.add(new Direction(
                        word(axis),
                        position.weighting(axis).symbol(),
                        position.factor(axis),
                        axes.get(axis).metrics()));
            }
        }
        vibration
                .horizontal()
                .ifPresent(h -> directions.add(
                        new Direction("horizontal", position.weighting(Axis.X).symbol(), position.factor(Axis.X), h)));
        return List.copyOf(directions);
    }

    /** The answer, in whole sentences. */
    public List<String> answers() {
        List<String> answers = new ArrayList<>();
        boolean all = directions().size() > 1;
        answers.add("The weighted acceleration %s is a_v = %s m/s² %s%s."
                .formatted(
                        place(),
                        Numbers.of(vibration.total()),
                        all ? "over all directions recorded" : "in the vertical direction alone, the only one recorded",
                        isBackrestStoodFor()
                                ? ", and %s m/s² with the factor 1.4 on the horizontal ones that stands for the backrest"
                                        .formatted(Numbers.of(vibration.comfortTotal()))
                                : ""));
        answers.add(words());
        answers.add(ratios());
        answers.add(kind());
        return List.copyOf(answers);
    }

    /** Whether the two totals differ. */
    boolean isBackrestStoodFor() {
        return vibration.position() == Position.SEAT && directions().size() > 1;
    }

    /** The standard's words are for steady vibration of a seated person, and for the whole of it: a single point of the floor is not. */
    private String words() {
        if (vibration.position() != Position.SEAT) {
            return "The standard's words for discomfort are for all that a seated person feels; for what was recorded %s alone none are given."
                    .formatted(place());
        } else if (ride.length() < STEADY) {
            return "The standard's words for discomfort are for steady vibration; %s s are too short for them, which need %.0f s here."
                    .formatted(Numbers.of(ride.length()), STEADY);
        }
        return "In public transport a steady %s m/s² is %s (bands overlap; ISO 2631-1:1997, annex C)."
                .formatted(Numbers.of(vibration.comfortTotal()), Discomfort.likely(vibration.comfortTotal()));
    }

    /** For daily exposure: each known axis, or the horizontal one as if it all lay in one direction, which is the most it can be. */
    Map<Axis, VibrationMetrics> exposed() {
        Map<Axis, VibrationMetrics> exposed = new EnumMap<>(Axis.class);
        vibration.axes().forEach((axis, v) -> exposed.put(axis, v.metrics()));
        vibration.horizontal().ifPresent(h -> exposed.put(Axis.X, h));
        return exposed;
    }

    /** Published exposure values are for the seat, and for something that moves. */
    boolean isExposureKnown() {
        return vibration.position() == Position.SEAT
                && vibration.vertical().metrics().rms() > 0;
    }

    private String ratios() {
        VibrationMetrics z = vibration.vertical().metrics();
        if (z.mtvvRatioExceeded() || z.vdvRatioExceeded() || z.crestFactorExceeded()) {
            return String.format(
                    Locale.ROOT,
                    "The mean alone misleads, for there are shocks in it (MTVV/a_w = %s, limit 1.5; VDV/(a_w T^¼) = %s, limit 1.75; crest factor %s, limit 9):"
                            + " look at MTVV = %s m/s² and VDV = %s m/s^1.75 as well.",
                    Numbers.of(z.mtvvRatio()),
                    Numbers.of(z.vdvRatio()),
                    Numbers.of(z.crestFactor()),
                    Numbers.of(z.mtvv()),
                    Numbers.of(z.vdv()));
        }
        return "The vertical motion is even enough for a_w to stand for it (MTVV/a_w = " + Numbers.of(z.mtvvRatio(), 2)
                + ", crest factor " + Numbers.of(z.crestFactor(), 2) + ").";
    }

    private String kind() {
        var bands = vibration.vertical().bands();
        return String.format(
                Locale.ROOT,
                "Of the vertical motion, unweighted, the heave below 3 Hz is %s m/s² r.m.s., the jolt of 3 to 10 Hz %s and the buzz above 10 Hz %s.",
                Numbers.of(bands.heave().rms(), 2),
                Numbers.of(bands.jolt().rms(), 2),
                Numbers.of(bands.buzz().rms(), 2));
    }

    private static String word(Axis axis) {
        return switch (axis) {
            case X -> "fore and aft";
            case Y -> "lateral";
            case Z -> "vertical";
            case ROLL, PITCH, YAW -> throw new IllegalArgumentException("a log holds no rotation");
        };
    }
}
