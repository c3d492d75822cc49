package org.ridewright.suspension;

import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * The force of one element: {@code f = f_e(c) + f_d(ċ) + s}, with {@code f_e = f_0 + k c + pieces(c) + gas(c)} and
 * {@code f_d = d ċ + pieces(ċ)}. An element that only pushes gives {@code max(0, f)} while c > 0 and nothing else.
 *
 * <p>The limit of s grows with the force in the leaves {@code f_l}: f_e without the stops, which bear on axle and frame and press no leaf on
 * another.
 *
 * @param offset f_0, elastic force at c = 0 with every piece off (N)
 * @param rate k (N/m)
 * @param stages gapped pieces in c of the leaves themselves: segments of a table, helpers
 * @param stops further pieces of f_e, of stops beside the leaves
 * @param damping d (N·s/m)
 * @param speedStages gapped pieces in ċ: bump against rebound, segments of a damper's table
 * @param gas enclosed gas, or none
 * @param friction dry friction, its limit after f_l
 * @param pushesOnly whether it cannot pull
 */
public record ForceLaw(
        double offset,
        double rate,
        Pieces stages,
        Pieces stops,
        double damping,
        Pieces speedStages,
        Optional<GasLaw> gas,
        FrictionLaw friction,
        boolean pushesOnly) {

    /** A law without stops. */
    public ForceLaw(
            double offset,
            double rate,
            Pieces stages,
            double damping,
            Pieces speedStages,
            Optional<GasLaw> gas,
            FrictionLaw friction,
            boolean pushesOnly) {
        this(offset, rate, stages, Pieces.NONE, damping, speedStages, gas, friction, pushesOnly);
    }

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
        return new ForceLaw(newOffset, rate, stages, stops, damping, speedStages, gas, friction, pushesOnly);
    }

    /** The same with viscous damping d. */
    public ForceLaw withDamping(double newDamping) {
        return new ForceLaw(offset, rate, stages, stops, newDamping, speedStages, gas, friction, pushesOnly);
    }

    /** The same with friction. */
    public ForceLaw withFriction(FrictionLaw newFriction) {
        return new ForceLaw(offset, rate, stages, stops, damping, speedStages, gas, newFriction, pushesOnly);
    }

    /** The same with gapped pieces in c. */
    public ForceLaw withStages(Pieces newStages) {
        return new ForceLaw(offset, rate, newStages, stops, damping, speedStages, gas, friction, pushesOnly);
    }

    /** The same with stops. */
    public ForceLaw withStops(Pieces newStops) {
        return new ForceLaw(offset, rate, stages, newStops, damping, speedStages, gas, friction, pushesOnly);
    }

    /** The same with gapped pieces in ċ. */
    public ForceLaw withSpeedStages(Pieces newStages) {
        return new ForceLaw(offset, rate, stages, stops, damping, newStages, gas, friction, pushesOnly);
    }

    /** f_e at compression c (N), as if it could pull. */
    public double elasticForce(double c) {
        return leafForce(c) + stops.value(c);
    }

    /** f_l at compression c (N): f_e without the stops. */
    public double leafForce(double c) {
        return offset
                + rate * c
                + stages.value(c)
                + (gas.isPresent() ? gas.get().force(c) : 0);
    }

    /** {@code df_e/dc} at c (N/m); at a break point that of the side where the piece is off. */
    public double elasticRate(double c) {
        return leafRate(c) + stops.slopeAt(c);
    }

    /** {@code df_l/dc} at c (N/m); at a break point as above. */
    public double leafRate(double c) {
        return rate + stages.slopeAt(c) + (gas.isPresent() ? gas.get().rate(c) : 0);
    }

    /** Energy stored elastically at c (J), as if it could pull. */
    public double elasticEnergy(double c) {
        return leafEnergy(c) + stops.integral(c);
    }

    /** What of it is stored in the leaves (J). */
    public double leafEnergy(double c) {
        return offset * c
                + rate * c * c / 2
                + stages.integral(c)
                + (gas.isPresent() ? gas.get().energy(c) : 0);
    }

    /** Limit S of the friction at c (N). */
    public double frictionLimit(double c) {
        return friction.limit(leafForce(c));
    }

    /** All gapped pieces in c: those of the leaves, then the stops. */
    public Pieces allStages() {
        return stages.plusAll(stops);
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
        return greatest(allStages(), this::elasticRate);
    }

    /** The greatest {@code f_l'}, likewise (N/m). */
    public double greatestLeafRate() {
        return greatest(stages, this::leafRate);
    }

    private static double greatest(Pieces pieces, DoubleUnaryOperator slope) {
        double greatest = Math.max(slope.applyAsDouble(probe(0, -1)), slope.applyAsDouble(probe(0, 1)));
        for (int i = 0; i < pieces.count(); i++) {
            greatest = Math.max(greatest, slope.applyAsDouble(probe(pieces.at(i), -1)));
            greatest = Math.max(greatest, slope.applyAsDouble(probe(pieces.at(i), 1)));
        }
        return greatest;
    }

    private static double probe(double at, int side) {
        return at + side * 1e-9;
    }
}
