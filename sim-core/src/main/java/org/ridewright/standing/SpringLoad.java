package org.ridewright.standing;

import java.util.List;
import java.util.Optional;

/**
 * One spring standing still.
 *
 * @param name of the spring, with its side
 * @param force with all its helpers and stops, without friction (N)
 * @param friction within which it may stand more or less, its limit there (N)
 * @param deflection from its free state (m)
 * @param fromEmpty deflection by what is aboard, from the vehicle with nobody and nothing aboard (m); NaN where that cannot stand
 * @param rate with which it answers a little more load while sliding (N/m)
 * @param stages helpers, then stops, each in the order of the file
 * @param leaves stress, of a spring described by its leaves
 */
public record SpringLoad(
        String name,
        double force,
        double friction,
        double deflection,
        double fromEmpty,
        double rate,
        List<StageTravel> stages,
        Optional<LeafLoad> leaves) {
    public SpringLoad {
        stages = List.copyOf(stages);
    }
}
