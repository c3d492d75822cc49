package org.ridewright.comfort;

import org.ridewright.signal.AnalogueFilter;
import org.ridewright.signal.Butterworth;

/** {@link Jerk} of samples that come one by one. */
final class JerkMeter {
    private static final AnalogueFilter RATE =
            new AnalogueFilter(1, Butterworth.derivative(MotionBands.ORDER, Jerk.LIMIT));

    private final double rate;
    private final PeakHold differences;
    private final FilteredLevel felt;
    private double before = Double.NaN;

    JerkMeter(Sampling sampling, Window window, StartUp startUp) {
        rate = sampling.rate();
        // a difference belongs to its later sample; the earlier one must be in the window too
        differences = new PeakHold(sampling, window.from() + 1 / rate, window.to());
        felt = new FilteredLevel(RATE, sampling, window, startUp);
    }

    void accept(double sample) {
        differences.accept(Double.isNaN(before) ? 0 : (sample - before) * rate);
        before = sample;
        felt.accept(sample);
    }

    Jerk jerk() {
        return new Jerk(differences.largest(), felt.level());
    }
}
