package org.ridewright.modal;

import org.ridewright.suspension.ForceLaw;
import org.ridewright.suspension.FrictionLaw;

/**
 * Rate and damping of one force law for small motions about a compression.
 *
 * <p>Gapped pieces count as they stand there: on, or off. A damper whose bump and rebound differ has the mean of both at zero speed, which
 * is what a slow swing to and fro loses energy by; its curve at greater speeds is left out. The exponential envelope is locked at
 * {@code S/β}, its slope where s = 0. What only pushes and is not touched adds nothing.
 */
final class Linearisation {
    /** Beside a speed of nothing (m/s). */
    private static final double SLOW = 1e-9;

    private Linearisation() {}

    static boolean acts(ForceLaw law, double c) {
        return !law.pushesOnly() || c > 0;
    }

    /** k (N/m). */
    static double rate(ForceLaw law, double c, Condition condition) {
        if (!acts(law, c)) {
            return 0;
        }
        return law.elasticRate(c) + (condition == Condition.LOCKED ? lockedRate(law, c) : 0);
    }

    /** k_p (N/m). */
    static double lockedRate(ForceLaw law, double c) {
        FrictionLaw friction = law.friction();
        return friction.isEnvelope() ? law.frictionLimit(c) / friction.envelopeLength() : friction.lockedRate();
    }

    /** d (N·s/m). */
    static double damping(ForceLaw law, double c) {
        if (!acts(law, c)) {
            return 0;
        }
        return law.damping()
                + (law.speedStages().slopeAt(SLOW) + law.speedStages().slopeAt(-SLOW)) / 2;
    }
}
