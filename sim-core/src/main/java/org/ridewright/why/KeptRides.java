package org.ridewright.why;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Supplier;
import org.ridewright.ride.Scenario;
import org.ridewright.study.Digest;
import org.ridewright.study.Journal;
import org.ridewright.study.Outcome;

/**
 * Finished rides, kept in a journal: who is interrupted, or asks for more of the same, goes on from them. A ride counts for the same scenario in
 * every bit of every value, asked the same by the same program.
 */
public final class KeptRides implements AutoCloseable {
    private static final int KEY_DIGITS = 16;

    /** Rides after which the journal is forced to the disk. */
    private static final int BETWEEN = 32;

    private final Journal journal;
    private final String ground;
    private final Map<Long, Ride> before = new HashMap<>();
    private final AtomicLong added = new AtomicLong();

    private record Ride(String key, Supplier<Outcome> outcome) {}

    private KeptRides(Journal journal, String ground) {
        this.journal = journal;
        this.ground = ground;
    }

    /** Keeps nothing. */
    public static KeptRides none() {
        return new KeptRides(null, "");
    }

    /**
     * Opens a journal, or begins it.
     *
     * @param name of what is asked, which a journal that is there must have
     * @param ground all that a ride rests on besides its scenario: the program, the questions
     * @throws IOException as {@link Journal#open}
     */
    public static KeptRides open(Path file, String name, String ground) throws IOException {
        Journal journal = Journal.open(file, name);
        KeptRides kept = new KeptRides(journal, ground);
        try {
            Journal.read(file, (run, key, outcome) -> kept.before.put(run, new Ride(key, outcome)));
        } catch (IOException | RuntimeException e) {
            journal.close();
            throw e;
        }
        return kept;
    }

    /** What a run gave when it was ridden before; else rides it now, and keeps it. */
    Outcome of(long run, Scenario scenario, Supplier<Outcome> ride) {
        if (journal == null) {
            return ride.get();
        }
        String key = key(scenario);
        Optional<Outcome> known = Optional.ofNullable(before.get(run))
                .filter(r -> r.key().equals(key))
                .map(r -> r.outcome().get());
        return known.orElseGet(() -> {
            Outcome outcome = ride.get();
            try {
                journal.add(run, key, outcome);
                if (added.incrementAndGet() % BETWEEN == 0) {
                    journal.force();
                }
            } catch (IOException full) {
                throw new UncheckedIOException(full);
            }
            return outcome;
        });
    }

    /** Descriptions are records, whose words hold every value to its last bit. */
    private String key(Scenario scenario) {
        return new Digest().put(ground).put(scenario.toString()).hex().substring(0, KEY_DIGITS);
    }

    @Override
    public void close() throws IOException {
        if (journal != null) {
            journal.force();
            journal.close();
        }
    }
}
