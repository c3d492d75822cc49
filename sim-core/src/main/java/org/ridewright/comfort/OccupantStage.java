package org.ridewright.comfort;

import java.util.List;
import org.hipparchus.complex.Complex;

/**
 * A part of a seated body that moves on what is beneath it, {@code m} on a spring and damper, perhaps with further parts on top.
 *
 * <p>With {@code Z = k + c s} and {@code M(s) = m + Σ AM} of what it carries, it weighs {@code AM(s) = M Z/(M s² + Z)} on what is beneath,
 * and moves {@code T(s) = Z/(M s² + Z)} times as much.
 *
 * @param name of the part
 * @param mass m (kg), &gt; 0
 * @param stiffness k (N/m), &gt; 0
 * @param damping c (N·s/m), ≥ 0
 * @param carried parts that stand on this one
 */
public record OccupantStage(String name, double mass, double stiffness, double damping, List<OccupantStage> carried) {
    /** @throws IllegalArgumentException if a bound above is broken */
    public OccupantStage {
        carried = List.copyOf(carried);
        if (!(mass > 0 && stiffness > 0 && damping >= 0) || Double.isInfinite(mass + stiffness + damping)) {
            throw new IllegalArgumentException("mass and stiffness must be > 0, damping ≥ 0 and all finite, got " + mass
                    + " kg, " + stiffness + " N/m, " + damping + " N·s/m (" + name + ")");
        }
    }

    /** A part with nothing on top. */
    public OccupantStage(String name, double mass, double stiffness, double damping) {
        this(name, mass, stiffness, damping, List.of());
    }

    /** Apparent mass on what is beneath (kg) at s (rad/s). */
    Complex apparentMass(Complex s) {
        return loaded(s).multiply(transmissibility(s));
    }

    /** Its motion over that of what is beneath. */
    Complex transmissibility(Complex s) {
        Complex z = impedance(s);
        return z.divide(loaded(s).multiply(s).multiply(s).add(z));
    }

    /** Static mass of it and all that it carries (kg). */
    double totalMass() {
        return mass + carried.stream().mapToDouble(OccupantStage::totalMass).sum();
    }

    private Complex impedance(Complex s) {
        return s.multiply(damping).add(stiffness);
    }

    private Complex loaded(Complex s) {
        Complex sum = new Complex(mass);
        for (OccupantStage stage : carried) {
            sum = sum.add(stage.apparentMass(s));
        }
        return sum;
    }
}
