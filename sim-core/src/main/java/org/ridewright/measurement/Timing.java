package org.ridewright.measurement;

import java.util.ArrayList;
import java.util.List;

/**
 * What was found in the time stamps.
 *
 * @param rate f, samples per second taken (Hz)
 * @param interval Δ, median interval of the stamps (s)
 * @param jitter standard deviation of the usual intervals over their mean (1)
 * @param stretches lengths of the unbroken stretches (s)
 * @param resampled how many of them were uneven and brought to the rate
 * @param dropouts where the log was cut
 * @param bridged single missing rows spanned by the curve
 * @param repeated rows with the instant of the row above, averaged with it
 * @param outOfOrder single rows that went back in time, left out
 * @param missing rows left out because a cell held no value
 */
public record Timing(
        double rate,
        double interval,
        double jitter,
        List<Double> stretches,
        int resampled,
        List<Dropout> dropouts,
        int bridged,
        int repeated,
        int outOfOrder,
        int missing) {
    public Timing {
        stretches = List.copyOf(stretches);
        dropouts = List.copyOf(dropouts);
    }

    static Timing of(Recording recording, Stretches cut, EvenSamples samples) {
        List<Double> lengths = new ArrayList<>();
        cut.times().forEach(t -> lengths.add(t[t.length - 1] - t[0]));
        return new Timing(
                cut.rate(),
                cut.interval(),
                recording.stamped() ? cut.jitter() : 0,
                lengths,
                samples.fitted(),
                cut.dropouts(),
                cut.bridged(),
                cut.repeated(),
                cut.outOfOrder(),
                cut.missing());
    }

    /** Time covered by rows (s). */
    public double covered() {
        return stretches.stream().mapToDouble(Double::doubleValue).sum();
    }
}
