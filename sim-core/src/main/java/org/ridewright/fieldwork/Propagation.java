package org.ridewright.fieldwork;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.Provenance;
import org.ridewright.quantity.QuantityKind;

/**
 * A value worked out from readings, with its standard uncertainty {@code u² = Σ (∂f/∂x_i u_i)²}, independent readings, derivatives by central
 * differences over ± u_i/10.
 *
 * <p>Source: JCGM 100:2008 (GUM), 5.1.2.
 */
final class Propagation {
    private static final double PART = 0.1;

    private Propagation() {}

    /** {@code rule} says how it was worked out. */
    static Measure of(QuantityKind kind, String rule, ToDoubleFunction<double[]> f, Measure... readings) {
        double[] x = new double[readings.length];
        for (int i = 0; i < x.length; i++) {
            x[i] = readings[i].value();
        }
        double variance = 0;
        for (int i = 0; i < x.length; i++) {
            double step = PART * readings[i].tolerance();
            if (step > 0) {
                double[] up = x.clone();
                double[] down = x.clone();
                up[i] += step;
                down[i] -= step;
                double change = (f.applyAsDouble(up) - f.applyAsDouble(down)) / (2 * PART);
                variance += change * change;
            }
        }
        return new Measure(kind, f.applyAsDouble(x), Math.sqrt(variance), Provenance.COMPUTED, rule);
    }

    /** Sum of readings of one kind, at least one. */
    static Measure sum(String rule, List<Measure> readings) {
        return of(
                readings.get(0).kind(),
                rule,
                x -> {
                    double sum = 0;
                    for (double value : x) {
                        sum += value;
                    }
                    return sum;
                },
                readings.toArray(Measure[]::new));
    }
}
