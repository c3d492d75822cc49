package org.ridewright.suspension;

import java.util.Optional;

/**
 * The force of one element: {@code f = f_e(c) + f_d(ċ) + s}, with {@code f_e = f_0 + k c + pieces(c) + gas(c)} and
 * {@code f_d = d ċ + pieces(ċ)}. An element that only pushes gives {@code max(0, f)} while c > 0 and nothing else.
 *
 * @param offset f_0, elastic force at c = 0 with every piece off (N)
 * @param rate k (N/m)
 * @param stages gapped pieces in c: segments of a table, helpers, stops
 * @param damping d (N·s/m)
 * @param speedStages gapped pieces in ċ: bump against rebound, segments of a damper's table
 * @param gas enclosed gas, or none
 * @param friction dry friction beside f_e
 * @param pushesOnly whether it cannot pull
 */
public record ForceLaw(
        double offset,
        double rate,
        Pieces stages,
        double damping,
        Pieces speedStages,
        Optional<GasLaw> gas,
        FrictionLaw friction,
        boolean pushesOnly) {

    /** A linear spring. */
    public static ForceLaw spring(double rate) {
        return new ForceLaw(0, rate, Pieces.NONE, 0, Pieces.NONE, Optional.empty(), FrictionLaw.NONE, false);
    }

    /** A linear damper. */
    public static ForceLaw damper(double damping) {
        return spring(0).withDamping(damping);
    }

    /** A wheel on the ground, or a cushion: spring and damper that only push. */
    public static ForceLaw contact(double rate, double damping) {
        return new ForceLaw(0, rate, Pieces.NONE, damping, Pieces.NONE, Optional.empty(), FrictionLaw.NONE, true);
    }

    /** The same with another force where c = 0 (N). */
    public ForceLaw withOffset(double newOffset) {
        return new ForceLaw(newOffset, rate, stages, damping, speedStages, gas, friction, pushesOnly);
    }

    /** The same with viscous damping d. */
    public ForceLaw withDamping(double newDamping) {
        return new ForceLaw(offset, rate, stages, newDamping, speedStages, gas, friction, pushesOnly);
    }

    /** The same with friction. */
    public ForceLaw withFriction(FrictionLaw newFriction) {
        return new ForceLaw(offset, rate, stages, damping, speedStages, gas, newFriction, pushesOnly);
    }

    /** The same with gapped pieces in c. */
    public ForceLaw withStages(Pieces newStages) {
        return new ForceLaw(offset, rate, newStages, damping, speedStages, gas, friction, pushesOnly);
    }

    /** The same with gapped pieces in ċ. */
    public ForceLaw withSpeedStages(Pieces newStages) {
        return new ForceLaw(offset, rate, stages, damping, newStages, gas, friction, pushesOnly);
    }

    /** f_e at compression c (N), as if it could pull. */
    public double elasticForce(double c) {
        return offset
                + rate * c
                + stages.value(c)
                + (gas.isPresent() ? gas.get().force(c) : 0);
    }

    /** {@code df_e/dc} at c (N/m); at a break point that of the side where the piece is off. */
    public double elasticRate(double c) {
        return rate + stages.slopeAt(c) + (gas.isPresent() ? gas.get().rate(c) : 0);
    }

    /** Energy stored elastically at c (J), as if it could pull. */
    public double elasticEnergy(double c) {
        return offset * c
                + rate * c * c / 2
                + stages.integral(c)
                + (gas.isPresent() ? gas.get().energy(c) : 0);
    }

    /** Force at rest at c without friction (N). */
    public double staticForce(double c) {
        return pushesOnly && c <= 0 ? 0 : elasticForce(c);
    }

    /** Whether the law is a sum of straight pieces, without gas or exponential envelope. */
    public boolean isPiecewiseLinear() {
        return gas.isEmpty() && !friction.isEnvelope();
    }

    /** The greatest {@code f_e'} on any piece (N/m); of a gas, which has none, at c = 0 and at the places of the stages. */
    public double greatestRate() {
        double greatest = elasticRate(probe(0, -1));
        for (int i = 0; i < stages.count(); i++) {
            greatest = Math.max(
                    greatest, Math.max(elasticRate(probe(stages.at(i), -1)), elasticRate(probe(stages.at(i), 1))));
        }
        return Math.max(greatest, elasticRate(probe(0, 1)));
    }

    private static double probe(double at, int side) {
        return at + side * 1e-9;
    }
}
