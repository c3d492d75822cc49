package org.ridewright.modal;

import java.util.List;

/**
 * How frequency and damping of one mode depend on how far it swings, amplitudes rising.
 *
 * @param mode its name while sliding
 */
public record SwingCurve(String mode, List<Swing> swings) {
    public SwingCurve {
        swings = List.copyOf(swings);
    }
}
