package org.ridewright.study;

import org.hipparchus.random.SobolSequenceGenerator;

/**
 * Points of the unit cube that fill it more evenly than chance, each looked up by its number; belongs to one thread.
 *
 * <p>Sobol' points are shifted bit by bit by a number of chance for each coordinate (a digital shift), which keeps their even distribution and
 * takes the corner 0 away. Of Latin hypercube draws each coordinate hits every one of {@code count} equal strips once.
 *
 * <p>Source: direction numbers of Joe and Kuo (2008) in the generator of the library; McKay, Beckman, Conover (1979).
 */
public final class Draws {
    /** Most coordinates for which there are direction numbers. */
    public static final int MOST = 1000;

    private static final int BITS = 52;
    private static final double SCALE = 0x1.0p-52;

    private final Kind kind;
    private final long count;
    private final int dimensions;
    private final long seed;
    private final SobolSequenceGenerator sobol;
    private long next = -1;

    /** How points are spread. */
    public enum Kind {
        /** Sobol' points with a digital shift. */
        SOBOL("sobol"),
        /** Latin hypercube. */
        LATIN("latin hypercube");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** The words as written in files. */
        public String word() {
            return word;
        }
    }

    /**
     * @param count number of points; Sobol' points may be taken beyond it
     * @param dimensions coordinates of each, 0 to {@value #MOST}
     */
    public Draws(Kind kind, long count, int dimensions, long seed) {
        if (dimensions > MOST) {
            throw new IllegalArgumentException("draws have ≤ " + MOST + " coordinates, got " + dimensions);
        }
        this.kind = kind;
        this.count = count;
        this.dimensions = dimensions;
        this.seed = seed;
        sobol = kind == Kind.SOBOL && dimensions > 0 ? new SobolSequenceGenerator(dimensions) : null;
    }

    /** Point {@code i}, each coordinate strictly between 0 and 1. */
    public double[] point(long i) {
        double[] point = new double[dimensions];
        if (kind == Kind.LATIN) {
            for (int d = 0; d < dimensions; d++) {
                point[d] = (shuffled(i, d) + Mix.uniform(seed, d, i, 2)) / count;
            }
        } else if (dimensions > 0) {
            double[] raw = i == next ? sobol.nextVector() : sobol.skipTo(Math.toIntExact(i));
            next = i + 1;
            for (int d = 0; d < dimensions; d++) {
                long shift = Mix.bits(seed, d) >>> (64 - BITS);
                point[d] = (((long) (raw[d] / SCALE) ^ shift) + 0.5) * SCALE;
            }
        }
        return point;
    }

    /** Where number {@code i} goes in a shuffle of all numbers: four rounds of a Feistel network over the next square power of two, walked until it falls below the count. */
    private long shuffled(long i, int dimension) {
        int half = Math.max(1, (64 - Long.numberOfLeadingZeros(Math.max(1, count - 1)) + 1) / 2);
        long mask = (1L << half) - 1;
        long at = i;
        do {
            long left = at >>> half;
            long right = at & mask;
            for (int round = 0; round < 4; round++) {
                long mixed = left ^ (Mix.bits(seed, dimension, round, right, 1) & mask);
                left = right;
                right = mixed;
            }
            at = left << half | right;
        } while (at >= count);
        return at;
    }
}
