package org.ridewright.signal;

import org.hipparchus.complex.Complex;

/**
 * One second-order analogue filter, {@code H(s) = (b0 + b1 s + b2 s²)/(a0 + a1 s + a2 s²)}, s in rad/s.
 *
 * @param b0 numerator, power 0 (1)
 * @param b1 numerator, power 1 (s)
 * @param b2 numerator, power 2 (s²)
 * @param a0 denominator, power 0 (1), &gt; 0
 * @param a1 denominator, power 1 (s), &gt; 0
 * @param a2 denominator, power 2 (s²), &gt; 0
 */
public record FilterSection(double b0, double b1, double b2, double a0, double a1, double a2) {
    /**
     * @throws IllegalArgumentException if a numerator coefficient is not finite, or a denominator coefficient is not
     *     positive: with all three positive both poles decay
     */
    public FilterSection {
        if (!Double.isFinite(b0) || !Double.isFinite(b1) || !Double.isFinite(b2)) {
            throw new IllegalArgumentException("numerator must be finite, got " + b0 + ", " + b1 + ", " + b2);
        }
        requirePositive("denominator coefficient of s^0", a0, "");
        requirePositive("denominator coefficient of s^1", a1, " s");
        requirePositive("denominator coefficient of s^2", a2, " s²");
    }

    /**
     * {@code (s/ω)²/(1 + s/(Qω) + (s/ω)²)}, ω = 2πf.
     *
     * @param frequency corner f (Hz), &gt; 0
     * @param q quality factor Q, &gt; 0; 1/√2 is Butterworth's
     */
    public static FilterSection highPass(double frequency, double q) {
        double w = angular(frequency);
        return resonant(0, 0, 1 / (w * w), w, q);
    }

    /** {@code 1/(1 + s/(Qω) + (s/ω)²)}; arguments as in {@link #highPass}. */
    public static FilterSection lowPass(double frequency, double q) {
        return resonant(1, 0, 0, angular(frequency), q);
    }

    /**
     * Acceleration below, velocity above: {@code (1 + s/ω_zero)/(1 + s/(Qω) + (s/ω)²)}.
     *
     * @param zeroFrequency where the numerator turns up (Hz), &gt; 0
     * @param frequency of the denominator (Hz), &gt; 0
     * @param q quality factor of the denominator, &gt; 0
     */
    public static FilterSection transition(double zeroFrequency, double frequency, double q) {
        return resonant(1, 1 / angular(zeroFrequency), 0, angular(frequency), q);
    }

    /**
     * From (f_zero/f_pole)² at low to 1 at high frequency:
     * {@code (s² + sω₅/Q₅ + ω₅²)/(s² + sω₆/Q₆ + ω₆²)}, 5 the numerator's and 6 the denominator's.
     *
     * @param zeroFrequency of the numerator (Hz), &gt; 0
     * @param zeroQ quality factor of the numerator, &gt; 0
     * @param poleFrequency of the denominator (Hz), &gt; 0
     * @param poleQ quality factor of the denominator, &gt; 0
     */
    public static FilterSection step(double zeroFrequency, double zeroQ, double poleFrequency, double poleQ) {
        double z = angular(zeroFrequency);
        double p = angular(poleFrequency);
        requirePositive("quality factor of the numerator", zeroQ, "");
        requirePositive("quality factor of the denominator", poleQ, "");
        return new FilterSection(z * z, z / zeroQ, 1, p * p, p / poleQ, 1);
    }

    /** Complex gain at a frequency (Hz). */
    public Complex response(double frequency) {
        double w = 2 * Math.PI * frequency;
        return new Complex(b0 - b2 * w * w, b1 * w).divide(new Complex(a0 - a2 * w * w, a1 * w));
    }

    /** Undamped angular frequency √(a0/a2) of the poles (rad/s). */
    public double poleAngularFrequency() {
        return Math.sqrt(a0 / a2);
    }

    /** 1/Q of the poles, {@code a1/√(a0 a2)}; they are a complex pair where it is below 2. */
    public double poleDamping() {
        return a1 / Math.sqrt(a0 * a2);
    }

    /** Rate at which the slower of the two poles decays (1/s), &gt; 0. */
    public double decayRate() {
        double half = poleDamping() / 2;
        double w = poleAngularFrequency();
        // real poles: the slower one, written without cancellation
        return half <= 1 ? w * half : w / (half + Math.sqrt(half * half - 1));
    }

    private static FilterSection resonant(double b0, double b1, double b2, double w, double q) {
        requirePositive("quality factor", q, "");
        return new FilterSection(b0, b1, b2, 1, 1 / (q * w), 1 / (w * w));
    }

    private static double angular(double frequency) {
        requirePositive("frequency", frequency, " Hz");
        return 2 * Math.PI * frequency;
    }

    private static void requirePositive(String what, double value, String unit) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(what + " must be > 0 and finite, got " + value + unit);
        }
    }
}
