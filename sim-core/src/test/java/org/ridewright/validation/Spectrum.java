package org.ridewright.validation;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.complex.Complex;

/** Sums over frequency of the response {@code |B(iω)/A(iω)|²} to unit white noise held for a time; coefficients lowest power first. */
record Spectrum(double[] b, double[] a) {
    private static final double LOWEST = 1e-8;
    private static final double HIGHEST = 1e12;
    private static final int POINTS = 400_000;

    /** {@code ∫ S df} over all frequencies; {@code hold} 0 for white noise (s). */
    double integral(double hold) {
        return sum(omega -> density(omega, hold));
    }

    /** {@code ∫ S² df}. */
    double integralOfSquare(double hold) {
        return sum(omega -> density(omega, hold) * density(omega, hold));
    }

    private double density(double omega, double hold) {
        double half = omega * hold / 2;
        double held = half == 0 ? 1 : Math.sin(half) / half;
        Complex p = new Complex(0, omega);
        return Math.pow(polynomial(b, p).divide(polynomial(a, p)).norm() * held, 2);
    }

    private static Complex polynomial(double[] coefficients, Complex p) {
        Complex sum = Complex.ZERO;
        for (int k = coefficients.length - 1; k >= 0; k--) {
            sum = sum.multiply(p).add(coefficients[k]);
        }
        return sum;
    }

    /** Trapezoids in {@code ln ω}, both signs of ω. */
    private static double sum(DoubleUnaryOperator density) {
        double step = Math.log(HIGHEST / LOWEST) / POINTS;
        double sum = 0;
        for (int i = 0; i <= POINTS; i++) {
            double omega = LOWEST * Math.exp(i * step);
            sum += (i == 0 || i == POINTS ? 0.5 : 1) * density.applyAsDouble(omega) * omega;
        }
        return sum * step / Math.PI;
    }
}
