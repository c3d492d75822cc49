package org.ridewright.modal;

import java.util.Optional;
import org.hipparchus.complex.Complex;

/**
 * Motion of one place for a sinusoidal road, over the road's amplitude.
 *
 * @param input which wheels the road moves, and when
 * @param condition of dry springs; absent: by harmonic balance
 * @param amplitude of the road (m); NaN where it does not matter
 * @param values one for each frequency (m/m); NaN where harmonic balance found no steady motion
 * @param leaves at which index of frequency something that only pushes would first be pulled, so that what follows is no motion of this
 *     vehicle; the number of frequencies where that does not happen
 */
public record ResponseCurve(
        RoadInput input, Optional<Condition> condition, double amplitude, Complex[] values, int leaves) {}
