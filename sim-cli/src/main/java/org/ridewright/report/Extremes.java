package org.ridewright.report;

import java.util.Comparator;
import java.util.Optional;
import org.ridewright.ride.RideResult;
import org.ridewright.ride.RideResult.ElementResult;
import org.ridewright.ride.RideResult.WheelResult;

/** Which spring and wheel of a ride test went farthest. */
final class Extremes {
    private static final double ROUNDING = 1e-6;

    private Extremes() {}

    /** Farthest from rest, either way (m or rad). */
    static double travel(ElementResult element) {
        return Math.max(element.compression(), element.extension());
    }

    static Optional<ElementResult> farthestSpring(RideResult result) {
        return result.springs().stream()
                .filter(s -> s.kind().equals("spring"))
                .max(Comparator.comparingDouble(Extremes::travel));
    }

    /** Smallest load of a wheel (N), without the rounding of a load that is nil. */
    static double leastLoad(WheelResult wheel) {
        double least = wheel.least().value();
        return Math.abs(least) < ROUNDING * wheel.loadAtRest() ? 0 : least;
    }

    static WheelResult lightestWheel(RideResult result) {
        return result.wheels().stream()
                .min(Comparator.<WheelResult>comparingDouble(Extremes::leastLoad)
                        .thenComparing(
                                Comparator.comparingDouble(WheelResult::timeOff).reversed()))
                .orElseThrow();
    }

    /** The wheel with the smallest part of its load at rest; of several off the ground the one that is so for longest. */
    static WheelResult lightestByShare(RideResult result) {
        return result.wheels().stream()
                .min(Comparator.<WheelResult>comparingDouble(w -> leastLoad(w) / w.loadAtRest())
                        .thenComparing(
                                Comparator.comparingDouble(WheelResult::timeOff).reversed()))
                .orElseThrow();
    }

    /** The wheel whose load grew to the largest multiple of that at rest. */
    static WheelResult heaviestWheel(RideResult result) {
        return result.wheels().stream()
                .max(Comparator.comparingDouble(w -> w.greatest().value() / w.loadAtRest()))
                .orElseThrow();
    }

    static WheelResult longestOff(RideResult result) {
        return result.wheels().stream()
                .max(Comparator.comparingDouble(WheelResult::timeOff))
                .orElseThrow();
    }
}
