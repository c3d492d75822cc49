package org.ridewright.report;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.ridewright.measurement.Dropout;
import org.ridewright.measurement.LogAxis;
import org.ridewright.measurement.LogFault;
import org.ridewright.measurement.LogOptions;
import org.ridewright.measurement.LogOptions.Forward;
import org.ridewright.measurement.LogRemarks;
import org.ridewright.measurement.RecordedMotion;
import org.ridewright.measurement.Recording;
import org.ridewright.measurement.UnusableLogException;
import org.ridewright.ringdown.DampingKind;
import org.ridewright.ringdown.LoggedBounce;
import org.ridewright.ringdown.NoRingDownException;
import org.ridewright.ringdown.RingDown;
import org.ridewright.ringdown.RingDownOptions;
import org.ridewright.ringdown.RingDowns;
import org.ridewright.ringdown.SensorPair;
import org.ridewright.ringdown.Stretch;
import org.ridewright.ringdown.Together;

/**
 * Bounce tests of a log, for table, page, figures and numbers.
 *
 * @param recorded the log made ready; with two sensors the first
 * @param direction in which it was looked at
 * @param motions one, or with two sensors both together and one against the other
 * @param remarks whole sentences on the log
 */
public record BounceLogResult(
        RecordedMotion recorded, Direction direction, List<Motion> motions, List<String> remarks) {
    private static final double NOTABLE_TILT = 2;

    /** Direction of the acceleration that is looked at. */
    public enum Direction {
        VERTICAL("vertical", LogAxis.Z),
        FORE_AND_AFT("fore-aft", LogAxis.X),
        LATERAL("lateral", LogAxis.Y);

        private final String word;
        private final LogAxis axis;

        Direction(String word, LogAxis axis) {
            this.word = word;
            this.axis = axis;
        }

        /** As a person writes it. */
        public String word() {
            return word;
        }
    }

    /**
     * A second logger or sensor.
     *
     * @param recording of it
     * @param apart from the first (m); NaN where not stated
     * @param sameClock whether both are in one file
     */
    public record Second(Recording recording, double apart, boolean sameClock) {}

    /**
     * One motion of the log.
     *
     * @param name in running text
     * @param stretches what was looked at
     * @param ringDowns its releases
     * @param arm half the distance of the two sensors (m) where it is a rotation and the distance was stated; NaN elsewhere
     */
    public record Motion(String name, List<Stretch> stretches, RingDowns ringDowns, double arm) {
        /** Whether F/k of it is an angle. */
        public boolean isAngle() {
            return !Double.isNaN(arm);
        }
    }

    /**
     * Measures a log.
     *
     * @param second another sensor, if there is one
     * @throws UnusableLogException if nothing in it can be measured
     */
    public static BounceLogResult of(
            Recording recording,
            Optional<Second> second,
            LogOptions options,
            Direction direction,
            RingDownOptions bounce) {
        RecordedMotion recorded = RecordedMotion.of(recording, options);
        List<String> remarks = new ArrayList<>();
        LoggedBounce log = logged(recorded, direction);
        List<Motion> motions = new ArrayList<>();
        if (second.isEmpty()) {
            motions.add(new Motion(direction.word(), log.stretches(), measured(log, bounce), Double.NaN));
        } else {
            LoggedBounce other = logged(RecordedMotion.of(second.get().recording(), options), direction);
            List<RingDowns.Flaw> flaws = new ArrayList<>(log.flaws());
            flaws.addAll(other.flaws());
            SensorPair pair = pair(log.stretches(), other.stretches(), second.get(), remarks);
            addPair(motions, pair, flaws, bounce, second.get().apart(), remarks);
        }
        remarks.addAll(remarks(recorded, options, direction));
        return new BounceLogResult(recorded, direction, List.copyOf(motions), List.copyOf(remarks));
    }

    private static SensorPair pair(List<Stretch> first, List<Stretch> other, Second second, List<String> remarks) {
        try {
            SensorPair pair = second.sameClock() ? SensorPair.of(first, other) : SensorPair.aligned(first, other);
            if (!second.sameClock()) {
                remarks.add(String.format(
                        Locale.ROOT,
                        "The two logs have clocks of their own: the second was shifted by %.3f s, where both shake alike most (correlation %.2f).",
                        pair.shift(),
                        pair.likeness()));
            }
            return pair;
        } catch (NoRingDownException apart) {
            throw unusable(apart);
        }
    }

    private static void addPair(
            List<Motion> motions,
            SensorPair pair,
            List<RingDowns.Flaw> flaws,
            RingDownOptions bounce,
            double apart,
            List<String> remarks) {
        NoRingDownException first = null;
        List<Stretch> both = pair.mean();
        List<Stretch> against = pair.halfDifference();
        for (boolean rotation : new boolean[] {false, true}) {
            String name = rotation ? "one sensor against the other" : "both sensors together";
            List<Stretch> stretches = rotation ? against : both;
            try {
                RingDowns found = RingDowns.of(stretches, flaws, bounce);
                motions.add(new Motion(name, stretches, found, rotation ? apart / 2 : Double.NaN));
            } catch (NoRingDownException none) {
                first = first == null ? none : first;
                remarks.add("Of " + name + " nothing can be measured: " + none.fault() + ".");
            }
        }
        if (motions.isEmpty()) {
            throw unusable(first);
        }
    }

    private static RingDowns measured(LoggedBounce log, RingDownOptions bounce) {
        try {
            return RingDowns.of(log.stretches(), log.flaws(), bounce);
        } catch (NoRingDownException none) {
            throw unusable(none);
        }
    }

    private static UnusableLogException unusable(NoRingDownException none) {
        return new UnusableLogException(new LogFault(0, "", "", none.fault(), none.expected(), none.fix()));
    }

    private static LoggedBounce logged(RecordedMotion recorded, Direction direction) {
        if (!recorded.recording().columns().containsKey(direction.axis)) {
            throw new UnusableLogException(new LogFault(
                    0,
                    "",
                    "--direction " + direction.word,
                    "needs a column that the log does not have",
                    "all three axes",
                    "name it with --" + direction.axis.word() + ", or leave --direction out"));
        }
        return LoggedBounce.of(recorded, direction.axis);
    }

    private static List<String> remarks(RecordedMotion recorded, LogOptions options, Direction direction) {
        List<String> remarks = new ArrayList<>();
        for (Dropout dropout : recorded.timing().dropouts()) {
            remarks.add(
                    Double.isNaN(dropout.length())
                            ? String.format(Locale.ROOT, "The clock was set back before line %d.", dropout.line())
                            : String.format(
                                    Locale.ROOT,
                                    "Rows are missing for %.2g s before line %d (at %.2f s); nothing is fitted across.",
                                    dropout.length(),
                                    dropout.line(),
                                    dropout.at()));
        }
        remarks.addAll(LogRemarks.rows(recorded.timing()));
        remarks.addAll(recorded.recording().remarks());
        if (!recorded.mounting().gravityFound()) {
            remarks.add(
                    "Gravity is not in the values: which way is up cannot be found, and the columns are taken as they are marked, z upright.");
        } else if (recorded.mounting().tilt() > NOTABLE_TILT) {
            remarks.add(String.format(
                    Locale.ROOT,
                    recorded.mounting().mean().size() == LogAxis.values().length
                            ? "The logger's z axis stood %.0f° from upright; the values were turned upright by the mean, which is gravity."
                            : "The logger's z axis stood %.0f° from upright, as the mean shows; with fewer than three axes that cannot be put right.",
                    recorded.mounting().tilt()));
        }
        if (direction != Direction.VERTICAL && options.forward() == Forward.UNKNOWN) {
            remarks.add(
                    "Which way was forward is not known: state it with --forward, or 'principal', the direction that shook most.");
        }
        return remarks;
    }

    /** The log's file name. */
    public String name() {
        return Path.of(recorded.recording().file()).getFileName().toString();
    }

    /** How long and how fine it is, in words. */
    public String extent() {
        return String.format(
                Locale.ROOT,
                "%.1f s, %.4g samples a second",
                recorded.timing().covered(),
                recorded.timing().rate());
    }

    /** How many releases were measured, over all motions. */
    public int releases() {
        return motions.stream().mapToInt(m -> m.ringDowns().releases().size()).sum();
    }

    /** The answer, in whole sentences. */
    public List<String> answers() {
        List<String> answers = new ArrayList<>();
        for (Motion motion : motions) {
            String about = motions.size() > 1 ? RideFigures.upperFirst(motion.name()) + ": " : "";
            Optional<Together> together = motion.ringDowns().together();
            if (together.isPresent()) {
                answers.add(about + BounceLogWords.of(motion, together.get()));
            } else {
                int number = 1;
                for (RingDown release : motion.ringDowns().releases()) {
                    answers.add(about + BounceLogWords.of(motion, release, number++));
                }
            }
        }
        boolean unclear = motions.stream()
                .flatMap(m -> m.ringDowns().releases().stream())
                .anyMatch(r -> r.kind() == DampingKind.UNCLEAR);
        if (unclear) {
            answers.add(
                    "Where it says 'cannot tell', the decay is certain but either kind alone would describe it: a larger push, or several"
                            + " releases in one log, will tell.");
        }
        return List.copyOf(answers);
    }
}
