package org.ridewright.study;

import java.util.Map;
import java.util.Optional;
import org.ridewright.ride.Measured;

/**
 * A number that is asked of every ride test.
 *
 * @param measure what
 * @param place name of the seat, point, wheel, spring or motion; absent: the worst of all of them
 */
public record Question(RideMeasure measure, Optional<String> place) {
    /** Its name in tables: the measure's, and the place where one is named. */
    public String name() {
        return measure.word() + place.map(p -> " at " + p).orElse("");
    }

    /** What it is, in words. */
    public String title() {
        return measure.title() + place.map(p -> ", " + p).orElse("");
    }

    /** With its unit, as at the head of a table's column. */
    public String head() {
        return measure.unit().equals("1") ? name() : name() + " (" + measure.unit() + ")";
    }

    /** The number; not a number where the vehicle has no such place, or nothing could be measured. */
    public double of(Measured measured) {
        Map<String, Double> values = measure.at(measured);
        if (place.isPresent()) {
            return values.getOrDefault(place.get(), Double.NaN);
        }
        if (measure.places() == RideMeasure.Places.SPRINGS) {
            // what is never locked, or never moves, is no spring with friction to be judged by
            measured.ride().springs().stream()
                    .filter(spring -> !spring.kind().equals("spring"))
                    .forEach(other -> values.remove(other.element()));
        }
        return measure.worst(values.values());
    }
}
