package org.ridewright.vehicle;

import java.util.Optional;
import org.ridewright.quantity.Measure;

/**
 * A part of a spring that acts only past a gap.
 *
 * @param rate that it adds (N/m), > 0
 * @param clearance travel until it acts (m), from the free state or from the named load case standing still
 * @param measuredAt load case at which the clearance was measured; absent: the free state
 */
public record GappedStage(Kind kind, Measure rate, Measure clearance, Optional<String> measuredAt) {
    /** What the stage is. */
    public enum Kind {
        /** Further leaves or springs that meet the axle under load. */
        HELPER("helper"),
        /** Ends travel in compression. */
        BUMP_STOP("bump stop"),
        /** Ends travel in extension: a droop stop or strap. */
        DROOP_STOP("droop stop");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** The words as written in files. */
        public String word() {
            return word;
        }
    }
}
