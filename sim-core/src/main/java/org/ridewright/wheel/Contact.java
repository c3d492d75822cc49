package org.ridewright.wheel;

import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.vehicle.Damping;
import org.ridewright.vehicle.Tyre;
import org.ridewright.vehicle.Wheel;

/**
 * The contact of a wheel with the road: {@code N = max(0, k c + d ċ)} while the compression {@code c > 0}.
 *
 * @param rate k of wheel and ground together (N/m), > 0
 * @param damping d (N·s/m), ≥ 0
 * @param dampingRatio ζ with the mass that bounces on the contact
 * @param lawError what the law leaves out of wheel and ground, at the frequency at which the mass bounces on them; see
 *     {@link SeriesPair#error}
 */
public record Contact(double rate, double damping, double dampingRatio, double lawError) {
    /** Below this ratio a wheel bounces for long and its motion is chaotic. */
    public static final double LIVELY_BELOW = 0.1;

    /**
     * The contact as a wheel and a road give it, defaults put in where the wheel gives nothing.
     *
     * <p>Where the ground states its own damping, what the wheel states is the wheel's own, a ratio that on unyielding ground, and the two
     * make a {@link SeriesPair}. Where it does not, what the wheel states is that of both together.
     *
     * @param ground under the wheel
     * @param effectiveMass mass that bounces on the contact (kg), > 0; see {@link #effectiveMass}
     * @throws IllegalArgumentException if a rate or the mass is not > 0, or the damping is out of range
     */
    public static Contact of(Wheel wheel, Ground ground, double effectiveMass) {
        requirePositive("effective mass at a contact", effectiveMass, "kg");
        double wheelRate =
                wheel.contactRate().orElseGet(() -> defaultRate(wheel.tyre())).value();
        double groundRate = ground.rate().map(Measure::value).orElse(Double.POSITIVE_INFINITY);
        double k = seriesRate(wheelRate, groundRate);
        if (ground.damping().isEmpty()) {
            return damped(wheel, k, effectiveMass);
        }
        Contact alone = damped(wheel, wheelRate, effectiveMass);
        SeriesPair pair = new SeriesPair(
                wheelRate,
                alone.damping,
                groundRate,
                requireDamping(ground.damping().get().value()));
        double error = pair.error(Math.sqrt(k / effectiveMass));
        return new Contact(k, pair.damping(), dampingRatio(pair.damping(), k, effectiveMass), error);
    }

    /** The contact of a given rate with the damping that the wheel states. */
    private static Contact damped(Wheel wheel, double k, double effectiveMass) {
        Damping given = wheel.contactDamping();
        if (given instanceof Damping.Coefficient coefficient) {
            double d = requireDamping(coefficient.value().value());
            return new Contact(k, d, dampingRatio(d, k, effectiveMass), 0);
        }
        double zeta = ratio(given, wheel.tyre());
        return new Contact(k, damping(zeta, k, effectiveMass), zeta, 0);
    }

    private static double requireDamping(double d) {
        if (!(d >= 0)) {
            throw new IllegalArgumentException("damping of a contact must be ≥ 0 N·s/m, got " + d + " N·s/m");
        }
        return d;
    }

    private static double ratio(Damping given, Tyre tyre) {
        double zeta = defaultDampingRatio(tyre).value();
        if (given instanceof Damping.Ratio ratio) {
            zeta = ratio.value().value();
        } else if (given instanceof Damping.Restitution restitution) {
            zeta = Bounce.dampingRatio(restitution.value().value());
        }
        if (!(zeta >= 0)) {
            throw new IllegalArgumentException("damping ratio of a contact must be ≥ 0, got " + zeta);
        }
        return zeta;
    }

    /** Whether the contact is damped so little that the wheel bounces for long. */
    public boolean isLively() {
        return dampingRatio < LIVELY_BELOW;
    }

    /**
     * Rate of wheel and ground in series, {@code 1/k = 1/k_wheel + 1/k_ground} (N/m).
     *
     * @param wheelRate (N/m), > 0
     * @param groundRate (N/m), > 0; infinite for unyielding ground
     * @throws IllegalArgumentException if a rate is not > 0
     */
    public static double seriesRate(double wheelRate, double groundRate) {
        requirePositive("contact rate of a wheel", wheelRate, "N/m");
        requirePositive("rate of the ground", groundRate, "N/m");
        return wheelRate / (1 + wheelRate / groundRate);
    }

    /**
     * Mass that one wheel of a beam axle puts on its contact, {@code 1/m_e = 1/m + y²/I} (kg).
     *
     * @param mass of the axle with its wheels (kg)
     * @param rollInertia of the same about its centre (kg·m²)
     * @param y lateral position of the wheel from its centre (m)
     */
    public static double effectiveMass(double mass, double rollInertia, double y) {
        return 1 / (1 / mass + y * y / rollInertia);
    }

    /** Damping of a ratio, {@code d = 2ζ√(k m_e)} (N·s/m). */
    public static double damping(double zeta, double rate, double effectiveMass) {
        return 2 * zeta * Math.sqrt(rate * effectiveMass);
    }

    /** Ratio of a damping, inverse of {@link #damping}. */
    public static double dampingRatio(double damping, double rate, double effectiveMass) {
        return damping / (2 * Math.sqrt(rate * effectiveMass));
    }

    /** Radial rate of a wheel of which nothing is known but its tyre (N/m). */
    public static Measure defaultRate(Tyre tyre) {
        return switch (tyre) {
            case IRON -> Measure.estimated(3e6, QuantityKind.RATE, "iron tyre: 3 MN/m, common practice");
            case SOLID -> Measure.estimated(0.8e6, QuantityKind.RATE, "solid tyre: 0.8 MN/m, common practice");
            case PNEUMATIC ->
                Measure.estimated(0.18e6, QuantityKind.RATE, "pneumatic tyre: 0.18 MN/m, common practice");
        };
    }

    /** Damping ratio of a contact of which nothing is known but its tyre. */
    public static Measure defaultDampingRatio(Tyre tyre) {
        return switch (tyre) {
            case IRON, SOLID ->
                Measure.estimated(0.15, QuantityKind.RATIO, tyre.word() + " tyre: damping ratio 0.15, common practice");
            case PNEUMATIC ->
                Measure.estimated(0.05, QuantityKind.RATIO, "pneumatic tyre: damping ratio 0.05, common practice");
        };
    }

    private static void requirePositive(String name, double value, String unit) {
        if (!(value > 0)) {
            throw new IllegalArgumentException(name + " must be > 0 " + unit + ", got " + value + " " + unit);
        }
    }
}
