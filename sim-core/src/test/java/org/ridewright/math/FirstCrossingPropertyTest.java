package org.ridewright.math;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;

class FirstCrossingPropertyTest {
    private final FirstCrossing crossing = new FirstCrossing(24);

    /** A brute-force dense scan finds no crossing that the isolation did not. */
    @Property(tries = 400)
    void noCrossingIsMissed(@ForAll @Size(7) double[] roots, @ForAll @DoubleRange(min = 0.1, max = 1) double end) {
        double[] a = product(roots);
        if (a[0] <= 1e-12) {
            return;
        }
        double found = crossing.find(a, a.length - 1, end);
        double scanned = Double.NaN;
        for (int i = 0; i <= 20_000 && Double.isNaN(scanned); i++) {
            double x = end * i / 20_000;
            if (value(a, x) < -1e-10) {
                scanned = x;
            }
        }
        if (!Double.isNaN(scanned)) {
            assertThat(found).isNotNaN().isLessThanOrEqualTo(scanned + 1e-12);
        }
        if (!Double.isNaN(found)) {
            assertThat(Math.abs(value(a, found))).isLessThan(1e-9);
            assertThat(value(a, 0.999 * found)).isGreaterThan(-1e-9);
        }
    }

    /** Extremes by branch and bound are those of a dense scan, and never less. */
    @Property(tries = 300)
    void extremesCoverADenseScan(@ForAll @Size(6) double[] roots, @ForAll @DoubleRange(min = 0.1, max = 1) double end) {
        double[] a = product(roots);
        PolynomialRange range = new PolynomialRange(24);
        range.include(a, a.length - 1, end, 0, 1);
        double greatest = Double.NEGATIVE_INFINITY;
        double size = 0;
        for (int i = 0; i <= 5000; i++) {
            greatest = Math.max(greatest, value(a, end * i / 5000));
            size = Math.max(size, Math.abs(value(a, end * i / 5000)));
        }
        assertThat(range.greatest()).isGreaterThanOrEqualTo(greatest - 1e-9 * size);
        assertThat(range.greatest()).isLessThanOrEqualTo(greatest + 1e-3 * size + 1e-12);
    }

    /** {@code Π (1 − x/r_i)} with the roots spread over −2 … 2, coefficients lowest first. */
    private static double[] product(double[] seeds) {
        double[] a = {1};
        for (double seed : seeds) {
            double folded = Double.isFinite(seed) ? Math.IEEEremainder(seed * 0.618, 2) * 2 : 0.5;
            double root = Math.abs(folded) < 0.01 ? 0.3 : folded;
            double[] next = new double[a.length + 1];
            for (int i = 0; i < a.length; i++) {
                next[i] += a[i];
                next[i + 1] -= a[i] / root;
            }
            a = next;
        }
        return a;
    }

    private static double value(double[] a, double x) {
        double sum = 0;
        for (int i = a.length - 1; i >= 0; i--) {
            sum = sum * x + a[i];
        }
        return sum;
    }
}
