package org.ridewright.vehicle;

import java.util.Optional;
import org.ridewright.quantity.Measure;

/**
 * The rear part of a body that twists against the front part about a lengthwise axis.
 *
 * @param joint distance of the joint behind the front axle (m); everything farther back belongs to this part
 * @param mass (kg), > 0
 * @param centre its own centre of mass
 * @param rollInertia about its own centre of mass (kg·m²), > 0
 * @param pitchInertia about its own centre of mass (kg·m²), ≥ 0
 * @param twistRate torsional rate between the parts (N·m/rad), > 0
 * @param twistDamping (N·m·s/rad), ≥ 0
 */
public record RearBody(
        Measure joint,
        Measure mass,
        Place centre,
        Measure rollInertia,
        Measure pitchInertia,
        Measure twistRate,
        Optional<Measure> twistDamping) {}
