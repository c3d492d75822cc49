package org.ridewright.friction;

import java.util.OptionalDouble;

/**
 * Steady motion of a mass on a spring with rigid friction, forced by a sinusoid, as long as it never stops:
 *
 * <pre>
 *   m ẍ + k x + F sgn ẋ = F₀ cos ωt        r = ω/√(k/m)
 *   X k/F₀ = √(V² − (U F/F₀)²)            V = 1/(1 − r²)      U = sin(π/r)/(r (1 + cos(π/r)))
 * </pre>
 *
 * <p>From the turn at X until the next one half a cycle later {@code x k/F₀ = V cos(rτ + φ) + (F/F₀)(1 − cos τ − r U sin τ)} with {@code cos φ = X/V}, {@code sin φ =
 * −U F/(V F₀)}, {@code τ = ωt/r}; it does not stop as long as the speed keeps its sign, which is looked at along the way.
 *
 * <p>Source: J. P. Den Hartog, Forced vibrations with combined Coulomb and viscous friction, Trans. ASME 53 (1931) APM-53-9, and Phil. Mag. 9
 * (1930) 801, without viscous friction (formula from memory; derived again, and compared with simulation in the tests).
 */
public final class DenHartogAmplitude {
    private static final int LOOKS = 400;

    private DenHartogAmplitude() {}

    /**
     * Amplitude {@code X k/F₀}; empty where the mass stops, or grows without end.
     *
     * @param r frequency over the natural one, > 0
     * @param friction {@code F/F₀}, > 0
     */
    public static OptionalDouble of(double r, double friction) {
        double v = 1 / (1 - r * r);
        double u = Math.sin(Math.PI / r) / (r * (1 + Math.cos(Math.PI / r)));
        double square = v * v - u * u * friction * friction;
        if (!(square > 0) || !Double.isFinite(square)) {
            return OptionalDouble.empty();
        }
        double x = Math.sqrt(square);
        double phi = Math.atan2(-u * friction / v, x / v);
        for (int i = 1; i < LOOKS; i++) {
            double tau = Math.PI / r * i / LOOKS;
            double speed = -v * r * Math.sin(r * tau + phi) + friction * (Math.sin(tau) - r * u * Math.cos(tau));
            if (speed >= 0) {
                return OptionalDouble.empty();
            }
        }
        return OptionalDouble.of(x);
    }
}
