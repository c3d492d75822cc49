package org.ridewright.wheel;

/**
 * Restitution of a damped contact.
 *
 * <p>A mass {@code m} meets a contact at speed {@code v} and stays on it while it pushes, without gravity. With {@code ω = √(k/m)} and
 * {@code 2ζω = d/m} the compression follows {@code c̈ + 2ζω ċ + ω² c = 0}, {@code c(0) = 0}, {@code ċ(0) = v}. The contact lets go when its force
 * {@code k c + d ċ = −m c̈} reaches 0, which is before {@code c} does. For {@code ζ < 1}, with {@code ω_d = ω√(1 − ζ²)} and
 * {@code cos ψ = ζ}, {@code c = (v/ω_d) e^(−ζωt) sin ω_d t}, and {@code c̈} is first 0 at {@code ω_d t = 2ψ}, where {@code ċ = −v e^(−ζωt)}:
 *
 * <pre>
 *   e = exp(−2ψ cot ψ)                 ζ = cos ψ  &lt; 1
 *   e = exp(−2η coth η)                ζ = cosh η &gt; 1
 *   e = exp(−2)                        ζ = 1
 * </pre>
 *
 * {@code 2ψ = π − atan2(2ζ√(1−ζ²), 1−2ζ²)}. Gravity, which the formula leaves out, is small beside the contact force of a bounce.
 */
public final class Bounce {
    private static final int MOST_STEPS = 200;
    private static final double NEAR_ONE = 1e-4;

    private Bounce() {}

    /**
     * Speed after a bounce over speed before it.
     *
     * @param zeta damping ratio, ≥ 0
     * @return e, above 0 to 1
     * @throws IllegalArgumentException if zeta is negative or not finite
     */
    public static double restitution(double zeta) {
        if (!(zeta >= 0) || Double.isInfinite(zeta)) {
            throw new IllegalArgumentException("damping ratio of a contact must be ≥ 0, got " + zeta);
        }
        return Math.exp(exponent(zeta));
    }

    /**
     * Damping ratio that gives a restitution; inverse of {@link #restitution}, to round-off.
     *
     * @param e restitution, above 0 to 1
     * @throws IllegalArgumentException if e is outside that range
     */
    public static double dampingRatio(double e) {
        if (!(e > 0 && e <= 1)) {
            throw new IllegalArgumentException("restitution must be above 0, up to 1, got " + e);
        }
        double wanted = Math.log(e);
        double lo = 0;
        double hi = 1;
        while (exponent(hi) > wanted) {
            hi *= 2;
        }
        // the exponent falls steadily with ζ
        for (int i = 0; i < MOST_STEPS; i++) {
            double middle = lo + (hi - lo) / 2;
            if (middle <= lo || middle >= hi) {
                break;
            }
            if (exponent(middle) > wanted) {
                lo = middle;
            } else {
                hi = middle;
            }
        }
        return lo + (hi - lo) / 2;
    }

    private static double exponent(double zeta) {
        double past = zeta - 1;
        if (Math.abs(past) < NEAR_ONE) {
            // ψ cot ψ = 1 − ψ²/3 − ψ⁴/45, ψ² = −2p + p²/3 with p = ζ − 1; both branches join smoothly
            double square = -2 * past + past * past / 3;
            return -2 * (1 - square / 3 - square * square / 45);
        }
        if (zeta < 1) {
            return -2 * Math.acos(zeta) * zeta / Math.sqrt((1 - zeta) * (1 + zeta));
        }
        double root = Math.sqrt(past * (zeta + 1));
        return -2 * Math.log(zeta + root) * zeta / root;
    }
}
