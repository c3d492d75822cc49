package org.ridewright.validation;

/**
 * {@code ∫ |B(iω)/A(iω)|² dω} over all ω, for {@code B = B₀ + B₁p + B₂p² + B₃p³} and {@code A = A₀ + … + A₄p⁴} without roots to the
 * right:
 *
 * <pre>
 *   π [ A₀B₃²(A₀A₃ − A₁A₂) + A₀A₁A₄(2B₁B₃ − B₂²) − A₀A₃A₄(B₁² − 2B₀B₂) + A₄B₀²(A₁A₄ − A₂A₃) ]
 *   ─────────────────────────────────────────────────────────────────────────────────────────
 *                          A₀A₄ (A₀A₃² + A₁²A₄ − A₁A₂A₃)
 * </pre>
 *
 * <p>Source: James, Nichols and Phillips, Theory of Servomechanisms (1947), appendix; in this form in Newland, Random Vibrations,
 * appendix 1 (both from memory, and therefore set beside a sum over frequencies).
 */
record FourthOrderIntegral(double[] b, double[] a) {
    double value() {
        double numerator = a[0] * b[3] * b[3] * (a[0] * a[3] - a[1] * a[2])
                + a[0] * a[1] * a[4] * (2 * b[1] * b[3] - b[2] * b[2])
                - a[0] * a[3] * a[4] * (b[1] * b[1] - 2 * b[0] * b[2])
                + a[4] * b[0] * b[0] * (a[1] * a[4] - a[2] * a[3]);
        double denominator = a[0] * a[4] * (a[0] * a[3] * a[3] + a[1] * a[1] * a[4] - a[1] * a[2] * a[3]);
        return Math.PI * numerator / denominator;
    }
}
