package org.ridewright.vehicle;

import java.util.List;
import java.util.Optional;
import org.ridewright.quantity.Measure;

/** The elastic law of one spring, from its free state, without friction and gapped stages. */
public sealed interface Elasticity {
    /** Constant rate (N/m), > 0. */
    record Rate(Measure rate) implements Elasticity {}

    /** Points of a load–deflection curve, compression strictly rising; straight between them, end slopes continued. */
    record Table(List<TablePoint> points) implements Elasticity {
        public Table {
            points = List.copyOf(points);
        }
    }

    /** One point: compression from the free state (m) and force (N). */
    record TablePoint(Measure compression, Measure force) {}

    /**
     * Rate from the leaves of a pack (handbook formulas).
     *
     * @param leaves each group of like leaves
     * @param length eye to eye of a half, full or transverse spring, or clamp to eye of a quarter-elliptic (m)
     * @param fullLengthLeaves number of leaves, beyond the graduated ones, that reach the eyes
     * @param clampDeduction length that the clamp in the middle takes out of action (m)
     * @param longArm the longer arm where the clamp or pivot is off the middle (m); of a cantilever, the arm to the axle
     * @param modulus Young's modulus (Pa)
     * @param allowableStress that the steel may be bent to (Pa), > 0; absent: not judged
     */
    record LeafPack(
            List<Leaves> leaves,
            Measure length,
            int fullLengthLeaves,
            Measure clampDeduction,
            Optional<Measure> longArm,
            Measure modulus,
            Optional<Measure> allowableStress)
            implements Elasticity {
        public LeafPack {
            leaves = List.copyOf(leaves);
        }

        /** The same without an allowable stress. */
        public LeafPack(
                List<Leaves> leaves,
                Measure length,
                int fullLengthLeaves,
                Measure clampDeduction,
                Optional<Measure> longArm,
                Measure modulus) {
            this(leaves, length, fullLengthLeaves, clampDeduction, longArm, modulus, Optional.empty());
        }
    }

    /** A group of like leaves: how many, width (m), thickness (m). */
    record Leaves(int number, Measure width, Measure thickness) {}

    /**
     * Coil spring from its wire: {@code k = G d⁴ / (8 D³ n)}.
     *
     * @param wireDiameter d (m)
     * @param meanDiameter D (m)
     * @param workingCoils n
     * @param shearModulus G (Pa)
     */
    record CoilWire(Measure wireDiameter, Measure meanDiameter, double workingCoils, Measure shearModulus)
            implements Elasticity {}

    /**
     * Torsion bar with a level arm: {@code k = π G d⁴ / (32 L a²)} at the arm's end.
     *
     * @param diameter d (m)
     * @param length L (m)
     * @param arm a (m)
     * @param shearModulus G (Pa)
     */
    record TorsionRod(Measure diameter, Measure length, Measure arm, Measure shearModulus) implements Elasticity {}

    /**
     * Enclosed gas, {@code p Vⁿ} constant, whose gauge pressure is nil in the free state.
     *
     * @param area effective piston area (m²)
     * @param volume at the stated load (m³)
     * @param load force carried at that volume (N)
     * @param exponent n, 1 (slow) to 1.4 (quick)
     */
    record GasColumn(Measure area, Measure volume, Measure load, double exponent) implements Elasticity {}
}
