package org.ridewright.calibration;

import org.ridewright.fieldwork.BounceLog;

/** Bounce logs. */
final class BounceLogEvidence {
    private BounceLogEvidence() {}

    static Evidence of(BounceLog fact, Sources sources) {
        throw new CalibrationException("waits");
    }
}
