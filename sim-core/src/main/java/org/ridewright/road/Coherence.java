package org.ridewright.road;

import org.ridewright.math.BesselK;
import org.ridewright.quantity.Measure;

/**
 * How alike two tracks of a random surface are: the ratio g of their cross spectrum to the spectrum of one, between 0 and 1. The
 * ordinary coherence is g².
 */
public sealed interface Coherence {
    /**
     * g at a wavenumber.
     *
     * @param n wavenumber (cycle/m), > 0
     * @param waviness w of the spectrum there
     * @param apart distance of the tracks (m), ≥ 0
     */
    double ratio(double n, double waviness, double apart);

    /**
     * Of a surface that is alike in every direction, {@code g = 2^(1−v)/Γ(v) x^v K_v(x)}, {@code v = w/2}, {@code x = 2πn·apart}. Exact
     * for one slope without end; of a bent spectrum each part is taken with its own w.
     *
     * <p>Source: after Dodds and Robson 1973 and Kamash and Robson 1978; the closed form is worked out from them.
     */
    record Isotropic() implements Coherence {
        /** Past it g is below 1e-17. */
        private static final double FARTHEST = 50;

        @Override
        public double ratio(double n, double waviness, double apart) {
            double x = 2 * Math.PI * n * apart;
            return x > FARTHEST ? 0 : BesselK.correlation(waviness / 2, x);
        }
    }

    /** Tracks that are one and the same. */
    record Full() implements Coherence {
        @Override
        public double ratio(double n, double waviness, double apart) {
            return 1;
        }
    }

    /** Tracks that have nothing to do with each other. */
    record None() implements Coherence {
        @Override
        public double ratio(double n, double waviness, double apart) {
            return apart == 0 ? 1 : 0;
        }
    }

    /** {@code g = exp(−a n·apart)}, the decay a > 0 a plain number. */
    record Decay(Measure decay) implements Coherence {
        @Override
        public double ratio(double n, double waviness, double apart) {
            return StrictMath.exp(-decay.value() * n * apart);
        }
    }

    /** {@code g = exp(−apart/ℓ)} at every wavenumber, with a length ℓ > 0 (m). */
    record Distance(Measure length) implements Coherence {
        @Override
        public double ratio(double n, double waviness, double apart) {
            return StrictMath.exp(-apart / length.value());
        }
    }
}
