package org.ridewright.report;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.ridewright.ride.RideResult;
import org.ridewright.ride.RideResult.Peak;
import org.ridewright.signal.Channel;

/**
 * Vertical acceleration at a place: an occupied seat, or a named point.
 *
 * @param seat whether it is a seat
 * @param greatest extreme upward (m/s²)
 * @param least extreme downward (m/s²)
 */
record Felt(String name, boolean seat, Peak greatest, Peak least) {
    /** The seats of a ride test; where nobody is aboard, the named points. */
    static List<Felt> of(RideResult result) {
        List<Felt> seats = result.seats().stream()
                .map(s -> new Felt(s.seat(), true, s.greatest(), s.least()))
                .toList();
        return seats.isEmpty() ? points(result).toList() : seats;
    }

    /** The seats and the named points of a ride test. */
    static List<Felt> all(RideResult result) {
        Stream<Felt> points = result.seats().isEmpty() ? Stream.empty() : points(result);
        return Stream.concat(of(result).stream(), points).toList();
    }

    private static Stream<Felt> points(RideResult result) {
        return result.points().stream().map(p -> new Felt(p.point(), false, p.greatest(), p.least()));
    }

    /** The place where acceleration is greatest; the list must not be empty. */
    static Felt worst(List<Felt> places) {
        return places.stream().max(Comparator.comparingDouble(Felt::peak)).orElseThrow();
    }

    boolean upward() {
        return greatest.value() >= -least.value();
    }

    /** Greatest acceleration, up or down (m/s²). */
    double peak() {
        return Math.max(greatest.value(), -least.value());
    }

    /** When it occurred (s). */
    double at() {
        return upward() ? greatest.at() : least.at();
    }

    Optional<Channel> trace(RideResult result) {
        return result.trace(name + (seat ? " seat" : "") + " vertical acceleration");
    }
}
