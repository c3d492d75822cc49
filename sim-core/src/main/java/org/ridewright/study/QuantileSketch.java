package org.ridewright.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.ridewright.math.Quantiles;

/**
 * Quantiles of numbers that come one by one ({@link Quantiles}), in memory that grows with the logarithm of their count alone. Exact
 * below {@value #ROOM} numbers, which take no more room than there are of them;
 * beyond that each full layer is sorted and every other number, the odd and the even ones in turn, goes on to the next layer with twice the weight,
 * so that a quantile's share is off by less than {@code log₂(n/ROOM)/ROOM}.
 *
 * <p>The same numbers in the same order give the same bits. Source of the idea: Munro and Paterson (1980); Karnin, Lang, Liberty (2016).
 */
public final class QuantileSketch {
    private static final int ROOM = 4096;
    private static final int FIRST_ROOM = 16;

    private final List<double[]> layers = new ArrayList<>();
    private final List<Integer> filled = new ArrayList<>();
    private final List<Boolean> odd = new ArrayList<>();
    private long count;
    private double sum;
    private double least = Double.POSITIVE_INFINITY;
    private double greatest = Double.NEGATIVE_INFINITY;

    /** Takes a number; what is not finite is left out. */
    public void add(double value) {
        if (Double.isFinite(value)) {
            count++;
            sum += value;
            least = Math.min(least, value);
            greatest = Math.max(greatest, value);
            put(0, value);
        }
    }

    private void put(int layer, double value) {
        if (layer == layers.size()) {
            layers.add(new double[FIRST_ROOM]);
            filled.add(0);
            odd.add(false);
        }
        int n = filled.get(layer);
        if (n == layers.get(layer).length) {
            layers.set(layer, Arrays.copyOf(layers.get(layer), Math.min(ROOM, 4 * n)));
        }
        layers.get(layer)[n] = value;
        filled.set(layer, n + 1);
        if (n + 1 == ROOM) {
            double[] sorted = layers.get(layer);
            Arrays.sort(sorted);
            int first = odd.get(layer) ? 1 : 0;
            odd.set(layer, !odd.get(layer));
            filled.set(layer, 0);
            for (int i = first; i < ROOM; i += 2) {
                put(layer + 1, sorted[i]);
            }
        }
    }

    /** How many numbers were taken. */
    public long count() {
        return count;
    }

    /** Arithmetic mean; not a number where there is none. */
    public double mean() {
        return count == 0 ? Double.NaN : sum / count;
    }

    /** Numbers that there is room for. */
    int room() {
        return layers.stream().mapToInt(layer -> layer.length).sum();
    }

    /**
     * Value below which a share of the distribution lies, between neighbours in proportion. A number that stands for w of them stands at their middle rank.
     *
     * @param share from 0 to 1
     * @return not a number where there are no numbers
     */
    public double quantile(double share) {
        if (count == 0) {
            return Double.NaN;
        }
        double wanted = share * (count + 1);
        double before = 0;
        double lastAt = 0;
        double last = least;
        for (double[] pair : weighted()) {
            double at = before + (pair[1] + 1) / 2;
            if (wanted <= at) {
                return last + (pair[0] - last) * (wanted - lastAt) / (at - lastAt);
            }
            before += pair[1];
            last = pair[0];
            lastAt = at;
        }
        return greatest;
    }

    /** Lower end of the 90 % interval. */
    public double low() {
        return quantile(Quantiles.TAIL);
    }

    /** Upper end of the 90 % interval. */
    public double high() {
        return quantile(1 - Quantiles.TAIL);
    }

    /** Median with the 90 % interval. */
    public Estimate estimate() {
        return new Estimate(quantile(0.5), low(), high());
    }

    /** Of the same numbers with the other sign. */
    QuantileSketch negated() {
        QuantileSketch other = new QuantileSketch();
        for (double[] layer : layers) {
            other.layers.add(Arrays.stream(layer).map(x -> -x).toArray());
        }
        other.filled.addAll(filled);
        other.odd.addAll(odd);
        other.count = count;
        other.sum = -sum;
        other.least = -greatest;
        other.greatest = -least;
        return other;
    }

    private double[][] weighted() {
        List<double[]> pairs = new ArrayList<>();
        double weight = 1;
        for (int layer = 0; layer < layers.size(); layer++) {
            for (int i = 0; i < filled.get(layer); i++) {
                pairs.add(new double[] {layers.get(layer)[i], weight});
            }
            weight *= 2;
        }
        pairs.sort((a, b) -> Double.compare(a[0], b[0]));
        return pairs.toArray(double[][]::new);
    }
}
