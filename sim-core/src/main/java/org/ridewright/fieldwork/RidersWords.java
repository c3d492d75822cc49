package org.ridewright.fieldwork;

import java.util.List;
import java.util.Optional;
import org.ridewright.quantity.Measure;

/**
 * What a rider said of a ride, and the run that imitates it.
 *
 * @param said in the rider's words
 * @param load who and what was aboard
 * @param seat name of the rider's seat
 * @param run the road and speed; absent: the words stand alone
 */
public record RidersWords(Heading heading, String said, Loading load, String seat, Optional<Run> run) implements Fact {
    /**
     * The run that imitates the ride.
     *
     * @param road what it went over
     * @param speed (m/s), > 0
     */
    public record Run(RoadReference road, Measure speed) {}

    @Override
    public String key() {
        return "words";
    }

    @Override
    public String label() {
        return heading.label(
                "words from " + seat + run.map(r -> ", " + r.road().label()).orElse("") + ", " + load.label());
    }

    @Override
    public Optional<Loading> loading() {
        return Optional.of(load);
    }

    @Override
    public List<Measure> readings() {
        return run.map(r -> List.of(r.speed())).orElse(List.of());
    }
}
