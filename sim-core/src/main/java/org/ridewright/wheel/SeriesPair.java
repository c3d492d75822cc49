package org.ridewright.wheel;

/**
 * Two springs, each with its damper beside it, one behind the other: a wheel on yielding ground.
 *
 * <p>Under a motion {@code e^(st)} the pair has the stiffness {@code K = (k₁ + d₁ s)(k₂ + d₂ s)/(k₁ + k₂ + (d₁ + d₂) s)}. Its beginning in
 * powers of s is the law {@code N = k c + d ċ} with
 *
 * <pre>
 *   k = k₁ k₂/(k₁ + k₂)        d = (d₁ k₂² + d₂ k₁²)/(k₁ + k₂)²
 * </pre>
 *
 * where each damper counts with the square of its part's share in the give. What is left out is
 *
 * <pre>
 *   K − k − d s = −s² (k₂ d₁ − k₁ d₂)²/((k₁ + k₂)³ (1 + τ s)),        τ = (d₁ + d₂)/(k₁ + k₂)
 * </pre>
 *
 * nothing where both parts yield in step, {@code d₁/k₁ = d₂/k₂}, and little while {@code ω τ} is small.
 *
 * @param k1 rate of the wheel (N/m)
 * @param d1 its damping (N·s/m)
 * @param k2 rate of the ground (N/m)
 * @param d2 its damping (N·s/m)
 */
public record SeriesPair(double k1, double d1, double k2, double d2) {
    /** {@code k} (N/m). */
    public double rate() {
        return k1 / (1 + k1 / k2);
    }

    /** {@code d} (N·s/m). */
    public double damping() {
        double wheel = k2 / (k1 + k2);
        double ground = k1 / (k1 + k2);
        return d1 * wheel * wheel + d2 * ground * ground;
    }

    /** Size of what the law leaves out at the angular frequency ω (rad/s), over the size of {@code k + iωd}. */
    public double error(double omega) {
        double k = k1 + k2;
        double apart = k2 * d1 - k1 * d2;
        double left = omega * omega * apart * apart / (k * k * k * Math.hypot(1, omega * (d1 + d2) / k));
        return left / Math.hypot(rate(), omega * damping());
    }
}
