package org.ridewright.fieldwork;

import java.util.List;
import java.util.Optional;
import org.ridewright.quantity.Measure;

/** Something that was measured, counted, recorded or said. */
public sealed interface Fact
        permits Weights,
                LiftedAxle,
                SwingTest,
                LoadDeflection,
                Heights,
                Camber,
                BounceCount,
                BounceLog,
                MeasuredRide,
                RidersWords {
    /** Name, note, and whether it is kept back. */
    Heading heading();

    /** The key of the file under which it stands. */
    String key();

    /** The author's name for it, or else what it is. */
    String label();

    /** Who and what was aboard; empty where the fact does not depend on it, or has several. */
    Optional<Loading> loading();

    /** Each single reading with its tolerance, stated or usual, in the order of the file; none of logs and words. */
    List<Measure> readings();

    /** Whether a calibration leaves it out and predicts it instead. */
    default boolean keepBack() {
        return heading().keepBack();
    }
}
