package org.ridewright.report;

import java.util.Comparator;
import java.util.Optional;
import org.ridewright.ride.RideResult;
import org.ridewright.ride.RideResult.ElementResult;
import org.ridewright.ride.RideResult.WheelResult;

/** Which spring and wheel of a ride test went farthest. */
final class Extremes {
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

    static WheelResult lightestWheel(RideResult result) {
        return result.wheels().stream()
                .min(Comparator.comparingDouble(w -> w.least().value()))
                .orElseThrow();
    }

    /** The wheel with the smallest part of its load at rest; of several off the ground the one that is so for longest. */
    static WheelResult lightestByShare(RideResult result) {
        return result.wheels().stream()
                .min(Comparator.<WheelResult>comparingDouble(w -> w.least().value() / w.loadAtRest())
                        .thenComparing(
                                Comparator.comparingDouble(WheelResult::timeOff).reversed()))
                .orElseThrow();
    }

    static WheelResult longestOff(RideResult result) {
        return result.wheels().stream()
                .max(Comparator.comparingDouble(WheelResult::timeOff))
                .orElseThrow();
    }
}
