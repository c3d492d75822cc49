package org.ridewright.fieldwork;

import java.util.List;
import java.util.Optional;
import org.ridewright.quantity.Measure;

/**
 * Bounce tests of one kind that a phone or logger recorded.
 *
 * @param load who and what was aboard
 * @param test where it was bounced
 * @param release how it was let go
 * @param logs at least one
 */
public record BounceLog(Heading heading, Loading load, BounceKind test, Release release, List<LogReference> logs)
        implements Fact {
    public BounceLog {
        logs = List.copyOf(logs);
    }

    @Override
    public String key() {
        return "bounce log";
    }

    @Override
    public String label() {
        return heading.label("recorded bounce test, " + test.word() + ", " + load.label());
    }

    @Override
    public Optional<Loading> loading() {
        return Optional.of(load);
    }

    @Override
    public List<Measure> readings() {
        return List.of();
    }
}
