package org.ridewright.fieldwork;

import java.util.List;
import java.util.Optional;
import org.ridewright.quantity.Measure;

/**
 * A recorded ride over a known obstacle.
 *
 * @param load who and what was aboard
 * @param road what it went over
 * @param speed (m/s), > 0
 * @param logs at least one
 * @param horse what draught animals add
 */
public record MeasuredRide(
        Heading heading, Loading load, RoadReference road, Measure speed, List<LogReference> logs, Horse horse)
        implements Fact {
    public MeasuredRide {
        logs = List.copyOf(logs);
    }

    /** What draught animals add to a log. */
    public sealed interface Horse {
        /** There was none. */
        record None() implements Horse {}

        /**
         * Its gait is in the log, and part of the fit.
         *
         * @param stepFrequency (Hz), > 0
         */
        record Steps(Measure stepFrequency) implements Horse {}

        /** The log cannot be fitted, for a reason. */
        record Unfit(String reason) implements Horse {}
    }

    /** Whether it may be fitted; the reason why not is in {@link Horse.Unfit}. */
    public boolean isFit() {
        return !(horse instanceof Horse.Unfit);
    }

    @Override
    public String key() {
        return "ride";
    }

    @Override
    public String label() {
        return heading.label("ride over " + road.label() + ", " + load.label());
    }

    @Override
    public Optional<Loading> loading() {
        return Optional.of(load);
    }

    @Override
    public List<Measure> readings() {
        return List.of(speed);
    }
}
