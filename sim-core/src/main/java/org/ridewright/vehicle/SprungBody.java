package org.ridewright.vehicle;

import java.util.Optional;
import org.ridewright.quantity.Measure;

/**
 * The sprung body without what a load case puts aboard. With a {@link RearBody} it is the front part alone.
 *
 * @param mass sprung mass (kg), > 0; absent if a weighbridge gives it
 * @param centreBehindFrontAxle of the centre of mass (m); absent if a weighbridge gives it, or not needed
 * @param centreLeftOfCentre of the centre of mass (m)
 * @param centreAboveGround of the centre of mass (m); absent: estimated
 * @param weighbridge axle loads in place of mass and centre
 * @param rollInertia about the centre of mass (kg·m²)
 * @param pitchInertia about the centre of mass (kg·m²)
 * @param rollRadius radius of gyration in roll (m), in place of the inertia
 * @param pitchRadius radius of gyration in pitch (m), in place of the inertia
 * @param productOfInertia {@code I_xy = Σ m (x − x_G)(y − y_G)} (kg·m²)
 * @param outline from which missing inertias are estimated
 * @param rollAxis what the body rolls about
 * @param pitchAxis height {@code z_m} of the spring mounts, about which the braked body pitches
 * @param rearBody the part behind a joint that twists
 */
public record SprungBody(
        Optional<Measure> mass,
        Optional<Measure> centreBehindFrontAxle,
        Measure centreLeftOfCentre,
        Optional<Measure> centreAboveGround,
        Optional<Weighbridge> weighbridge,
        Optional<Measure> rollInertia,
        Optional<Measure> pitchInertia,
        Optional<Measure> rollRadius,
        Optional<Measure> pitchRadius,
        Measure productOfInertia,
        Optional<Outline> outline,
        AxisHeight rollAxis,
        AxisHeight pitchAxis,
        Optional<RearBody> rearBody) {}
