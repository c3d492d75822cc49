package org.ridewright.uncertainty;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937c;

/**
 * Independent standard normal numbers, N draws of d each, as a Latin hypercube: in every dimension each N-th part of the probability is drawn
 * once.
 *
 * <p>Source: McKay, Beckman and Conover 1979, Technometrics 21, 239-245.
 */
public final class NormalDraws {
    private static final NormalDistribution NORMAL = new NormalDistribution(0, 1);

    private final double[][] draws;
    private final RandomGenerator random;
    private final int dimensions;

    /**
     * @param count N, ≥ 1
     * @param dimensions d, ≥ 0
     * @param seed which of all such hypercubes
     */
    public NormalDraws(int count, int dimensions, long seed) {
        this.dimensions = dimensions;
        random = new Well19937c(seed);
        draws = new double[count][dimensions];
        int[] order = new int[count];
        for (int d = 0; d < dimensions; d++) {
            for (int i = 0; i < count; i++) {
                int j = random.nextInt(i + 1);
                order[i] = order[j];
                order[j] = i;
            }
            for (int i = 0; i < count; i++) {
                draws[i][d] = NORMAL.inverseCumulativeProbability((order[i] + random.nextDouble()) / count);
            }
        }
    }

    /** Draw i; not modified. */
    public double[] draw(int i) {
        return draws[i];
    }

    /** A further draw, in place of one of which no vehicle can be. */
    public double[] another() {
        double[] w = new double[dimensions];
        for (int d = 0; d < dimensions; d++) {
            w[d] = random.nextGaussian();
        }
        return w;
    }
}
