package org.ridewright.figure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A third quantity over the plane of a panel, shown by colours between round levels. Immutable.
 */
public final class Field {
    private static final int MOST_BANDS = 9;

    private final String quantity;
    private final String unit;
    private final double[] x;
    private final double[] y;
    private final double[][] z;
    private final double[] levels;

    /**
     * A field known at the corners of a grid.
     *
     * @param quantity what it is
     * @param unit as printed; blank for a pure number
     * @param x places along the x axis (its unit), increasing, n ≥ 2; copied
     * @param y places along the y axis (its unit), increasing, m ≥ 2; copied
     * @param z values (unit), n rows of m, NaN where there is none; copied
     * @throws IllegalArgumentException if a bound above is broken
     */
    public Field(String quantity, String unit, double[] x, double[] y, double[][] z) {
        this.quantity = quantity;
        this.unit = unit;
        this.x = x.clone();
        this.y = y.clone();
        this.z = Arrays.stream(z).map(double[]::clone).toArray(double[][]::new);
        if (x.length < 2
                || y.length < 2
                || z.length != x.length
                || Arrays.stream(z).anyMatch(r -> r.length != y.length)) {
            throw new IllegalArgumentException("field '%s' needs ≥ 2 × 2 values on its grid, got %d × %d places"
                    .formatted(quantity, x.length, y.length));
        }
        levels = round();
    }

    private double[] round() {
        double least = Arrays.stream(z)
                .flatMapToDouble(Arrays::stream)
                .filter(Double::isFinite)
                .min()
                .orElse(0);
        double most = Arrays.stream(z)
                .flatMapToDouble(Arrays::stream)
                .filter(Double::isFinite)
                .max()
                .orElse(1);
        if (!(most > least)) {
            return new double[] {least, least == 0 ? 1 : least + Math.abs(least)};
        }
        int power = (int) Math.floor(Math.log10((most - least) / MOST_BANDS)) - 1;
        while (true) {
            for (int digit : new int[] {1, 2, 5}) {
                BigDecimal step = BigDecimal.valueOf(digit).scaleByPowerOfTen(power);
                long first = (long) Math.floor(least / step.doubleValue() + 1e-9);
                long last = (long) Math.ceil(most / step.doubleValue() - 1e-9);
                if (last - first <= MOST_BANDS) {
                    List<Double> all = new ArrayList<>();
                    for (long k = first; k <= last; k++) {
                        all.add(step.multiply(BigDecimal.valueOf(k), MathContext.DECIMAL64)
                                .doubleValue());
                    }
                    return all.stream().mapToDouble(Double::doubleValue).toArray();
                }
            }
            power++;
        }
    }

    String quantity() {
        return quantity;
    }

    String unit() {
        return unit;
    }

    double[] x() {
        return x.clone();
    }

    double[] y() {
        return y.clone();
    }

    double z(int i, int j) {
        return z[i][j];
    }

    /** Bounds of the bands, increasing; one more than there are bands. */
    double[] levels() {
        return levels.clone();
    }
}
