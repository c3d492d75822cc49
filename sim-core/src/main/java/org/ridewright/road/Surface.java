package org.ridewright.road;

import java.util.Optional;
import org.ridewright.quantity.Measure;

/** What covers a stretch of road. Heights are above the level road (m); surfaces and obstacles all add up. */
public sealed interface Surface {
    /** Where it lies. */
    Stretch stretch();

    /**
     * A stretch of road.
     *
     * @param from station where it begins (m); absent: {@link Road#START}
     * @param to station where it ends (m); absent: it goes on for good
     */
    record Stretch(Optional<Measure> from, Optional<Measure> to) {
        /** The whole road. */
        public static final Stretch ALL = new Stretch(Optional.empty(), Optional.empty());

        /** Where it begins (m). */
        public double begin() {
            return from.map(Measure::value).orElse(Road.START);
        }

        /** Where it ends (m); +∞ where it does not. */
        public double end() {
            return to.map(Measure::value).orElse(Double.POSITIVE_INFINITY);
        }
    }

    /**
     * A random surface of a given spectrum, Gaussian and stationary but for its run-up.
     *
     * @param coherence from track to track
     * @param seed which of all such surfaces
     */
    record Spectral(Stretch stretch, RoughnessSpectrum spectrum, Coherence coherence, long seed) implements Surface {}

    /**
     * Corrugation square across the road, from the level down: {@code −h/2 (1 − cos 2πφ)}, φ growing by 1 from crest to crest.
     *
     * @param pitch mean distance from crest to crest (m), > 0
     * @param height from trough to crest (m), > 0
     * @param drift standard deviation of a pitch over the mean pitch, ≥ 0: how soon the crests get out of step
     * @param seed of the drift
     */
    record Washboard(Stretch stretch, Measure pitch, Measure height, Measure drift, long seed) implements Surface {}
}
