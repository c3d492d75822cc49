package org.ridewright.fieldwork;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.ridewright.quantity.Measure;

/**
 * Cycles of a bounce test, counted against a stopwatch.
 *
 * @param load who and what was aboard
 * @param test where it was bounced
 * @param release how it was let go
 * @param by how far (m); may be unknown
 * @param cycles counted, down and up again each; > 0
 * @param time that they took (s), > 0
 * @param toRest cycles until nothing more was seen
 */
public record BounceCount(
        Heading heading,
        Loading load,
        BounceKind test,
        Release release,
        Optional<Measure> by,
        Measure cycles,
        Measure time,
        Optional<Measure> toRest)
        implements Fact {
    @Override
    public String key() {
        return "bounce";
    }

    @Override
    public String label() {
        return heading.label("bounce test, " + test.word() + ", " + load.label());
    }

    @Override
    public Optional<Loading> loading() {
        return Optional.of(load);
    }

    @Override
    public List<Measure> readings() {
        return Stream.concat(Stream.of(cycles, time), toRest.stream()).toList();
    }
}
